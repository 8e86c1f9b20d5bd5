import { seamFromEdge, step, straightStitch, type Bench } from '../bench.ts';
import { openingBelow } from '../joins.ts';
import { say } from '../sentence.ts';
import type { Step, StepId } from '../step.ts';
import { hands, paces } from '../time.ts';
import { lengthOf, named } from '../works.ts';

/** Narrower than this an allowance does not hold a zip's tape, mm. Common practice, no source. */
const TAPE = 12;

/** Zip or placket, in the seam that was left open, before the waist goes over it. */
export function openingSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const { closure, above, works: all } = bench.skirt.waist;
  if (!closure) return [];
  const below = openingBelow(closure.depth, above);
  const works = named(all, 'zip', 'placket');
  const zip = closure.kind === 'zip';
  const seam = seamFromEdge(bench);
  return [
    step({
      id: 'opening',
      after,
      station: 'machine',
      sentences: zip
        ? [
            seam.value < TAPE && say('opening.widen', { seam }),
            say('opening.zipBaste', { below }),
            say('opening.zipLay'),
            say('opening.zipStitch'),
          ]
        : [say('opening.placketOpen', { below }), say('opening.placketBind'), say('opening.placketFold')],
      cautions: ['needle', 'pins', 'hotIron', 'shears'],
      stitch: straightStitch,
      works,
      hands: hands(bench.options.skill, zip ? paces.zip : paces.placket, 0, lengthOf(works)),
    }),
  ];
}
