import type { Imported, Refusal } from '../../shared/contract.ts';
import { Refused } from '../state/host.ts';
import type { Notes } from '../state/notes.ts';

/** What became of one file. */
export type Outcome =
  | { readonly file: string; readonly came: Imported }
  | { readonly file: string; readonly refusal: Refusal };

type Came = Extract<Outcome, { came: Imported }>;
type NotTaken = Extract<Outcome, { refusal: Refusal }>;

/** So many files are told of one by one; of more there is a sum. */
const FEW = 3;
/** How many files that could not be taken are told in full. */
const TOLD = 5;

/** Says what came of files that were brought in, of `all` that were chosen. */
export function sayWhatCame(say: Pick<Notes, 'say' | 'sayWhy'>, outcomes: readonly Outcome[], all: number): void {
  const came = outcomes.filter((one): one is Came => 'came' in one);
  const not = outcomes.filter((one): one is NotTaken => 'refusal' in one);
  const stopped = not.find(({ refusal }) => refusal.kind === 'stopped');
  const refused = not.filter((one) => one !== stopped);
  if (all <= FEW) for (const one of came) say.say(`${one.file} is in the library${manyWords(one.came)}.`);
  else if (came.length > 0) say.say(`In the library from ${files(all)}: ${sumWords(came.map((one) => one.came))}.`);
  if (all <= FEW) for (const { refusal } of refused) say.sayWhy(new Refused(refusal));
  else if (refused.length > 0) say.say(`${files(refused.length)} could not be taken.`, toldOf(refused));
  if (stopped !== undefined) say.say(stoppedWords(stopped, came.length, all));
}

function files(many: number): string {
  return many === 1 ? '1 file' : `${many} files`;
}

function toldOf(refused: readonly NotTaken[]): { readonly tone: 'stops'; readonly more: readonly string[] } {
  const told = refused.slice(0, TOLD).map(({ refusal }) => refusal.words);
  const left = refused.length - TOLD;
  return { tone: 'stops', more: left > 0 ? [...told, `And ${files(left)} more.`] : told };
}

/** What a file of many recipes brought: ": 12 new recipes, 3 were here already". */
function manyWords(imported: Imported): string {
  if (imported.kind !== 'recipes') return '';
  const { ids, already } = imported;
  return `: ${newRecipes(ids.length)}${alreadyWords(already)}`;
}

function newRecipes(many: number): string {
  return many === 1 ? '1 new recipe' : `${many} new recipes`;
}

function alreadyWords(already: number): string {
  return already === 0 ? '' : `, ${already} ${already === 1 ? 'was' : 'were'} here already`;
}

/** "340 new recipes, 12 were here already, and 4 patterns". */
function sumWords(came: readonly Imported[]): string {
  const patterns = came.filter(({ kind }) => kind === 'pattern').length;
  const recipes = came.flatMap((one) => (one.kind === 'recipes' ? one.ids : one.kind === 'recipe' ? [one.id] : []));
  const already = came.reduce((sum, one) => sum + (one.kind === 'recipes' ? one.already : 0), 0);
  const both = [
    ...(recipes.length + already > 0 ? [`${newRecipes(recipes.length)}${alreadyWords(already)}`] : []),
    ...(patterns > 0 ? [patterns === 1 ? '1 pattern' : `${patterns} patterns`] : []),
  ];
  return both.join(', and ');
}

function stoppedWords({ file }: NotTaken, before: number, all: number): string {
  if (all === 1) return `Stopped. Nothing of ${file} was kept.`;
  const stays = before === 0 ? 'Nothing was kept' : `What came of ${files(before)} before it stays`;
  return `Stopped at ${file}. ${stays}; of it and the files after it nothing was kept.`;
}
