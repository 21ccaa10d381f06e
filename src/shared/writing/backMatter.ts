import { colouringFigure } from '../diagrams/colouringFigure.ts';
import { paragraphs } from './beforeYouBuy.ts';
import type { Block, Section } from './book.ts';
import type { Desk } from './desk.ts';
import { onOneLine } from './words.ts';

/** The quilt in outline, to colour in. */
export function colouring(desk: Desk): Section {
  const { shown, pattern, units } = desk;
  return {
    id: 'colouring',
    title: 'Colouring sheet',
    newPage: true,
    blocks: [
      {
        kind: 'whole-page-figure',
        figure: colouringFigure(shown.quilt, desk.blocks, units),
        caption: [`${pattern.title}, ${shown.size.name}. Copy this page and try your own colours before you cut.`],
      },
    ],
  };
}

/** Closing words, copyright, where to write, edition. */
export function rights(desk: Desk): Section {
  const { words, edition } = desk.pattern;
  const body = (text: string): Block => ({ kind: 'words', tone: 'body', text: [text] });
  const quiet = (text: string): Block => ({ kind: 'words', tone: 'quiet', text: [text] });
  return {
    id: 'rights',
    title: 'Thank you',
    newPage: false,
    blocks: [
      ...paragraphs(words.notes).map(body),
      ...(words.contact.trim() === ''
        ? []
        : [
            body(
              `If you find something that is not right, please write to ${onOneLine(words.contact)} and name the edition.`,
            ),
          ]),
      ...paragraphs(words.copyright).map(quiet),
      quiet(`${words.designer}, ${editionText(edition.number)}, ${edition.date}.`),
    ],
  };
}

export function editionText(number: number): string {
  return `Edition ${number}`;
}
