import { renamePattern } from '../../shared/pattern/edits/index.ts';
import { SidePanel } from '../app/SidePanel.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useAct, usePattern } from '../state/hooks.tsx';
import { BordersPart } from './borders/BordersPart.tsx';
import { FinishingPart } from './FinishingPart.tsx';
import { Pointed } from './Pointed.tsx';
import { SizesPart } from './SizesPart.tsx';
import { SettingRows } from './setting/SettingRows.tsx';

/** The quilt as a whole: sizes, setting, borders, binding and backing. */
export function QuiltPanel() {
  const { title } = usePattern();
  const act = useAct();
  return (
    <SidePanel title={title} kind="The whole quilt">
      <Pointed />
      <TextField
        label="Title"
        value={title}
        needed="A pattern needs a title."
        onChange={(next) => act(renamePattern, { title: next })}
      />
      <SizesPart />
      <SettingRows />
      <BordersPart />
      <FinishingPart />
    </SidePanel>
  );
}
