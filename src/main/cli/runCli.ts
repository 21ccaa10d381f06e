import { Command, CommanderError, InvalidArgumentError, Option } from 'commander';
import { knownRefusal } from '../refusal.ts';
import type { CutWishes } from './cut.ts';
import { EXIT } from './exit.ts';
import { ownVersion } from './program.ts';
import type { PublishWishes } from './publish.ts';
import type { SizeWishes } from './sizes.ts';
import type { Terminal } from './terminal.ts';

/**
 * Runs one command line and answers its exit code. What goes wrong is told once, on the terminal's other stream, and
 * nothing is written then.
 * @param args the words after the program's name
 */
export async function runCli(args: readonly string[], terminal: Terminal): Promise<number> {
  let code: number = EXIT.fine;
  const program = commands(terminal, (ended) => {
    code = ended;
  });
  try {
    await program.parseAsync([...args], { from: 'user' });
    return code;
  } catch (error) {
    return failed(error, terminal);
  }
}

function failed(error: unknown, terminal: Terminal): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.fine : EXIT.badInput;
  const refusal = knownRefusal(error);
  if (refusal !== null) {
    terminal.complain(refusal.words);
    return EXIT.badInput;
  }
  terminal.complain(`Piecewright met something it did not expect; nothing of yours was changed.\n${traceOf(error)}`);
  return EXIT.bug;
}

function traceOf(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}

type Ended = (code: number) => void;

/** `--json`, which every command knows. */
interface Wishes {
  readonly json?: true;
}

function commands(terminal: Terminal, ended: Ended): Command {
  const program = new Command('piecewright')
    .description('Quilt patterns that fit, from files written by hand or saved by the studio.')
    .version(ownVersion(), '--version', 'the version of this program')
    .helpOption('-h, --help', 'this help')
    .exitOverride()
    .showHelpAfterError('Ask for the commands with “piecewright --help”.')
    .configureOutput({
      writeOut: (text) => terminal.say(text.trimEnd()),
      writeErr: (text) => terminal.complain(text.trimEnd()),
      getOutHelpWidth: () => terminal.width,
      getErrHelpWidth: () => terminal.width,
    })
    .addHelpText('after', '\nExit codes: 0 fine, 1 findings that stop publishing, 2 bad input or usage.');
  addFit(program, terminal, ended);
  addCut(program, terminal, ended);
  addSizes(program, terminal, ended);
  addRecipe(program, terminal, ended);
  addPlan(program, terminal, ended);
  addLibrary(program, terminal, ended);
  addPublish(program, terminal, ended);
  addKit(program, terminal, ended);
  addFigures(program, terminal, ended);
  addDemo(program, terminal, ended);
  return program;
}

function add(program: Command, name: string, description: string): Command {
  return program.command(name).description(description).option('--json', 'the answer as JSON');
}

function addFit(program: Command, terminal: Terminal, ended: Ended): void {
  add(program, 'fit', 'whether a pattern fits in every size, and what does not')
    .argument('<file>', 'a .pattern.json')
    .action(async (file: string, { json }: Wishes) => {
      const { runFit } = await import('./fit.ts');
      ended(runFit(file, json === true, terminal));
    });
}

function addCut(program: Command, terminal: Terminal, ended: Ended): void {
  add(program, 'cut', 'what is cut for every size, and the cloth it takes')
    .argument('<file>', 'a .pattern.json')
    .option('--bundle [words]', 'from a bundle of strips: is one enough, and what breaks first; “24 light 16 dark”')
    .option('--seconds <seconds>', 'prove that the plans are the shortest: how long each may take', secondsOf)
    .action(async (file: string, { json, ...wishes }: Wishes & CutWishes) => {
      const { runCut } = await import('./cut.ts');
      ended(await runCut(file, wishes, json === true, terminal));
    });
}

function addSizes(program: Command, terminal: Terminal, ended: Ended): void {
  add(program, 'sizes', 'the best sizes of a pattern for a bed, two numbers or one bundle, with their reasons')
    .argument('<file>', 'a .pattern.json')
    .option('--target <size>', 'a width and a height: 60x80, or 150x200cm; without a unit, as the ruler measures')
    .option('--bed <mattress>', 'a mattress of the tables that come with the program, such as queen')
    .option('--beds <file>', 'a table of mattresses of your own')
    .option('--drop <length>', 'how far it hangs over both sides and the foot')
    .option('--tuck <length>', 'how much is tucked about the pillows')
    .option('--bundle', 'instead: the largest that one bundle of its strips is enough for')
    .option('--most <number>', 'how many sizes to tell', '8')
    .action(async (file: string, { json, ...wishes }: Wishes & SizeWishes) => {
      const { runSizes } = await import('./sizes.ts');
      ended(runSizes(file, wishes, json === true, terminal));
    });
}

function addRecipe(program: Command, terminal: Terminal, ended: Ended): void {
  add(program, 'recipe', 'the units, seams and cut sizes of block recipes')
    .argument('<files...>', 'one or more .recipe.json or .recipes.json; a file may hold a list of recipes')
    .action(async (files: string[], { json }: Wishes) => {
      const { runRecipe } = await import('./recipe.ts');
      ended(runRecipe(files, json === true, terminal));
    });
}

