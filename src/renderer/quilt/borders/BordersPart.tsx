import { toRuler } from '../../../shared/measure/inches.ts';
import { addBorder } from '../../../shared/pattern/edits/index.ts';
import type { Border } from '../../../shared/pattern/schema.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Button } from '../../parts/Button.tsx';
import { FabricSwatch } from '../../parts/FabricSwatch.tsx';
import { Rows } from '../../parts/Rows.tsx';
import { usePattern, useRuler, useStudio } from '../../state/hooks.tsx';
import styles from '../quilt.module.css';
import { addRoundOf } from './addRoundOf.ts';

/** The borders from the inside out; a press opens one. */
export function BordersPart() {
  const { borders, fabrics } = usePattern();
  const studio = useStudio();
  const ruler = useRuler();
  const open = (border: string) => studio.select({ kind: 'border', border });
  const add = () => {
    const name = borders.length === 0 ? 'Border' : 'Outer border';
    studio.act(addBorder, {
      name,
      fabric: fabrics[0]?.id ?? '',
      width: toRuler(3, ruler.stepOf(1 / 2), 'near'),
      first: 'sides',
    });
    const made = studio.store.getState().history?.now.borders.at(-1);
    if (made !== undefined) open(made.id);
  };
  const round = () => {
    addRoundOf(studio);
    const made = studio.store.getState().history?.now.borders.at(-1);
    if (made?.pieced !== undefined) open(made.id);
  };
  const colourOf = (id: string) => fabrics.find((fabric) => fabric.id === id)?.colour ?? 'none';
  return (
    <PanelPart title="Borders, from the inside out">
      {borders.length === 0 ? <p className="quiet small">None yet: the binding is sewn to the blocks.</p> : null}
      <Rows
        label="Borders"
        rows={borders.map(({ id, name, fabric, width, ...border }) => ({
          id,
          name,
          lead: <FabricSwatch colour={colourOf(fabric)} name={fabric} bare />,
          more: madeWords(border),
          end: ruler.length(width),
          onPress: () => open(id),
        }))}
      />
      <div className={styles.acts}>
        <Button small onPress={add} isDisabled={borders.length >= 20}>
          Add a border
        </Button>
        <Button small onPress={round} isDisabled={borders.length >= 20}>
          Add a round of blocks
        </Button>
      </div>
    </PanelPart>
  );
}

function madeWords({ pieced, corners, first }: Pick<Border, 'pieced' | 'corners' | 'first'>): string {
  if (pieced !== undefined) return 'of blocks';
  if (corners === 'mitred') return 'mitred';
  return `${first === 'sides' ? 'sides' : 'top and bottom'} first${corners === 'cornerstones' ? ', squares in the corners' : ''}`;
}
