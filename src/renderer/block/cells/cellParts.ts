import type { Corner, Cell as Held, Recipe } from '../../../shared/recipe/schema.ts';

/** One part of what a cell holds that has a fabric role of its own. */
export interface CellPart {
  readonly words: string;
  readonly role: string;
  /** What the cell holds once this part is of another role. */
  readonly as: (role: string) => Held;
}

const SIDES = ['Top', 'Right', 'Bottom', 'Left'];
const CORNER_WORDS: Readonly<Record<Corner, string>> = {
  'top-left': 'Top left',
  'top-right': 'Top right',
  'bottom-right': 'Bottom right',
  'bottom-left': 'Bottom left',
};
const CLOCKWISE = Object.values(CORNER_WORDS);

const WORDS: Readonly<Record<string, readonly string[]>> = {
  hst: ['Top left', 'Bottom right'],
  geese: ['Goose', 'Sky'],
  'four-patch': ['Top left, bottom right', 'Top right, bottom left'],
  qst: SIDES,
  'three-patch': ['Half', 'Top quarter', 'Left quarter'],
  'square-in-square': CLOCKWISE,
  'half-rectangle': ['Upper', 'Lower'],
  'nine-patch': ['Corners', 'Sides', 'Middle'],
  checkerboard: ['First squares', 'Other squares'],
  'quarter-circle': ['Quarter circle', 'Around it'],
};

/** The parts of what a cell holds, named as the unit lies before it is turned. */
export function cellParts(holds: Held, recipes: readonly Recipe[]): readonly CellPart[] {
  if ('recipe' in holds) return rolesOfHeld(holds, recipes);
  const { unit } = holds;
  const whole =
    'role' in holds
      ? [{ words: wholeWords(unit), role: holds.role, as: (role: string) => ({ ...holds, role }) as Held }]
      : [];
  if (holds.unit === 'corners') {
    const corners = holds.corners.map(({ at, role }, i) => ({
      words: `${CORNER_WORDS[at]} corner`,
      role,
      as: (next: string): Held => ({
        ...holds,
        corners: holds.corners.map((corner, k) => (k === i ? { ...corner, role: next } : corner)),
      }),
    }));
    return [...whole, ...corners];
  }
  if (!('roles' in holds)) return whole;
  const parts = holds.roles.map((role, i) => ({
    words: WORDS[unit]?.[i] ?? `Strip ${i + 1}`,
    role,
    as: (next: string) => ({ ...holds, roles: holds.roles.map((one, k) => (k === i ? next : one)) }) as Held,
  }));
  return [...whole, ...parts];
}

function wholeWords(unit: string): string {
  return unit === 'square-in-square' ? 'Middle' : unit === 'corners' ? 'Rectangle' : 'Whole cell';
}

function rolesOfHeld(holds: Extract<Held, { recipe: string }>, recipes: readonly Recipe[]): readonly CellPart[] {
  const held = recipes.find(({ id }) => id === holds.recipe);
  return (held?.roles ?? []).map(({ id, name }) => ({
    words: name,
    role: holds.roles?.[id] ?? id,
    as: (role) => ({ ...holds, roles: { ...holds.roles, [id]: role } }),
  }));
}
