import type { Size } from '../../shared/pattern/schema.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { FindingLine } from '../parts/FindingLine.tsx';
import { allFindings } from '../state/fit.ts';
import { usePattern, useStudioState, useWorked } from '../state/hooks.tsx';

/** The size chosen, when it cannot be laid out; null when it can. */
export function useUnlaid(): Size | null {
  const { sizes } = usePattern();
  const worked = useWorked();
  const chosen = useStudioState(({ size }) => size);
  const size = sizes.find(({ id }) => id === chosen);
  if (size === undefined || worked === null || worked.pattern.sizes.every(({ id }) => id !== size.id)) return null;
  return worked.sizes.some((one) => one.size.id === size.id) ? null : size;
}

/** Stands where the quilt would, and says why it cannot be laid out. */
export function Unlaid({ size }: { readonly size: Size | null }) {
  const worked = useWorked();
  const findings = worked === null ? [] : allFindings(worked);
  const about = findings.filter(
    ({ level, where }) => level === 'stops' && (where.size === undefined || where.size === size?.name),
  );
  return (
    <EmptyState title={size === null ? 'No size can be laid out yet' : `${size.name} cannot be laid out yet`}>
      {about.map((finding) => (
        <FindingLine key={`${finding.where.path} ${finding.what}`} finding={finding} />
      ))}
    </EmptyState>
  );
}
