import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Database } from 'better-sqlite3';
import type { Finding } from '../../shared/measure/finding.ts';
import type { Reading } from '../../shared/pattern/load.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import type { Reader } from '../reader.ts';
import type { Patterns } from './patterns.ts';
import type { Recipes } from './recipes.ts';

/** A file that comes with the program: its name, for messages, and its text. */
export interface StarterFile {
  readonly name: string;
  readonly text: string;
}

/** What a first start puts into an empty library. */
export interface StarterFiles {
  readonly recipes: readonly StarterFile[];
  readonly demo: readonly StarterFile[];
}

/** The starter recipes and the demo in the program's `resources` folder; none where a folder is not there. */
export function starterFiles(resources: string): StarterFiles {
  return {
    recipes: filesIn(join(resources, 'recipes'), '.recipe.json'),
    demo: filesIn(join(resources, 'demo'), '.pattern.json'),
  };
}

function filesIn(folder: string, ending: string): readonly StarterFile[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => name.endsWith(ending))
    .sort()
    .map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') }));
}

/** What has been put in before, so that what the designer removed or changed stays as she left it. */
export interface Starters {
  /**
   * Puts in what has never been put in. A starter recipe that a new program brings changed replaces the old one unless
   * the designer has saved it herself; a demo is put in once and never touched again. Answers what could not be read.
   */
  putIn(files: StarterFiles, reader: Reader): readonly Finding[];
  /** The id of the first demo that is still kept. */
  demo(): string | null;
}

export function startersIn(database: Database, patterns: Patterns, recipes: Recipes): Starters {
  const ledger = ledgerIn(database);
  const put = database.transaction((files: StarterFiles, reader: Reader): readonly Finding[] => [
    ...files.recipes.flatMap((file) =>
      putOne(ledger, 'recipe', file, reader.recipe, (recipe) => putRecipe(recipe, ledger, recipes)),
    ),
    ...files.demo.flatMap((file) =>
      putOne(ledger, 'demo', file, reader.pattern, (pattern) => putDemo(pattern, ledger, patterns)),
    ),
  ]);
  const demos = database
    .prepare<[], string>("SELECT id FROM starter WHERE kind = 'demo' AND id IN (SELECT id FROM pattern) ORDER BY id")
    .pluck();
  return {
    putIn: (files, reader) => {
      // A start that brings nothing new writes nothing.
      const known =
        files.recipes.every((file) => ledger.knows('recipe', file)) &&
        files.demo.every((file) => ledger.knows('demo', file));
      return known ? [] : put.immediate(files, reader);
    },
    demo: () => demos.get() ?? null,
  };
}

function putOne<T extends { readonly id: string }>(
  ledger: Ledger,
  kind: Kind,
  file: StarterFile,
  read: (text: string) => Reading<T>,
  keep: (document: T) => void,
): readonly Finding[] {
  if (ledger.knows(kind, file)) return [];
  const document = read(file.text);
  if (!document.ok) return document.findings.map((finding) => ({ ...finding, what: `${file.name}: ${finding.what}` }));
  keep(document.value);
  ledger.note(kind, document.value.id, file);
  return [];
}

function putRecipe(recipe: Recipe, ledger: Ledger, recipes: Recipes): void {
  const kept = recipes.read(recipe.id);
  // Kept and no starter: the designer's own. Not kept but once put in: she removed it.
  const hers = kept === null ? ledger.holds('recipe', recipe.id) : !kept.starter;
  if (!hers) recipes.save(recipe, true);
}

function putDemo(pattern: Pattern, ledger: Ledger, patterns: Patterns): void {
  if (!ledger.holds('demo', pattern.id) && !patterns.has(pattern.id)) patterns.save(pattern, null);
}

type Kind = 'recipe' | 'demo';

/** Which files have been put in, by id and by the hash of their text. */
interface Ledger {
  knows(kind: Kind, file: StarterFile): boolean;
  holds(kind: Kind, id: string): boolean;
  note(kind: Kind, id: string, file: StarterFile): void;
}

function ledgerIn(database: Database): Ledger {
  const knows = database.prepare<[string, string], number>('SELECT 1 FROM starter WHERE kind = ? AND hash = ?').pluck();
  const holds = database.prepare<[string, string], number>('SELECT 1 FROM starter WHERE kind = ? AND id = ?').pluck();
  const note = database.prepare(`
    INSERT INTO starter (kind, id, hash) VALUES (?, ?, ?) ON CONFLICT (kind, id) DO UPDATE SET hash = excluded.hash`);
  return {
    knows: (kind, file) => knows.get(kind, hashOf(file.text)) !== undefined,
    holds: (kind, id) => holds.get(kind, id) !== undefined,
    note: (kind, id, file) => {
      note.run(kind, id, hashOf(file.text));
    },
  };
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
