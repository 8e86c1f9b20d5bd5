import { longStitch, step, straightStitch, type Bench } from './bench.ts';
import { figure } from './codes.ts';
import { say } from './sentence.ts';
import type { Step, StepId } from './step.ts';
import { hands, paces, together } from './time.ts';
import { countOf, edgesOf, lengthOf, named, panelWorks } from './works.ts';

/** Rows of long stitches, all in one go: along the top of tiers, and of panels that are gathered onto a band. */
export function gatherSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const ofTiers = named(panelWorks(bench), 'gathering rows');
  const ofTop = named(bench.skirt.waist.works, 'gathering rows');
  const works = [...ofTiers, ...ofTop];
  if (works.length === 0) return [];
  const { skill } = bench.options;
  return [
    step({
      id: 'gather',
      after,
      station: 'machine',
      sentences: [
        say('gather.quarters'),
        ofTiers.length > 0 && say('gather.tiers', { tiers: ofTiers.length }),
        ofTop.length > 0 && say(inFront(bench) ? 'gather.topFront' : 'gather.top'),
        say('gather.tails'),
      ],
      cautions: ['needle'],
      stitch: longStitch,
      works,
      hands: hands(skill, paces.gather, countOf(works), lengthOf(works)),
    }),
  ];
}

/** Whether only the front is gathered or darted: behind runs elastic. */
export const inFront = ({ skirt: { waist } }: Bench): boolean => waist.elastic?.where === 'back';

/** Each tier hung from the one above. */
export function tierSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const works = named(panelWorks(bench), 'tier seam');
  if (works.length === 0) return [];
  const { skill } = bench.options;
  const gathered = named(panelWorks(bench), 'gathering rows').length > 0;
  const top = bench.skirt.rounds[1]?.panels[0].shape.topAllowance;
  return [
    step({
      id: 'sewTiers',
      after,
      station: 'machine',
      sentences: [
        say('sewTiers.order', { seams: countOf(works) }),
        say('sewTiers.pin'),
        say(gathered ? 'sewTiers.draw' : 'sewTiers.ease'),
        top !== undefined && say('sewTiers.sew', { seam: figure.length(top, 'sewing.tierSeam') }),
        say(bench.options.overlocker ? 'sewTiers.overlock' : 'sewTiers.finish'),
        say('sewTiers.press'),
      ],
      cautions: ['needle', 'pins', bench.options.overlocker && 'overlocker', 'hotIron'],
      stitch: straightStitch,
      works,
      hands: together(
        hands(skill, paces.gatheredSeam, 0, lengthOf(works)),
        hands(skill, paces.edge, 0, edgesOf(bench, works)),
      ),
    }),
  ];
}
