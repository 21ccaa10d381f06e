import { setWords, type WordsField } from '../../shared/pattern/edits/index.ts';
import { PanelPart } from '../app/SidePanel.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useAct, usePattern } from '../state/hooks.tsx';

interface FieldOf {
  readonly field: WordsField;
  readonly label: string;
  readonly long?: boolean;
  readonly needed?: string;
  readonly help?: string;
}

const FIELDS: readonly FieldOf[] = [
  { field: 'introduction', label: 'Introduction', long: true },
  { field: 'designer', label: 'Designer or studio', needed: 'The cover names the designer.' },
  { field: 'contact', label: 'Where to write about corrections' },
  { field: 'copyright', label: 'Copyright', long: true },
  { field: 'notes', label: 'Closing words', long: true },
];

/** The pattern's own words. */
export function WordsPart() {
  const { words } = usePattern();
  const act = useAct();
  return (
    <PanelPart title="Words">
      {FIELDS.map(({ field, ...rest }) => (
        <TextField
          key={field}
          {...rest}
          value={words[field]}
          whileTyping={rest.long ?? false}
          onChange={(text, mark) => act(setWords, { field, text }, mark)}
        />
      ))}
    </PanelPart>
  );
}
