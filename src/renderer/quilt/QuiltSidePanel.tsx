import { FabricPanel } from '../parts/panels/FabricPanel.tsx';
import { usePattern, useSelection } from '../state/hooks.tsx';
import { WHOLE_PATTERN } from '../state/selection.ts';
import { BorderPanel } from './borders/BorderPanel.tsx';
import { MotifPanel } from './motif/MotifPanel.tsx';
import { PlacesPanel } from './PlacesPanel.tsx';
import { QuiltPanel } from './QuiltPanel.tsx';
import { SizePanel } from './SizePanel.tsx';
import { SettingPanel } from './setting/SettingPanel.tsx';

/** What is selected in the quilt view. */
export function QuiltSidePanel() {
  const [selection, select] = useSelection();
  const pattern = usePattern();
  const back = () => select(WHOLE_PATTERN);
  if (selection.kind === 'places') return <PlacesPanel places={selection.places} onBack={back} />;
  if (selection.kind === 'fabric')
    return <FabricPanel fabric={selection.fabric} onBack={back} backTo="The whole quilt" />;
  if (selection.kind === 'setting') return <SettingPanel onBack={back} />;
  if (selection.kind === 'motif') return <MotifPanel onBack={back} />;
  const border = selection.kind === 'border' ? pattern.borders.find(({ id }) => id === selection.border) : undefined;
  if (border !== undefined) return <BorderPanel key={border.id} border={border} onBack={back} />;
  const size = selection.kind === 'size' ? pattern.sizes.find(({ id }) => id === selection.size) : undefined;
  if (size !== undefined) return <SizePanel key={size.id} size={size} onBack={back} />;
  return <QuiltPanel />;
}
