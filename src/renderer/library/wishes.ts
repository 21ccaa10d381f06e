import type { RecipeSearch } from '../../shared/contract.ts';
import type { Units } from '../../shared/measure/metric.ts';
import { type Filter, filtersIn } from '../../shared/workroom/facetTerms.ts';

/** The chosen term of each filter that is set, by the filter's id. */
export type Filters = Readonly<Record<string, string>>;

export const NO_FILTERS: Filters = {};

/** What is looked for on the shelf. */
export interface Wishes {
  readonly words: string;
  readonly filters: Filters;
}

export const NO_WISHES: Wishes = { words: '', filters: NO_FILTERS };

const KIND = 'kind';

/** The tags of the house's own recipes that say what sort of block it is. */
const KINDS: Filter = {
  id: KIND,
  name: 'Kind',
  choices: [
    { term: 'stars', name: 'Stars' },
    { term: 'chains', name: 'Chains' },
    { term: 'pinwheels', name: 'Pinwheels' },
    { term: 'logs', name: 'Logs' },
    { term: 'flying geese', name: 'Geese' },
    { term: 'baskets', name: 'Baskets' },
    { term: 'curves', name: 'Curves' },
    { term: 'pictures', name: 'Pictures' },
    { term: 'units', name: 'Units to build with' },
  ],
};

/** Every filter of the shelf, in the order they stand: the kind is a tag, the others follow from how a block is made. */
export function shelfFilters(units: Units): readonly Filter[] {
  return [KINDS, ...filtersIn(units)];
}

/** One filter set, or left open for an empty term. */
export function withFilter(filters: Filters, filter: string, term: string): Filters {
  const { [filter]: _was, ...others } = filters;
  return term === '' ? others : { ...others, [filter]: term };
}

/** Whether any filter is set. */
export function isFiltered(filters: Filters): boolean {
  return Object.keys(filters).length > 0;
}

/** The wishes as the host is asked. */
export function searchFor({ words, filters }: Wishes): RecipeSearch {
  const { [KIND]: tag, ...others } = filters;
  const facets = Object.values(others);
  return { words, ...(tag === undefined ? {} : { tag }), ...(facets.length === 0 ? {} : { facets }) };
}
