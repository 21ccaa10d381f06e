import type { Ruler } from '../../../shared/measure/ruler.ts';
import { readMotif } from '../../../shared/pattern/motif.ts';
import type { Sashing, Setting } from '../../../shared/pattern/schema.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { Rows } from '../../parts/Rows.tsx';
import { usePattern, useRuler, useStudio, useWorked } from '../../state/hooks.tsx';

/** How the blocks are set, in three lines; a press opens what is behind each. */
export function SettingRows() {
  const { setting } = usePattern();
  const studio = useStudio();
  const ruler = useRuler();
  const assembly = useWorked()?.assembly;
  return (
    <PanelPart title="Setting">
      <Rows
        label="Setting"
        rows={[
          {
            id: 'setting',
            name: settingName(setting),
            more: settingMore(setting, assembly?.way, ruler),
            onPress: () => studio.select({ kind: 'setting' }),
          },
          {
            id: 'motif',
            name: 'Motif',
            more: motifWords(setting),
            onPress: () => studio.select({ kind: 'motif' }),
          },
        ]}
      />
    </PanelPart>
  );
}

/** The setting in the trade's words. */
export function settingName(setting: Setting): string {
  if (setting.kind === 'straight') return 'Straight';
  if (setting.kind === 'on-point') return 'On point';
  return `Strips, in ${setting.run}`;
}

function settingMore(setting: Setting, sewn: string | undefined, ruler: Ruler): string {
  const own = ownWords(setting, sewn ?? 'rows');
  return setting.sashing === undefined ? own : `${own}; ${sashingWords(setting.sashing, ruler)}`;
}

function ownWords(setting: Setting, sewn: string): string {
  if (setting.kind === 'straight') return `Sewn into ${sewn}`;
  if (setting.kind === 'on-point') return 'Sewn into diagonal rows';
  return setting.shift === undefined ? 'Not shifted' : `Each shifted by ${setting.shift}`;
}

function sashingWords({ strips, cornerstones }: Sashing, ruler: Ruler): string {
  const wide = strips.map(({ width }) => ruler.length(width)).join(' + ');
  return `sashing ${wide}${cornerstones === undefined ? '' : ' with cornerstones'}`;
}

function motifWords(setting: Setting): string {
  const rows = readMotif(setting);
  const across = Math.max(...rows.map((row) => row.length));
  const grid = `${across} × ${rows.length}`;
  return setting.reflect === undefined ? `${grid}, repeats` : `${grid}, reflected ${REFLECTED[setting.reflect]}`;
}

const REFLECTED: Readonly<Record<NonNullable<Setting['reflect']>, string>> = {
  across: 'to the left',
  down: 'to the top',
  both: 'both ways',
};
