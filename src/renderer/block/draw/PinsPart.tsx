import { placeText } from '../../../shared/drawing/spot.ts';
import { removePin } from '../../../shared/pattern/edits/index.ts';
import { methodNamed } from '../../../shared/piecing/methods/index.ts';
import type { DrawingBody } from '../../../shared/recipe/schema.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Button } from '../../parts/Button.tsx';
import { useAct } from '../../state/hooks.tsx';
import styles from './panel.module.css';
import type { DrawnBlock } from './useDrawn.ts';

type Pin = NonNullable<DrawingBody['pins']>[number];

/** What the designer has fixed of the sewing; the studio finds the rest round it. */
export function PinsPart({ drawn: { body, recipe } }: { readonly drawn: DrawnBlock }) {
  const act = useAct();
  const pins = body.pins ?? [];
  if (pins.length === 0) return null;
  return (
    <PanelPart title="Fixed by you">
      <ul className={styles.pins}>
        {pins.map((pin, i) => (
          <li key={pinWords(pin)} className={styles.pin}>
            <span>{pinWords(pin)}</span>
            <Button
              tone="bare"
              small
              aria-label={`Leave it to the studio: ${pinWords(pin)}`}
              onPress={() => act(removePin, { recipe: recipe.id, pin: i })}
            >
              Let go
            </Button>
          </li>
        ))}
      </ul>
    </PanelPart>
  );
}

/** A pin in words. */
function pinWords({ first, unit, method }: Pin): string {
  const [a, b] = first ?? unit ?? [[0, 0] as const, [0, 0] as const];
  const ends = `${placeText({ x: a[0], y: a[1] })} to ${placeText({ x: b[0], y: b[1] })}`;
  if (first !== undefined) return `Sewn last: the seam from ${ends}`;
  const by = method === undefined ? '' : `, made as ${(methodNamed(method)?.name ?? method).toLowerCase()}`;
  return `One unit from ${ends}${by}`;
}
