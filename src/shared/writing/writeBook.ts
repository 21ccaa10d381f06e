import { inksFor } from '../diagrams/hatches.ts';
import { unitsOn } from '../measure/metric.ts';
import type { WorkedOut } from '../workroom/workedOut.ts';
import { colouring, editionText, rights } from './backMatter.ts';
import { beforeYouBegin } from './beforeYouBegin.ts';
import { beforeYouBuy } from './beforeYouBuy.ts';
import { blocks } from './blocks.ts';
import type { Book, Section } from './book.ts';
import { bordersSection } from './bordersSection.ts';
import { cover } from './cover.ts';
import { cutting } from './cutting.ts';
import { type Desk, layDesk } from './desk.ts';
import { finishing } from './finishing.ts';
import { inUnits } from './inUnits.ts';
import { quiltTop } from './quiltTop.ts';
import { templates } from './templates.ts';
import { units } from './units.ts';

/** The sections of a pattern, in the order they are read. */
const SECTIONS: readonly ((desk: Desk) => Section)[] = [
  cover,
  beforeYouBuy,
  beforeYouBegin,
  cutting,
  units,
  blocks,
  quiltTop,
  bordersSection,
  finishing,
  rights,
  templates,
  colouring,
];

/**
 * The written pattern. A section that has nothing to say is left out; a pattern of which no size can be laid out gives a
 * book without sections, and its findings say why.
 */
export function writeBook(worked: WorkedOut): Book {
  const { pattern } = worked;
  const desk = layDesk(worked);
  const sections =
    desk === null ? [] : SECTIONS.map((write) => write(desk)).filter((section) => section.blocks.length > 0);
  const units = unitsOn(pattern.house.step);
  return {
    title: pattern.title,
    designer: pattern.words.designer,
    edition: editionText(pattern.edition.number),
    date: pattern.edition.date,
    language: 'en',
    sections: inUnits(sections, units),
    inks: inksFor(pattern.fabrics),
    findings: worked.findings,
  };
}
