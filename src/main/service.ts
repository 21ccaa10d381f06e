import type { About, Contract, Imported } from '../shared/contract.ts';
import type { MattressTable } from '../shared/pattern/mattresses.ts';
import { type Prover, workerProver } from './plan/workerProver.ts';
import type { Reader } from './reader.ts';
import { importFile } from './service/importFile.ts';
import { inputs, take } from './service/inputs.ts';
import { makeJobs, type Work } from './service/jobs.ts';
import { makeLibrary } from './service/library.ts';
import { makeMattresses } from './service/mattresses.ts';
import { makePhotographs } from './service/photographs.ts';
import { provingOf } from './service/proofs.ts';
import type { Publisher } from './service/publisher.ts';
import { makeRecipes } from './service/recipes.ts';
import { type RecipeWork, recipeWorkIn } from './service/recipeWork.ts';
import type { Store } from './store/store.ts';

export interface ServiceNeeds {
  readonly store: Store;
  readonly reader: Reader;
  readonly publisher: Publisher;
  /** Works at recipes away from the calls; left out, between them. */
  readonly recipeWork?: RecipeWork;
  /** Left out, one on a thread of its own that begins with the first proof. */
  readonly prover?: Prover;
  /** The tables of mattresses that come with the program. */
  readonly mattressTables: readonly MattressTable[];
  readonly host: About['host'];
  readonly version: string;
  /** Where a bug is reported; the designer gets plain words instead. */
  readonly report: (error: unknown) => void;
}

/** The contract, answered, and a way to end it. */
export interface Service extends Contract {
  /** Stops all work and closes the store. No call may follow. */
  close(): Promise<void>;
}

/**
 * Answers the contract from a store. Every input is checked here at run time, whoever carries it; a call that cannot be
 * answered rejects with a `Refused`. Calls that keep something answer once it is on disk.
 */
export function makeService(needs: ServiceNeeds): Service {
  const { store, reader, publisher, host, version, report } = needs;
  const library = makeLibrary(store, reader);
  const work = needs.recipeWork ?? recipeWorkIn(store, reader, report);
  const recipes = makeRecipes(store, reader, work);
  const mattresses = makeMattresses(store, needs.mattressTables);
  const photographs = makePhotographs(store);
  const prover = needs.prover ?? workerProver();
  const jobs = makeJobs(report);
  const id = (input: unknown): string => take(inputs.id, input, 'That name');
  const job = (input: unknown): string => take(inputs.job, input, 'That name');
  return {
    about: async () => ({ host, version, folder: store.folder, first: library.first() }),
    patterns: async () => store.patterns.cards(),
    openPattern: async (input) => library.openPattern(id(input)),
    lookAtPattern: async (input) => library.lookAtPattern(id(input)),
    savePattern: async (input) => {
      const { pattern, revision } = take(inputs.savePattern, input, 'The pattern');
      return library.savePattern({ pattern: await photographs.takenOut(pattern, pattern.title), revision });
    },
    removePattern: async (input) => library.removePattern(id(input)),
    recipes: async (input) => recipes.find(take(inputs.recipes, input, 'The search')),
    countRecipes: async (input) => recipes.count(take(inputs.recipes, input, 'The search')),
    openRecipe: async (input) => recipes.open(id(input)),
    keptRecipes: async (input) => recipes.kept(take(inputs.ids, input, 'The list')),
    recipeRevisions: async (input) => recipes.revisions(id(input)),
    saveRecipe: async (input) => recipes.save(take(inputs.saveRecipe, input, 'The recipe')),
    removeRecipe: async (input) => recipes.remove(id(input)),
    importFile: async (input) => importFile(take(inputs.importFile, input, 'The file'), { store, reader, work }),
    bringIn: async (input) => {
      const file = take(inputs.importFile, input, 'The file');
      const bring: Work<{ imported: Imported }> = async (tell, signal) => ({
        imported: await importFile(file, { store, reader, work, tell, signal }),
      });
      return { job: jobs.start(bring) };
    },
    broughtIn: async (input) => jobs.broughtIn(job(input)),
    exportRecipes: async (input) => recipes.give(take(inputs.ids, input, 'The list')),
    mattresses: async () => mattresses.all(),
    saveMattress: async (input) => mattresses.save(take(inputs.saveMattress, input, 'The mattress')),
    removeMattress: async (input) => mattresses.remove(id(input)),
    exportPattern: async (input) => photographs.give(take(inputs.pattern, input, 'The pattern')),
    bringPhotograph: async (input) => photographs.bring(take(inputs.bringPhotograph, input, 'The photograph')),
    photograph: async (input) => photographs.picture(take(inputs.photograph, input, 'That name')),
    photographColour: async (input) => photographs.colour(take(inputs.photographColour, input, 'That part')),
    publish: async (input) => {
      const request = take(inputs.publish, input, 'The pattern');
      const whole = { ...request, pattern: photographs.carrying(request.pattern) };
      return { job: jobs.start(async (tell, signal) => ({ file: await publisher.make(whole, tell, signal) })) };
    },
    job: async (input) => jobs.job(job(input)),
    cancel: async (input) => jobs.cancel(job(input)),
    prove: async (input) => ({ job: jobs.start(provingOf(prover, take(inputs.prove, input, 'The plan'))) }),
    proof: async (input) => jobs.proof(job(input)),
    result: async (input) => jobs.result(job(input)),
    close: async () => {
      recipes.close();
      await work.close();
      jobs.close();
      await publisher.close();
      await prover.close();
      store.close();
    },
  };
}
