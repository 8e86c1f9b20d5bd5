/**
 * Runs of a property: `short` by default; the environment's PROPERTY_RUNS multiplies it for a long search
 * (`PROPERTY_RUNS=50 npx vitest run engine/src/plan`).
 */
export const runs = (short: number): number =>
  Math.ceil(short * Math.max(1, Number(process.env['PROPERTY_RUNS'] ?? 1)));

/**
 * How long such a test may take: `test('…', patience, () => …)`. Several times what the longest takes on a slow machine with others beside it:
 * it is there for what never ends.
 */
export const patience = { timeout: runs(120_000) };
