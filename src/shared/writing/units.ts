import { sceneFigure } from '../diagrams/sceneFigure.ts';
import { unitFigure } from '../diagrams/unitFigure.ts';
import { count } from '../measure/traced.ts';
import type { Block, Section, Step, Words } from './book.ts';
import { type Desk, fabricName } from './desk.ts';
import { type UnitGroup, type UnitInSize, unitGroups } from './unitGroups.ts';
import { alike, field, listed } from './words.ts';

/** Every unit that has to be made, step by step. Empty when the pattern is made of plain pieces only. */
export function units(desk: Desk): Section {
  return {
    id: 'units',
    title: 'Making the units',
    newPage: true,
    blocks: unitGroups(desk).flatMap((group) => unitBlocks(desk, group)),
  };
}

function unitBlocks(desk: Desk, group: UnitGroup): readonly Block[] {
  const methods = [...new Set(group.inSizes.map(({ sized }) => sized.method.id))];
  // A size may be given another method on purpose; then each method has its own steps and says which sizes it is for.
  return methods.flatMap((method): Block[] => {
    const its = group.inSizes.filter(({ sized }) => sized.method.id === method);
    const called = its[0]?.sized.method.name ?? '';
    const only = methods.length > 1 ? ` – ${listed(its.map(({ size }) => size.size.name))}` : '';
    return [
      { kind: 'heading', text: `${called}${only}` },
      { kind: 'words', tone: 'body', text: opening(desk, group) },
      desk.number(unitSteps(desk, group, its)),
    ];
  });
}

function opening(desk: Desk, group: UnitGroup): Words {
  const blocks = group.blocks.length === 1 ? `block ${group.blocks[0]}` : `blocks ${listed(group.blocks)}`;
  const pieces = group.letters.length === 1 ? `Piece ${group.letters[0]}` : `Pieces ${listed(group.letters)}`;
  const [one] = group.inSizes;
  const fabrics = [...new Set((one?.sized.plan.cuts ?? []).map(({ role }) => group.block.fabricOf[role] ?? role))];
  return [`For ${blocks}. ${pieces}: ${listed(fabrics.map((id) => fabricName(desk.pattern, id)))}.`];
}

function unitSteps(desk: Desk, group: UnitGroup, its: readonly UnitInSize[]): readonly Step[] {
  const shown = its.find(({ size }) => size === desk.shown) ?? (its[0] as UnitInSize);
  const { stages } = shown.sized.plan;
  return stages.map((stage, i): Step => {
    const last = i === stages.length - 1;
    const figures = [{ figure: sceneFigure(stage.scene, group.block.fabricOf) }];
    const words = stageWords(its, i);
    if (!last) return { words, figures };
    return {
      words,
      figures: [...figures, ...finished(group, shown)],
      perSize: made(its),
    };
  });
}

/** One sentence for all sizes where they run alike, else one for each size under its name. */
function stageWords(its: readonly UnitInSize[], stage: number): readonly Words[] {
  const sentences = its.map(({ sized }) => sized.plan.stages[stage]?.words ?? []);
  const together = alike(sentences);
  if (together !== null) return [together];
  return its.map(({ size }, i): Words => {
    const words = (sentences[i] ?? []).map((part) => (typeof part === 'string' ? part : field(part)));
    return [{ strong: `${size.size.name}: ` }, ...words];
  });
}

function made(its: readonly UnitInSize[]): NonNullable<Step['perSize']> {
  return {
    label: 'Make',
    values: its.map(({ size, needed }) => ({ size: size.size.name, value: count(needed, 'units') })),
  };
}

/** The finished unit, when its last stage does not end in the unit itself. */
function finished(group: UnitGroup, shown: UnitInSize): Step['figures'] {
  const grid = shown.size.blocks.find(({ id }) => id === group.block.id)?.grid ?? 1;
  return [{ figure: unitFigure(group.unit, grid, group.block.fabricOf), caption: ['Finished'] }];
}
