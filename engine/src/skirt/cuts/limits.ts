import { mm } from '../../units/index.ts';

/**
 * What the fields of the cuts take that can also be taken hold of in a drawing: the schemas refuse what is outside, and no handle
 * goes there. Slips of the pen are outside, no skirts.
 */
export const fullnessLimits = { least: 1, most: 4 } as const;
/** More widths than this is a tent. */
export const widthsLimits = { least: 1, most: 12 } as const;
export const hemLimits = { least: mm(6), most: mm(250) } as const;
export const hemAtFoldLimits = { least: mm(50), most: mm(3000) } as const;
/** Finished hem all round, and that of one gore. */
export const hemRoundLimits = { least: mm(200), most: mm(12_000) } as const;
export const frontHemLimits = { least: mm(30), most: mm(3000) } as const;
export const overlapLimits = { least: mm(50), most: mm(2000) } as const;
/** What one tier is of the length against another. */
export const shareLimits = { least: 1, most: 5 } as const;
