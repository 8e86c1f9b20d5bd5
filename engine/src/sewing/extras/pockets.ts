import { step, straightStitch, type Bench } from '../bench.ts';
import { say } from '../sentence.ts';
import type { Step, StepId } from '../step.ts';
import { topLine } from '../topLine.ts';
import { hands, paces, together } from '../time.ts';
import { countOf, edgesOf, lengthOf, named } from '../works.ts';

/** A bag piece on each edge of a side, before the side is sewn: bag and side are then sewn in one. */
export function pocketSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const { pockets } = bench.skirt.extras;
  if (!pockets) return [];
  const { skill } = bench.options;
  const works = named(pockets.works, 'pocket seam');
  const { below, opening, headroom, seam } = pockets;
  return [
    step({
      id: 'pockets',
      after,
      station: 'machine',
      sentences: [
        say('pockets.mark', { below, opening, top: topLine(bench) }),
        say('pockets.lay', { pieces: countOf(works), headroom }),
        say('pockets.sew', { seam }),
        say('pockets.press'),
      ],
      cautions: ['needle', 'pins', 'hotIron'],
      stitch: straightStitch,
      works,
      hands: together(
        hands(skill, paces.pocket, countOf(works), lengthOf(works)),
        hands(skill, paces.edge, 0, edgesOf(bench, pockets.works)),
      ),
    }),
  ];
}
