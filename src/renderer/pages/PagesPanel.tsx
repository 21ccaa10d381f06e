import { SidePanel } from '../app/SidePanel.tsx';
import { Choice } from '../parts/Choice.tsx';
import { usePattern } from '../state/hooks.tsx';
import { CautionsPart } from './CautionsPart.tsx';
import { EditionPart } from './EditionPart.tsx';
import { ExportPart } from './ExportPart.tsx';
import { PAPERS, pagesStore, usePagesState } from './pagesStore.ts';
import { WordsPart } from './WordsPart.tsx';

const INKS = [
  { id: 'colour', says: 'Colour' },
  { id: 'plain', says: 'Black and white' },
] as const;

/** What is printed: paper, ink, edition and the designer's own words; and the file itself. */
export function PagesPanel() {
  const { title } = usePattern();
  const paper = usePagesState((state) => state.paper);
  const plainInk = usePagesState((state) => state.plainInk);
  return (
    <SidePanel title={title} kind="The written pattern">
      <Choice label="Paper" value={paper} options={PAPERS} onChange={(next) => pagesStore.setState({ paper: next })} />
      <Choice
        label="Ink"
        value={plainInk ? 'plain' : 'colour'}
        options={INKS}
        onChange={(next) => pagesStore.setState({ plainInk: next === 'plain' })}
      />
      <ExportPart />
      <EditionPart />
      <WordsPart />
      <CautionsPart />
    </SidePanel>
  );
}
