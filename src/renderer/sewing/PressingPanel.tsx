import { useMemo } from 'react';
import { blockFigure } from '../../shared/diagrams/blockFigure.ts';
import type { Figure as FigureData } from '../../shared/diagrams/figure.ts';
import { inksFor } from '../../shared/diagrams/hatches.ts';
import { quiltFigure } from '../../shared/diagrams/quiltFigure.ts';
import type { PressingPlan } from '../../shared/pressing/pressing.ts';
import type { WorkedBlock, WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { PanelPart, SidePanel } from '../app/SidePanel.tsx';
import { Stage } from '../parts/stage/Stage.tsx';
import { useCurrentSize, usePattern, useRuler } from '../state/hooks.tsx';
import { meetingWords } from './meetingWords.ts';
import styles from './sewing.module.css';

/** Where seams meet and nest, and where they cannot: in the whole top and in every block. */
export function PressingPanel({ worked }: { readonly worked: WorkedOut }) {
  const size = useCurrentSize();
  return (
    <SidePanel title="Where seams meet" kind="Pressing">
      {size === null ? (
        <p className="quiet">No size can be laid out yet.</p>
      ) : (
        <TopPressing worked={worked} size={size} />
      )}
      {worked.blocks.map((block) => (
        <BlockPressing key={block.id} block={block} />
      ))}
    </SidePanel>
  );
}

function TopPressing({ worked, size }: { readonly worked: WorkedOut; readonly size: WorkedSize }) {
  const { quilt, pressing, points } = size;
  const { units } = useRuler();
  const figure = useMemo(
    () =>
      quiltFigure(quilt, worked.blocks, {
        borders: true,
        tone: 'pale',
        edges: 'none',
        lines: true,
        name: size.size.name,
        units,
      }),
    [quilt, worked.blocks, size.size.name, units],
  );
  return (
    <section className={styles.pressing}>
      <h3>Between the blocks, in {size.size.name}</h3>
      <Marked figure={figure} plan={pressing} unit={1} />
      <p className="small">{meetingWords(pressing)}</p>
      <p className="quiet small">{points} points to match in the whole top.</p>
    </section>
  );
}

function BlockPressing({ block }: { readonly block: WorkedBlock }) {
  const figure = useMemo(
    () => blockFigure(block.piecing, 1, block.fabricOf, { tone: 'pale', units: true, name: block.name }),
    [block],
  );
  return (
    <PanelPart title={`Block ${block.id}, ${block.name}`}>
      <Marked figure={figure} plan={block.pressing} unit={1} />
      <p className="small">{meetingWords(block.pressing)}</p>
    </PanelPart>
  );
}

interface MarkedProps {
  readonly figure: FigureData;
  readonly plan: PressingPlan;
  /** Inches of the figure for one unit of the plan. */
  readonly unit: number;
}

/** A picture with a ring at every place where two seams lie to one side. */
function Marked({ figure, plan, unit }: MarkedProps) {
  const { fabrics } = usePattern();
  const inks = useMemo(() => inksFor(fabrics), [fabrics]);
  const radius = Math.max(figure.width, figure.height) / 70;
  return (
    <div className={styles.pressed}>
      <Stage figure={figure} inks={inks}>
        <svg
          className={styles.spots}
          viewBox={`0 0 ${figure.width} ${figure.height}`}
          aria-hidden="true"
          focusable="false"
        >
          {plan.stacked.map(({ x, y }) => (
            <circle key={`${x} ${y}`} cx={x * unit} cy={y * unit} r={radius} />
          ))}
        </svg>
      </Stage>
    </div>
  );
}
