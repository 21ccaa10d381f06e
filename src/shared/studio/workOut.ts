import { assignLetters } from '../cloth/letters.ts';
import { blocks as stopped, type Finding } from '../measure/finding.ts';
import type { Pattern } from '../pattern/schema.ts';
import { checkPattern } from './checkPattern.ts';
import { methodFindings } from './sizeBlock.ts';
import { workBlocks } from './workBlocks.ts';
import type { WorkedOut, WorkedSize } from './workedOut.ts';
import { workSize } from './workSize.ts';

/**
 * Everything that follows from a pattern: its blocks drawn and pieced, every size laid out, cut, pressed and proved.
 * Never throws for a pattern that its schema accepts: what cannot be made is left out and told in the findings.
 */
export function workOut(pattern: Pattern): WorkedOut {
  const own = checkPattern(pattern);
  const { blocks, findings: drawn } = workBlocks(pattern);
  const methods = blocks.flatMap((block) => methodFindings(block, pattern));
  const findings: Finding[] = [...own, ...drawn, ...methods];
  const whole = blocks.length === pattern.blocks.length && !stopped(own);
  if (!whole) return { pattern, blocks, sizes: [], findings: atLeastOne(findings) };
  const letters = assignLetters(pattern, blocks);
  const sizes: WorkedSize[] = [];
  for (const size of pattern.sizes) {
    const worked = workSize(pattern, size, blocks, letters);
    if (worked.ok) sizes.push(worked.value);
    findings.push(...(worked.ok ? worked.value.findings : worked.findings));
  }
  return { pattern, blocks, sizes, findings };
}

/** A pattern of which nothing can be laid out has always a reason; this is the last one, should no other be told. */
function atLeastOne(findings: readonly Finding[]): readonly Finding[] {
  if (findings.length > 0) return findings;
  return [{ level: 'stops', what: 'The pattern has no block that can be drawn.', where: { path: 'blocks' } }];
}
