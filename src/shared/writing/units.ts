import { sceneFigure } from '../diagrams/sceneFigure.ts';
import { unitFigure } from '../diagrams/unitFigure.ts';
import { count } from '../measure/traced.ts';
import { type Told, tell } from './again.ts';
import type { Block, Section, Step, Words } from './book.ts';
import { type Desk, fabricName, namesOf, perSize } from './desk.ts';
import { type UnitGroup, type UnitInSize, unitGroups } from './unitGroups.ts';
import { alike, field, inSizes, listed } from './words.ts';

/** Every unit that has to be made, step by step. Empty when the pattern is made of plain pieces only. */
export function units(desk: Desk): Section {
  const told = tell();
  return {
    id: 'units',
    title: 'Making the units',
    newPage: true,
    blocks: unitGroups(desk).flatMap((group) => unitBlocks(desk, group, told)),
  };
}

function unitBlocks(desk: Desk, group: UnitGroup, told: Told): readonly Block[] {
  const methods = [...new Set(group.inSizes.map(({ sized }) => sized.method.id))];
  // A size may be given another method on purpose; then each method has its own steps and says which sizes it is for.
  return methods.flatMap((method): Block[] => {
    const its = group.inSizes.filter(({ sized }) => sized.method.id === method);
    const called = its[0]?.sized.method.name ?? '';
    const only = methods.length > 1 ? ` – ${listed(its.map(({ size }) => size.size.name))}` : '';
    return [
      { kind: 'heading', text: `${called}${only}` },
      { kind: 'words', tone: 'body', text: opening(desk, group) },
      numbered(desk, method, unitSteps(desk, group, its), told),
    ];
  });
}

function numbered(desk: Desk, method: string, steps: readonly Step[], told: Told): Block {
  const shortened = told.shorten(method, steps);
  const block = desk.number(shortened);
  if (shortened === steps) told.keep(method, steps, block.firstNumber);
  return block;
}

function opening(desk: Desk, group: UnitGroup): Words {
  const blocks = group.blocks.length === 1 ? `block ${group.blocks[0]}` : `blocks ${listed(group.blocks)}`;
  const pieces = group.letters.length === 1 ? `Piece ${group.letters[0]}` : `Pieces ${listed(group.letters)}`;
  const [one] = group.inSizes;
  const fabrics = [...new Set((one?.sized.plan.cuts ?? []).map(({ role }) => group.block.fabricOf[role] ?? role))];
  const { templates = [], foundations = [] } = one?.sized.plan ?? {};
  const printed = templates.length > 0 ? ' Its templates are' : foundations.length > 0 ? ' Its papers are' : '';
  const where = printed === '' ? '' : `${printed} on pages of their own, at true size.`;
  return [`For ${blocks}. ${pieces}: ${listed(fabrics.map((id) => fabricName(desk.pattern, id)))}.${where}`];
}

function unitSteps(desk: Desk, group: UnitGroup, its: readonly UnitInSize[]): readonly Step[] {
  const shown = its.find(({ size }) => size === desk.shown) ?? (its[0] as UnitInSize);
  const { stages } = shown.sized.plan;
  return stages.map((stage, i): Step => {
    const last = i === stages.length - 1;
    const figures = [{ figure: sceneFigure(stage.scene, group.block.fabricOf) }];
    const words = stageWords(desk, its, i);
    if (!last) return { words, figures, ...(i === 0 ? stripSets(desk, group, its) : {}) };
    return {
      words: [...words, ...reversed(desk, group, its)],
      figures: [...figures, ...finished(group, shown)],
      perSize: made(desk, its),
    };
  });
}

/** One sentence for all sizes where they run alike, else one for each size under its name. */
function stageWords(desk: Desk, its: readonly UnitInSize[], stage: number): readonly Words[] {
  const sentences = its.map(({ sized }) => sized.plan.stages[stage]?.words ?? []);
  const sizes = its.map(({ size }) => size);
  const together = alike(sentences, namesOf(desk, sizes));
  if (together !== null) return [together];
  return its.map(({ size }, i): Words => {
    const words = (sentences[i] ?? []).map((part) => (typeof part === 'string' ? part : field(part)));
    return [{ strong: `${size.size.name}: ` }, ...words];
  });
}

/** Of a unit that is another in the mirror: how many go into reversed blocks. */
function reversed(desk: Desk, group: UnitGroup, its: readonly UnitInSize[]): readonly Words[] {
  if (its.every((one) => one.reversed === 0)) return [];
  const many = its.map((one) => count(one.reversed, 'reversed'));
  const sizes = its.map(({ size }) => size);
  const blocks = group.blocks.map((letter) => `${letter}r`);
  const one = blocks.length === 1 ? `block ${blocks[0]}` : `blocks ${listed(blocks)}`;
  return [
    ['Of these, make ', ...inSizes(many, namesOf(desk, sizes)), ` as the mirror image, left for right, for ${one}.`],
  ];
}

/** How many strip sets are sewn in all, when these units are all that is cut from them. */
function stripSets(desk: Desk, group: UnitGroup, its: readonly UnitInSize[]): Pick<Step, 'perSize'> {
  const isMember = (use: { readonly block: string | null; readonly unit: string }) =>
    group.members.some(({ block, unit }) => block === use.block && unit === use.unit);
  const sets = its.flatMap(({ size }) => {
    const line = size.cloth.pieces.find(({ subCut, use }) => subCut !== undefined && use.some(isMember));
    if (line?.subCut === undefined || !line.use.every(isMember)) return [];
    return [[size, line.subCut.sets] as const];
  });
  return sets.length === 0 || sets.length < its.length ? {} : { perSize: perSize(desk, 'Strip sets', sets) };
}

function made(desk: Desk, its: readonly UnitInSize[]): NonNullable<Step['perSize']> {
  const counts = its.map(({ size, needed }) => [size, count(needed, 'units')] as const);
  return perSize(desk, 'Make', counts);
}

/** The finished unit, when its last stage does not end in the unit itself. */
function finished(group: UnitGroup, shown: UnitInSize): Step['figures'] {
  const grid = shown.size.blocks.find(({ id }) => id === group.block.id)?.grid ?? 1;
  return [{ figure: unitFigure(group.unit, grid, group.block.fabricOf), caption: ['Finished'] }];
}
