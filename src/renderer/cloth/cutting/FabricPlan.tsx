import { useMemo, useState } from 'react';
import type { FabricNeed } from '../../../shared/cloth/cloth.ts';
import { cuttingFigure, letterOf } from '../../../shared/diagrams/cuttingFigure.ts';
import type { Ink } from '../../../shared/diagrams/figure.ts';
import { sheetsFigure } from '../../../shared/diagrams/sheetsFigure.ts';
import type { Ruler } from '../../../shared/measure/ruler.ts';
import type { Fabric } from '../../../shared/pattern/schema.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Button } from '../../parts/Button.tsx';
import { Figure, type FigureProps, type Picked } from '../../parts/figure/Figure.tsx';
import { Mark } from '../../parts/Mark.tsx';
import { Why } from '../../parts/Why.tsx';
import { useRuler, useSelection } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';
import { setUnder } from '../clothStore.ts';
import { FabricName } from '../FabricName.tsx';
import { proofWords, sheetWords } from '../proof.ts';
import { PieceKeys } from './PieceKeys.tsx';
import { Prove } from './Prove.tsx';
import { useLit } from './useLit.ts';

interface FabricPlanProps {
  readonly fabric: Fabric;
  readonly need: FabricNeed;
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
  readonly inks: readonly Ink[];
}

/** More different pieces or strips than this are drawn only when they are asked for: the window would stand still. */
const MOST_DRAWN = 48;

/** One fabric: sheet by sheet and strip by strip, to scale. */
export function FabricPlan({ fabric, need, worked, size, inks }: FabricPlanProps) {
  const { plan, sheets } = need;
  const ruler = useRuler();
  const lines = size.cloth.pieces.filter((line) => line.fabric === fabric.id);
  const lit = useLitIn(lines.map(({ letter }) => letter));
  const [all, setAll] = useState(false);
  const drawn = all ? Number.POSITIVE_INFINITY : MOST_DRAWN;
  const more = Math.max(lines.length, plan.strips.length, sheets?.plans.length ?? 0) > drawn;
  const strips = useMemo(
    () => cuttingFigure(plan.fabric, plan.width, plan.strips.slice(0, drawn), lit, ruler.units),
    [plan, lit, ruler, drawn],
  );
  const cut = useMemo(
    () =>
      sheets === undefined ? null : sheetsFigure(fabric.id, sheets, sheets.plans.slice(0, drawn), lit, ruler.units),
    [sheets, fabric.id, lit, ruler, drawn],
  );
  return (
    <article className={styles.plan} id={`cut-${fabric.id}`}>
      <header className={styles.planHead}>
        <h3>
          <FabricName fabric={fabric} />
        </h3>
        <p className={styles.buy}>
          Buy <Bought need={need} />
        </p>
      </header>
      <p className={styles.proof}>
        <Mark of={need.least && sheets?.proven !== false ? 'fits' : 'note'} />
        <span>
          {sheets === undefined ? null : `${sheetWords(sheets)} `}
          {plan.stripCount === 0 ? null : proofWords(need, ruler)}
          <span className={styles.under}>{reasonOf(need, ruler)}</span>
        </span>
      </p>
      <Prove worked={worked} size={size} need={need} />
      <PieceKeys lines={lines.slice(0, drawn)} label={`Pieces of ${fabric.name}`} />
      {cut === null ? null : <CutFigure figure={cut} inks={inks} />}
      {plan.stripCount === 0 ? null : <CutFigure figure={strips} inks={inks} />}
      {more ? (
        <p className="small">
          The first {MOST_DRAWN} of {lines.length} pieces and {plan.strips.length} different strips are shown; the
          charts have all.{' '}
          <Button small tone="bare" aria-label={`Show all of ${fabric.name}`} onPress={() => setAll(true)}>
            Show all
          </Button>
        </p>
      ) : null}
    </article>
  );
}

/** Why so much is bought, and how much of the cloth ends up in pieces. */
function reasonOf({ plan, sheets, yards }: FabricNeed, ruler: Ruler): string {
  const used = (share: number) => `${Math.round(share * 100)} % of it is used`;
  const inSheets = sheets === undefined ? [] : [`Of the ${sheets.name}s ${used(sheets.used)}.`];
  return [...inSheets, ...(plan.stripCount === 0 ? [] : [`${ruler.why(yards)}; ${used(plan.used)}.`])].join(' ');
}

function Bought({ need: { sheets, yards } }: { readonly need: FabricNeed }) {
  if (sheets === undefined) return <Why traced={yards} />;
  return (
    <>
      <Why traced={sheets.count}>{`${sheets.count.value} ${sheets.count.name}`}</Why>
      {yards.value === 0 ? null : (
        <>
          {' '}
          and <Why traced={yards} />
        </>
      )}
    </>
  );
}

/** A figure whose pieces can be pointed at. */
function CutFigure({ figure, inks }: Pick<FigureProps, 'figure' | 'inks'>) {
  const [, select] = useSelection();
  const point = (picked: Picked | null) => {
    const letter = letterOf(picked?.of ?? null);
    setUnder(letter === null ? null : [letter]);
  };
  const pick = ({ of }: Picked) => {
    const letter = letterOf(of);
    if (letter !== null) select({ kind: 'piece', letter });
  };
  return <Figure figure={figure} inks={inks} fit="width" onPoint={point} onPick={pick} />;
}

/** The letters that stand out among these; the same set as long as they are the same, so that other figures stay as they are. */
function useLitIn(letters: readonly string[]): ReadonlySet<string> {
  const lit = useLit();
  const key = letters.filter((letter) => lit.has(letter)).join(' ');
  return useMemo(() => new Set(key === '' ? [] : key.split(' ')), [key]);
}
