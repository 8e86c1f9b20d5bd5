/** A corner, in the caller's own unit of length. */
export interface Corner {
  readonly x: number;
  readonly y: number;
}

/** Corners of a simple polygon in their order, either way round; the first is not repeated at the end. */
export type Outline = readonly Corner[];

/** Places `at`, `at ± step`, `at ± 2·step` … along one direction of the strip. */
export interface Lattice {
  readonly step: number;
  readonly at: number;
}

export interface PackingItem {
  readonly outline: Outline;
  /** How many copies are wanted; whole, 0 or more. */
  readonly demand: number;
  /** Turns allowed, counter-clockwise about the item's own origin, whole degrees; or any whole degree. */
  readonly rotations: readonly number[] | 'any';
  /** Whether it may also lie face down: mirrored in its own y axis (x becomes −x) before it is turned. */
  readonly mirror?: boolean;
  /** An edge of the strip that it must touch: y = 0, y = width, or x = 0. */
  readonly against?: 'low' | 'high' | 'start';
  /** Where the item's own origin may stand, for patterns that must meet. */
  readonly lattice?: { readonly x?: Lattice; readonly y?: Lattice };
}

/** Where one copy lies: mirrored if asked, turned about its own origin, then moved by (x, y). */
export interface Placement {
  /** Which of the job's items. */
  readonly item: number;
  /** Counter-clockwise, whole degrees. */
  readonly rotation: number;
  readonly mirrored: boolean;
  readonly x: number;
  readonly y: number;
}

/**
 * Pieces for a strip that runs along x from 0, y in [0, width]. Lengths are in one unit of the caller's; only their
 * ratios matter.
 */
export interface PackingJob {
  readonly width: number;
  readonly items: readonly PackingItem[];
  /** Least distance between any two pieces, and between a piece and a keep-out. 0 by default; edges of the strip ask for none. */
  readonly spacing?: number;
  /** Flaws and holes: nothing may lie on them. */
  readonly keepOut?: readonly Outline[];
  /** Copies that lie already and are not moved; they count towards the demand. */
  readonly fixed?: readonly Placement[];
  /** A layout to begin with: all copies, `fixed` ones included, in any order. */
  readonly start?: readonly Placement[];
  /** Lengths that differ less than a step cost the same: `least`, then every further `step`. */
  readonly sold?: { readonly step: number; readonly least: number };
}

/** How long a search goes on. Time is known to the caller only. */
export interface Effort {
  /** Whole number: the same seed and evaluations give the same answer on every machine. */
  readonly seed: number;
  /** Places to be tried at most; a first answer is laid whatever it takes. */
  readonly evaluations?: number;
  /** Share of the time that is over, from 0; the search stops at 1. Asked once in a while. */
  readonly spent?: () => number;
  /** Called with each better answer, the first one included. */
  readonly better?: (packing: Packing) => void;
}

/** A valid answer. */
export interface Packing {
  readonly placements: readonly Placement[];
  /** Of the strip, to the end of the last piece. */
  readonly length: number;
  /** No answer can be shorter. */
  readonly lowerBound: number;
  /** Places tried so far. */
  readonly evaluations: number;
  /** Whether nothing better can be had, as the strip is sold. */
  readonly proven: boolean;
}

/** Why a job can't be packed at all. */
export interface Refusal {
  readonly code:
    | 'width'
    | 'spacing'
    | 'outline'
    | 'demand'
    | 'rotations'
    | 'lattice'
    | 'keepOut'
    | 'too wide'
    | 'fixed'
    | 'start';
  /** Which item, keep-out or placement; none where the job itself is meant. */
  readonly at?: number;
}

export type PackingResult =
  | { readonly ok: true; readonly packing: Packing }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };
