import { same } from '../../../shared/measure/inches.ts';
import { addSpacer, changeInside, setBorderWidth, setBorderWidthIn } from '../../../shared/pattern/edits/index.ts';
import type { Border } from '../../../shared/pattern/schema.ts';
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

/** What lies inside made wider and higher, by the plain border there or by the blocks; null where neither can be. */
function changeAct(
  { wider, higher }: Extract<Closing, { kind: 'change' }>,
  { worked, size, border }: At,
): ClosingAct | null {
  const args = { border: border.id, size: size.size.id, wider, higher };
  if (changeInside.apply(worked.pattern, args) === worked.pattern) return null;
  return { says: 'Change it so', run: (studio, mark) => studio.act(changeInside, args, mark) };
}
