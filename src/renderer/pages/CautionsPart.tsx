import { useState } from 'react';
import { setCautions, setUsualCautions } from '../../shared/pattern/edits/index.ts';
import { PanelPart } from '../app/SidePanel.tsx';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useAct, usePattern } from '../state/hooks.tsx';

/** Cautions of the designer's own beside the usual ones, which are left out only on purpose. */
export function CautionsPart() {
  const { words } = usePattern();
  const act = useAct();
  const { cautions } = words;
  const change = (at: number, text: string) =>
    act(setCautions, { cautions: cautions.map((one, i) => (i === at ? text : one)).filter((one) => one !== '') });
  return (
    <PanelPart title="Cautions">
      {cautions.map((caution, i) => (
        <TextField
          // biome-ignore lint/suspicious/noArrayIndexKey: a caution is known by its place
          key={i}
          label={`Your caution ${i + 1}`}
          help="Empty it to remove it."
          value={caution}
          long
          onChange={(text) => change(i, text)}
        />
      ))}
      {cautions.length >= 20 ? null : (
        <NewCaution onAdd={(text) => act(setCautions, { cautions: [...cautions, text] })} />
      )}
      <UsualCautions />
    </PanelPart>
  );
}

function NewCaution({ onAdd }: { readonly onAdd: (text: string) => void }) {
  const [round, setRound] = useState(0);
  const add = (text: string) => {
    if (text === '') return;
    onAdd(text);
    setRound(round + 1);
  };
  return <TextField key={round} label="Add a caution" value="" long onChange={add} />;
}

function UsualCautions() {
  const { words } = usePattern();
  const act = useAct();
  const [asking, ask] = useState(false);
  const leaveOut = () => {
    act(setUsualCautions, { without: true });
    ask(false);
  };
  if (words.withoutUsualCautions) {
    return (
      <>
        <p className="small">The usual cautions about blades, irons, needles and infants’ bedding are left out.</p>
        <Button onPress={() => act(setUsualCautions, { without: false })}>Put the usual cautions back</Button>
      </>
    );
  }
  return (
    <>
      <p className="quiet small">The usual cautions about blades, irons, needles and infants’ bedding are printed.</p>
      <Button small onPress={() => ask(true)}>
        Leave the usual cautions out
      </Button>
      <Dialog
        title="Leave the usual cautions out?"
        isOpen={asking}
        onClose={() => ask(false)}
        foot={
          <>
            <Button onPress={() => ask(false)}>Keep them</Button>
            <Button tone="stops" onPress={leaveOut}>
              Leave them out
            </Button>
          </>
        }
      >
        <p>
          Makers are then not told that a rotary cutter is very sharp, that an iron burns, or that loose quilts do not
          belong in a sleeping infant’s cot. Leave them out only if the pattern says so in words of your own.
        </p>
      </Dialog>
    </>
  );
}
