/** Gives a part of the window the focus because the designer asked for it, and shows where it went until it goes on. */
export function focusPart(part: HTMLElement | null | undefined): void {
  if (part === null || part === undefined) return;
  part.dataset.arrived = 'yes';
  part.addEventListener('blur', () => delete part.dataset.arrived, { once: true });
  part.focus();
}
