/** One line of the menu bar, as the desktop takes it. */
export interface MenuLine {
  label?: string;
  role?: 'appMenu' | 'close' | 'quit' | 'cut' | 'copy' | 'paste' | 'selectAll' | 'windowMenu' | MenuView;
  type?: 'separator';
  accelerator?: string;
  click?: () => void;
  submenu?: MenuLine[];
}

type MenuView = 'resetZoom' | 'zoomIn' | 'zoomOut' | 'togglefullscreen' | 'toggleDevTools';

/**
 * The menu bar. It has only what belongs to the desktop: undo and the studio's other acts are the window's own, by name and
 * by key, so that they are the same in the browser.
 */
export function menuLines(
  openFile: () => void,
  on: { readonly mac: boolean; readonly installed: boolean },
): MenuLine[] {
  const view: MenuLine[] = [
    { role: 'resetZoom' },
    { role: 'zoomIn' },
    { role: 'zoomOut' },
    { role: 'togglefullscreen' },
  ];
  return [
    ...(on.mac ? [{ role: 'appMenu' } as const] : []),
    {
      label: 'File',
      submenu: [
        { label: 'Open a pattern or recipe file…', accelerator: 'CommandOrControl+O', click: openFile },
        { type: 'separator' },
        { role: on.mac ? 'close' : 'quit' },
      ],
    },
    { label: 'Edit', submenu: [{ role: 'cut' }, { role: 'copy' }, { role: 'paste' }, { role: 'selectAll' }] },
    { label: 'View', submenu: on.installed ? view : [...view, { role: 'toggleDevTools' }] },
    ...(on.mac ? [{ role: 'windowMenu' } as const] : []),
  ];
}
