import type { Edit } from '../edit.ts';
import type { House, Pattern } from '../schema.ts';
import { lengthWithin, named, whole, withFields, withName, withOversize } from './list.ts';

export const renamePattern: Edit<{ readonly title: string }> = {
  id: 'rename-pattern',
  name: ({ title }) => `Call the pattern “${title.trim()}”`,
  apply: (pattern, { title }) => withFields(pattern, { title: named(title, pattern.title) }),
};

export type WordsField = 'introduction' | 'designer' | 'contact' | 'copyright' | 'notes';

const FIELD_NAMES: Readonly<Record<WordsField, string>> = {
  introduction: 'introduction',
  designer: 'designer’s name',
  contact: 'contact for corrections',
  copyright: 'copyright',
  notes: 'closing words',
};

const LONGEST: Readonly<Record<WordsField, number>> = {
  introduction: 8000,
  designer: 200,
  contact: 300,
  copyright: 1000,
  notes: 8000,
};

export const setWords: Edit<{ readonly field: WordsField; readonly text: string }> = {
  id: 'set-words',
  name: ({ field }) => `Change the ${FIELD_NAMES[field]}`,
  apply: (pattern, { field, text }) => {
    const cut = text.slice(0, LONGEST[field]);
    const value = field === 'designer' ? named(cut, pattern.words.designer) : cut;
    return withWords(pattern, { [field]: value });
  },
};

function withWords(pattern: Pattern, fields: Partial<Pattern['words']>): Pattern {
  return withFields(pattern, { words: withFields(pattern.words, fields) });
}

export const setCautions: Edit<{ readonly cautions: readonly string[] }> = {
  id: 'set-cautions',
  name: () => 'Change your own cautions',
  apply: (pattern, { cautions }) => {
    const kept = cautions.slice(0, 20).map((caution) => caution.slice(0, 1000));
    const same = kept.length === pattern.words.cautions.length && kept.every((c, i) => c === pattern.words.cautions[i]);
    return same ? pattern : withWords(pattern, { cautions: kept });
  },
};

export const setUsualCautions: Edit<{ readonly without: boolean }> = {
  id: 'set-usual-cautions',
  name: ({ without }) => (without ? 'Leave out the usual cautions' : 'Print the usual cautions'),
  apply: (pattern, { without }) => withWords(pattern, { withoutUsualCautions: without }),
};

export const setEdition: Edit<{ readonly number?: number; readonly date?: string }> = {
  id: 'set-edition',
  name: ({ number }) => (number === undefined ? 'Date the edition' : `Make it edition ${number}`),
  apply: (pattern, { number, date }) => {
    const fields: Partial<Pattern['edition']> = {};
    if (number !== undefined) fields.number = whole(number, 1, 999);
    if (date !== undefined && isDate(date)) fields.date = date;
    return withFields(pattern, { edition: withFields(pattern.edition, fields) });
  },
};

/** Whether it is a day of the calendar, written as 2026-05-01. */
function isDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}

/** What `setEdition` takes to make the next edition, dated `date`. */
export function nextEdition(pattern: Pattern, date: string): { readonly number: number; readonly date: string } {
  return { number: pattern.edition.number + 1, date };
}

type HouseNumbers = Partial<Pick<House, 'seam' | 'step' | 'usableWidth' | 'squaring' | 'yardStep' | 'shrinkage'>>;

const HOUSE_BOUNDS: Readonly<Record<keyof HouseNumbers, readonly [number, number]>> = {
  seam: [1 / 16, 1],
  step: [1 / 64, 1],
  usableWidth: [6, 200],
  squaring: [0, 36],
  yardStep: [1 / 16, 1],
  shrinkage: [0, 15],
};

const HOUSE_NAMES: Readonly<Record<keyof HouseNumbers, string>> = {
  seam: 'seam allowance',
  step: 'ruler step',
  usableWidth: 'usable width',
  squaring: 'squaring-up allowance',
  yardStep: 'rounding of yardage',
  shrinkage: 'allowance for the wash',
};

export const setHouse: Edit<HouseNumbers> = {
  id: 'set-house',
  name: (args) => {
    const [first] = Object.keys(args) as (keyof HouseNumbers)[];
    return first === undefined ? 'Change the house style' : `Change the ${HOUSE_NAMES[first]}`;
  },
  apply: (pattern, args) => {
    const fields: { -readonly [K in keyof HouseNumbers]: number } = {};
    for (const key of Object.keys(args) as (keyof HouseNumbers)[]) {
      const value = lengthWithin(args[key] ?? Number.NaN, ...(HOUSE_BOUNDS[key] ?? [0, 0]));
      if (value !== null && HOUSE_BOUNDS[key] !== undefined) fields[key] = value;
    }
    return withFields(pattern, { house: withFields(pattern.house, fields) });
  },
};

/** How many pieces of every kind are cut beyond those that are sewn. */
export const setHouseSpares: Edit<{ readonly spares: number }> = {
  id: 'set-house-spares',
  name: () => 'Change the spare pieces',
  apply: (pattern, { spares }) => {
    if (!Number.isFinite(spares)) return pattern;
    const many = Math.min(20, Math.max(0, Math.round(spares)));
    return many === (pattern.house.spares ?? 0)
      ? pattern
      : withFields(pattern, { house: withFields(pattern.house, { spares: many }) });
  },
};

export const setHouseMethod: Edit<{ readonly kind: string; readonly method: string | null }> = {
  id: 'set-house-method',
  name: () => 'Change the house’s way of making a unit',
  apply: (pattern, { kind, method }) => {
    const methods = withName(pattern.house.methods, kind, method);
    return withFields(pattern, { house: withFields(pattern.house, { methods }) });
  },
};

/** Inches the house adds to what is trimmed of one kind of unit; null for none. */
export const setHouseOversize: Edit<{ readonly kind: string; readonly inches: number | null }> = {
  id: 'set-house-oversize',
  name: () => 'Change how much the house trims',
  apply: (pattern, { kind, inches }) => {
    const oversize = withOversize(pattern.house.oversize, kind, inches);
    return withFields(pattern, { house: withFields(pattern.house, { oversize }) });
  },
};
