import type { Inches } from '../measure/inches.ts';
import type { Traced } from '../measure/traced.ts';

/** One line of the cutting chart: equal pieces of one fabric. */
export interface PieceLine {
  /** The letter on the chart, the figures and the cut pieces; the same letter in every size. */
  readonly letter: string;
  readonly fabric: string;
  /**
   * Printed cut sizes: width is the longer side. Equal sides are a square. Strips for strip sets and binding strips are
   * as wide as the usable width; a joined border strip is as wide as it is after joining.
   */
  readonly width: Traced;
  readonly height: Traced;
  /** How many to cut: pieces, or whole strips for strip sets and binding. */
  readonly count: Traced;
  /** Pieces (for a strip set, sub-cuts) beyond what is sewn: whole batches and whole strips give them. */
  readonly spare: number;
  /** What it is for: "Unit 1, large square", "Inner border, sides". */
  readonly use: readonly PieceUse[];
  /** How it is cut from cloth. */
  readonly cutAs: 'piece' | 'strip-set' | 'long-strip';
  /** Only for a strip set: what the sewn set is crosscut into. */
  readonly subCut?: SubCut;
  /**
   * Only when a piece is longer than the cloth is wide: strips across the cloth that are joined end to end and then cut
   * into all `count` pieces.
   */
  readonly joined?: Traced;
  /** With `joined`, when the strips are joined on the diagonal: what each join takes up. */
  readonly lostInJoin?: Traced;
  /** Only for squares that are cut on the diagonal into triangles. */
  readonly cutUp?: CutUp;
  /** Its long side runs along the cloth, and it is cut in one piece however long. */
  readonly lengthwise?: true;
  /** Its print has a direction: it is cut the way it lies here and never turned. */
  readonly upright?: true;
}

/** How squares are cut into triangles: once diagonally into two, or twice into four. */
export interface CutUp {
  readonly into: 2 | 4;
  readonly needed: number;
  /** Triangles left over. */
  readonly spare: number;
}

/** How the strip sets of one line are crosscut. */
export interface SubCut {
  /** Length of one sub-cut, along the strips. */
  readonly length: Traced;
  /** Sub-cuts from one whole set. */
  readonly perSet: Traced;
  /** Sub-cuts taken in all. */
  readonly count: Traced;
  /** Strip sets sewn. */
  readonly sets: Traced;
}

export interface PieceUse {
  /** Block letter, or null for borders, binding. */
  readonly block: string | null;
  /** Unit key in that block, or the border's id. */
  readonly unit: string;
  readonly words: string;
  /** Patches in the whole quilt that these pieces become. */
  readonly patches: number;
  /** Pieces cut for it; for a strip set the sub-cuts. */
  readonly count: number;
}

/** One strip across the width of fabric and what is cut from it, left to right. */
export interface Strip {
  /** Cut height of the strip: along the length of the cloth. */
  readonly height: Inches;
  readonly pieces: readonly StripPiece[];
  /** How many strips are cut to exactly this plan. */
  readonly times: number;
}

export interface StripPiece {
  readonly letter: string;
  readonly width: Inches;
  readonly height: Inches;
  readonly count: number;
}

/** How one fabric is cut, with the proof that less cloth cannot do. */
export interface CuttingPlan {
  readonly fabric: string;
  /** Usable width planned for, inches. */
  readonly width: Inches;
  readonly strips: readonly Strip[];
  /** Number of strips in all. */
  readonly stripCount: number;
  /** Length of cloth used by the strips, inches. */
  readonly length: Traced;
  /** No plan of strips across this width can be shorter than this, inches. */
  readonly bound: Inches;
  /** True when the plan is as short as the bound: fewer cannot do. */
  readonly proven: boolean;
  /** Area of the pieces over area of the strips. */
  readonly used: number;
  /** Set when the pattern keeps a plan for it whose proof cannot be true; this is the usual plan then. */
  readonly disproved?: true;
}

/** What a buyer needs of one fabric. */
export interface FabricNeed {
  readonly fabric: string;
  /** What it is for, in the trade's words: "blocks", "outer border", "binding". */
  readonly uses: readonly string[];
  readonly plan: CuttingPlan;
  /** Yards to buy: strips, squaring up, rounded up last; none when all of it comes from sheets. */
  readonly yards: Traced;
  /** Sheets to buy, when it is bought in sheets: pieces that fit one are cut from them, and `plan` is for the rest. */
  readonly sheets?: SheetNeed;
  /** True when no plan of strips could be bought with less: the plan's bound comes to the same yards. */
  readonly least: boolean;
}

/** What is cut from sheets of one fabric. */
export interface SheetNeed {
  /** What one is called: "fat quarter". */
  readonly name: string;
  readonly width: Inches;
  readonly height: Inches;
  readonly count: Traced;
  /** No way to cut the pieces takes fewer. */
  readonly bound: number;
  readonly proven: boolean;
  /** Sheets cut alike, and their strips: along the sheet's height where `lengthwise`. */
  readonly plans: readonly SheetCut[];
  /** Area of the pieces over area of the sheets. */
  readonly used: number;
}

export interface SheetCut {
  readonly times: number;
  readonly lengthwise: boolean;
  readonly strips: readonly Strip[];
}

/** Binding: strips joined end to end, straight or on the bias. */
export interface BindingNeed {
  readonly fabric: string;
  readonly cut: 'straight' | 'bias' | 'continuous';
  readonly stripWidth: Traced;
  /** Strips to be joined: across the cloth, or on the bias; one from each piece when it is continuous. */
  readonly strips: Traced;
  /** Only on the bias: the equal pieces of cloth that the strips are cut from. */
  readonly from?: { readonly pieces: Traced; readonly width: Traced; readonly height: Traced };
  /** Length needed: perimeter and joins. */
  readonly length: Traced;
  /** By itself. */
  readonly yards: Traced;
}

/** Backing: one or more panels of the usable width, or of wide backing cloth. */
export interface BackingNeed {
  readonly fabric: string;
  readonly width: Traced;
  readonly height: Traced;
  readonly cloth: 'usual' | 'wide';
  /** Usable width of the cloth its panels are cut from. */
  readonly usableWidth: Traced;
  /** Which way its panels run on the quilt. */
  readonly run: 'down' | 'across';
  readonly panels: Traced;
  /** Which way the panels' seams run on the back of the quilt. */
  readonly seams: 'none' | 'across' | 'down';
  readonly panelLength: Traced;
  readonly yards: Traced;
}

/** Batting: at least this large. */
export interface BattingNeed {
  readonly width: Traced;
  readonly height: Traced;
}

/** All the cloth for one size. */
export interface Cloth {
  readonly pieces: readonly PieceLine[];
  /** Fabrics bought as yards: what comes from a bundle is not among it. */
  readonly needs: readonly FabricNeed[];
  readonly binding: BindingNeed;
  readonly backing: BackingNeed;
  readonly batting: BattingNeed;
}
