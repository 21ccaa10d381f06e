import type { Inches } from '../measure/inches.ts';
import { centimetresOf, type Units } from '../measure/metric.ts';
import { rulerIn } from '../measure/ruler.ts';
import type { Unit } from '../piecing/piecing.ts';
import { unitKindName } from '../piecing/unitNames.ts';
import { FACET_SIZES, type GridFamily, type RecipeFacets, type Skill } from './recipeFacets.ts';

/** One thing recipes are filtered by, as it is kept and asked for: `family:nine-patch`, `unit:hst`, `size:9`. */
export type FacetTerm = string;

/** Every term of a recipe's facets. */
export function facetTerms({ family, units, methods, skills, sizes }: RecipeFacets): readonly FacetTerm[] {
  return [
    familyTerm(family),
    ...units.map(unitTerm),
    ...methods.map((id) => `method:${id}`),
    ...skills.map(skillTerm),
    ...sizes.inches.map((width) => sizeTerm(width, 'inches')),
    ...sizes.centimetres.map((width) => sizeTerm(width, 'centimetres')),
  ];
}

function familyTerm(family: GridFamily): FacetTerm {
  return `family:${family}`;
}

function unitTerm(kind: Unit['kind']): FacetTerm {
  return `unit:${kind}`;
}

function skillTerm(skill: Skill): FacetTerm {
  return `skill:${skill}`;
}

/** `size:9`, `size:24cm`. @param width finished inches; @param units of the ruler its patches fall on */
function sizeTerm(width: Inches, units: Units): FacetTerm {
  return units === 'inches' ? `size:${width}` : `size:${centimetresOf(width)}cm`;
}

/** A question the library's filters ask, and its answers in the trade's words. */
export interface Filter {
  readonly id: string;
  readonly name: string;
  readonly choices: readonly { readonly term: FacetTerm; readonly name: string }[];
}

const FAMILY_NAMES: Readonly<Record<GridFamily, string>> = {
  'four-patch': 'Four-patch',
  'nine-patch': 'Nine-patch',
  'five-patch': 'Five-patch',
  'seven-patch': 'Seven-patch',
  rounds: 'Rounds about a middle',
  other: 'Another grid',
  'off-grid': 'No grid',
};

const SKILL_NAMES: Readonly<Record<Skill, string>> = {
  'full-seams': 'Straight seams only',
  'partial-seams': 'Partial seams',
  'set-in-seams': 'Set-in seams',
  curves: 'Curves',
  'bias-edges': 'Bias edges',
};

/** Kinds of unit worth looking for; plain pieces and logs are in most blocks. */
const SOUGHT: readonly Unit['kind'][] = [
  'hst',
  'qst',
  'three-patch',
  'geese',
  'corners',
  'square-in-square',
  'half-rectangle',
  'four-patch',
  'nine-patch',
  'checkerboard',
  'rails',
  'log',
  'quarter-circle',
  'pieced',
];

/** The grid family in words. */
export function familyName(family: GridFamily): string {
  return FAMILY_NAMES[family];
}

/** A skill in words. */
export function skillName(skill: Skill): string {
  return SKILL_NAMES[skill];
}

/** The filters of the library for those who measure in these units, in the order they stand. */
export function filtersIn(units: Units): readonly Filter[] {
  return FILTERS[units];
}

const filters = (units: Units): readonly Filter[] => [
  { id: 'family', name: 'Grid', choices: choicesOf(FAMILY_NAMES, familyTerm) },
  {
    id: 'size',
    name: 'On the ruler at',
    choices: FACET_SIZES[units].map((width) => ({
      term: sizeTerm(width, units),
      name: rulerIn(units).length(width),
    })),
  },
  { id: 'unit', name: 'Units', choices: SOUGHT.map((kind) => ({ term: unitTerm(kind), name: unitKindName(kind) })) },
  { id: 'skill', name: 'Skills', choices: choicesOf(SKILL_NAMES, skillTerm) },
];

const FILTERS: Readonly<Record<Units, readonly Filter[]>> = {
  inches: filters('inches'),
  centimetres: filters('centimetres'),
};

function choicesOf<Key extends string>(
  names: Readonly<Record<Key, string>>,
  term: (key: Key) => FacetTerm,
): Filter['choices'] {
  return (Object.keys(names) as Key[]).map((key) => ({ term: term(key), name: names[key] }));
}
