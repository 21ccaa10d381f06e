import type {
  BackingNeed,
  BindingNeed,
  Cloth,
  CuttingPlan,
  FabricNeed,
  PieceLine,
  SheetNeed,
  Strip,
} from '../../shared/cloth/cloth.ts';
import { inchesText, sizeText, yardsText } from '../../shared/measure/fraction.ts';
import { type Units, unitsOn } from '../../shared/measure/metric.ts';
import { explain, plain, type TracedSize } from '../../shared/measure/traced.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { WorkedSize } from '../../shared/workroom/workedOut.ts';
import { afterCutText, cutSizeText, stripPiecesText, usedFor } from './pieceWords.ts';
import { type Row, tableText } from './table.ts';

/** What one size takes, as text: its pieces, how each fabric is cut, binding, backing, batting. */
export function cutText({ size, quilt, cloth }: WorkedSize, pattern: Pattern): string {
  const title = `${size.name}, ${sizeOf(quilt.finished, pattern)} finished`;
  return [
    `${title}\n${'═'.repeat(title.length)}`,
    '  Pieces to cut',
    piecesTable(cloth, pattern),
    '  Strips across the fabric, and what is cut from them',
    cloth.needs.map((need) => needText(need, pattern)).join('\n\n'),
    [bindingText(cloth.binding, pattern), backingText(cloth.backing, pattern), battingText(cloth, pattern)].join(
      '\n\n',
    ),
  ].join('\n\n');
}

function sizeOf(size: TracedSize, pattern: Pattern): string {
  const { width, height } = plain(size);
  return sizeText(width, height, unitsOf(pattern));
}

function unitsOf({ house }: Pattern): Units {
  return unitsOn(house.step);
}

function nameOf(fabric: string, { fabrics }: Pattern): string {
  return fabrics.find(({ id }) => id === fabric)?.name ?? fabric;
}

function piecesTable({ pieces }: Cloth, pattern: Pattern): string {
  const fabrics = [...new Set(pieces.map(({ fabric }) => fabric))];
  const order = (fabric: string) => pattern.fabrics.findIndex(({ id }) => id === fabric);
  fabrics.sort((a, b) => order(a) - order(b));
  const rows = fabrics.flatMap((fabric): Row[] => [
    { group: nameOf(fabric, pattern) },
    ...pieces.filter((line) => line.fabric === fabric).map((line) => pieceRow(line, unitsOf(pattern))),
  ]);
  return tableText(
    [
      { title: '', align: 'right' },
      { title: 'Cut', align: 'right' },
      { title: 'Size' },
      { title: 'Then' },
      { title: 'Spare', align: 'right' },
      { title: 'For' },
    ],
    rows,
    4,
  );
}

function pieceRow(line: PieceLine, units: Units): Row {
  const spare = line.spare === 0 ? '' : String(line.spare);
  return [
    line.letter,
    String(line.count.value),
    cutSizeText(line, units),
    afterCutText(line, units),
    spare,
    usedFor(line),
  ];
}

function needText(need: FabricNeed, pattern: Pattern): string {
  const units = unitsOf(pattern);
  const { fabric, uses, plan, yards, least, sheets } = need;
  const byYard = sheets === undefined || yards.value > 0;
  const bought = [
    ...(sheets === undefined ? [] : [sheetsBought(sheets)]),
    ...(byYard ? [yardsText(yards.value, units)] : []),
  ];
  const lines = [
    `    ${nameOf(fabric, pattern)}, for ${uses.join(', ')}: ${bought.join(' and ')}`,
    ...(sheets === undefined ? [] : sheetLines(sheets, units)),
    ...(byYard
      ? [stripsTable(plan.strips, units), `      ${planText(plan, least, units)}`, `      ${explain(yards, units)}`]
      : []),
  ];
  return lines.join('\n');
}

