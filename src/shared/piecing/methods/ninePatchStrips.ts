import { fromStrips } from './boardStrips.ts';

/** Nine-patches from two strip sets. */
export const ninePatchStrips = fromStrips('nine-patch', 'nine-patch-strips', 'Nine-patches from strip sets');
