/** The stages of the way through a pattern, in order. */
export const STAGES = [
  { id: 'library', word: 'Library', says: 'patterns and block recipes' },
  { id: 'block', word: 'Block', says: 'how each block is drawn, coloured and made' },
  { id: 'quilt', word: 'Quilt', says: 'blocks, borders and sizes' },
  { id: 'cloth', word: 'Cloth', says: 'what is bought and how it is cut, in every size' },
  { id: 'sewing', word: 'Sewing', says: 'the steps, and which way seams are pressed' },
  { id: 'pages', word: 'Pages', says: 'the pattern as it is printed, its words and its PDF' },
] as const;

/** Names a stage, and the view that shows it. */
export type ViewId = (typeof STAGES)[number]['id'];

/** Every stage's name, in the order of the way. */
export const VIEW_IDS: readonly ViewId[] = STAGES.map(({ id }) => id);
