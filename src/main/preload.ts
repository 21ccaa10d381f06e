import { contextBridge, ipcRenderer } from 'electron';
import type { Bridge, Imported } from '../shared/contract.ts';

/** All that the window can reach of the desktop: the contract's calls, and word of a file that was opened. */
const bridge: Bridge = {
  call: (name, args) => ipcRenderer.invoke('call', name, args),
  opened: (listener) => {
    ipcRenderer.on('opened', (_event, imported: Imported) => listener(imported));
  },
};

contextBridge.exposeInMainWorld('piecewright', bridge);
