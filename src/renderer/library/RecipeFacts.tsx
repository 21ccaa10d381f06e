import type { RecipeCard } from '../../shared/contract.ts';
import { unitKindName } from '../../shared/piecing/unitNames.ts';
import { familyName, skillName } from '../../shared/workroom/facetTerms.ts';
import type { RecipeFacets } from '../../shared/workroom/recipeFacets.ts';
import { useRuler } from '../state/hooks.tsx';
import styles from './LibraryView.module.css';
import { useRecipeFacets } from './useRecipeFacts.ts';

/** A recipe in facts: what it says of itself, and what follows from how it is made. */
export function RecipeFacts({ card }: { readonly card: RecipeCard }) {
  const { recipe, usedIn } = card;
  const facets = useRecipeFacets(card);
  const ruler = useRuler();
  return (
    <dl className={styles.facts}>
      <Fact name="Usual size" words={`${ruler.length(recipe.finished)} finished`} />
      {facets === null ? null : <FacetFacts facets={facets} />}
      {recipe.parameters.map(({ id, name, default: usual, least, most }) => (
        <Fact key={id} name={name} words={`${usual}, from ${least} to ${most}`} />
      ))}
      {usedIn.length === 0 ? null : <Fact name="Used in" words={usedIn.join(', ')} />}
    </dl>
  );
}

function FacetFacts({ facets }: { readonly facets: RecipeFacets }) {
  const { family, grid, patches, units, skills, sizes } = facets;
  const ruler = useRuler();
  const onRuler = sizes[ruler.units];
  const parts = grid === null ? '' : `, ${grid} equal ${grid === 1 ? 'part' : 'parts'}`;
  return (
    <>
      <Fact name="Grid" words={`${familyName(family)}${parts}`} />
      <Fact
        name="On the ruler at"
        words={onRuler.length === 0 ? 'none of the usual sizes' : onRuler.map(ruler.length).join(', ')}
      />
      <Fact name="Patches" words={String(patches)} />
      <Fact name="Units" words={units.map(unitKindName).join(', ')} />
      <Fact name="Skills" words={skills.map(skillName).join(', ')} />
    </>
  );
}

function Fact({ name, words }: { readonly name: string; readonly words: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{words}</dd>
    </>
  );
}
