import { type BorderWay, borderWays } from '../../shared/cloth/borderWays.ts';
import { type BorderPair, borderKey } from '../../shared/cloth/letters.ts';
import type { Finding } from '../../shared/measure/finding.ts';
import { type Units, unitsOn } from '../../shared/measure/metric.ts';
import { rulerOn } from '../../shared/measure/ruler.ts';
import type { Traced, TracedSize } from '../../shared/measure/traced.ts';
import type { Setting } from '../../shared/pattern/schema.ts';
import type { Closing } from '../../shared/quilt/find/closeBorder.ts';
import { closingsOf } from '../../shared/quilt/find/closingsOf.ts';
import { closingWords } from '../../shared/quilt/find/closingWords.ts';
import { distinctJoins, type TurnedBlocks, turnedBlocks } from '../../shared/quilt/joins.ts';
import type { PatchLeaf, StripLeaf } from '../../shared/quilt/quilt.ts';
import type { Assembly, WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';

/** What `fit` tells of one size. */
export interface SizeFit {
  readonly id: string;
  readonly name: string;
  readonly fits: boolean;
  readonly finished: TracedSize;
  readonly unfinished: TracedSize;
  readonly setting: Setting['kind'];
  /** Blocks in every row as it is sewn: on point, diagonal rows from the upper left. */
  readonly rows: readonly number[];
  readonly blocks: {
    readonly across: number;
    readonly down: number;
    readonly finished: { readonly width: number; readonly height: number };
  };
  /** Plain pieces between the blocks and in the corners of borders: sashing, cornerstones. */
  readonly pieces: readonly SettingCut[];
  readonly triangles: readonly TriangleCut[];
  readonly borders: readonly BorderCut[];
  readonly piecedBorders: readonly PiecedBorder[];
  readonly borderCloth: readonly BorderCloth[];
  /** Blocks of each letter by the way they lie. */
  readonly turned: readonly TurnedBlocks[];
  /** Different joins of two blocks: which side of which is sewn to which side of which other. */
  readonly joins: number;
  /** Points at which seams meet. */
  readonly points: number;
  /** Of the points, those where the seams' allowances lie to opposite sides, and to the same side. */
  readonly seams: { readonly nest: number; readonly stack: number; readonly open: number };
}

/** Equal strips of one border. */
interface BorderCut {
  readonly border: string;
  readonly name: string;
  readonly strips: BorderPair;
  readonly count: number;
  readonly cut: { readonly width: Traced; readonly length: Traced };
  /** Length of the diagonal seams, where corners are mitred. */
  readonly mitre?: Traced;
}

/** A border of units: how many, and what would make it close where it does not. */
interface PiecedBorder {
  readonly border: string;
  readonly unit: { readonly width: number; readonly length: number };
  readonly across: number;
  readonly down: number;
  readonly closes: boolean;
  /** Ways of making it close, the best of each kind first, in words and numbers. */
  readonly ways: readonly { readonly words: string; readonly closing: Closing }[];
}

/** The cloth a border takes, cut in one way or another. */
interface BorderCloth {
  readonly border: string;
  readonly ways: readonly BorderWay[];
}

/** Equal plain pieces of the setting. */
interface SettingCut {
  readonly what: string;
  readonly fabric: string;
  readonly count: number;
  readonly cut: TracedSize;
}

/** Equal triangles at the edges of a setting on point, and the squares they are cut from. */
interface TriangleCut {
  readonly what: string;
  readonly fabric: string;
  readonly triangles: number;
  readonly square: Traced;
  readonly squares: Traced;
  readonly cut: 'once' | 'twice';
}

/** What `fit` tells of a pattern. */
export interface PatternFit {
  readonly title: string;
  readonly edition: number;
  readonly fits: boolean;
  /** What its lengths are said in; numbers are inches all the same. */
  readonly units: Units;
  /** How the blocks are sewn together, and why so. */
  readonly assembly: Assembly;
  readonly sizes: readonly SizeFit[];
  /** Names of the sizes that do not fit or cannot be laid out. */
  readonly unfit: readonly string[];
  readonly findings: readonly Finding[];
}

/** What is known of a pattern's fit, in every size. */
export function fitFacts(worked: WorkedOut): PatternFit {
  const { pattern, assembly, findings } = worked;
  const sizes = worked.sizes.map((size) => sizeFit(size, worked));
  const fitting = new Set(sizes.filter(({ fits }) => fits).map(({ name }) => name));
  return {
    title: pattern.title,
    edition: pattern.edition.number,
    fits: !findings.some(({ level }) => level === 'stops'),
    units: unitsOn(pattern.house.step),
    assembly,
    sizes,
    unfit: pattern.sizes.map(({ name }) => name).filter((name) => !fitting.has(name)),
    findings,
  };
}

function sizeFit(worked: WorkedSize, { pattern, blocks, assembly, findings }: WorkedOut): SizeFit {
  const { size, quilt } = worked;
  const stops = ({ level, where }: Finding) =>
    level === 'stops' && (where.size === undefined || where.size === size.name);
  return {
    id: size.id,
    name: size.name,
    fits: !findings.some(stops),
    finished: quilt.finished,
    unfinished: quilt.unfinished,
    setting: pattern.setting.kind,
    rows: rowsOf(quilt, assembly.way),
    blocks: { across: size.across, down: size.down, finished: quilt.block },
    pieces: settingCuts(quilt.patches),
    triangles: triangleCuts(worked),
    borders: pattern.borders.flatMap(({ id, name }) => borderCuts(id, name, quilt.strips)),
    piecedBorders: piecedBorders(quilt, pattern),
    borderCloth: pattern.borders.map((border) => ({ border: border.id, ways: borderWays(quilt, border, pattern) })),
    turned: turnedBlocks(quilt),
    joins: distinctJoins(quilt, pattern.setting),
    points: worked.points,
    seams: seamsOf(worked, blocks),
  };
}

function piecedBorders(quilt: WorkedSize['quilt'], { house }: WorkedOut['pattern']): readonly PiecedBorder[] {
  return quilt.borders.flatMap(({ border, units }): PiecedBorder[] => {
    const closings = closingsOf(quilt, border, house);
    if (units === undefined || closings === null) return [];
    const { width, length, across, down } = units;
    const ways = [...closings.spacers, ...closings.units, ...closings.changes];
    const told = ways.map((closing) => ({ words: closingWords(closing, rulerOn(house.step).length), closing }));
    return [{ border, unit: { width, length }, across, down, closes: closings.closes, ways: told }];
  });
}

/** Rows or columns as they are sewn. Blocks on a diagonal have columns and rows with one sum; those between stand in rows of their own. */
function rowsOf({ blocks }: WorkedSize['quilt'], way: Assembly['way']): readonly number[] {
  const rows = new Map<number, number>();
  for (const { column, row, border } of blocks) {
    if (border !== undefined) continue;
    const at = way === 'diagonal rows' ? column + Math.ceil(row / 2) : way === 'columns' ? column : row;
    rows.set(at, (rows.get(at) ?? 0) + 1);
  }
  return [...rows].sort(([a], [b]) => a - b).map(([, many]) => many);
}

function triangleCuts({ cloth }: WorkedSize): readonly TriangleCut[] {
  return cloth.pieces.flatMap(({ cutUp, fabric, width, count, use }): TriangleCut[] => {
    if (cutUp === undefined) return [];
    const cut = cutUp.into === 2 ? 'once' : 'twice';
    return [{ what: use[0]?.words ?? '', fabric, triangles: cutUp.needed, square: width, squares: count, cut }];
  });
}

function settingCuts(patches: readonly PatchLeaf[]): readonly SettingCut[] {
  const cuts = new Map<string, SettingCut>();
  for (const { name, words, fabric, cut } of patches)
    cuts.set(name, { what: words, fabric, count: (cuts.get(name)?.count ?? 0) + 1, cut });
  return [...cuts.values()];
}

function borderCuts(border: string, name: string, strips: readonly StripLeaf[]): readonly BorderCut[] {
  const cuts = new Map<string, BorderCut>();
  for (const strip of strips.filter((one) => one.border === border)) {
    const pair = strip.side === 'left' || strip.side === 'right' ? 'sides' : 'ends';
    const key = `${borderKey(border, pair)} ${strip.cutLength.value}`;
    const count = (cuts.get(key)?.count ?? 0) + 1;
    const cut = { width: strip.cutWidth, length: strip.cutLength };
    const mitre = strip.mitre === undefined ? {} : { mitre: strip.mitre };
    cuts.set(key, { border, name, strips: pair, count, cut, ...mitre });
  }
  return [...cuts.values()];
}

/** In all blocks and between them. */
function seamsOf({ quilt, pressing }: WorkedSize, blocks: WorkedOut['blocks']): SizeFit['seams'] {
  const inBlocks = blocks.map(({ id, pressing: own }) => ({ times: quilt.counts[id] ?? 0, ...own }));
  return {
    nest: inBlocks.reduce((sum, { times, nests }) => sum + times * nests, pressing.nests),
    stack: inBlocks.reduce((sum, { times, stacks }) => sum + times * stacks, pressing.stacks),
    open: inBlocks.reduce((sum, { times, open }) => sum + times * open, pressing.open),
  };
}
