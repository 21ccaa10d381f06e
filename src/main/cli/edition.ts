import type { Paper } from '../../shared/contract.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { WorkedOut } from '../../shared/workroom/workedOut.ts';
import { writeBook } from '../../shared/writing/writeBook.ts';
import { makePdf } from '../paper/makePdf.ts';
import { swatchPictures } from '../photograph/swatch.ts';
import { fileName } from '../publish/publication.ts';
import { Refused } from '../refusal.ts';
import { chartFiles } from './charts.ts';

/** One printing of an edition. */
export interface Printing {
  readonly paper: Paper;
  readonly plainInk: boolean;
}

/** What files are named by. */
export type Named = Parameters<typeof fileName>[0];

/**
 * The printings of a pattern that is worked out, and its charts: bytes by the name of the file.
 * @param named the pattern, or its title with the one size it is printed in
 */
export async function editionFiles(
  worked: WorkedOut,
  named: Named,
  printings: readonly Printing[],
  draft: boolean,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const book = writeBook(worked);
  const swatches = await swatchPictures(worked.pattern);
  const files = new Map<string, Uint8Array>();
  for (const printing of printings) {
    files.set(fileName(named, { ...printing, draft }), await makePdf(book, { ...printing, draft, swatches }));
  }
  for (const [ending, text] of chartFiles(worked)) files.set(chartName(named, ending), Buffer.from(text));
  return files;
}

/** "harbour-lights-edition-2-cutting.csv" */
function chartName(named: Named, ending: string): string {
  const pdf = fileName(named, { paper: 'letter', plainInk: false, draft: false });
  return pdf.replace(/letter\.pdf$/, ending);
}

/**
 * The pattern in one of its sizes only.
 * @param name the size's name or id, in large or small letters
 */
export function oneSize(pattern: Pattern, name: string): Pattern {
  const wanted = name.trim().toLowerCase();
  const size = pattern.sizes.find((one) => one.id === wanted || one.name.toLowerCase() === wanted);
  if (size === undefined) {
    const names = pattern.sizes.map((one) => one.name).join(', ');
    throw new Refused('bad-input', `“${pattern.title}” has no size “${name}”. It has: ${names}.`);
  }
  const single = pattern.setting.single.filter((one) => one.size === undefined || one.size === size.id);
  return { ...pattern, setting: { ...pattern.setting, single }, sizes: [size] };
}
