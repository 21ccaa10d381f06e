import type { Command } from '../commands/command.ts';
import { exportPdf } from './exportPdf.ts';
import { pagesStore, turnTo } from './pagesStore.ts';

const exportCommand: Command = {
  id: 'export-pdf',
  group: 'Here',
  label: () => 'Export the PDF',
  keys: ['mod+e'],
  enabled: ({ history }) => history !== null,
  run: (studio) => exportPdf(studio, false),
};

const nextPage: Command = {
  id: 'next-page',
  group: 'Here',
  label: () => 'Next page',
  keys: ['n'],
  enabled: () => pagesStore.getState().page < pagesStore.getState().pages,
  run: () => turnTo(pagesStore.getState().page + 1),
};

const previousPage: Command = {
  id: 'previous-page',
  group: 'Here',
  label: () => 'Page before',
  keys: ['p'],
  enabled: () => pagesStore.getState().page > 1,
  run: () => turnTo(pagesStore.getState().page - 1),
};

const overview: Command = {
  id: 'page-overview',
  group: 'Here',
  label: () => (pagesStore.getState().layout === 'all' ? 'Look at one page' : 'Look at all pages'),
  keys: ['o'],
  enabled: () => pagesStore.getState().pages > 0,
  run: () => pagesStore.setState(({ layout }) => ({ layout: layout === 'all' ? 'one' : 'all' })),
};

/** What can be done in the pages view by name and by key. */
export const PAGES_COMMANDS: readonly Command[] = [exportCommand, nextPage, previousPage, overview];
