/** How the studio's window is made: the page in it is an ordinary web page that reaches nothing but the preload's bridge. */
export function windowOptions({ preload, dark }: { readonly preload: string; readonly dark: boolean }) {
  return {
    title: 'Piecewright',
    width: 1440,
    height: 900,
    minWidth: 960,
    minHeight: 600,
    show: false,
    // The ground of the page, so that nothing flashes before it is drawn.
    backgroundColor: dark ? '#171A22' : '#F7F3EA',
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      webviewTag: false,
      // The checker fetches its word lists from elsewhere; the studio fetches nothing.
      spellcheck: false,
    },
  };
}

/** The question when the window is closed while its last change is not on disk: staying is the answer that loses nothing. */
export const UNSAVED_QUESTION = {
  type: 'warning' as const,
  message: 'Your last change is not on disk yet.',
  detail: 'Stay a moment and it will be, unless the window says what keeps it from being saved.',
  buttons: ['Stay', 'Leave without it'],
  defaultId: 0,
  cancelId: 0,
};
