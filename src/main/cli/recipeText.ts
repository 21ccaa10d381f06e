import { sizeText } from '../../shared/measure/fraction.ts';
import { plain } from '../../shared/measure/traced.ts';
import type { BlockPart } from '../../shared/piecing/piecing.ts';
import { isLeaf } from '../../shared/piecing/tree.ts';
import { writeToken } from '../../shared/recipe/token.ts';
import { skillName } from '../../shared/workroom/facetTerms.ts';
import { afterCutText, cutSizeText, usedFor } from './pieceWords.ts';
import type { BlockFacts, RecipeFacts } from './recipeFacts.ts';
import { tableText } from './table.ts';

/** What `recipe` tells of one recipe, as text; its findings are left to the caller. */
export function recipeText({ name, id, finished, roles, block }: Omit<RecipeFacts, 'findings'>): string {
  const title = `${name} (${id}), ${sizeText(finished.width, finished.height)} finished`;
  const parts = [
    `${title}\n${'═'.repeat(title.length)}`,
    tableText(
      [{ title: 'Role' }, { title: 'Value' }, { title: 'Name' }],
      roles.map((role) => [role.id, role.value, role.name]),
    ),
  ];
  return [...parts, ...(block === null ? ['  It cannot be drawn.'] : blockParts(block, roles))].join('\n\n');
}

function blockParts(block: BlockFacts, roles: RecipeFacts['roles']): readonly string[] {
  const { grid, patches, skills, units } = block;
  const kinds = units.length === 1 ? 'one kind of unit' : `${units.length} kinds of units`;
  const number = new Map(units.map(({ key }, i) => [key, i + 1]));
  return [
    `  ${patches} patches on a grid of ${grid.width} by ${grid.height}, from ${kinds}`,
    `  Skills: ${skills.map((skill) => skillName(skill).toLowerCase()).join(', ')}`,
    unitsTable(block),
    `  Sewn together, units by their number and quarter turns\n${seamLines(block.seams, number, 2).join('\n')}`,
    '  Cut for one block',
    piecesTable(block, roles),
  ];
}

function unitsTable({ units }: BlockFacts): string {
  return tableText(
    [
      { title: '', align: 'right' },
      { title: 'Make', align: 'right' },
      { title: 'Unit' },
      { title: 'Finished' },
      { title: 'Unfinished' },
      { title: 'Made as' },
      { title: 'Method in a file' },
    ],
    units.map(({ key, name, count, finished, unfinished, method, others }, i) => {
      const { width, height } = plain(unfinished);
      const ways = [method, ...others].map(({ id }) => id).join(', or ');
      const sizes = [sizeText(finished.width, finished.height), sizeText(width, height)];
      return [String(i + 1), String(count), `${name}, ${rolesOf(key)}`, ...sizes, method.name, ways];
    }),
  );
}

/** A unit's key names its roles last. */
function rolesOf(key: string): string {
  return key.split(' ').slice(2).join(' ');
}

/** The tree of seams, one line for each thing that is sewn together. */
function seamLines(part: BlockPart, number: ReadonlyMap<string, number>, depth: number): readonly string[] {
  const indent = '  '.repeat(depth);
  if (isLeaf(part)) return [`${indent}${leafText(part, number)}`];
  const name = part.name === undefined ? '' : ` (${part.name})`;
  if (part.kind !== 'row') {
    const logs = part.logs.flatMap(({ side, part: log }) => {
      const then = `${indent}  then ${side}:`;
      return isLeaf(log) ? [`${then} ${leafText(log, number)}`] : [then, ...seamLines(log, number, depth + 2)];
    });
    const about = part.kind === 'ring' ? 'About a middle, the first with a partial seam' : 'About a middle';
    return [`${indent}${about}${name}`, ...seamLines(part.core, number, depth + 1), ...logs];
  }
  const words = `${indent}${part.along === 'across' ? 'Across' : 'Down'}${name}`;
  const leaves = part.parts.filter((inner) => isLeaf(inner));
  if (leaves.length === part.parts.length)
    return [`${words}: ${leaves.map((leaf) => leafText(leaf, number)).join('  ')}`];
  return [words, ...part.parts.flatMap((inner) => seamLines(inner, number, depth + 1))];
}

function leafText(leaf: Extract<BlockPart, { kind: 'unit' }>, number: ReadonlyMap<string, number>): string {
  return writeToken({ name: String(number.get(leaf.unit) ?? leaf.unit), turn: leaf.turn });
}

function piecesTable({ pieces }: BlockFacts, roles: RecipeFacts['roles']): string {
  const name = new Map(roles.map((role) => [role.id, role.name]));
  return tableText(
    [{ title: 'Role' }, { title: 'Cut', align: 'right' }, { title: 'Size' }, { title: 'Then' }, { title: 'For' }],
    pieces.map((line) => {
      const role = name.get(line.fabric) ?? line.fabric;
      return [
        role,
        String(line.count.value),
        cutSizeText(line),
        afterCutText(line),
        usedFor(line).replaceAll('Block A, ', ''),
      ];
    }),
  );
}
