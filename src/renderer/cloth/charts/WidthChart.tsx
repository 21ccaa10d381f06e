import type { AtWidth, Cliff } from '../../../shared/cloth/cliffs.ts';
import { same } from '../../../shared/measure/inches.ts';
import type { Ruler } from '../../../shared/measure/ruler.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Why } from '../../parts/Why.tsx';
import { useAway } from '../../state/away/useAway.ts';
import { useCurrentSize, useRuler } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';
import { FabricName } from '../FabricName.tsx';
import { Waiting } from '../Waiting.tsx';

interface SizeOf {
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
}

/** What each fabric takes as the cloth is narrower or wider, and where that tips over. */
export function WidthChart({ worked }: { readonly worked: WorkedOut }) {
  const size = useCurrentSize();
  return size === null ? null : <Widths worked={worked} size={size} />;
}

function Widths({ worked, size }: SizeOf) {
  const asked = useAway('cliffs', [worked.pattern, size.size.id]);
  const cliffs = asked.answer;
  const ruler = useRuler();
  const widths = cliffs?.[0]?.at.map(({ width }) => width) ?? [];
  return (
    <section className={styles.section} aria-labelledby="widths">
      <h2 id="widths">Narrower and wider cloth, in {size.size.name}</h2>
      <p className="quiet small">
        The pattern asks for cloth of {ruler.length(worked.pattern.house.usableWidth)}; everything is worked out anew at
        each width.
      </p>
      <Waiting asked={asked} />
      {cliffs === null ? null : (
        <table className={styles.chart}>
          <thead>
            <tr>
              <th scope="col">Fabric</th>
              {widths.map((width) => (
                <th
                  key={width}
                  scope="col"
                  className={styles.sizeCell}
                  data-now={same(width, worked.pattern.house.usableWidth)}
                >
                  {ruler.length(width)}
                </th>
              ))}
              <th scope="col">What changes</th>
            </tr>
          </thead>
          <tbody>
            {cliffs.map((cliff) => (
              <CliffRow key={cliff.fabric} cliff={cliff} worked={worked} />
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

function CliffRow({ cliff, worked }: { readonly cliff: Cliff; readonly worked: WorkedOut }) {
  const { fabrics, house } = worked.pattern;
  const ruler = useRuler();
  const fabric = fabrics.find(({ id }) => id === cliff.fabric);
  // The answer may be a moment behind the pattern, and its fabric gone.
  if (fabric === undefined) return null;
  return (
    <tr>
      <th scope="row">
        <FabricName fabric={fabric} />
      </th>
      {cliff.at.map(({ width, yards, strips }) => (
        <td key={width} className={styles.sizeCell} data-now={same(width, house.usableWidth)}>
          <Why traced={yards} />
          <span className={styles.under}>{strips === 1 ? '1 strip' : `${strips} strips`}</span>
        </td>
      ))}
      <td className={styles.uses}>{cliffWords(cliff, ruler).join(' ')}</td>
    </tr>
  );
}

/** Where a fabric tips over: what more has to be bought below a width, or that only strips change. */
export function cliffWords({ at, yardsBelow, below }: Cliff, ruler: Ruler): readonly string[] {
  if (yardsBelow.length > 0) return yardsBelow.map((width) => moreBelow(width, at, ruler));
  if (below.length === 0) return ['The same at every width.'];
  return [`More strips on narrower cloth, but the same ${ruler.clothUnit}s.`];
}

function moreBelow(width: number, at: readonly AtWidth[], ruler: Ruler): string {
  const here = at.findIndex((one) => one.width === width);
  const more = (at[here - 1]?.yards.value ?? 0) - (at[here]?.yards.value ?? 0);
  return `Below ${ruler.length(width)}: ${ruler.cloth(more)} more.`;
}
