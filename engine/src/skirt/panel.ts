import type { Path } from '../geometry/index.ts';
import type { Figure } from '../figure/index.ts';
import type { Mm } from '../units/index.ts';

/**
 * Sheet of a panel: x = 0 on its centre, y = 0 on the fold of the waist at the centre, y grows towards the
 * hem. Right side of the cloth up, waist at the top.
 */
export type EdgeName = 'waist' | 'right' | 'hem' | 'left';

/** One named edge of a panel, with the cloth beyond its finished line. */
export interface PanelEdge {
  readonly name: EdgeName;
  /** The finished line: the stitching of a seam, the fold of a turned edge. Runs clockwise. */
  readonly finished: Path;
  /** Cloth beyond the finished line. */
  readonly allowance: Mm;
  /** Whether the allowance is turned along the finished line (hem, casing) or sewn in a seam. */
  readonly turned: boolean;
}

/** The cloth of one panel. */
export interface PanelShape {
  readonly edges: readonly PanelEdge[];
  /** Raw edges once the cloth has been straightened: what is measured from, chalked on and sewn. */
  readonly trimmed: Path;
  /** What is cut from the cloth, straightening margin included. */
  readonly cut: Path;
  /** Curved panels are rings about one apex; straight ones have no apex. */
  readonly apex: Apex | null;
  /** Finished length along the centre, fold to fold. */
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

export type PanelName = 'front' | 'back' | 'width';

export interface Panel {
  readonly name: PanelName;
  /** Counts the panels of one name from 1. */
  readonly number: number;
  readonly shape: PanelShape;
}

/** The panels of one skirt: never none. */
export type Panels = readonly [Panel, ...Panel[]];

/** One chalk dot of "measure up from the line": `across` from the centre fold, `up` from the line. */
export interface Ordinate {
  readonly across: Mm;
  readonly up: Figure<Mm>;
}
