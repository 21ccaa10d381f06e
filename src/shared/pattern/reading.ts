import { type ParseError, parse as parseJson } from 'jsonc-parser';
import type { z } from 'zod';
import { accept, type Finding, type Maybe } from '../measure/finding.ts';
import { RECIPE_FORMAT, RECIPES_FORMAT, recipeSchema, recipesFileSchema } from '../recipe/schema.ts';
import { DEEPEST, firstTooDeep } from './depth.ts';
import { pathText, schemaFindings } from './issues.ts';
import { migrate, migrations } from './migrations/index.ts';
import type { Loose, Migration } from './migrations/migration.ts';
import { PATTERN_FORMAT, patternSchema } from './schema.ts';

/** Why a text is not taken: it is wrong, or only a newer program can read it. */
export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly findings: readonly Finding[]; readonly newer: boolean };

/** A kind of document: what it calls itself, and how it is read. */
export interface Kind<Schema extends z.ZodType> {
  readonly format: string;
  readonly called: string;
  readonly newest: number;
  readonly schema: Schema;
  readonly steps: readonly Migration[];
}

export const PATTERN: Kind<typeof patternSchema> = {
  format: 'piecewright-pattern',
  called: 'pattern',
  newest: PATTERN_FORMAT,
  schema: patternSchema,
  steps: migrations.pattern,
};

export const RECIPE: Kind<typeof recipeSchema> = {
  format: 'piecewright-recipe',
  called: 'recipe',
  newest: RECIPE_FORMAT,
  schema: recipeSchema,
  steps: migrations.recipe,
};

/** A file of many recipes; each of them is read by itself, so that what is wrong with it is told by its name. */
export const RECIPES: Kind<typeof recipesFileSchema> = {
  format: 'piecewright-recipes',
  called: 'file of recipes',
  newest: RECIPES_FORMAT,
  schema: recipesFileSchema,
  steps: [],
};

/** A document of one kind from the text of a file. */
export function readText<Schema extends z.ZodType>(text: string, kind: Kind<Schema>): Reading<z.output<Schema>> {
  const parsed = parse(text);
  return parsed.ok ? readValue(parsed.value, kind) : wrong(parsed.findings);
}

/**
 * A document of one kind from a value that was read from a file.
 * @param at where the value stands in the file
 */
export function readValue<Schema extends z.ZodType>(
  value: unknown,
  kind: Kind<Schema>,
  at: readonly PropertyKey[] = [],
): Reading<z.output<Schema>> {
  const opened = open(value, kind, at);
  if (!opened.ok) return opened;
  const checked = kind.schema.safeParse(migrate(opened.value, kind.steps, kind.newest), { reportInput: true });
  return checked.success ? accept(checked.data) : wrong(schemaFindings(checked.error.issues, at));
}

/** A reading that was refused. */
export function wrong(findings: readonly Finding[], newer = false): Extract<Reading<never>, { ok: false }> {
  return { ok: false, findings, newer };
}

/** Whether a value is an entry in { }. */
export function isRecord(value: unknown): value is Loose {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The value a text of JSON holds; a byte order mark is passed over. */
export function parse(text: string): Maybe<unknown> {
  // A byte order mark is how some editors begin a file; it says nothing.
  const bare = text.replace(/^\uFEFF/, '');
  const deep = firstTooDeep(bare);
  if (deep !== null) return { ok: false, findings: [stops(tooDeep(bare, deep), '')] };
  const errors: ParseError[] = [];
  const value: unknown = parseJson(bare, errors, { disallowComments: true, allowEmptyContent: false });
  const [first] = errors;
  if (first === undefined) return accept(value);
  return { ok: false, findings: [stops(notJson(bare, first.offset), '')] };
}

function notJson(text: string, offset: number): string {
  if (text.trim() === '') return 'The file is empty.';
  if (text.trimStart().startsWith('<')) {
    return 'This is neither a pattern nor a recipe: it begins with “<”, as drawings (SVG) and web pages do. Draw the block in the studio, or write its corners.';
  }
  return `This is not JSON: it stops making sense at ${spotText(text, offset)}.`;
}

function tooDeep(text: string, offset: number): string {
  return `This is no file of ours: entries lie more than ${DEEPEST} deep in one another at ${spotText(text, offset)}.`;
}

function spotText(text: string, offset: number): string {
  const lines = text.slice(0, offset).split('\n');
  return `line ${lines.length}, letter ${(lines.at(-1) ?? '').length + 1}`;
}

function open<Schema extends z.ZodType>(
  value: unknown,
  kind: Kind<Schema>,
  at: readonly PropertyKey[],
): Reading<Loose> {
  const place = (name: string) => pathText([...at, name]);
  if (!isRecord(value))
    return wrong([stops(`This is not a ${kind.called}: it must be one entry in { }.`, pathText(at))]);
  if (value.format !== kind.format) {
    const says =
      typeof value.format === 'string'
        ? `it says it is “${value.format}”, not “${kind.format}”.`
        : `nothing in it says what it is. Ours begin with “format”: “${kind.format}”.`;
    return wrong([stops(`This is not a ${kind.called}: ${says}`, place('format'))]);
  }
  const version = value.version;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return wrong([stops('The version must be a whole number from 1.', place('version'))]);
  }
  if (version <= kind.newest) {
    // Which schema a text editor holds the file against is no part of the document.
    const { $schema: _schema, ...document } = value;
    return accept(document);
  }
  const what = `This ${kind.called} was saved by a newer Piecewright (format ${version}; this one reads up to ${kind.newest}).`;
  return wrong(
    [{ ...stops(what, place('version')), mend: 'Update Piecewright and open it again; the file is as it was.' }],
    true,
  );
}

/** A finding that stops the reading. */
export function stops(what: string, path: string): Finding {
  return { level: 'stops', what, where: { path } };
}
