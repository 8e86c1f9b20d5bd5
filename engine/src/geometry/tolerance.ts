import { mm } from '../units/index.ts';

/** Two points closer than this are one: a nanometre, far above rounding on a sheet of some metres, far below any thread. */
export const SAME = mm(1e-6);

/**
 * A line and a circle, or two circles, that miss or cut one another by no more than this touch in one point.
 * Smaller than SAME, because cutting by δ sets the two points √(8·R·δ) apart.
 */
export const TOUCH = mm(1e-9);