function stripsTable(strips: readonly Strip[], units: Units): string {
  const [many, words, tall, pieces] = ['right', 'left', 'right', 'left'] as const;
  const columns = [many, words, tall, pieces].map((align) => ({ title: '', align }));
  const rows = strips.map(
    (strip): Row => [
      String(strip.times),
      strip.times === 1 ? 'strip' : 'strips',
      inchesText(strip.height, units),
      stripPiecesText(strip),
    ],
  );
  return tableText(columns, rows, 6);
}

/** "3 fat quarters". */
function sheetsBought({ count }: SheetNeed): string {
  return `${count.value} ${count.name ?? ''}`.trim();
}

function sheetLines(sheets: SheetNeed, units: Units): readonly string[] {
  const { width, height, plans, proven, bound, used } = sheets;
  const cut = plans.map(({ times, lengthwise, strips }) => {
    const head = `      ${times === 1 ? '1 sheet' : `${times} sheets`}, strips across the ${inchesText(lengthwise ? height : width, units)} side`;
    return `${head}\n${stripsTable(strips, units)}`;
  });
  const proof = proven ? 'fewer cannot do' : `at least ${bound}`;
  return [
    ...cut,
    `      ${sheetsBought(sheets)} ${sizeText(width, height, units)}; ${proof}; ${Math.round(100 * used)} % of it is used.`,
  ];
}

/** "9 strips, 22⅞″ of 40″ cloth; fewer inches cannot do; 84 % of it is used." */
function planText(
  { stripCount, length, width, bound, proven, used }: CuttingPlan,
  least: boolean,
  units: Units,
): string {
  const strips = `${stripCount} ${stripCount === 1 ? 'strip' : 'strips'}`;
  const gap = length.value - bound;
  const over = `${inchesText(gap, units)} (${((100 * gap) / bound).toFixed(1)} %) above the proven least`;
  const proof = proven ? `fewer ${units} cannot do` : least ? `${over}, which would buy the same` : over;
  return `${strips}, ${inchesText(length.value, units)} of ${inchesText(width, units)} cloth; ${proof}; ${Math.round(100 * used)} % of it is used.`;
}

function bindingText(need: BindingNeed, pattern: Pattern): string {
  const { fabric, strips, length, yards, from } = need;
  const sums = [length, ...(from === undefined ? [strips] : [from.height]), yards];
  return [
    `    Binding, ${nameOf(fabric, pattern)}: ${bindingWay(need, unitsOf(pattern))}`,
    ...sums.map((traced) => `      ${explain(traced, unitsOf(pattern))}`),
  ].join('\n');
}

/** "8 strips 2½″ × WOF"; "7 bias strips 2½″ wide from 1 piece of 26″ × 26″". */
function bindingWay({ stripWidth, strips, from }: BindingNeed, units: Units): string {
  const wide = inchesText(stripWidth.value, units);
  if (from === undefined) return `${strips.value} strips ${wide} × WOF`;
  const many = `${strips.value} bias ${strips.value === 1 ? 'strip' : 'strips'} ${wide} wide`;
  const cloth = `${from.pieces.value} ${from.pieces.value === 1 ? 'piece' : 'pieces'}`;
  return `${many} from ${cloth} of ${sizeText(from.width.value, from.height.value, units)}`;
}

function backingText(
  { fabric, width, height, panels, seams, panelLength, yards, cloth, usableWidth }: BackingNeed,
  pattern: Pattern,
): string {
  const units = unitsOf(pattern);
  const many = panels.value === 1 ? 'one panel' : `${panels.value} panels, seams running ${seams}`;
  const wide = cloth === 'wide' ? ` of wide cloth, ${inchesText(usableWidth.value, units)} at least,` : '';
  const words = `${yardsText(yards.value, units)}${wide} for ${sizeText(width.value, height.value, units)}, ${many}, each ${inchesText(panelLength.value, units)} long`;
  return [`    Backing, ${nameOf(fabric, pattern)}: ${words}`, `      ${explain(yards, units)}`].join('\n');
}

function battingText({ batting }: Cloth, pattern: Pattern): string {
  return `    Batting: at least ${sizeOf(batting, pattern)}`;
}
