import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import type { Desk } from '../../src/main/paper/desk.ts';
import { drawPage, startDrawing } from '../../src/main/paper/drawPages.ts';
import { closeDocument, openDocument } from '../../src/main/paper/engine/openDocument.ts';
import { paginate } from '../../src/main/paper/flow/paginate.ts';
import { Drawn } from '../../src/main/paper/guard.ts';
import { makePdf } from '../../src/main/paper/makePdf.ts';
import { paletteFor } from '../../src/main/paper/palette.ts';
import { sectionPieces } from '../../src/main/paper/pieces/bookPieces.ts';
import { sheetFor } from '../../src/main/paper/sheet.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import type { Book } from '../../src/shared/writing/book.ts';
import { writeBook } from '../../src/shared/writing/writeBook.ts';
import { demoPattern } from '../helpers/starters.ts';
import { richBook } from '../main/paper/fixtures/richBook.ts';
import { median, type Row } from './row.ts';

const LETTER = { paper: 'letter', plainInk: false, draft: false } as const;
const ROUNDS = 15;

/** The terminal program from its first instruction to its last, as a designer starts it. */
async function wholeProgram(): Promise<number> {
  const root = fileURLToPath(new URL('../../', import.meta.url));
  const folder = mkdtempSync(join(tmpdir(), 'bench-paper-'));
  const pattern = 'resources/demo/harbour-lights.pattern.json';
  const words = ['src/main/cli/start.js', 'publish', pattern, '--paper', 'letter', '--out', folder];
  const run = promisify(execFile);
  try {
    return await median(() => run(process.execPath, words, { cwd: root }), { warm: 1, timed: 7 });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** How long only the drawing takes, when every line and figure already has its place. */
async function drawingAlone(book: Book): Promise<number> {
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const desk: Desk = {
      book,
      document: openDocument(book),
      sheet: sheetFor('letter'),
      palette: paletteFor(false),
      plainInk: false,
      swatches: new Map(),
    };
    const pieces = book.sections.flatMap((section) => sectionPieces(desk, section));
    const pages = paginate(pieces, desk.sheet.frameHeight);
    const from = performance.now();
    const drawing = startDrawing(desk, new Drawn());
    for (const [i, page] of pages.entries()) drawPage(drawing, page, i + 1, pages.length, false);
    await closeDocument(desk.document);
    times.push(performance.now() - from);
  }
  return times.sort((a, b) => a - b)[ROUNDS >> 1] ?? 0;
}

export const rows: readonly Row[] = [
  { what: 'demo pattern → PDF, whole CLI process', budget: 1500, measure: wholeProgram },
  {
    what: 'demo pattern → PDF, against drawing its marks alone',
    budget: 2,
    unit: '×',
    measure: async () => {
      const book = writeBook(workOut(demoPattern()));
      return (await median(() => makePdf(book, LETTER), { timed: ROUNDS })) / (await drawingAlone(book));
    },
  },
  {
    what: 'a 5-size book of some 24 pages and 90 figures → PDF, once the program is warm',
    budget: 500,
    measure: () => median(() => makePdf(richBook({ fold: 8 }), LETTER), { timed: ROUNDS }),
  },
];
