import { mm } from '../units/index.ts';
import {
  goRound,
  keepsSelvages,
  lengthOfLines,
  seamFromEdge,
  step,
  straightStitch,
  zigzagStitch,
  type Bench,
} from './bench.ts';
import { figure } from './codes.ts';
import { panelsDone } from './ribbonSteps.ts';
import { say, type Step, type StepId } from './step.ts';
import { hands, paces } from './time.ts';

/** From finished panels to a tube with its edges and hem. */
export function constructSteps(bench: Bench): Step[] {
  const { skirt, ribbons, options, cloth } = bench;
  const { skill } = options;
  const round = goRound(bench);
  const hasRows = ribbons.rows.length > 0;
  const seams = round ? 1 : skirt.sideSeams;
  const each = lengthOfLines(bench, 'side seam') / skirt.sideSeams;
  const flared = skirt.marks.hemQuarter.value > skirt.marks.waistQuarter.value;
  const straight = skirt.hang.shape === 'straight';
  return [
    step({
      id: 'sideSeams',
      after: [panelsDone(bench), 'testStitch'],
      station: 'machine',
      sentences: [
        hasRows && ribbons.where !== 'front' && ribbons.where !== 'back' && say('sideSeams.match'),
        say('sideSeams.sew', { seams, seam: seamFromEdge(bench) }),
        flared && straight && say('sideSeams.mirror'),
        hasRows && say('sideSeams.catch'),
      ],
      cautions: ['needle', 'pins'],
      stitch: straightStitch,
      hands: hands(skill, paces.seam, seams, mm(seams * each)),
    }),
    step({
      id: 'finishEdges',
      after: ['sideSeams'],
      station: options.overlocker ? 'overlocker' : 'machine',
      sentences: [
        say(options.overlocker ? 'finishEdges.overlock' : 'finishEdges.zigzag'),
        keepsSelvages(bench) && say('finishEdges.selvage'),
        say('finishEdges.press'),
      ],
      cautions: ['needle', options.overlocker && 'overlocker', 'hotIron'],
      ...(options.overlocker ? {} : { stitch: zigzagStitch }),
      hands: hands(skill, paces.edge, 0, lengthOfLines(bench, 'edge finish')),
    }),
    step({
      id: 'casing',
      after: ['finishEdges'],
      station: 'machine',
      sentences: [
        say('casing.turn', { casing: skirt.waist.topAllowance, depth: casingDepth(bench) }),
        cloth.chosen.kind === 'double fold' && straight && say('casing.selvage'),
        !straight && say('casing.curve'),
        say('casing.stitch', {
          depth: casingDepth(bench),
          opening: figure.length(THREADING_OPENING, 'sewing.threadingOpening'),
        }),
      ],
      cautions: ['hotIron', 'needle', 'pins'],
      stitch: straightStitch,
      hands: hands(skill, paces.casing, 0, lengthOfLines(bench, 'casing')),
    }),
  ];
}

/** The hem is sewn once the skirt was tried on with it pinned. */
export function hemStep(bench: Bench, after: readonly StepId[]): Step {
  const { skirt, options } = bench;
  const straight = skirt.hang.shape === 'straight';
  return step({
    id: 'hem',
    after,
    station: 'machine',
    sentences: [
      say('hem.turn', {
        hem: skirt.hemAllowance,
        turnUnder: figure.length(skirt.hemTurnUnder, 'sewing.turnUnder'),
        depth: hemDepth(bench),
      }),
      say('hem.stitch', { depth: hemDepth(bench), round: skirt.hemRound }),
      !straight && say('hem.curve'),
    ],
    cautions: ['hotIron', 'needle', 'pins'],
    stitch: straightStitch,
    hands: hands(options.skill, paces.hem, 0, lengthOfLines(bench, 'hem')),
  });
}

/** Opening left to thread the elastic: about 1 to 2 in in published tutorials. */
const THREADING_OPENING = mm(50);

const hemDepth = ({ skirt }: Bench) =>
  figure.length(mm(skirt.hemAllowance.value - skirt.hemTurnUnder), 'sewing.hemStitching', {
    hem: skirt.hemAllowance,
  });

const casingDepth = ({ skirt }: Bench) =>
  figure.length(skirt.waist.depth, 'sewing.casingStitching', { casing: skirt.waist.topAllowance });
