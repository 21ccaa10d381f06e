import type { Kind } from './cloth/strips/kinds.ts';
import type { StripPlan } from './cloth/strips/planStrips.ts';
import type { Finding } from './measure/finding.ts';
import type { Units } from './measure/metric.ts';
import type { Mattress, MattressTable } from './pattern/mattresses.ts';
import type { Crop } from './pattern/photograph.ts';
import type { Pattern } from './pattern/schema.ts';
import type { Recipe } from './recipe/schema.ts';

/**
 * Everything the studio window asks of its host, as typed calls. The Electron window, a browser tab and the tests carry
 * these same calls; `main/service.ts` answers them and checks every input at run time. A call that cannot be answered
 * rejects with a `Refusal`.
 */
export interface Contract {
  /** What this host is and can do. */
  about(): Promise<About>;

  /** Patterns kept here, last changed first. */
  patterns(): Promise<readonly PatternCard[]>;
  /** The whole pattern; from now on it is the one that was open last. */
  openPattern(id: string): Promise<Pattern>;
  /** The whole pattern, to draw or copy it: the one that was open last stays so. */
  lookAtPattern(id: string): Promise<Pattern>;
  /** Keeps the pattern; answers once it is on disk. `revision` is the one last seen: a newer one on disk refuses. */
  savePattern(request: {
    readonly pattern: Pattern;
    readonly revision: number | null;
  }): Promise<{ readonly revision: number }>;
  removePattern(id: string): Promise<void>;

  /**
   * Recipes that match the words, best first; every recipe by name for no words. Starter recipes are among them. A long
   * list is asked for in parts: at most `atMost` cards after the first `from`.
   */
  recipes(search: RecipeSearch): Promise<readonly RecipeCard[]>;
  /** How many recipes match, in all. */
  countRecipes(search: RecipeSearch): Promise<number>;
  openRecipe(id: string): Promise<Recipe>;
  /** Those of the recipes that are kept here, with their newest revision; for what a pattern carries or a recipe holds. */
  keptRecipes(ids: readonly string[]): Promise<readonly KeptRecipe[]>;
  /** Every saved revision of a recipe, the newest first. */
  recipeRevisions(id: string): Promise<readonly RecipeRevision[]>;
  saveRecipe(recipe: Recipe): Promise<{ readonly revision: number }>;
  /** Its revisions stay, so that it can be put back as it was. */
  removeRecipe(id: string): Promise<void>;

  /**
   * The text of a pattern, a recipe or a file of recipes the designer chose, read and checked; kept under a fresh id if it
   * is taken. Of a file that is wrong anywhere nothing is kept.
   */
  importFile(file: FileText): Promise<Imported>;
  /** Begins the same as work that can be told and stopped (`job`, `cancel`); of a file that is stopped nothing is kept. */
  bringIn(file: FileText): Promise<{ readonly job: string }>;
  /** What a file that was brought in has become. */
  broughtIn(id: string): Promise<Imported>;

  /** A file of the recipes and of all they hold. */
  exportRecipes(ids: readonly string[]): Promise<{ readonly name: string; readonly text: string }>;

  /** The mattresses that sizes are found for. */
  mattresses(): Promise<Mattresses>;
  /** Keeps a mattress of the designer's own; one of hers with the same id is replaced in its place. */
  saveMattress(mattress: Mattress): Promise<void>;
  removeMattress(id: string): Promise<void>;
  /** A file of the pattern, with the photographs of its fabrics inside as far as they are kept here. */
  exportPattern(pattern: Pattern): Promise<{ readonly name: string; readonly text: string }>;

  /**
   * Keeps a photograph of a fabric from any file the designer chose: turned the way it was taken, a modest size. A pattern
   * shows it by its `id`; one that no pattern shows is let go after a month.
   */
  bringPhotograph(file: FileBytes): Promise<BroughtPhotograph>;
  /** A photograph that is kept here. */
  photograph(id: string): Promise<PhotographPicture>;
  /** The mean colour of a part of a photograph, `#rrggbb`: what its cloth looks like from across a room. */
  photographColour(request: { readonly id: string; readonly crop: Crop }): Promise<string>;

  /** Starts proving a cutting plan; how near it is is asked for with `job`. */
  prove(request: ProveRequest): Promise<{ readonly job: string }>;
  /** The best plan that a proof has found, once it has ended. */
  proof(id: string): Promise<StripPlan>;

  /** Starts making the PDF; progress is asked for with `job`. */
  publish(request: PublishRequest): Promise<{ readonly job: string }>;
  job(id: string): Promise<Job>;
  cancel(id: string): Promise<void>;
  /** The finished file of a job. */
  result(id: string): Promise<PublishedFile>;
}

/** The name of every call: what may come from outside. The type makes sure none is missing and none is strange. */
export const CALLS: Readonly<Record<keyof Contract, true>> = {
  about: true,
  patterns: true,
  openPattern: true,
  lookAtPattern: true,
  savePattern: true,
  removePattern: true,
  recipes: true,
  countRecipes: true,
  openRecipe: true,
  keptRecipes: true,
  recipeRevisions: true,
  saveRecipe: true,
  removeRecipe: true,
  importFile: true,
  bringIn: true,
  broughtIn: true,
  exportRecipes: true,
  mattresses: true,
  saveMattress: true,
  removeMattress: true,
  exportPattern: true,
  bringPhotograph: true,
  photograph: true,
  photographColour: true,
  prove: true,
  proof: true,
  publish: true,
  job: true,
  cancel: true,
  result: true,
};

