import type { SizedUnit } from '../../shared/workroom/workedOut.ts';
import { Choice } from './Choice.tsx';

export interface MethodChooserProps {
  readonly sized: SizedUnit;
  readonly onChoose: (method: string) => void;
}

/** The ways of making a unit, the chosen one first in force. */
export function MethodChooser({ sized, onChoose }: MethodChooserProps) {
  const { method, others, plan } = sized;
  // One order whichever is chosen, so that a choice never moves under the hand.
  const all = [method, ...others].toSorted((a, b) => a.name.localeCompare(b.name, 'en'));
  const batch = plan.yield > 1 ? `One batch makes ${plan.yield}.` : 'Made one at a time.';
  return (
    <Choice
      label="Made by"
      lie="list"
      value={method.id}
      onChange={onChoose}
      options={all.map(({ id, name }) => ({ id, says: name, ...(id === method.id ? { more: batch } : {}) }))}
    />
  );
}
