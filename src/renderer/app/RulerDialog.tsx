import { type Units, unitsOn } from '../../shared/measure/metric.ts';
import { type Ruler, rulerIn } from '../../shared/measure/ruler.ts';
import { setRuler } from '../../shared/pattern/edits/index.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { RulerPreview } from '../../shared/workroom/rulerChange.ts';
import { otherUnits } from '../commands/ruler.ts';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { FindingLine } from '../parts/FindingLine.tsx';
import { Mark } from '../parts/Mark.tsx';
import { useAway } from '../state/away/useAway.ts';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import styles from './RulerDialog.module.css';

/** Says what another ruler would make of the pattern, and takes it when the designer says so. */
export function RulerDialog() {
  const pattern = useStudioState(({ history }) => history?.now);
  const isOpen = useStudioState(({ dialog }) => dialog === 'ruler');
  return isOpen && pattern !== undefined ? <OpenRulerDialog pattern={pattern} /> : null;
}

function OpenRulerDialog({ pattern }: { readonly pattern: Pattern }) {
  const studio = useStudio();
  const units = otherUnits(pattern.house.step);
  const { answer, working, trouble } = useAway('rulerPreview', [pattern, units]);
  const close = () => studio.openDialog(null);
  const take = () => {
    if (answer !== null) studio.act(setRuler, answer.change);
    close();
  };
  return (
    <Dialog
      title={`Measure this pattern in ${units}`}
      isOpen
      onClose={close}
      width="wide"
      foot={
        <>
          <Button onPress={close}>Leave it as it is</Button>
          <Button tone="strong" isDisabled={answer === null || working} onPress={take}>
            Measure in {units}
          </Button>
        </>
      }
    >
      <p>
        The quilts are found again on a ruler of {units}, so that every patch falls on its marks. Nothing is converted:
        it is a slightly different quilt in each size. Undo brings this one back as it is.
      </p>
      <div aria-live="polite" aria-busy={working}>
        {trouble === null ? null : <p role="alert">{trouble}</p>}
        {answer === null ? <p className="quiet">Finding the quilts on the other ruler…</p> : null}
        {answer === null ? null : <Preview preview={answer} from={rulerIn(unitsOn(pattern.house.step))} to={units} />}
      </div>
    </Dialog>
  );
}

interface PreviewProps {
  readonly preview: RulerPreview;
  readonly from: Ruler;
  readonly to: Units;
}

function Preview({ preview: { sizes, lengths, findings }, from, to }: PreviewProps) {
  const next = rulerIn(to);
  return (
    <>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Size</th>
            <th scope="col">Block now</th>
            <th scope="col">Then</th>
            <th scope="col">Quilt now</th>
            <th scope="col">Then</th>
          </tr>
        </thead>
        <tbody>
          {sizes.map(({ name, block, width, height }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td className={styles.was}>{from.length(block.was)}</td>
              <td>{next.length(block.now)}</td>
              <td className={styles.was}>{width && height ? from.size(width.was, height.was) : 'not laid out'}</td>
              <td>{width && height ? next.size(width.now, height.now) : ''}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">In every size</th>
            <th scope="col">Now</th>
            <th scope="col">Then</th>
          </tr>
        </thead>
        <tbody>
          {lengths.map(({ name, was, now }, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: borders may share a name
            <tr key={i}>
              <th scope="row">{name}</th>
              <td className={styles.was}>{from.length(was)}</td>
              <td>{next.length(now)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Fits findings={findings} />
    </>
  );
}

/** More of them are found under the fit line once the ruler is taken. */
const TOLD = 3;

function Fits({ findings }: Pick<RulerPreview, 'findings'>) {
  if (findings.length === 0)
    return (
      <p className={styles.fits}>
        <Mark of="fits" /> Nothing that fits now would stop fitting.
      </p>
    );
  return (
    <>
      {findings.slice(0, TOLD).map((finding) => (
        <FindingLine key={finding.what} finding={finding} />
      ))}
      {findings.length > TOLD ? <p className="quiet small">And {findings.length - TOLD} more like these.</p> : null}
    </>
  );
}
