/** The few words the page adds of its own to a book in English. */
export const LABELS = {
  page: (page: number, pages: number): string => `${page} of ${pages}`,
  draft: 'Draft, not for sale',
  unfitDraft: 'Draft – does not fit yet, not for sale',
  continued: 'continued',
  sizes: 'Sizes',
  skills: 'Skills',
  cover: 'Cover',
  by: 'Designed by',
  testSquare: (side: string): string =>
    `Printed at its actual size (100 %, no fitting to the page), each side of this square measures ${side}. Measure it before you cut.`,
  sheet: (sheet: number, sheets: number): string =>
    `Sheet ${sheet} of ${sheets}: cut on the join line, lay it on the next sheet so that the crosses of the same name meet, and tape.`,
} as const;
