import type { Point } from '../../../shared/drawing/turn.ts';
import { Button } from '../../parts/Button.tsx';
import { ACTS, isOfPlaces } from './acts.ts';
import styles from './draw.module.css';
import { useDrawState } from './drawStore.ts';
import { placeWords } from './placeWords.ts';
import { MARK_WORDS, type SnapMark } from './snap.ts';
import type { DrawnBlock } from './useDrawn.ts';
import type { Looking } from './useSight.ts';

interface MatFootProps {
  readonly looking: Looking;
  readonly drawn: DrawnBlock;
  readonly at: Point | null;
  readonly mark: SnapMark | null;
  readonly patch: number | null;
  /** How many places the act in hand has been given. */
  readonly places: number;
}

/** Under the drawing: what the hand is at, or what the act in hand asks for; and how near it is looked at. */
export function MatFoot({ looking, drawn, at, mark, patch, places }: MatFootProps) {
  const act = useDrawState((state) => state.act);
  return (
    <div className={styles.matFoot}>
      <p className={styles.spot}>{whereWords(drawn, isOfPlaces(act) ? at : null, mark, patch) ?? asks(act, places)}</p>
      <div className={styles.zoom}>
        <Button tone="bare" small aria-label="Look farther" onPress={() => looking.zoom(1 / 1.5)}>
          −
        </Button>
        <span className={styles.times}>{Math.round(looking.times * 100)}%</span>
        <Button tone="bare" small aria-label="Look nearer" onPress={() => looking.zoom(1.5)}>
          +
        </Button>
        <Button tone="bare" small isDisabled={looking.times === 1} onPress={() => looking.whole()}>
          Whole<span className="heard"> drawing</span>
        </Button>
      </div>
    </div>
  );
}

function whereWords(drawn: DrawnBlock, at: Point | null, mark: SnapMark | null, patch: number | null): string | null {
  const { drawing, roleName } = drawn;
  if (at !== null) {
    const words = placeWords(drawing, at, roleName);
    return mark === null || mark.kind === 'corner' || mark.kind === 'grid'
      ? words
      : `${words}: ${MARK_WORDS[mark.kind]}`;
  }
  const role = patch === null ? undefined : drawing.patches[patch]?.role;
  return role === undefined ? null : roleName(role);
}

function asks(act: (typeof ACTS)[number]['id'], places: number): string {
  if (places > 0) return 'Escape gives up what was begun.';
  return ACTS.find(({ id }) => id === act)?.how ?? '';
}
