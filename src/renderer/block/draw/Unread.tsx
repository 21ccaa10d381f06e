import { useMemo } from 'react';
import { buildDrawing } from '../../../shared/drawing/build.ts';
import type { Drawing } from '../../../shared/drawing/drawing.ts';
import type { Finding } from '../../../shared/measure/finding.ts';
import { startDrawing } from '../../../shared/pattern/edits/index.ts';
import type { DrawingBody } from '../../../shared/recipe/schema.ts';
import { Button } from '../../parts/Button.tsx';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { useAct } from '../../state/hooks.tsx';
import type { ShownBlock } from '../useShownBlock.ts';
import { FindingPlaces } from './Chosen.tsx';
import styles from './draw.module.css';
import { patchPath } from './paths.ts';
import { useColourOf } from './useDrawn.ts';

interface UnreadProps {
  readonly shown: ShownBlock;
  readonly body: DrawingBody;
  readonly findings: readonly Finding[];
}

/** A drawing from a file that is not sound: as much of it as can be shown, with what is wrong at its places. */
export function Unread({ shown, body, findings }: UnreadProps) {
  const act = useAct();
  const colourOf = useColourOf(shown.choice);
  const drawing = useMemo(() => asFarAsItGoes(body), [body]);
  const { width, height } = body;
  const air = Math.max(width, height) * 0.03;
  const role = shown.recipe?.roles[0]?.id ?? '';
  const afresh = () => act(startDrawing, { block: shown.choice.id, body: { kind: 'drawing', width, height, role } });
  return (
    <div className={styles.unread}>
      <svg
        className={styles.sheetPicture}
        viewBox={`${-air} ${-air} ${width + 2 * air} ${height + 2 * air}`}
        role="img"
        aria-label={`What can be read of the drawing of block ${shown.choice.id}`}
      >
        <rect className={styles.bareCloth} width={width} height={height} />
        {drawing?.patches.map(({ role: of }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a patch is its place in the list
          <path key={i} className={styles.piece} d={patchPath(drawing, i)} fill={colourOf(of)} />
        ))}
        <FindingPlaces findings={findings} air={air / 2} />
      </svg>
      <div className={styles.unreadWords}>
        <h2>Block {shown.choice.id} cannot be sewn as it is drawn</h2>
        {findings.map((finding) => (
          <FindingLine key={`${finding.where.path} ${finding.what}`} finding={finding} />
        ))}
        <p className="quiet small">Mend it in its file and bring it in again, or draw it anew here.</p>
        <Button className={styles.startHere ?? ''} onPress={afresh}>
          Draw afresh
        </Button>
      </div>
    </div>
  );
}

/** The patches as they are written, sound or not; nothing for a block that is drawn by cuts. */
function asFarAsItGoes({ width, height, patches }: DrawingBody): Drawing | null {
  if (patches === undefined) return null;
  const polygons = patches.map(({ role, corners }) => ({
    role,
    corners: corners.map(([x, y, cx, cy]) =>
      cx === undefined || cy === undefined ? { x, y } : { x, y, centre: { x: cx, y: cy } },
    ),
  }));
  const drawing = buildDrawing(width, height, polygons);
  return { ...drawing, patches: drawing.patches.filter(({ outline }) => outline.length > 1) };
}
