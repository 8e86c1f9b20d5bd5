import { step, straightStitch, type Bench } from '../bench.ts';
import { say, type Sentence } from '../sentence.ts';
import type { Step, StepId } from '../step.ts';
import { hands, paces, together } from '../time.ts';
import { countOf, edgesOf, lengthOf, named } from '../works.ts';

/** A lining narrower than this share of the top that it hangs from can't be sewn to it edge to edge. Common practice, no source. */
const LEAST_SHARE = 0.98;
/** Wider than this it is laid in folds. */
const MOST_SHARE = 1.02;

/** A skirt inside the skirt, joined to it at the top before the waist is made. */
export function liningSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const { lining } = bench.skirt.extras;
  if (!lining) return [];
  const { skill } = bench.options;
  const seams = named(lining.works, 'lining seam');
  return [
    step({
      id: 'lining',
      after,
      station: 'machine',
      sentences: [
        say('lining.sew', { seams: countOf(seams) }),
        bench.skirt.waist.closure !== null && say('lining.open'),
        say('lining.hem', { hem: lining.hem }),
        say('lining.inside'),
        ...top(bench),
      ],
      cautions: ['needle', 'pins', 'hotIron'],
      stitch: straightStitch,
      works: lining.works,
      hands: together(
        hands(skill, paces.lining, countOf(seams), lengthOf(lining.works)),
        hands(skill, paces.edge, 0, edgesOf(bench, lining.works)),
      ),
    }),
  ];
}

/** Whether the lining hangs by single points: its top is narrower than the one it hangs from, which elastic draws in. */
export function hangsByPoints({ skirt }: Bench): boolean {
  const { lining } = skirt.extras;
  const flat = skirt.waist.build === 'turned' || skirt.waist.build === 'strip';
  return lining !== null && flat && lining.top.value < LEAST_SHARE * skirt.opening.value;
}

function top(bench: Bench): Sentence[] {
  const { skirt } = bench;
  const { lining } = skirt.extras;
  if (!lining) return [];
  const turned = skirt.waist.build === 'turned';
  if (hangsByPoints(bench)) return [say(turned ? 'lining.hang' : 'lining.hangSeam')];
  const wide = !turned && skirt.waist.build !== 'strip';
  return [
    turned ? say('lining.baste', { starts: lining.starts }) : say('lining.basteEdge'),
    ...(wide || lining.top.value > MOST_SHARE * skirt.opening.value ? [say('lining.pleat')] : []),
  ];
}
