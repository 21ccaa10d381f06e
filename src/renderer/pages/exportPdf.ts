import type { PublishedFile } from '../../shared/contract.ts';
import { refusalOf } from '../state/host.ts';
import type { Studio } from '../state/studio.ts';
import { bytesOf, makePages } from './makePages.ts';
import { pagesStore } from './pagesStore.ts';

/**
 * Makes the PDF as it is printed and hands it to the designer's downloads. Refused with findings when something does not
 * fit, unless a draft is asked for.
 */
export async function exportPdf(studio: Studio, draft: boolean): Promise<void> {
  const pattern = studio.store.getState().history?.now;
  if (pattern === undefined || pagesStore.getState().exporting.state === 'making') return;
  const { paper, plainInk } = pagesStore.getState();
  const stop = new AbortController();
  const tell = (making: { progress: number; doing: string }) =>
    pagesStore.setState({ exporting: { state: 'making', making, stop: () => stop.abort() } });
  tell({ progress: 0, doing: 'Making the pages' });
  try {
    const file = await makePages(studio.host, { pattern, paper, plainInk, draft }, stop.signal, tell);
    download(file);
    pagesStore.setState({ exporting: { state: 'done', name: file.name } });
  } catch (thrown) {
    pagesStore.setState({ exporting: { state: 'refused', refusal: refusalOf(thrown) } });
  }
}

/** Hands a file to the browser's or the window's own way of saving. */
function download(file: PublishedFile): void {
  const address = URL.createObjectURL(new Blob([bytesOf(file)], { type: file.type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = file.name;
  link.click();
  // The browser reads the address a moment later.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
