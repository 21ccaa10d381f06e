/** How the studio looks: as the system does, or one way for good. */
export type Appearance = 'system' | 'light' | 'dark';

const KEY = 'appearance';

/** What the designer chose last in this window's storage. */
export function chosenAppearance(storage: Storage = localStorage): Appearance {
  const kept = storage.getItem(KEY);
  return kept === 'light' || kept === 'dark' ? kept : 'system';
}

/** Shows and remembers a choice. */
export function chooseAppearance(appearance: Appearance, storage: Storage = localStorage): void {
  storage.setItem(KEY, appearance);
  showAppearance(appearance);
}

/** Shows a choice; the tokens follow the attribute. */
export function showAppearance(appearance: Appearance): void {
  const root = document.documentElement;
  if (appearance === 'system') delete root.dataset.appearance;
  else root.dataset.appearance = appearance;
}

const SINGLE_KEYS = 'single-keys';

/** Whether bare characters such as `?` run commands; those who dictate switch them off. */
export function singleKeysOn(storage: Storage = localStorage): boolean {
  return storage.getItem(SINGLE_KEYS) !== 'off';
}

export function setSingleKeys(on: boolean, storage: Storage = localStorage): void {
  storage.setItem(SINGLE_KEYS, on ? 'on' : 'off');
}
