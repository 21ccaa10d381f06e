import { type Units, unitsOn } from '../../shared/measure/metric.ts';
import { rulerIn } from '../../shared/measure/ruler.ts';
import { explain } from '../../shared/measure/traced.ts';
import { bedTarget, plainTarget, type Target } from '../../shared/quilt/find/target.ts';
import { findBundleSizes } from '../../shared/workroom/findBundleSizes.ts';
import { clothText, type FoundSize, type FoundSizes, findSizes } from '../../shared/workroom/findSizes.ts';
import { Refused } from '../refusal.ts';
import { EXIT } from './exit.ts';
import { findingsText } from './findings.ts';
import { jsonText } from './json.ts';
import { lengthOf, sizeOf } from './lengths.ts';
import { mattressNamed } from './mattresses.ts';
import { openPattern } from './open.ts';
import { tableText } from './table.ts';
import type { Terminal } from './terminal.ts';

/** What is asked of `sizes`, as it was typed. */
export interface SizeWishes {
  readonly target?: string;
  readonly bed?: string;
  readonly beds?: string;
  readonly drop?: string;
  readonly tuck?: string;
  readonly most?: string;
  readonly bundle?: true;
}

/** `piecewright sizes FILE --target 60x80 --drop 12`: the best sizes for a target, each with its reasons. */
export function runSizes(file: string, wishes: SizeWishes, json: boolean, terminal: Terminal): number {
  const most = mostOf(wishes.most);
  const { source, pattern } = openPattern(file);
  const units = unitsOn(pattern.house.step);
  const target = wishes.bundle === undefined ? targetOf(wishes, units) : null;
  const found = target === null ? findBundleSizes(pattern, most) : findSizes(pattern, target, most);
  if (json) terminal.say(jsonText({ file, title: pattern.title, ...found }, units));
  else {
    const head = target === null ? 'The largest that one bundle is enough for:' : headText(found, units);
    const told = [head, ...found.sizes.map((size, i) => sizeText(size, i + 1, units))];
    const findings = findingsText(found.findings, source);
    terminal.say([...told, ...(findings === '' ? [] : [findings])].join('\n\n'));
  }
  return found.met ? EXIT.fine : EXIT.findings;
}

/** Two numbers as they are; a mattress, or two numbers with a drop or a tuck, as a bed. */
function targetOf({ target, bed, beds, drop, tuck }: SizeWishes, units: Units): Target {
  if ((target === undefined) === (bed === undefined))
    throw new Refused('bad-input', 'Say either --target, such as 60x80, or --bed, such as queen, or --bundle.');
  const hangs = lengthOf(drop ?? '0', '--drop', 0, units);
  const tucked = lengthOf(tuck ?? '0', '--tuck', 0, units);
  if (bed !== undefined) {
    const { width, length } = mattressNamed(bed, beds);
    return bedTarget({ width, length, drop: hangs, tuck: tucked });
  }
  const { width, height } = sizeOf(target ?? '', '--target', units);
  if (drop === undefined && tuck === undefined) return plainTarget(width, height);
  return bedTarget({ width, length: height, drop: hangs, tuck: tucked });
}

function mostOf(text = '8'): number {
  const most = Number(text);
  if (!Number.isInteger(most) || most < 1 || most > 50)
    throw new Refused('bad-input', `--most must be a whole number from 1 to 50, not “${text}”.`);
  return most;
}

function headText({ target }: FoundSizes, units: Units): string {
  return `Asked for: ${explain(target.width, units)}\n           ${explain(target.height, units)}`;
}

function sizeText(size: FoundSize, place: number, units: Units): string {
  const ruler = rulerIn(units);
  const { across, down, block, borders, finished, yards, reasons } = size;
  const changed = Object.entries(borders).map(([id, width]) => `border ${id} ${ruler.length(width)}`);
  const head = [
    `${place}. ${ruler.size(finished.width.value, finished.height.value)}`,
    `${across} by ${down} blocks of ${ruler.length(block)}`,
    ...changed,
    `${clothText(yards, units)} in all`,
  ].join(', ');
  const rows = reasons.map(({ speaks, words }) => [speaks === 'for' ? '+' : '−', words]);
  return `${head}\n${tableText([{ title: '' }, { title: '' }], rows, 4)}`;
}
