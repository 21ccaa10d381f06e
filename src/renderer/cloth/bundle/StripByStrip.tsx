import { useMemo } from 'react';
import { ToggleButton } from 'react-aria-components';
import type { AllottedStrip } from '../../../shared/cloth/bundle/allotment.ts';
import type { BundleAnswer } from '../../../shared/cloth/bundle/bundleFor.ts';
import { numbersOf, withoutStrips } from '../../../shared/cloth/bundle/setAside.ts';
import { type OneOf, oneOf } from '../../../shared/cloth/bundle/squares.ts';
import { brokenWords, isEnough } from '../../../shared/cloth/bundle/stress.ts';
import { toRuler } from '../../../shared/measure/inches.ts';
import type { Ruler } from '../../../shared/measure/ruler.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Button } from '../../parts/Button.tsx';
import { Mark } from '../../parts/Mark.tsx';
import { useRuler } from '../../state/hooks.tsx';
import { clothStore, useClothState } from '../clothStore.ts';
import styles from './bundle.module.css';
import { CutSquare } from './CutSquare.tsx';
import { CutStrip } from './CutStrip.tsx';
import { sentence } from './words.ts';

interface StripByStripProps {
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
  readonly answer: BundleAnswer;
}

/** Every strip with what is cut from it; any can be set aside, to see whether the others are enough. */
export function StripByStrip({ worked, size, answer }: StripByStripProps) {
  const aside = useClothState((state) => state.aside);
  const ruler = useRuler();
  const { wants, bundle } = answer;
  const allotment = useMemo(
    () => (aside.size === 0 ? answer.allotment : withoutStrips(wants, bundle, aside)),
    [answer.allotment, wants, bundle, aside],
  );
  const one = oneOf(bundle);
  const values = (['light', 'medium', 'dark'] as const).filter((value) => bundle.values[value] > 0);
  const cut = new Map(allotment.strips.map((strip) => [strip.number, strip]));
  const colours = new Map(worked.pattern.fabrics.map(({ id, colour }) => [id, colour]));
  const longFabric = new Map(size.cloth.pieces.map(({ letter, fabric }) => [letter, fabric]));
  return (
    <section className={styles.strips} aria-labelledby="strip-by-strip">
      <header className={styles.stripsHead}>
        <h2 id="strip-by-strip">{one === 'square' ? 'Square by square' : 'Strip by strip'}</h2>
        <p className="quiet small">A press on a number sets that {one} aside.</p>
      </header>
      <div className={styles.two}>
        <div>
          {values.map((value) => (
            <ol
              key={value}
              className={one === 'square' ? styles.squares : styles.bars}
              aria-label={`The ${value} ${one}s`}
            >
              {numbersOf(bundle, value).map((number) => (
                <li
                  key={number}
                  className={one === 'square' ? styles.squareItem : styles.bar}
                  data-aside={aside.has(number) || undefined}
                >
                  <ToggleButton
                    className={styles.number ?? ''}
                    isSelected={aside.has(number)}
                    onChange={() => toggle(number)}
                    aria-label={`${number}, ${value}${aside.has(number) ? ', set aside' : ''}`}
                  >
                    {number}
                  </ToggleButton>
                  {one === 'square' ? (
                    <CutSquare
                      square={aside.has(number) ? undefined : cut.get(number)}
                      side={bundle.length}
                      colourOf={(fabric) => colours.get(fabric)}
                    />
                  ) : (
                    <CutStrip
                      strip={aside.has(number) ? undefined : cut.get(number)}
                      length={bundle.length}
                      colourOf={(fabric) => colours.get(fabric)}
                      fabricOf={(letter) => longFabric.get(letter)}
                    />
                  )}
                  <span className={styles.left}>{leftText(aside.has(number) ? null : cut.get(number), ruler)}</span>
                </li>
              ))}
            </ol>
          ))}
          <More strips={allotment.strips} bundle={bundle} />
        </div>
        <div className={styles.instructions}>
          {aside.size === 0 ? (
            <Instructions answer={answer} />
          ) : (
            <SetAside
              one={one}
              many={aside.size}
              enough={isEnough(allotment)}
              why={allotment.short.map((one) => brokenWords(one, ruler))}
              spare={allotment.values.map(({ value, spare }) => `${spare} ${value}`).join(', ')}
            />
          )}
        </div>
      </div>
    </section>
  );
}

function toggle(number: number): void {
  clothStore.setState(({ aside }) => {
    const next = new Set(aside);
    if (!next.delete(number)) next.add(number);
    return { aside: next };
  });
}

function leftText(strip: AllottedStrip | undefined | null, ruler: Ruler): string {
  if (strip === null) return 'set aside';
  if (strip === undefined) return 'to spare';
  return strip.left < 0.5 ? '' : `${ruler.length(toRuler(strip.left, ruler.stepOf(1 / 2), 'down'))} left`;
}

/** Strips of the second bundle and those after it are cut alike; they are only counted. */
function More({
  strips,
  bundle,
}: {
  readonly strips: readonly AllottedStrip[];
  readonly bundle: BundleAnswer['bundle'];
}) {
  const { light, medium, dark } = bundle.values;
  const more = strips.filter(({ number }) => number > light + medium + dark).length;
  return more === 0 ? null : (
    <p className="quiet small">
      And {more} {oneOf(bundle)}s of the next bundle, by the same lines.
    </p>
  );
}

function Instructions({ answer: { instructions } }: { readonly answer: BundleAnswer }) {
  const ruler = useRuler();
  return (
    <>
      <h3>As the maker reads it</h3>
      <ul className={styles.lines}>
        {instructions.map(({ words, left }) => (
          <li key={words}>
            {words} {left < 0.5 ? null : <span className="quiet">{ruler.about(left, 'down')} left.</span>}
          </li>
        ))}
      </ul>
    </>
  );
}

interface SetAsideProps {
  readonly one: OneOf;
  readonly many: number;
  readonly enough: boolean;
  readonly why: readonly string[];
  readonly spare: string;
}

/** Whether the others are enough, while strips are set aside. Nothing of it is kept. */
function SetAside({ one, many, enough, why, spare }: SetAsideProps) {
  return (
    <div role="status" className={styles.tried}>
      <p>
        <Mark of={enough ? 'fits' : 'look'} /> Without {many === 1 ? `this ${one}` : `these ${many} ${one}s`}{' '}
        {enough ? `the others are enough: ${spare} to spare.` : 'the others are not enough.'}
      </p>
      {why.map((words) => (
        <p key={words}>{sentence(words)}</p>
      ))}
      <Button small onPress={() => clothStore.setState({ aside: new Set() })}>
        Take {many === 1 ? 'it' : 'them'} back
      </Button>
    </div>
  );
}
