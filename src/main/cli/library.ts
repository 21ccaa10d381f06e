import type { RecipeCard } from '../../shared/contract.ts';
import { type FacetTerm, filtersIn } from '../../shared/workroom/facetTerms.ts';
import { openService } from '../openService.ts';
import { Refused } from '../refusal.ts';
import type { Service } from '../service.ts';
import { EXIT } from './exit.ts';
import { jsonText } from './json.ts';
import { readSource } from './source.ts';
import { tableText } from './table.ts';
import type { Terminal } from './terminal.ts';
import { checkFolder, writeFiles } from './writeFiles.ts';

/** Asks the library in the user's data folder; what goes wrong with what came with the program is told, and not in the way. */
async function withLibrary<T>(terminal: Terminal, work: (service: Service) => Promise<T>): Promise<T> {
  const service = openService('browser', (error) => {
    terminal.complain(error instanceof Error ? error.message : String(error));
  });
  try {
    return await work(service);
  } finally {
    await service.close();
  }
}

/** `piecewright library find [WORDS…] --with CHOICE…`: the recipes that match. */
export async function runFind(
  words: readonly string[],
  choices: readonly string[],
  json: boolean,
  terminal: Terminal,
): Promise<number> {
  const facets = choices.map(termOf);
  const found = await withLibrary(terminal, (service) => service.recipes({ words: words.join(' '), facets }));
  if (json) terminal.say(jsonText({ recipes: found.map(asJson) }));
  else terminal.say(found.length === 0 ? 'No recipe like that.' : tableOf(found));
  return EXIT.fine;
}

function asJson({ id, name, tags, starter, revision, usedIn }: RecipeCard): object {
  return { id, name, tags, starter, revision, usedIn };
}

function tableOf(found: readonly RecipeCard[]): string {
  const columns = [{ title: 'Id' }, { title: 'Name' }, { title: 'Tags' }, { title: 'Used in' }];
  return tableText(
    columns,
    found.map(({ id, name, tags, usedIn }) => [id, name, tags.join(', '), usedIn.join(', ')]),
  );
}

/** The terminal is not inside a pattern: it is asked for widths in inches or in centimetres. */
const EITHER_RULER = [...filtersIn('inches'), ...filtersIn('centimetres').filter(({ id }) => id === 'size')];

/** A choice of a filter, named as the studio names it or by its term. */
function termOf(choice: string): FacetTerm {
  const all = EITHER_RULER.flatMap(({ choices }) => choices);
  const plain = (text: string) =>
    text
      .toLowerCase()
      .replace(/[″"\s-]+/g, ' ')
      .trim();
  const found = all.find(({ term, name }) => term === choice || plain(name) === plain(choice));
  if (found !== undefined) return found.term;
  const names = EITHER_RULER.map(({ name, choices }) => `${name}: ${choices.map((one) => one.name).join(', ')}`);
  throw new Refused('bad-input', `The library cannot be asked for “${choice}”. It knows:\n${names.join('\n')}`);
}

/** `piecewright library bring FILE…`: patterns, recipes and files of recipes into the library; a wrong file ends it. */
export async function runBring(files: readonly string[], json: boolean, terminal: Terminal): Promise<number> {
  const sources = files.map(readSource);
  const brought = await withLibrary(terminal, async (service) => {
    const all: object[] = [];
    for (const { path, text } of sources) all.push({ file: path, ...(await service.importFile({ name: path, text })) });
    return all;
  });
  terminal.say(json ? jsonText({ brought }) : files.map((file) => `${file} is in the library.`).join('\n'));
  return EXIT.fine;
}

/** `piecewright library give [ID…] --out DIR`: a file of these recipes, or of the whole library, and of all they hold. */
export async function runGive(ids: readonly string[], out: string, json: boolean, terminal: Terminal): Promise<number> {
  checkFolder(out);
  const { name, text } = await withLibrary(terminal, async (service) => {
    const all = ids.length > 0 ? ids : (await service.recipes({ words: '' })).map(({ id }) => id);
    return service.exportRecipes(all);
  });
  const written = await writeFiles(out, new Map([[name, new TextEncoder().encode(text)]]));
  terminal.say(json ? jsonText({ written }) : written.join('\n'));
  return EXIT.fine;
}
