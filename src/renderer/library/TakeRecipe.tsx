import { useEffect, useState } from 'react';
import type { KeptRecipe } from '../../shared/contract.ts';
import type { TakenRecipe } from '../../shared/pattern/edits/index.ts';
import { standingOf } from '../../shared/pattern/revisions.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import type { RecipeUpdate } from '../../shared/workroom/recipeUpdate.ts';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { FindingLine } from '../parts/FindingLine.tsx';
import { Figure } from '../parts/figure/Figure.tsx';
import { useAway } from '../state/away/useAway.ts';
import { useHost, usePattern, useStudio } from '../state/hooks.tsx';
import { gatherKept, revisionsOf } from './gather.ts';
import { takeIntoPattern } from './recipeActs.ts';
import styles from './TakeRecipe.module.css';

export interface TakeRecipeProps {
  /** The library's recipe of an id that the open pattern carries. */
  readonly news: KeptRecipe;
  readonly onClose: () => void;
}

/** What taking the library's revision would change in the open pattern, before it is taken. */
export function TakeRecipe({ news, onClose }: TakeRecipeProps) {
  const studio = useStudio();
  const pattern = usePattern();
  const taken = useTaken(news);
  const { answer: update, trouble } = useAway('recipeUpdate', taken === null ? null : [pattern, taken]);
  const kind = standingOf(pattern, news.recipe, news.revision) === 'newer' ? 'A newer' : 'Another';
  const take = () => {
    onClose();
    if (taken !== null) takeIntoPattern(studio, taken);
  };
  const foot = (
    <>
      <Button onPress={onClose}>Leave it as it is</Button>
      <Button tone="strong" onPress={take} isDisabled={update === null}>
        Take revision {news.revision}
      </Button>
    </>
  );
  return (
    <Dialog title={`${kind} revision of ${news.recipe.name}`} isOpen onClose={onClose} foot={foot} width="wide">
      {trouble === null ? null : <p>{trouble}</p>}
      {update === null ? null : (
        <>
          <Blocks was={pattern.recipes} now={update.pattern.recipes} id={news.recipe.id} />
          <Changes update={update} title={pattern.title} />
        </>
      )}
    </Dialog>
  );
}

/** The recipe with all it holds, once the library has answered. */
function useTaken({ recipe, revision }: KeptRecipe): TakenRecipe | null {
  const host = useHost();
  const [taken, setTaken] = useState<TakenRecipe | null>(null);
  useEffect(() => {
    let wanted = true;
    void gatherKept(host, recipe)
      .catch(() => [])
      .then((held) => {
        const revisions = revisionsOf([{ recipe, revision }, ...held]);
        if (wanted) setTaken({ recipe, held: held.map((kept) => kept.recipe), revisions });
      });
    return () => {
      wanted = false;
    };
  }, [host, recipe, revision]);
  return taken;
}

interface BlocksProps {
  readonly was: readonly Recipe[];
  readonly now: readonly Recipe[];
  readonly id: string;
}

/** The block before and after, side by side. */
function Blocks({ was, now, id }: BlocksProps) {
  return (
    <div className={styles.blocks}>
      <BlockOf recipes={was} id={id} words="In this pattern" />
      <BlockOf recipes={now} id={id} words="In the library" />
    </div>
  );
}

interface BlockOfProps {
  readonly recipes: readonly Recipe[];
  readonly id: string;
  readonly words: string;
}

function BlockOf({ recipes, id, words }: BlockOfProps) {
  const recipe = recipes.find((one) => one.id === id);
  const { answer: picture } = useAway('drawRecipe', recipe === undefined ? null : [recipe, recipes]);
  return (
    <figure className={styles.block}>
      <div className={styles.picture}>
        {picture === null ? null : <Figure figure={picture.figure} inks={picture.inks} />}
      </div>
      <figcaption>{words}</figcaption>
    </figure>
  );
}

function Changes({ update, title }: { readonly update: RecipeUpdate; readonly title: string }) {
  const { recipe, sizes, newFindings, mended } = update;
  if (recipe.length + sizes.length + newFindings.length + mended.length === 0) {
    return <p>Nothing that is cut or bought for “{title}” would change.</p>;
  }
  return (
    <>
      <Lines title="The block" lines={recipe} />
      {sizes.map(({ size, changes }) => (
        <Lines key={size} title={size} lines={changes} />
      ))}
      {newFindings.length === 0 ? null : (
        <section className={styles.part}>
          <h3>What would not fit then</h3>
          {newFindings.map((finding) => (
            <FindingLine key={`${finding.where.path} ${finding.what}`} finding={finding} />
          ))}
        </section>
      )}
      <Lines title="What would fit again" lines={mended.map(({ what }) => what)} />
    </>
  );
}

function Lines({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <section className={styles.part}>
      <h3>{title}</h3>
      <ul className={styles.lines}>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
