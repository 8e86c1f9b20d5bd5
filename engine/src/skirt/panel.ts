import type { Path, Point } from '../geometry/index.ts';
import type { Figure } from '../figure/index.ts';
import type { Mm } from '../units/index.ts';

/**
 * Sheet of a panel: x = 0 on its centre, y = 0 on the top line (the fold of a casing, the seam of a band) at the
 * centre, y grows towards the hem. Right side of the cloth up, waist at the top. The cloth's length runs down the sheet.
 */
export type EdgeName = 'waist' | 'right' | 'hem' | 'left';

/** One named edge of a piece, with the cloth beyond its finished line. */
export interface PanelEdge {
  readonly name: EdgeName;
  /** The finished line: the stitching of a seam, the fold of a turned edge. Runs clockwise. */
  readonly finished: Path;
  /** Cloth beyond the finished line. */
  readonly allowance: Mm;
  /** Whether the allowance is turned along the finished line (hem, casing, facing) or sewn in a seam. */
  readonly turned: boolean;
}

/** What a notch is for: two single or two double ones meet when the edges are sewn. */
export type NotchUse = 'centre' | 'quarter' | 'hip' | 'match' | 'pocket';

/** A short line from the raw edge inwards. */
export interface Notch {
  /** On the raw edge. */
  readonly at: Point;
  /** Towards the inside of the piece, of length 1. */
  readonly inward: Point;
  readonly use: NotchUse;
  /** One for a front, two for a back: nothing is sewn on the wrong way round. */
  readonly lines: 1 | 2;
}

/** The cloth of any piece, panel or not. */
export interface PieceShape {
  readonly edges: readonly PanelEdge[];
  /** Raw edges once the cloth has been straightened: what is measured from, chalked on and sewn. */
  readonly trimmed: Path;
  /** What is cut from the cloth, straightening margin included. */
  readonly cut: Path;
  readonly notches: readonly Notch[];
  /** Lines along which a piece is folded on itself; left out where it is not. */
  readonly folds?: readonly Path[];
  /** Whether its left half is its right half mirrored about x = 0, so that it can be cut on a fold. */
  readonly symmetric: boolean;
}

/** The cloth of one panel. */
export interface PanelShape extends PieceShape {
  /** Curved panels are rings about one apex; straight ones have no apex. */
  readonly apex: Apex | null;
  /** Finished length along the centre, top line to hem fold (or to the seam below). */
  readonly length: Mm;
  readonly hemAllowance: Mm;
  readonly topAllowance: Mm;
}

/** A ring sector's centre lies at (0, −waistRadius). */
export interface Apex {
  readonly waistRadius: Mm;
  readonly hemRadius: Mm;
  /** Half of the panel's sweep, raw side to raw side. */
  readonly halfSweep: number;
}

export type PanelName =
  | 'front'
  | 'back'
  | 'width'
  | 'gore'
  | 'front gore'
  | 'side gore'
  | 'back gore'
  | 'tier'
  | 'circle'
  | 'half circle'
  | 'quarter circle'
  | 'part of a circle'
  | 'left front'
  | 'right front';

/** Where a panel is worn, in turns round the body: 0 at the centre front, ¼ at the wearer's left side, ½ behind. */
export interface Around {
  readonly from: number;
  readonly to: number;
}

export interface Panel {
  readonly name: PanelName;
  /** Counts the panels of one name from 1. */
  readonly number: number;
  readonly shape: PanelShape;
  readonly around: Around;
}

/** Some panels: never none. */
export type Panels = readonly [Panel, ...Panel[]];

/**
 * Panels side by side round the body: the whole skirt of most cuts, one tier of a tiered one. Rounds go from the top
 * down; each hangs from the one before.
 */
export interface Round {
  readonly panels: Panels;
  /** Its lower finished line above the skirt's finished hem: 0 for the lowest. */
  readonly fromHem: Mm;
  /** Finished length, its upper line to its lower. */
  readonly length: Mm;
  /** Its upper and lower edge, seam to seam, laid flat before anything is gathered. */
  readonly top: Figure<Mm>;
  readonly bottom: Figure<Mm>;
  /** Seams that join its panels to one another. */
  readonly seams: number;
}

export type Rounds = readonly [Round, ...Round[]];

export type PartName =
  | 'casing strip'
  | 'waistband'
  | 'waistband back'
  | 'stretch band'
  | 'tie'
  | 'placket'
  | 'pocket bag'
  | 'slit facing'
  | 'hem facing'
  | 'lining front'
  | 'lining back'
  | 'lining width';

/** Which cloth a part is cut from. */
export type PartCloth = 'skirt' | 'lining' | 'knit';

/** A piece that is not a panel: what waist, closure and extras need cut besides. */
export interface Part {
  readonly name: PartName;
  readonly count: number;
  readonly cloth: PartCloth;
  readonly shape: PieceShape;
  /** How the cloth's length runs on its sheet. */
  readonly grain: 'down' | 'across' | 'either';
  /** Whether half of them are cut as the mirror image of the other half. */
  readonly mirrored: boolean;
  /** What is chalked, each under what it is: width, length, and more where a shape has more. */
  readonly measures: readonly Figure<Mm>[];
}

/** One chalk dot of "measure up from the line": `across` from the centre fold, `up` from the line. */
export interface Ordinate {
  readonly across: Mm;
  readonly up: Figure<Mm>;
}
