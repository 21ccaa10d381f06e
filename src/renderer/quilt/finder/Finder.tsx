import { useState } from 'react';
import type { Ruler } from '../../../shared/measure/ruler.ts';
import type { Pattern } from '../../../shared/pattern/schema.ts';
import type { Target } from '../../../shared/quilt/find/target.ts';
import type { FoundSize } from '../../../shared/workroom/findSizes.ts';
import { Button } from '../../parts/Button.tsx';
import { Dialog } from '../../parts/Dialog.tsx';
import { useAway } from '../../state/away/useAway.ts';
import { useCurrentSize, usePattern, useRuler, useStudio } from '../../state/hooks.tsx';
import { quiltStore, useQuiltState } from '../quiltStore.ts';
import { FoundList } from './FoundList.tsx';
import styles from './finder.module.css';
import { addFound, replaceByFound } from './takeFound.ts';
import { useMattresses } from './useMattresses.ts';
import { WishFields } from './WishFields.tsx';
import { firstWish, nameOf, targetOf, type Wish } from './wish.ts';

/** Finds sizes of the design for a bed, a measure or one bundle. */
export function Finder() {
  const open = useQuiltState((state) => state.finder);
  return open ? <OpenFinder /> : null;
}

/** What was asked for last on each ruler; it is found as it was left. */
const left = new Map<Ruler, Wish>();

function close(): void {
  quiltStore.setState({ finder: false });
}

function OpenFinder() {
  const studio = useStudio();
  const pattern = usePattern();
  const ruler = useRuler();
  const current = useCurrentSize();
  const chest = useMattresses();
  const [wish, setWish] = useState(left.get(ruler) ?? firstWish(ruler));
  const [asked, ask] = useState<Asked | null>(null);
  const target = targetOf(wish, chest.all);
  const ready = wish.for === 'bundle' ? pattern.bundle !== undefined : target !== null;
  const { answer, working, step, trouble } = useFound(asked);
  const change = (next: Wish) => {
    left.set(ruler, next);
    setWish(next);
    ask(null);
  };
  const take = (act: () => void) => {
    act();
    close();
  };
  const add = (found: FoundSize) => take(() => addFound(studio, found, nameOf(wish, chest.all, ruler)));
  const replace = (found: FoundSize) =>
    take(() => (current === null ? undefined : replaceByFound(studio, found, current.size.id)));
  return (
    <Dialog title="Find a size" width="broad" isOpen onClose={close}>
      <div className={styles.finder}>
        <div className={styles.asking}>
          <WishFields wish={wish} onChange={change} chest={chest} target={target} />
          {working ? (
            <Button onPress={() => ask(null)}>Stop</Button>
          ) : (
            <Button tone="strong" isDisabled={!ready} onPress={() => ask({ pattern, target })}>
              Find sizes
            </Button>
          )}
        </div>
        <div className={styles.answers} aria-busy={working}>
          {working ? (
            <Progress done={step?.done ?? 0} of={step?.of ?? 0} doing={step?.doing ?? 'Sizes near it'} />
          ) : null}
          {trouble === null ? null : <p role="alert">{trouble}</p>}
          {asked === null ? (
            <p className="quiet">
              Sizes of this design that come near what you ask for, the best first: nearness, patches on the ruler,
              whole motifs, borders that close and the cloth they take.
            </p>
          ) : null}
          {answer === null || working ? null : <FoundList found={answer} onAdd={add} onReplace={replace} />}
        </div>
      </div>
    </Dialog>
  );
}

/** What is looked for: sizes near a target, or, without one, those that one bundle is enough for. */
interface Asked {
  readonly pattern: Pattern;
  readonly target: Target | null;
}

function useFound(asked: Asked | null) {
  const { pattern, target } = asked ?? { pattern: null, target: null };
  const near = useAway('findSizes', pattern === null || target === null ? null : [pattern, target]);
  const enough = useAway('findBundleSizes', pattern === null || target !== null ? null : [pattern]);
  return target === null ? enough : near;
}

function Progress({ done, of, doing }: { readonly done: number; readonly of: number; readonly doing: string }) {
  return (
    <div className={styles.progress} role="status">
      <progress aria-label="How far the search is" value={done} max={Math.max(1, of)} />
      <span className="small">{doing}</span>
    </div>
  );
}
