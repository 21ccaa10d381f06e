import type { Finding, Level } from '../../shared/measure/finding.ts';
import { lineOf } from './place.ts';
import type { Source } from './source.ts';

const LEVELS: readonly (readonly [Level, string])[] = [
  ['stops', 'Does not fit'],
  ['look', 'Look again'],
  ['note', 'Note'],
];

/** Findings as text: the gravest first, each with its place in the file and how to mend it. Empty for none. */
export function findingsText(findings: readonly Finding[], source: Source): string {
  return LEVELS.flatMap(([level, title]) => {
    const own = findings.filter((finding) => finding.level === level);
    return own.length === 0 ? [] : [`${title}\n${own.map((finding) => findingText(finding, source)).join('\n')}`];
  }).join('\n\n');
}

function findingText({ what, where, mend }: Finding, { path, text }: Source): string {
  const line = where.path === '' ? null : lineOf(text, where.path);
  const place = [path, ...(line === null ? [] : [`line ${line}`]), ...(where.path === '' ? [] : [where.path])];
  const lines = [`  ${what}`, ...(mend === undefined ? [] : [`    ${mend}`]), `    ${place.join(', ')}`];
  return lines.join('\n');
}
