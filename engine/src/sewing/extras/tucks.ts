import { mm } from '../../units/index.ts';
import { longStitch, step, type Bench } from '../bench.ts';
import { figure } from '../codes.ts';
import { say } from '../sentence.ts';
import type { Step, StepId } from '../step.ts';
import { topLine } from '../topLine.ts';
import { hands, paces } from '../time.ts';
import { lengthOf } from '../works.ts';

/** Tucks that are let down as a child grows: the stitches come out easily. A deeper hem is no step of its own. */
export function tuckSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const { tucks } = bench.skirt.extras;
  if (!tucks || tucks.works.length === 0) return [];
  const { below, depth, space, count } = tucks;
  const lines = figure.length(mm(2 * depth.value), 'sewing.tuckLines', { depth });
  return [
    step({
      id: 'tucks',
      after,
      station: 'machine',
      sentences: [
        say('tucks.chalk', { tucks: count, below, lines, top: topLine(bench) }),
        count.value > 1 && say('tucks.next', { tucks: count, space }),
        say('tucks.sew', { tucks: count, depth }),
        say('tucks.press'),
      ],
      cautions: ['needle', 'pins', 'hotIron'],
      stitch: longStitch,
      works: tucks.works,
      hands: hands(bench.options.skill, paces.tuck, count.value, lengthOf(tucks.works)),
    }),
  ];
}
