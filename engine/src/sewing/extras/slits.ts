import { step, straightStitch, type Bench } from '../bench.ts';
import { slitPlaces } from '../joins.ts';
import { say } from '../sentence.ts';
import type { Step, StepId } from '../step.ts';
import { hands, paces } from '../time.ts';
import { countOf, lengthOf } from '../works.ts';

/** The edges of the slits, faced once the seam above them is sewn and before the hem is turned. */
export function slitSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const { slits } = bench.skirt.extras;
  if (!slits) return [];
  const crossed = bench.ribbons.rows.some(({ fromHem }) => fromHem.value < slits.takes.to);
  return [
    step({
      id: 'slits',
      after,
      station: 'machine',
      sentences: [
        say('slits.face', { where: slitPlaces(slits.sides), height: slits.height }),
        crossed && say('slits.rows'),
        say('slits.turn', { facing: slits.facing }),
        say('slits.tack'),
      ],
      cautions: ['needle', 'pins', 'hotIron'],
      stitch: straightStitch,
      works: slits.works,
      hands: hands(bench.options.skill, paces.slit, countOf(slits.works), lengthOf(slits.works)),
    }),
  ];
}
