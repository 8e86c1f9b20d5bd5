import type { Bench } from '../bench.ts';
import type { Step, StepId } from '../step.ts';
import { bandSteps, stretchBandSteps, tieSteps } from './band.ts';
import { stripCasing, turnedCasing } from './casing.ts';
import { cordSteps, elasticSteps, fastenSteps } from './hold.ts';

export { openingSteps } from './opening.ts';

const builds: Readonly<
  Record<Bench['skirt']['waist']['build'], (bench: Bench, after: readonly StepId[]) => Step[]>
> = {
  turned: turnedCasing,
  strip: stripCasing,
  band: bandSteps,
  'stretch band': stretchBandSteps,
};

/** What holds the skirt up, by how it is built, until it was tried on. */
export function waistSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const ties = tieSteps(bench);
  const built = builds[bench.skirt.waist.build](bench, [...after, ...ties.map(({ id }) => id)]);
  const last = built.at(-1)?.id;
  const on = last ? [last] : after;
  return [...ties, ...built, ...elasticSteps(bench, on), ...cordSteps(bench, on), ...fastenSteps(bench, on)];
}
