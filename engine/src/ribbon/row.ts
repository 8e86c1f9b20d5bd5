import type { Colour } from '../fields/index.ts';
import type { Figure } from '../figure/index.ts';
import type { Path } from '../geometry/index.ts';
import type { Panel, PanelName } from '../skirt/index.ts';
import type { Mm } from '../units/index.ts';

/** A length of ribbon to cut for one panel, or for the whole round. */
export interface Strip {
  readonly panel: PanelName | 'round';
  /** Counts panels of one name from 1. */
  readonly number: number;
  readonly length: Figure<Mm>;
}

/** How a straight ribbon takes a curve. */
export interface Curve {
  readonly radius: Figure<Mm>;
  /** Difference of its two edges for each unit of length: w / R. */
  readonly share: Figure;
  /** Length to lose along the shorter edge of one strip. */
  readonly takeUp: Figure<Mm>;
}

/** A row on one panel, raw side to raw side, in the panel's own coordinates. */
export interface RowLine {
  readonly panel: Panel;
  readonly lower: Path;
  readonly upper: Path;
}

/** One row of ribbon. */
export interface Row {
  /** From the hem up, from 1. */
  readonly number: number;
  /** The band it belongs to, from 1; rows of one band touch. */
  readonly band: number;
  readonly colour: Colour;
  readonly width: Figure<Mm>;
  /** The round of panels it lies on, from the top, from 1. */
  readonly round: number;
  /** Of a row that covers the seam between two tiers: how far its lower edge lies below that seam. */
  readonly onSeam: Figure<Mm> | null;
  /**
   * Its chalk line, which is its lower edge, from the finished hem, and from the trimmed raw edge of the panels it lies on:
   * where the ruler is laid.
   */
  readonly fromHem: Figure<Mm>;
  readonly fromRawEdge: Figure<Mm>;
  /** Edge to edge from the row below; null for the lowest. */
  readonly gapBelow: Figure<Mm> | null;
  /** On each panel that carries it. */
  readonly lines: readonly RowLine[];
  /** Lower and upper edge on the first of them. */
  readonly lower: Path;
  readonly upper: Path;
  readonly strips: readonly Strip[];
  readonly curve: Curve | null;
}
