import { Button, Dialog, DialogTrigger, Popover } from 'react-aria-components';
import { FindingLine } from '../parts/FindingLine.tsx';
import { Mark } from '../parts/Mark.tsx';
import { Stitch } from '../parts/Stitch.tsx';
import { type Fit, fitOf } from '../state/fit.ts';
import { useIsWorking, useStudio, useStudioState, useWorked } from '../state/hooks.tsx';
import styles from './FitLine.module.css';
import { KeptSign } from './KeptSign.tsx';
import { UndoRedo } from './UndoRedo.tsx';

/** The foot of the window: the truth about fit, and a click that goes there; then what was done, and whether it is kept. */
export function FitLine() {
  const worked = useWorked();
  const working = useIsWorking();
  const open = useStudioState(({ history }) => history !== null);
  const fit = worked === null ? null : fitOf(worked);
  return (
    <footer id="fit" className={styles.foot} tabIndex={-1} aria-busy={working}>
      <Stitch tone={fit === null ? 'bare' : fit.level === 'note' ? 'fits' : fit.level} />
      <div className={styles.line}>
        <div className={styles.said}>{fit === null ? null : <Truth fit={fit} />}</div>
        <HowFar />
        {open ? <UndoRedo /> : null}
        {open ? <KeptSign /> : null}
      </div>
    </footer>
  );
}

/** Where long sums are: what is shown meanwhile is of a moment before. */
function HowFar() {
  const step = useStudioState(({ step: now }) => now);
  if (step === null) return null;
  return (
    <p className={styles.far}>
      <span className={styles.farWords}>Working out {step.doing}</span>
      <progress className={styles.done} max={step.of} value={step.done} aria-label="How far it is worked out" />
    </p>
  );
}

function Truth({ fit }: { readonly fit: Fit }) {
  const studio = useStudio();
  const { first, level, words } = fit;
  const mark = <Mark of={level} />;
  return (
    <>
      {first === undefined ? (
        <p className={styles.truth} data-level={level}>
          {mark}
          {words}
        </p>
      ) : (
        <Button className={styles.truth ?? ''} data-level={level} onPress={() => studio.goTo(first)}>
          {mark}
          <span className={styles.words}>{words}</span>
        </Button>
      )}
      {fit.all.length > (first === undefined ? 0 : 1) ? <More fit={fit} /> : null}
      <p className="heard" role="status">
        {words}
      </p>
    </>
  );
}

function More({ fit }: { readonly fit: Fit }) {
  const studio = useStudio();
  const others = fit.all.length - (fit.first === undefined ? 0 : 1);
  const words = fit.first === undefined ? `${others} worth knowing` : `and ${others} more`;
  return (
    <DialogTrigger>
      <Button className={styles.more ?? ''}>{words}</Button>
      <Popover className={styles.popover ?? ''} placement="top start" offset={10}>
        <Dialog className={styles.list ?? ''} aria-label="Everything found">
          {({ close }) => (
            <ul>
              {fit.all.map((finding) => (
                <li key={`${finding.where.path} ${finding.where.size} ${finding.what}`}>
                  <Button
                    className={styles.go ?? ''}
                    onPress={() => {
                      close();
                      studio.goTo(finding);
                    }}
                  >
                    <FindingLine finding={finding} />
                  </Button>
                </li>
              ))}
            </ul>
          )}
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
