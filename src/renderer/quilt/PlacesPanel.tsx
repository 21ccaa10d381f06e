import { SidePanel } from '../app/SidePanel.tsx';
import { BackTo } from '../parts/BackTo.tsx';
import { Button } from '../parts/Button.tsx';
import { Choice } from '../parts/Choice.tsx';
import { type Cell, sameCell } from '../parts/lattice/lattice.ts';
import { TurnActs } from '../parts/turning/TurnActs.tsx';
import { turnWords } from '../parts/turning/turnWords.ts';
import { useCurrentSize, usePattern, useStudio } from '../state/hooks.tsx';
import { blockIn } from './blockIn.ts';
import { type PlaceActs, placeActs } from './placeActs.ts';
import styles from './quilt.module.css';
import { quiltStore, useQuiltState } from './quiltStore.ts';

interface PlacesPanelProps {
  readonly places: readonly Cell[];
  readonly onBack: () => void;
}

/** Blocks picked on the quilt: which they are, how they lie, and back to the motif. */
export function PlacesPanel({ places, onBack }: PlacesPanelProps) {
  const acts = placeActs(useStudio(), places);
  const letters = useLetters(places);
  const [letter] = letters;
  const one = letters.length === 1 && letter !== undefined;
  const title = places.length === 1 && one ? `Block ${letter}` : `${places.length} blocks`;
  return (
    <SidePanel title={title} kind={whereWords(places)}>
      <BackTo onPress={onBack}>The whole quilt</BackTo>
      <Lies places={places} />
      <TurnActs onTurn={acts.turn} />
      <MoreActs acts={acts} letters={letters} />
      <BlockChoice letter={one ? letter : null} onPlace={acts.place} />
      <ScopeChoice />
      <Return places={places} onReturn={acts.back} />
      {one ? <LookAt block={letter} /> : null}
    </SidePanel>
  );
}

function whereWords(places: readonly Cell[]): string {
  const [first] = places;
  if (places.length !== 1 || first === undefined) return 'Picked on the quilt';
  return `Row ${first.row + 1}, column ${first.column + 1}`;
}

function useLetters(places: readonly Cell[]): readonly string[] {
  const quilt = useCurrentSize()?.quilt;
  const found = quilt === undefined ? [] : places.flatMap((place) => blockIn(quilt, place)?.block ?? []);
  return [...new Set(found)];
}

function Lies({ places }: { readonly places: readonly Cell[] }) {
  const quilt = useCurrentSize()?.quilt;
  const [first] = places;
  if (places.length !== 1 || first === undefined || quilt === undefined) return null;
  const leaf = blockIn(quilt, first);
  const words = leaf === undefined ? '' : turnWords(leaf.turn);
  return (
    <p className="quiet small">
      {words === '' ? 'Lies as drawn.' : `Lies ${words}.`} Drawn onto another block, it changes places with it.
    </p>
  );
}

function MoreActs({ acts, letters }: { readonly acts: PlaceActs; readonly letters: readonly string[] }) {
  const [letter] = letters;
  return (
    <div className={styles.acts}>
      {acts.swap === null ? null : (
        <Button onPress={acts.swap}>
          Swap the two <kbd>S</kbd>
        </Button>
      )}
      <Button onPress={() => acts.alike(false)}>
        {letters.length === 1 ? `Pick every ${letter}` : 'Pick all alike'} <kbd>L</kbd>
      </Button>
      <Button onPress={() => acts.alike(true)}>
        Pick all that lie so <kbd>Shift L</kbd>
      </Button>
    </div>
  );
}

interface BlockChoiceProps {
  /** The letter that stands there, when it is one. */
  readonly letter: string | null;
  readonly onPlace: (block: string) => void;
}

function BlockChoice({ letter, onPlace }: BlockChoiceProps) {
  const { blocks } = usePattern();
  if (blocks.length < 2) return null;
  return (
    <Choice
      label="Block here"
      lie={blocks.length > 4 ? 'list' : 'row'}
      value={letter ?? ''}
      options={blocks.map(({ id, name }) => ({ id, says: blocks.length > 4 ? `${id} ${name}` : id }))}
      onChange={onPlace}
    />
  );
}

function ScopeChoice() {
  const size = useCurrentSize();
  const { sizes } = usePattern();
  const scope = useQuiltState((state) => state.scope);
  if (sizes.length < 2 || size === null) return null;
  return (
    <Choice
      label="Change it"
      value={scope}
      options={[
        { id: 'every', says: 'In every size' },
        { id: 'one', says: `In ${size.size.name} only` },
      ]}
      onChange={(next) => quiltStore.setState({ scope: next })}
    />
  );
}

function Return({ places, onReturn }: { readonly places: readonly Cell[]; readonly onReturn: () => void }) {
  const { setting } = usePattern();
  const differs = setting.single.some((one) => places.some((place) => sameCell(place, one)));
  return (
    <div className={styles.acts}>
      <Button isDisabled={!differs} onPress={onReturn}>
        Return to the motif <kbd>Delete</kbd>
      </Button>
      <p className="quiet small">{differs ? 'Differs from the motif.' : 'As the motif has it.'}</p>
    </div>
  );
}

function LookAt({ block }: { readonly block: string }) {
  const studio = useStudio();
  const go = () => {
    studio.select({ kind: 'block', block });
    studio.show('block');
  };
  return (
    <Button tone="bare" small className={styles.start ?? ''} onPress={go}>
      Look at block {block}
    </Button>
  );
}
