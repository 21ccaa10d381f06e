import { assignLetters } from '../cloth/letters.ts';
import { fitPrints } from '../fit/fitPrints.ts';
import { fitValues } from '../fit/fitValues.ts';
import { anyStops, type Finding } from '../measure/finding.ts';
import { type Steps, toTheEnd } from '../measure/steps.ts';
import type { Pattern } from '../pattern/schema.ts';
import { asSewn, assemblyOf } from './assembly.ts';
import { withBundlesInSteps } from './bundles.ts';
import { checkPattern } from './checkPattern.ts';
import { methodFindings } from './sizeBlock.ts';
import { workBlocksInSteps } from './workBlocks.ts';
import type { Assembly, WorkedOut, WorkedSize } from './workedOut.ts';
import { type LaidSize, laySize, workSize } from './workSize.ts';

/**
 * Everything that follows from a pattern: its blocks drawn and pieced, every size laid out, cut, pressed and proved.
 * Never throws for a pattern that its schema accepts: what cannot be made is left out and told in the findings.
 */
export function workOut(pattern: Pattern): WorkedOut {
  return toTheEnd(workOutInSteps(pattern));
}

/** The same, block by block and size by size. */
export function* workOutInSteps(pattern: Pattern): Steps<WorkedOut> {
  const all = pattern.blocks.length + 3 * pattern.sizes.length;
  let done = 0;
  const next = (doing: string) => ({ doing, done: done++, of: all });
  const own = checkPattern(pattern);
  const { blocks, findings: drawn } = yield* workBlocksInSteps(pattern, ({ id }) => next(`Block ${id}`));
  const methods = blocks.flatMap((block) => methodFindings(block, pattern));
  const values = fitValues(
    pattern,
    blocks.map(({ id, piecing, fabricOf }) => ({ id, drawing: piecing.drawing, fabricOf })),
  );
  const findings: Finding[] = [...own, ...drawn, ...methods, ...values];
  const whole = blocks.length === pattern.blocks.length && !anyStops(own);
  if (!whole) return { pattern, blocks, assembly: NOT_SEWN, sizes: [], findings: atLeastOne(findings) };
  const assembly = assemblyOf(pattern, blocks);
  const sewn = asSewn(pattern, assembly);
  const fabricOf = Object.fromEntries(blocks.map((block) => [block.id, block.fabricOf]));
  const laid: LaidSize[] = [];
  for (const size of pattern.sizes) {
    yield next(size.name);
    const one = laySize(sewn, size, blocks);
    if (one.ok) laid.push(one.value);
    else findings.push(...one.findings);
  }
  findings.push(...fitPrints(pattern, blocks, laid));
  const letters = assignLetters(pattern, laid, fabricOf);
  const cut: WorkedSize[] = [];
  for (const one of laid) {
    yield next(one.size.name);
    cut.push(workSize(sewn, one, fabricOf, letters));
  }
  const sizes = yield* withBundlesInSteps({ pattern, blocks, sizes: cut }, ({ size }) => next(size.name));
  findings.push(...sizes.flatMap((size) => size.findings));
  return { pattern, blocks, assembly, sizes, findings };
}

/** Of a pattern that cannot be laid out at all. */
const NOT_SEWN: Assembly = { way: 'rows', pinned: false, why: 'There is nothing to sew yet.' };

/** A pattern of which nothing can be laid out has always a reason; this is the last one, should no other be told. */
function atLeastOne(findings: readonly Finding[]): readonly Finding[] {
  if (findings.length > 0) return findings;
  return [{ level: 'stops', what: 'The pattern has no block that can be drawn.', where: { path: 'blocks' } }];
}