export interface Mattresses {
  /** Those that come with Piecewright, each table with its source. */
  readonly tables: readonly MattressTable[];
  /** The designer's own, in the order she put them in. */
  readonly own: readonly Mattress[];
}

/** Each word may be the beginning of a word of the recipe's name, tags or summary; all of them must be found. */
export interface RecipeSearch {
  readonly words: string;
  readonly tag?: string;
  /** Terms of `workroom/facetTerms`: recipes that have every one of them. */
  readonly facets?: readonly string[];
  readonly from?: number;
  readonly atMost?: number;
}

export interface About {
  readonly host: 'window' | 'browser';
  readonly version: string;
  /** Where the data is kept, as the designer would look for it. */
  readonly folder: string;
  /** The pattern to open first: the last one open, or the demo, or the last changed; empty when no pattern is kept. */
  readonly first: string;
}

export interface PatternCard {
  readonly id: string;
  readonly title: string;
  readonly designer: string;
  readonly sizes: number;
  /** ISO date and time of the last change. */
  readonly changed: string;
  readonly revision: number;
}

export interface RecipeCard {
  readonly id: string;
  readonly name: string;
  readonly tags: readonly string[];
  readonly starter: boolean;
  /** Titles of the patterns that carry it. */
  readonly usedIn: readonly string[];
  readonly revision: number;
  readonly recipe: Recipe;
}

/** A recipe as the library has it now. */
export interface KeptRecipe {
  readonly recipe: Recipe;
  readonly revision: number;
}

/** A recipe as it was saved once. */
export interface RecipeRevision extends KeptRecipe {
  /** ISO date and time it was saved. */
  readonly changed: string;
}

/** A file as it is brought in. */
export interface FileText {
  readonly name: string;
  readonly text: string;
  /** The texts of files that came along with it, by name: a pattern may name the recipe files it needs. */
  readonly beside?: Readonly<Record<string, string>> | undefined;
}

/** A file that is no text, as it is brought in. */
export interface FileBytes {
  readonly name: string;
  /** Base 64. */
  readonly data: string;
}

/** A photograph that was just kept. */
export interface BroughtPhotograph {
  readonly id: string;
  /** Pixels, as it is kept. */
  readonly width: number;
  readonly height: number;
  /** The mean colour of all of it, `#rrggbb`. */
  readonly colour: string;
}

/** A photograph, to be shown. */
export interface PhotographPicture {
  readonly type: 'image/jpeg';
  readonly width: number;
  readonly height: number;
  /** Base 64. */
  readonly data: string;
}

export type Imported =
  | { readonly kind: 'pattern'; readonly id: string }
  | { readonly kind: 'recipe'; readonly id: string }
  /** The new ones, and how many of the file were here already, word for word. */
  | { readonly kind: 'recipes'; readonly ids: readonly string[]; readonly already: number };

export type Paper = 'letter' | 'a4';

export interface PublishRequest {
  readonly pattern: Pattern;
  readonly paper: Paper;
  /** A draft may be made with findings that stop publishing; it says so on every page. */
  readonly draft: boolean;
  /** Black and white: hatches instead of colours. */
  readonly plainInk: boolean;
  /** Instead of the pattern, the sheet for so many kits of one size. */
  readonly kits?: { readonly size: string; readonly many: number } | undefined;
}

/** Pieces to be cut from strips across one cloth in as little length as can be. */
export interface ProveRequest {
  readonly kinds: readonly Kind[];
  /** Usable width of the cloth, inches. */
  readonly width: number;
  /** How long it may take. */
  readonly seconds: number;
  /** What it tells lengths in while it goes on; inches when left out. */
  readonly units?: Units | undefined;
}

export interface Job {
  readonly state: 'working' | 'done' | 'stopped' | 'refused';
  /** 0 to 1. */
  readonly progress: number;
  /** What is being done, in words. */
  readonly doing: string;
  readonly refusal?: Refusal;
}

export interface PublishedFile {
  readonly name: string;
  readonly type: string;
  /** Base 64. */
  readonly data: string;
}

/** Why a call was not answered, in words for the designer. */
export interface Refusal {
  readonly kind: 'not-found' | 'changed-elsewhere' | 'bad-input' | 'newer-file' | 'no-room' | 'stopped' | 'broken';
  readonly words: string;
  readonly findings?: readonly Finding[];
}

/** A call's answer as it crosses from the host to the window, over HTTP or between the processes of the desktop program. */
export type Answer = { readonly value: unknown } | { readonly refusal: Refusal };

/** What the desktop window finds as `window.piecewright`; in a browser tab there is none, and calls go by HTTP. */
export interface Bridge {
  /** Makes one call of the `Contract`; never rejects but for a bug. */
  call(name: keyof Contract, args: readonly unknown[]): Promise<Answer>;
  /** Tells of a file that was opened from the menu or the desktop and is now kept here. */
  opened(listener: (imported: Imported) => void): void;
}
