import type { FabricNeed } from '../../../shared/cloth/cloth.ts';
import { keptFor } from '../../../shared/cloth/keptPlan.ts';
import type { Ruler } from '../../../shared/measure/ruler.ts';
import { forgetPlan } from '../../../shared/pattern/edits/index.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Button } from '../../parts/Button.tsx';
import { Progress } from '../../parts/Progress.tsx';
import { useRuler, useStudio } from '../../state/hooks.tsx';
import { useClothState } from '../clothStore.ts';
import type { Proving } from '../proving.ts';
import styles from './cutting.module.css';
import { provePlan, provingKey } from './provePlan.ts';

interface ProveProps {
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
  readonly need: FabricNeed;
}

/** Has one plan proven, tells how near the proof is, and says what came of it; nothing where the plan is proven at once. */
export function Prove({ worked, size, need: { fabric, plan } }: ProveProps) {
  const studio = useStudio();
  const ruler = useRuler();
  const proving = useClothState((state) => state.proving.get(provingKey(size.size.id, fabric)));
  const kept = keptFor(worked.pattern, size.size.id, fabric) !== undefined;
  if (proving?.state === 'proving') return <Going proving={proving} />;
  const name = worked.pattern.fabrics.find(({ id }) => id === fabric)?.name ?? fabric;
  const forget = () => studio.act(forgetPlan, { size: size.size.id, fabric });
  return (
    <div className={styles.prove}>
      {plan.proven ? null : (
        <Button
          small
          aria-label={`${proving === undefined ? 'Prove it' : 'Prove it again'}: ${name}`}
          onPress={() => void provePlan(studio, worked, size, fabric)}
        >
          {proving === undefined ? 'Prove it' : 'Prove it again'}
        </Button>
      )}
      <p role="status" className="quiet small">
        {proving === undefined ? null : cameOf(proving, ruler)}
      </p>
      {kept ? (
        <Button small tone="bare" aria-label={`Back to the usual plan: ${name}`} onPress={forget}>
          Back to the usual plan
        </Button>
      ) : null}
    </div>
  );
}

function Going({ proving }: { readonly proving: Extract<Proving, { state: 'proving' }> }) {
  return (
    <div className={styles.prove}>
      <Progress doing={proving.doing} progress={proving.progress} />
      <Button small onPress={proving.stop}>
        Stop
      </Button>
    </div>
  );
}

/** What a proof has come to, in a sentence or two. */
function cameOf(proving: Exclude<Proving, { state: 'proving' }>, ruler: Ruler): string {
  if (proving.state === 'refused') return proving.refusal.words;
  const { better, proven } = proving;
  if (better > 1e-6) {
    const found = `A plan ${ruler.about(better, 'up')} shorter was found, and is kept with the pattern.`;
    return proven ? found : `${found} Whether there is a still shorter one is not known.`;
  }
  return proven ? 'Proven: no plan is shorter.' : 'No shorter plan was found in the time there was.';
}
