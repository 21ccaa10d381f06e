/** The way through a pattern, in order. */
export const VIEW_IDS = ['library', 'block', 'quilt', 'cloth', 'sewing', 'pages'] as const;
export type ViewId = (typeof VIEW_IDS)[number];
