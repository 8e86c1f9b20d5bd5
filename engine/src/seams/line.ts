import type { Colour } from '../fields/index.ts';
import type { Figure } from '../figure/index.ts';
import type { WorkName } from '../skirt/index.ts';
import type { Mm } from '../units/index.ts';
import type { SewnPiece } from './through.ts';

/**
 * Stitch classes of ISO 4915: 301 lockstitch, 304 zigzag lockstitch, 504 three-thread over-edge.
 */
export type StitchClass = '301' | '304' | '504';

/**
 * Seam classes of ISO 4916: 1 superimposed, 2 lapped, 5 decorative stitching on one ply, 6 edge neatening, 7 a separate
 * item applied.
 */
export type SeamClass = 1 | 2 | 5 | 6 | 7;

export type SeamName = WorkName | 'edge finish' | 'ribbon edge' | 'hem';

/** A part of a line that goes through the same pieces; what lies outside, or above, comes first. */
export interface Through {
  readonly pieces: readonly SewnPiece[];
  readonly length: Mm;
  readonly starts: number;
}

/** One line of stitching, or several alike. */
export interface StitchLine {
  readonly name: SeamName;
  readonly stitch: StitchClass;
  readonly seam: SeamClass;
  /** All of them together. */
  readonly length: Figure<Mm>;
  /** Starts; each start and stop leaves a tail of thread. */
  readonly starts: number;
  /** Colour of the needle's thread: a ribbon's own, or null for the cloth's. */
  readonly top: Colour | null;
  /** What it goes through, part by part; the parts make up its length and its starts. */
  readonly through: readonly Through[];
}
