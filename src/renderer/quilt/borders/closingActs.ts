import { same } from '../../../shared/measure/inches.ts';
import {
  addSpacer,
  setBorderEndsIn,
  setBorderWidth,
  setBorderWidthIn,
  setSizeBlock,
} from '../../../shared/pattern/edits/index.ts';
import type { Border, Pattern, Size } from '../../../shared/pattern/schema.ts';
import type { Closing } from '../../../shared/quilt/find/closeBorder.ts';
import { closingsOf } from '../../../shared/quilt/find/closingsOf.ts';
import { borderWidths } from '../../../shared/quilt/growing.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import type { Studio } from '../../state/studio.ts';

export interface ClosingAct {
  /** What the press is called: "Put them in". */
  readonly says: string;
  readonly run: (studio: Studio, mark: string) => void;
}

interface At {
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
  readonly border: Border;
  /** The fabric of plain strips put inside it. */
  readonly fabric: string;
}

/** What a press does to make a border close; null where the studio cannot do it in one act. */
export function closingAct(closing: Closing, at: At): ClosingAct | null {
  if (closing.kind === 'unit')
    return { says: 'Make it so wide', run: (studio, mark) => widen(studio, at, closing.width, mark) };
  if (closing.kind === 'spacer')
    return { says: 'Put them in', run: (studio, mark) => space(studio, at, closing, mark) };
  return changeAct(closing, at);
}

function widen(studio: Studio, { worked: { pattern }, size: { size }, border }: At, width: number, mark: string): void {
  const alone = pattern.sizes.length === 1;
  if (alone) studio.act(setBorderWidth, { border: border.id, width }, mark);
  else studio.act(setBorderWidthIn, { border: border.id, size: size.id, width }, mark);
}

/** In the size looked at as chosen; in every other size as narrow as closes it there, or none where none is needed. */
function space(studio: Studio, at: At, closing: Extract<Closing, { kind: 'spacer' }>, mark: string): void {
  const { worked, size, border, fabric } = at;
  if (!same(closing.width, borderWidths(border, size.size).sides)) widen(studio, at, closing.width, mark);
  const widths = Object.fromEntries(
    worked.sizes.map((one) => {
      if (one === size) return [one.size.id, { sides: closing.sides, ends: closing.ends }];
      const closings = closingsOf(one.quilt, border.id, worked.pattern.house);
      const same = closings?.spacers.find(({ width }) => width === borderWidths(border, one.size).sides);
      return [one.size.id, { sides: same?.sides ?? 0, ends: same?.ends ?? 0 }];
    }),
  );
  studio.act(addSpacer, { border: border.id, fabric, widths }, mark);
}

/** The quilt inside the border made wider and higher: by the plain border inside it, else by its blocks. */
function changeAct({ wider, higher }: Extract<Closing, { kind: 'change' }>, at: At): ClosingAct | null {
  const { worked, size, border } = at;
  const inner = plainInside(worked.pattern, size.size, border);
  if (inner !== null) {
    const now = borderWidths(inner, size.size);
    const [sides, ends] = [now.sides + wider / 2, now.ends + higher / 2];
    if (sides < 0 || ends < 0) return null;
    return {
      says: `Change the ${inner.name.toLowerCase()}`,
      run: (studio, mark) => {
        studio.act(setBorderWidthIn, { border: inner.id, size: size.size.id, width: sides }, mark);
        const own = same(sides, ends) ? null : ends;
        studio.act(setBorderEndsIn, { border: inner.id, size: size.size.id, ends: own }, mark);
      },
    };
  }
  const block = blockFor(worked.pattern, size, wider, higher);
  if (block === null) return null;
  return {
    says: 'Change the blocks',
    run: (studio, mark) => studio.act(setSizeBlock, { size: size.size.id, block }, mark),
  };
}

function plainInside({ borders }: Pattern, size: Size, border: Border): Border | null {
  const before = borders.slice(
    0,
    borders.findIndex(({ id }) => id === border.id),
  );
  const there = before.findLast((one) => one.pieced === undefined && borderWidths(one, size).sides > 0);
  return there ?? null;
}

/** The block that makes a straight setting so much wider and higher at once; null when no one block does both. */
function blockFor({ setting }: Pattern, { size, quilt }: WorkedSize, wider: number, higher: number): number | null {
  if (setting.kind !== 'straight') return null;
  const across = size.block + wider / size.across;
  const high = quilt.block.height / quilt.block.width;
  const down = size.block + higher / size.down / high;
  return same(across, down) && across >= 0.5 ? across : null;
}
