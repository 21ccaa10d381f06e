import { setFabricScraps, setFabricSpread } from '../../../shared/pattern/edits/index.ts';
import type { Fabric } from '../../../shared/pattern/schema.ts';
import { PanelPart } from '../../app/SidePanel.tsx';
import { useAct } from '../../state/hooks.tsx';
import { Button } from '../Button.tsx';
import { ColourPick } from '../ColourPick.tsx';
import { TextField } from '../TextField.tsx';
import styles from './panels.module.css';

type Scraps = NonNullable<Fabric['scraps']>;

/** The many fabrics that one scrappy fabric is made up of; fewer than two make it one cloth again. */
export function ScrapsPart({ fabric }: { readonly fabric: Fabric }) {
  const act = useAct();
  const { id, name, colour, scraps } = fabric;
  const set = (next: Scraps, mark?: string) => act(setFabricScraps, { fabric: id, scraps: next }, mark);
  if (scraps === undefined) {
    const first: Scraps = [
      { name: `${name} 1`, colour },
      { name: `${name} 2`, colour: nearby(colour) },
    ];
    return (
      <PanelPart title="Scraps">
        <p className="quiet small">One cloth. A scrappy quilt takes many fabrics in its place, none beside itself.</p>
        <Button small onPress={() => set(first)}>
          Make it scrappy
        </Button>
      </PanelPart>
    );
  }
  const changed = (at: number, part: Partial<Scraps[number]>) =>
    scraps.map((scrap, i) => (i === at ? { ...scrap, ...part } : scrap));
  return (
    <PanelPart title={`Scraps, ${scraps.length} fabrics`}>
      <ul className={styles.scraps}>
        {scraps.map((scrap, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: scraps have no name of their own but their place
          <li key={i} className={styles.scrap}>
            <TextField
              label={`Scrap ${i + 1}`}
              value={scrap.name}
              needed="A scrap needs a name."
              onChange={(next) => set(changed(i, { name: next }))}
            />
            <ColourPick
              of={scrap.name}
              colour={scrap.colour}
              onChange={(next) => set(changed(i, { colour: next }), `scrap ${id} ${i}`)}
            />
            <Button
              small
              tone="bare"
              aria-label={`Remove ${scrap.name}`}
              onPress={() => set(scraps.filter((_, other) => other !== i))}
            >
              Remove
            </Button>
          </li>
        ))}
      </ul>
      <Button
        small
        isDisabled={scraps.length >= 60}
        onPress={() =>
          set([...scraps, { name: `${name} ${scraps.length + 1}`, colour: nearby(scraps.at(-1)?.colour ?? colour) }])
        }
      >
        Add a scrap
      </Button>
      <Button
        small
        onPress={() => act(setFabricSpread, { fabric: id, spread: (fabric.spread ?? 0) + 1 }, `spread ${id}`)}
      >
        Spread them another way
      </Button>
    </PanelPart>
  );
}

/** A colour a little beside another, to start from: each channel a step towards the middle. */
function nearby(colour: string): string {
  const value = Number.parseInt(colour.slice(1), 16);
  const step = (channel: number) => (channel < 128 ? channel + 22 : channel - 22);
  const channels = [(value >> 16) & 255, (value >> 8) & 255, value & 255].map(step);
  return `#${channels.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
}
