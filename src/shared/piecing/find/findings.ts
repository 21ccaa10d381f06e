import type { Box } from '../../drawing/turn.ts';
import type { Finding } from '../../measure/finding.ts';
import { type SeamCensus, shapeCensus } from '../census.ts';
import type { Part } from '../piecing.ts';
import type { LooseLeaf } from '../sub.ts';
import { childrenOf, isLeaf, leavesOf } from '../tree.ts';
import type { Pin } from './pins.ts';

/** What is hard about sewing a block, one finding for each kind of seam that is not sewn straight from edge to edge. */
export function seamFindings(root: Part<LooseLeaf>, path: string): readonly Finding[] {
  const rings = ringsOf(root);
  const units = leavesOf<LooseLeaf>(root).map(({ shape, box }) => ({ box, census: shapeCensus(shape) }));
  const inUnits = (seams: keyof SeamCensus) => units.flatMap(({ box, census }) => Array(census[seams]).fill(box));
  return [
    ...told([...rings, ...inUnits('partial')], path, 'note', PARTIAL),
    ...told(inUnits('setIn'), path, 'look', SET_IN),
    ...told(inUnits('curved'), path, 'note', CURVED),
  ];
}

interface Words {
  readonly one: string;
  readonly more: string;
  readonly why: string;
}

const PARTIAL: Words = {
  one: 'One seam is a partial seam',
  more: 'seams are partial seams',
  why: 'its parts lie round a middle, and no straight seam runs from edge to edge.',
};
const SET_IN: Words = {
  one: 'One seam has to be set in',
  more: 'seams have to be set in',
  why: 'no straight seam runs from edge to edge, and no parts lie round a middle.',
};
const CURVED: Words = { one: 'One seam is curved', more: 'seams are curved', why: 'the drawing has an arc there.' };

function told(places: readonly Box[], path: string, level: Finding['level'], words: Words): readonly Finding[] {
  const [box] = places;
  if (box === undefined) return [];
  const many = places.length === 1 ? words.one : `${places.length} ${words.more}`;
  return [{ level, what: `${many}: ${words.why}`, where: { path, box } }];
}

function ringsOf(part: Part<LooseLeaf>): readonly Box[] {
  if (isLeaf<LooseLeaf>(part)) return [];
  const inside = childrenOf<LooseLeaf>(part).flatMap(ringsOf);
  return part.kind === 'ring' ? [part.box, ...inside] : inside;
}

/** A pin that no plan can keep. */
export function unkeptFinding({ first }: Pin, path: string): Finding {
  const what =
    first === undefined
      ? 'What lies between these two corners cannot be one unit: a patch sticks out of it, or a seam runs through it.'
      : 'This seam cannot be the last one of its part: no straight seam runs along it from edge to edge.';
  return { level: 'look', what, where: { path }, mend: 'Take the pin away, or pin another place.' };
}
