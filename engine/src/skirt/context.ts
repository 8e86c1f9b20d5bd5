import type { Body, Stride } from '../body/index.ts';
import type { Figure } from '../figure/index.ts';
import type { Mm } from '../units/index.ts';

/** How heavy the cloth is in the hand; it decides how much of it a casing can hold. */
export const clothWeights = ['light', 'medium', 'heavy'] as const;
export type ClothWeight = (typeof clothWeights)[number];

/** What is known before anything is drafted: the body, its walking room, and the cloth as it will be after its wash. */
export interface DraftGiven {
  readonly body: Body;
  readonly stride: Stride;
  /** Width between the selvages after the wash. */
  readonly clothWidth: Figure<Mm>;
  readonly clothWeight: ClothWeight;
  /** Finest mark that will be chalked; marks round up to it. */
  readonly mark: Mm;
}

/** What a cut knows of the world. */
export interface DraftContext extends DraftGiven {
  /** Length of the panels that growth tucks take up; null without tucks. */
  readonly inTucks: Figure<Mm> | null;
  /** What of the hem is kept to be let down; null without. */
  readonly inHem: Figure<Mm> | null;
}