function addPlan(program: Command, terminal: Terminal, ended: Ended): void {
  add(program, 'plan', 'bare cutting problems: cloth and a list of pieces, or stock and a list of lengths')
    .argument('<file>', 'a .json of one problem or a list of them')
    .option('--seconds <seconds>', 'how long the proof of one problem may take', secondsOf, 5)
    .action(async (file: string, { seconds, json }: Wishes & { readonly seconds: number }) => {
      const { runPlan } = await import('./plan.ts');
      ended(await runPlan(file, seconds, json === true, terminal));
    });
}

const LONGEST = 3600;

function secondsOf(text: string): number {
  const seconds = Number(text);
  if (text.trim() !== '' && seconds >= 0 && seconds <= LONGEST) return seconds;
  throw new InvalidArgumentError(`Write a number of seconds from 0 to ${LONGEST}.`);
}

function addLibrary(program: Command, terminal: Terminal, ended: Ended): void {
  const library = program.command('library').description('the recipes kept in your data folder (PIECEWRIGHT_HOME)');
  add(library, 'find', 'recipes by words and by how they are made')
    .argument('[words...]', 'beginnings of words of the name, the tags or the summary')
    .option('--with <choices...>', 'such as “nine-patch”, “9”, “Flying geese”, “Curves”')
    .action(async (words: string[], options: Wishes & { readonly with?: readonly string[] }) => {
      const { runFind } = await import('./library.ts');
      ended(await runFind(words, options.with ?? [], options.json === true, terminal));
    });
  add(library, 'bring', 'recipes and patterns from files into the library')
    .argument('<files...>', 'a .recipe.json, .recipes.json or .pattern.json')
    .action(async (files: string[], { json }: Wishes) => {
      const { runBring } = await import('./library.ts');
      ended(await runBring(files, json === true, terminal));
    });
  add(library, 'give', 'a file of recipes from the library, with all they hold')
    .argument('[ids...]', 'which recipes; all of them when none is named')
    .requiredOption('--out <folder>', 'where the file goes; made if it is not there')
    .action(async (ids: string[], { out, json }: Wishes & { readonly out: string }) => {
      const { runGive } = await import('./library.ts');
      ended(await runGive(ids, out, json === true, terminal));
    });
}

interface PublishOptions extends Wishes {
  readonly out: string;
  readonly paper?: 'letter' | 'a4';
  readonly size?: string;
  readonly plainInk?: true;
  readonly draft?: true;
}

function addPublish(program: Command, terminal: Terminal, ended: Ended): void {
  add(program, 'publish', 'the printed pattern as PDF, and its charts as CSV')
    .argument('<file>', 'a .pattern.json')
    .requiredOption('--out <folder>', 'where the files go; made if it is not there')
    .addOption(new Option('--paper <paper>', 'one paper only').choices(['letter', 'a4']))
    .option('--size <name>', 'an edition of one size only')
    .option('--plain-ink', 'black and white, hatches instead of colours')
    .option('--draft', 'even if it does not fit yet; every page says so')
    .action(async (file: string, options: PublishOptions) => {
      const { runPublish } = await import('./publish.ts');
      ended(await runPublish(file, wishesOf(options), options.json === true, terminal));
    });
}

function wishesOf({ out, paper, size, plainInk, draft }: PublishOptions): PublishWishes {
  return {
    out,
    papers: paper === undefined ? ['letter', 'a4'] : [paper],
    plainInk: plainInk === true,
    draft: draft === true,
    ...(size === undefined ? {} : { size }),
  };
}

interface KitOptions extends PublishOptions {
  readonly kits: number;
}

function addKit(program: Command, terminal: Terminal, ended: Ended): void {
  add(program, 'kit', 'the sheet a shop puts kits together by: bolt cuts, contents, as PDF and CSV')
    .argument('<file>', 'a .pattern.json')
    .option('--kits <number>', 'how many kits', kitsOf, 12)
    .requiredOption('--out <folder>', 'where the files go; made if it is not there')
    .addOption(new Option('--paper <paper>', 'one paper only').choices(['letter', 'a4']))
    .option('--size <name>', 'kits of one size only')
    .option('--plain-ink', 'black and white, hatches instead of colours')
    .action(async (file: string, options: KitOptions) => {
      const { runKit } = await import('./kit.ts');
      ended(await runKit(file, { ...wishesOf(options), kits: options.kits }, options.json === true, terminal));
    });
}

const MOST_KITS = 1000;

function kitsOf(text: string): number {
  const kits = Number(text);
  if (Number.isInteger(kits) && kits >= 1 && kits <= MOST_KITS) return kits;
  throw new InvalidArgumentError(`Write a whole number of kits from 1 to ${MOST_KITS}.`);
}

function addFigures(program: Command, terminal: Terminal, ended: Ended): void {
  add(program, 'figures', 'every figure of the printed pattern as an SVG file of its own')
    .argument('<file>', 'a .pattern.json')
    .requiredOption('--out <folder>', 'where the files go; made if it is not there')
    .option('--plain-ink', 'black and white, hatches instead of colours')
    .action(async (file: string, { out, plainInk, json }: PublishOptions) => {
      const { runFigures } = await import('./figures.ts');
      ended(await runFigures(file, { out, plainInk: plainInk === true }, json === true, terminal));
    });
}

function addDemo(program: Command, terminal: Terminal, ended: Ended): void {
  add(program, 'demo', 'the demo patterns’ PDFs, charts and findings')
    .option('--out <folder>', 'where the files go', 'demo-output')
    .action(async ({ out, json }: Wishes & { readonly out: string }) => {
      const { runDemo } = await import('./demo.ts');
      ended(await runDemo(out, json === true, terminal));
    });
}
