import { useMemo } from 'react';
import { inksFor } from '../../../shared/diagrams/hatches.ts';
import type { Finding } from '../../../shared/measure/finding.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { useOwnQuilt } from '../../app/SidePanel.tsx';
import { EmptyState } from '../../parts/EmptyState.tsx';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { useCurrentSize } from '../../state/hooks.tsx';
import { Backing } from './Backing.tsx';
import styles from './cutting.module.css';
import { FabricPlan } from './FabricPlan.tsx';
import { WhereItGoes } from './WhereItGoes.tsx';

/** How each fabric of the size looked at is cut, with the quilt beside it; then its backing. */
export function Cutting({ worked }: { readonly worked: WorkedOut }) {
  useOwnQuilt();
  const size = useCurrentSize();
  const inks = useMemo(() => inksFor(worked.pattern.fabrics), [worked.pattern.fabrics]);
  if (size === null) return <Uncut worked={worked} />;
  return (
    <div className={styles.cutting}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls */}
      <section className={styles.plans} aria-labelledby="cutting-plans" tabIndex={0}>
        <h2 id="cutting-plans">How the cloth is cut for {size.size.name}</h2>
        <ClothFindings worked={worked} size={size} />
        {worked.pattern.fabrics.map((fabric) => {
          const need = size.cloth.needs.find((one) => one.fabric === fabric.id);
          if (need === undefined) return null;
          return <FabricPlan key={fabric.id} fabric={fabric} need={need} worked={worked} size={size} inks={inks} />;
        })}
        <Backing size={size} inks={inks} />
      </section>
      <WhereItGoes worked={worked} size={size} />
    </div>
  );
}

/** What stops this size or all of them: a piece wider than its cloth, a role without a fabric. */
function ClothFindings({ worked, size }: { readonly worked: WorkedOut; readonly size: WorkedSize }) {
  const here = ({ where }: Finding) => where.size === undefined || where.size === size.size.name;
  const own = worked.findings.filter((finding) => finding.level === 'stops' && here(finding));
  return own.slice(0, MOST_FINDINGS).map((finding) => <FindingLine key={finding.what} finding={finding} />);
}

/** More than these are on the fit line. */
const MOST_FINDINGS = 5;

/** Nothing can be cut while no size can be laid out. */
function Uncut({ worked }: { readonly worked: WorkedOut }) {
  return (
    <EmptyState title="Nothing can be cut yet">
      {worked.findings
        .filter(({ level }) => level === 'stops')
        .slice(0, 6)
        .map((finding) => (
          <FindingLine key={`${finding.where.path} ${finding.what}`} finding={finding} />
        ))}
    </EmptyState>
  );
}
