import type { z } from 'zod';
import type { Finding } from '../measure/finding.ts';

type Issue = z.core.$ZodIssue;

/** A place in a document as a person would write it: `sizes[1].borders.rope`. */
export function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    const name = String(step);
    const plain = /^[A-Za-z][\w-]*$/.test(name);
    if (!plain) return `${text}["${name}"]`;
    return text === '' ? name : `${text}.${name}`;
  }, '');
}

/**
 * What a schema has against a document, each as a sentence with its place. Never empty for a failed check.
 * @param at where the document stands in its file
 */
export function schemaFindings(issues: readonly Issue[], at: readonly PropertyKey[] = []): readonly Finding[] {
  return issues.map(deepest).map((issue) => {
    const path = pathText([...at, ...issue.path]);
    return { level: 'stops', what: `${path === '' ? 'The file' : path} ${problem(issue)}.`, where: { path } };
  });
}

/**
 * Of a choice between several forms, the complaint of the form that the document came nearest to: the one whose first
 * complaint lies deepest and that has the fewest.
 */
function deepest(issue: Issue): Issue {
  if (issue.code !== 'invalid_union' || issue.errors.length === 0) return issue;
  const branches = issue.errors.map((branch) => branch.map((inner) => deepest(inner as Issue)));
  const weight = (branch: readonly Issue[]) =>
    (branch.some(saysAnother) ? ANOTHER : 0) + branch.filter(strange).length * 100 + branch.length;
  const [best] = [...branches].sort((a, b) => weight(a) - weight(b));
  const [first] = [...(best ?? [])].sort((a, b) => b.path.length - a.path.length);
  return first === undefined ? issue : { ...first, path: [...issue.path, ...first.path] };
}

/** More than any number of complaints weighs. */
const ANOTHER = 1e9;

/** Whether the document says outright that it is of another form. */
function saysAnother(issue: Issue): boolean {
  return issue.code === 'invalid_value' && issue.path.length === 1 && issue.path[0] === 'kind';
}

/** Complaints that say the document was not meant to be of this form at all. */
function strange(issue: Issue): boolean {
  return (
    issue.code === 'unrecognized_keys' ||
    issue.code === 'invalid_value' ||
    (issue.code === 'invalid_type' && issue.path.length === 0)
  );
}

const KINDS: Readonly<Record<string, string>> = {
  string: 'words in quotes',
  number: 'a number',
  int: 'a whole number',
  array: 'a list in [ ]',
  object: 'an entry in { }',
  record: 'an entry in { }',
  boolean: 'true or false',
  tuple: 'a list in [ ]',
};

function problem(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return 'input' in issue && issue.input === undefined && !('received' in issue)
        ? `is missing: it must be ${KINDS[issue.expected] ?? issue.expected}`
        : `must be ${KINDS[issue.expected] ?? issue.expected}`;
    case 'unrecognized_keys':
      return `has ${issue.keys.map((key) => `“${key}”`).join(', ')}, which does not belong there`;
    case 'invalid_value':
      return `must be ${issue.values.map((value) => `“${String(value)}”`).join(' or ')}`;
    case 'too_small':
      if (issue.minimum === 1 && measureOf(issue.origin) !== '') return 'must not be empty';
      return `must be ${issue.inclusive === false ? 'more than' : 'at least'} ${issue.minimum}${measureOf(issue.origin)}`;
    case 'too_big':
      return `must be ${issue.inclusive === false ? 'less than' : 'at most'} ${issue.maximum}${measureOf(issue.origin)}`;
    case 'invalid_key':
      return `has a name that cannot be used here${keyReason(issue.issues as readonly Issue[])}`;
    case 'invalid_format':
      return formatText(issue);
    case 'custom':
      return issue.message;
    default:
      return 'is not what belongs there';
  }
}

function keyReason(issues: readonly Issue[]): string {
  const [first] = issues;
  return first === undefined ? '' : `: it ${problem(first)}`;
}

function measureOf(origin: string): string {
  if (origin === 'array') return ' long';
  return origin === 'string' ? ' letters long' : '';
}

function formatText(issue: Extract<Issue, { code: 'invalid_format' }>): string {
  if (issue.format === 'date') return 'must be a date such as 2026-05-01';
  // The schemas say in their own words what a name must look like: "use small letters, digits and hyphens".
  return issue.message.startsWith('Invalid') ? 'is not written as it must be' : `cannot be read: ${issue.message}`;
}
