import { setOnPoint, setSewn, setStraight, setStrips } from '../../../shared/pattern/edits/index.ts';
import type { Setting } from '../../../shared/pattern/schema.ts';
import { SidePanel } from '../../app/SidePanel.tsx';
import { BackTo } from '../../parts/BackTo.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { useAct, usePattern, useWorked } from '../../state/hooks.tsx';
import { Pointed } from '../Pointed.tsx';
import { rememberedSetting, rememberSetting } from '../quiltStore.ts';
import { CountsPart } from './CountsPart.tsx';
import { MedallionPart } from './MedallionPart.tsx';
import { OnPointFields } from './OnPointFields.tsx';
import { SashingPart } from './SashingPart.tsx';
import { settingName } from './SettingRows.tsx';
import { StripsFields } from './StripsFields.tsx';

/** How the blocks are laid out: straight, on point or in strips, what that needs, and the sashing between them. */
export function SettingPanel({ onBack }: { readonly onBack: () => void }) {
  const { setting } = usePattern();
  return (
    <SidePanel title={settingName(setting)} kind="Setting">
      <BackTo onPress={onBack}>The whole quilt</BackTo>
      <Pointed />
      <KindChoice setting={setting} />
      {setting.kind === 'straight' ? <SewnChoice sewn={setting.sewn} /> : null}
      {setting.kind === 'on-point' ? <OnPointFields setting={setting} /> : null}
      {setting.kind === 'strips' ? <StripsFields setting={setting} /> : null}
      {setting.kind === 'straight' ? <MedallionPart /> : null}
      <SashingPart setting={setting} />
      <CountsPart />
    </SidePanel>
  );
}

function KindChoice({ setting }: { readonly setting: Setting }) {
  const { id, fabrics } = usePattern();
  const act = useAct();
  const background = fabrics.find(({ value }) => value === 'light') ?? fabrics[0];
  const set: Readonly<Record<Setting['kind'], () => void>> = {
    straight: () => act(setStraight, { was: rememberedSetting(id, 'straight') }),
    'on-point': () => act(setOnPoint, { fabric: background?.id ?? '', was: rememberedSetting(id, 'on-point') }),
    strips: () => {
      const was = rememberedSetting(id, 'strips');
      act(setStrips, { run: was?.kind === 'strips' ? was.run : 'columns', was });
    },
  };
  const change = (kind: Setting['kind']) => {
    rememberSetting(id, setting);
    set[kind]();
  };
  return (
    <Choice
      label="Blocks are set"
      value={setting.kind}
      options={[
        { id: 'straight', says: 'Straight' },
        { id: 'on-point', says: 'On point' },
        { id: 'strips', says: 'In strips' },
      ]}
      onChange={change}
    />
  );
}

function SewnChoice({ sewn }: { readonly sewn: 'rows' | 'columns' | undefined }) {
  const act = useAct();
  const why = useWorked()?.assembly.why;
  return (
    <>
      <Choice
        label="Sewn into"
        value={sewn ?? 'better'}
        options={[
          { id: 'better', says: 'The better' },
          { id: 'rows', says: 'Rows' },
          { id: 'columns', says: 'Columns' },
        ]}
        onChange={(next) => act(setSewn, { sewn: next === 'better' ? null : next })}
      />
      {sewn === undefined && why !== undefined ? <p className="quiet small">{why}</p> : null}
    </>
  );
}
