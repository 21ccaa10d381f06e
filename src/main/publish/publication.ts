import type { PublishRequest } from '../../shared/contract.ts';
import { anyStops, type Finding } from '../../shared/measure/finding.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { WorkedOut } from '../../shared/workroom/workedOut.ts';
import { workOut } from '../../shared/workroom/workOut.ts';
import type { Book } from '../../shared/writing/book.ts';
import { kitFileName, writeKitSheet } from '../../shared/writing/kitSheet.ts';
import { writeBook } from '../../shared/writing/writeBook.ts';
import { makePdf } from '../paper/makePdf.ts';
import { swatchPictures } from '../photograph/swatch.ts';
import { Refused } from '../refusal.ts';
import type { Tell } from '../service/publisher.ts';

/** A finished publication before it is packed for its way to the window. */
export interface Publication {
  readonly name: string;
  readonly pdf: Uint8Array;
}

/** Working the pattern out and writing its text take about a fifth of the time; setting and drawing the pages the rest. */
const WRITTEN = 0.2;

/**
 * A pattern as a print-ready PDF, from the document to the bytes. Throws `Refused` with the findings when one of them
 * stops publishing and this is no draft, and as `makePdf` does.
 */
export async function makePublication(request: PublishRequest, tell: Tell, signal: AbortSignal): Promise<Publication> {
  const { pattern, paper, plainInk, draft, kits } = request;
  tell(0, 'Working out every size');
  const worked = workOut(pattern);
  // Not even a draft can be made of nothing.
  if (worked.sizes.length === 0) throw unfit(worked.findings);
  tell(WRITTEN / 2, 'Writing the pattern');
  const book = kits === undefined ? writeBook(worked) : kitBook(worked, kits);
  const { findings } = book;
  if (!draft && anyStops(findings)) throw unfit(findings);
  const pdf = await makePdf(book, {
    paper,
    plainInk,
    draft,
    swatches: await swatchPictures(pattern),
    signal,
    onProgress: (progress, doing) => tell(WRITTEN + (1 - WRITTEN) * progress, doing),
  });
  const how = { paper, plainInk, draft };
  return { name: kits === undefined ? fileName(pattern, how) : kitPdfName(pattern, kits, how), pdf };
}

type Kits = NonNullable<PublishRequest['kits']>;
type How = Pick<PublishRequest, 'paper' | 'plainInk' | 'draft'>;

function kitBook(worked: WorkedOut, { size, many }: Kits): Book {
  const own = worked.sizes.find((one) => one.size.id === size);
  if (own === undefined) throw new Refused('bad-input', 'This size cannot be laid out, so there are no kits of it.');
  return writeKitSheet(worked, own, many);
}

/** "harbour-lights-lap-12-kits-letter.pdf" */
export function kitPdfName(pattern: Pick<Pattern, 'id' | 'sizes'>, { size, many }: Kits, how: How): string {
  const name = pattern.sizes.find(({ id }) => id === size)?.name ?? size;
  return withHow([kitFileName(pattern, name, many), how.paper], how);
}

function unfit(findings: readonly Finding[]): Refused {
  const stops = findings.filter((finding) => finding.level === 'stops');
  const [first] = stops;
  const more = stops.length > 1 ? ` And ${stops.length - 1} more.` : '';
  return new Refused(
    'bad-input',
    `This pattern does not fit yet, so it is not published. ${first?.what ?? ''}${more}`,
    findings,
  );
}

/** "harbour-lights-edition-2-letter-black-and-white-draft.pdf" */
export function fileName(pattern: Pick<Pattern, 'title' | 'id' | 'edition'>, how: How): string {
  const title = pattern.title
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}+/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '');
  return withHow([title || pattern.id, `edition-${pattern.edition.number}`, how.paper], how);
}

function withHow(parts: readonly string[], { plainInk, draft }: Pick<How, 'plainInk' | 'draft'>): string {
  return `${[...parts, ...(plainInk ? ['black-and-white'] : []), ...(draft ? ['draft'] : [])].join('-')}.pdf`;
}
