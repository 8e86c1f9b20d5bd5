import { flatRows, keepsSelvages, step, straightStitch, zigzagStitch, type Bench } from './bench.ts';
import { pressedOpen } from './joins.ts';
import { inFront } from './tiers.ts';
import { say } from './sentence.ts';
import type { Step, StepId } from './step.ts';
import { hands, paces } from './time.ts';
import { countOf, edgesOf, joinedAs, lengthOf, named, panelSeams, panelWorks } from './works.ts';

/** The seams between the panels, once they are sewn. */
export function finishEdges(bench: Bench, after: readonly StepId[]): Step[] {
  const works = panelSeams(bench);
  if (works.length === 0) return [];
  const { overlocker, skill } = bench.options;
  const open = pressedOpen(bench);
  const together = overlocker ? 'finishEdges.overlock' : 'finishEdges.zigzag';
  const apart = overlocker ? 'finishEdges.overlockApart' : 'finishEdges.zigzagApart';
  const aside = joinedAs(bench) === 'sides' ? 'finishEdges.press' : 'finishEdges.pressAside';
  return [
    step({
      id: 'finishEdges',
      after,
      station: overlocker ? 'overlocker' : 'machine',
      sentences: [
        say(open ? apart : together),
        keepsSelvages(bench) && say('finishEdges.selvage'),
        say(open ? 'finishEdges.pressOpen' : aside),
      ],
      cautions: ['needle', overlocker && 'overlocker', 'hotIron'],
      ...(overlocker ? {} : { stitch: zigzagStitch }),
      hands: hands(skill, paces.edge, 0, edgesOf(bench, works)),
    }),
  ];
}

/** Darts are sewn while the panel still lies flat. */
export function dartSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const { takenUp, works: all } = bench.skirt.waist;
  const works = named(all, 'dart');
  if (!takenUp?.dartWidth || !takenUp.dartLength || works.length === 0) return [];
  const { darts, dartWidth: width, dartLength: length } = takenUp;
  return [
    step({
      id: 'darts',
      after,
      station: 'machine',
      sentences: [
        say(inFront(bench) ? 'darts.markFront' : 'darts.mark', { darts, width, length }),
        say('darts.sew'),
        say('darts.press'),
      ],
      cautions: ['needle', 'pins', 'hotIron'],
      stitch: straightStitch,
      works,
      hands: hands(bench.options.skill, paces.dart, countOf(works), lengthOf(works)),
    }),
  ];
}

/** The free edges of a skirt that goes round and over itself. */
export function faceSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const works = named(panelWorks(bench), 'facing');
  const { overlap } = bench.skirt;
  if (!overlap || works.length === 0) return [];
  return [
    step({
      id: 'faceEdges',
      after,
      station: 'machine',
      sentences: [
        flatRows(bench).length > 0 && say('faceEdges.rows'),
        say('faceEdges.turn', { facing: overlap.facing }),
        say('faceEdges.stitch'),
      ],
      cautions: ['hotIron', 'needle', 'pins'],
      stitch: straightStitch,
      works,
      hands: hands(bench.options.skill, paces.facing, 0, lengthOf(works)),
    }),
  ];
}
