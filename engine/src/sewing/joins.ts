import type { SeamSide, Work } from '../skirt/index.ts';
import { mm } from '../units/index.ts';
import { flatRows, keepsSelvages, seamFromEdge, step, straightStitch, type Bench } from './bench.ts';
import { figure } from './codes.ts';
import { panelsReady } from './cutting.ts';
import { say, type Sentence } from './sentence.ts';
import type { Step, StepId } from './step.ts';
import { hands, paces, together } from './time.ts';
import { bagsInTurn, countOf, joinedAs, lengthOf, seamsInTurn } from './works.ts';

/** A seam allowance narrower than this is pressed to one side: opened, it would not lie. Common practice, no source. */
const LEAST_OPENED = 9;

/** Whether the seams' edges are finished apart and pressed open: it lies flatter where many seams meet a top or a gather. */
export const pressedOpen = (bench: Bench): boolean =>
  joinedAs(bench) !== 'sides' && bench.skirt.sideSeamAllowance.value >= LEAST_OPENED;

/** The step after which rows that lie flat can be chalked. */
export function rowsStart(bench: Bench): StepId {
  const { first, last } = seamsInTurn(bench);
  if (first.length === 0) return panelsReady(bench);
  return last.length === 0 ? 'finishEdges' : firstId(bench);
}

const firstId = (bench: Bench): StepId => (joinedAs(bench) === 'sides' ? 'firstSeams' : 'firstJoins');

/** Seams that are sewn before rows that go round. */
export function firstSeams(bench: Bench, after: readonly StepId[]): Step[] {
  const { first, last } = seamsInTurn(bench);
  if (first.length === 0) return [];
  const seams = countOf(first);
  const bags = bagsInTurn(bench).first;
  const seam = seamFromEdge(bench);
  const joined = joinedAs(bench);
  const told: Sentence =
    joined === 'sides'
      ? say('firstSeams.round', { seams, seam })
      : joined === 'strips'
        ? say('firstJoins.strips', { seams, seam })
        : say(last.length > 0 ? 'firstJoins.round' : 'firstJoins.across', { seams, seam });
  const finish: Sentence | false =
    last.length === 0 || keepsSelvages(bench)
      ? false
      : joined === 'sides'
        ? say('firstSeams.finish')
        : say(pressedOpen(bench) ? 'firstJoins.finish' : 'firstJoins.finishAside');
  return [
    step({
      id: firstId(bench),
      after,
      station: 'machine',
      sentences: [
        joined === 'panels' && bench.skirt.panels.length > 2 && say('panelSeams.order'),
        meetsPattern(bench),
        told,
        ...inSeams(bench, bags),
        finish,
      ],
      cautions: ['needle', bags.length > 0 && 'pins'],
      stitch: straightStitch,
      works: [...first, ...bags],
      hands: seamHands(bench, first, bags),
    }),
  ];
}

/** The seams that are left, with the ribbons' ends caught in them. */
export function lastSeams(bench: Bench, after: readonly StepId[]): Step[] {
  const { last } = seamsInTurn(bench);
  if (last.length === 0) return [];
  const { skirt, ribbons } = bench;
  const { closure, above } = skirt.waist;
  const bags = bagsInTurn(bench).last;
  const seams = countOf(last);
  const seam = seamFromEdge(bench);
  const rows = flatRows(bench).length > 0;
  const matched = rows && ribbons.where !== 'front' && ribbons.where !== 'back';
  const joined = joinedAs(bench);
  const flared = skirt.marks.hemQuarter.value > skirt.marks.waistQuarter.value;
  const turns = flared && skirt.hang.shape === 'straight' && skirt.waist.build === 'turned';
  const ways = {
    sides: [
      matched && say('sideSeams.match'),
      say('sideSeams.sew', { seams, seam }),
      turns && say('sideSeams.mirror'),
    ],
    panels: [
      seams > 1 && skirt.panels.length > 2 && say('panelSeams.order'),
      matched && say('panelSeams.match'),
      say('panelSeams.sew', { seams, seam }),
    ],
    strips: [matched && say('joinStrips.match'), say('joinStrips.sew', { seams, seam })],
  } as const;
  return [
    step({
      id: ({ sides: 'sideSeams', panels: 'panelSeams', strips: 'joinStrips' } as const)[joined],
      after,
      station: 'machine',
      sentences: [
        meetsPattern(bench),
        ...ways[joined],
        rows && say('sideSeams.catch'),
        ...inSeams(bench, bags),
        closure !== null &&
          say('seams.opening', { below: openingBelow(closure.depth, above), where: opensAt(bench) }),
      ],
      cautions: ['needle', 'pins'],
      stitch: straightStitch,
      works: [...last, ...bags],
      hands: seamHands(bench, last, bags),
    }),
  ];
}

function seamHands({ options }: Bench, seams: readonly Work[], bags: readonly Work[]) {
  return together(
    hands(options.skill, paces.seam, countOf(seams), lengthOf(seams)),
    ...(bags.length > 0 ? [hands(options.skill, paces.pocketBag, countOf(bags), lengthOf(bags))] : []),
  );
}

/** Before the seams of a cloth whose pattern has to meet: lines are pinned to lines. */
const meetsPattern = ({ cloth }: Bench): Sentence | false =>
  cloth.fabric.pattern?.match === true && say('seams.pattern');

/** What is left open in the seams, or sewn in one with them. */
function inSeams({ skirt }: Bench, bags: readonly Work[]): Sentence[] {
  const { slits } = skirt.extras;
  return [
    ...(bags.length > 0 ? [say('seams.pocket', { bags: countOf(bags) })] : []),
    ...(slits ? [say('seams.slit', { where: slitPlaces(slits.sides), height: slits.height })] : []),
  ];
}

/** Where the slits are, in one word that a message can choose by. */
export const slitPlaces = (sides: readonly SeamSide[]): string =>
  sides.length > 1 ? 'both' : (sides[0] ?? 'back');

/** How far from the centre back a seam still counts as there, in turns: a sixteenth of the round. Common practice, no source. */
const BEHIND = 1 / 16;

/** The waist opens in the seam behind; where there is none, at the left side, or at the right where only that has no pocket. */
function opensAt({ skirt: { rounds, extras } }: Bench): SeamSide {
  const isBehind = ({ around: { to } }: Bench['skirt']['panels'][0]): boolean =>
    Math.abs(to - Math.floor(to) - 0.5) <= BEHIND + 1e-6;
  if (rounds[0].panels.some(isBehind)) return 'back';
  const pockets = extras.pockets?.sides ?? [];
  return pockets.includes('left') && !pockets.includes('right') ? 'right' : 'left';
}

/** What of an opening lies in the panels, below the band. */
export const openingBelow = (
  depth: Bench['skirt']['finishedLength'],
  above: Bench['skirt']['finishedLength'],
) => figure.length(mm(Math.max(0, depth.value - above.value)), 'sewing.openingBelow', { depth, above });
