import { nextEdition, setEdition } from '../../shared/pattern/edits/index.ts';
import { PanelPart } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { Stepper } from '../parts/Stepper.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useAct, usePattern } from '../state/hooks.tsx';

/** The edition printed on every page. */
export function EditionPart() {
  const pattern = usePattern();
  const act = useAct();
  const { number, date } = pattern.edition;
  return (
    <PanelPart title="Edition">
      <Stepper
        label="Number"
        value={number}
        least={1}
        most={999}
        onChange={(next) => act(setEdition, { number: next }, 'edition')}
      />
      <TextField
        label="Date"
        value={date}
        needed="An edition needs a date."
        help="Year, month and day, such as 2026-03-14."
        onChange={(next) => act(setEdition, { date: next })}
      />
      <Button small onPress={() => act(setEdition, nextEdition(pattern, today()))}>
        Begin the next edition, dated today
      </Button>
    </PanelPart>
  );
}

/** Today where the designer is, YYYY-MM-DD. */
function today(now = new Date()): string {
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
