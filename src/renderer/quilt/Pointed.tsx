import { FindingLine } from '../parts/FindingLine.tsx';
import { useStudioState } from '../state/hooks.tsx';

/** The finding the designer has just gone to, in full. */
export function Pointed() {
  const pointed = useStudioState((state) => state.pointed);
  return pointed === null ? null : <FindingLine finding={pointed} />;
}
