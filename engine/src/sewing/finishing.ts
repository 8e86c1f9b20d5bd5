import { mm } from '../units/index.ts';
import { lengthOfLines, step, straightStitch, type Bench } from './bench.ts';
import { figure } from './codes.ts';
import { say } from './sentence.ts';
import type { Step, StepId } from './step.ts';
import { hands, paces } from './time.ts';
import { joinedAs } from './works.ts';

/** The hem is sewn once the skirt was tried on with it pinned; then nothing is left but threads and pins. */
export function finishingSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const { body, options, skirt } = bench;
  const { tucks } = skirt.extras;
  const isLong = body.notices.some(({ code }) => code === 'body.longHem' || code === 'body.hemBelowFloor');
  return [
    hemStep(bench, after),
    step({
      id: 'finish',
      after: ['hem'],
      station: 'iron',
      sentences: [
        say('finish.ends'),
        say('finish.press'),
        tucks !== null &&
          say(tucks.how === 'tucks' ? 'finish.letDown' : 'finish.letDownHem', {
            tucks: tucks.count,
            letsDown: tucks.letsDown,
          }),
        body.growth?.short ? say('finish.short', { date: body.growth.short.on }) : false,
        body.expecting && say('finish.expecting'),
        skirt.overlap?.closes === 'ties' && skirt.waist.build === 'band' && say('finish.wrap'),
        say('finish.note'),
      ],
      cautions: ['pins', 'satinIron', isLong && 'longHem', body.wears === 'seated' && 'wheels'],
      hands: hands(options.skill, paces.finish),
    }),
  ];
}

function hemStep(bench: Bench, after: readonly StepId[]): Step {
  const { skirt, options } = bench;
  const straight = skirt.hang.shape === 'straight';
  const under = figure.length(skirt.hemTurnUnder, 'sewing.turnUnder');
  const depth = figure.length(mm(skirt.hemAllowance.value - skirt.hemTurnUnder), 'sewing.hemStitching', {
    hem: skirt.hemAllowance,
  });
  const twice = { hem: skirt.hemAllowance, turnUnder: under, depth };
  const turn = joinedAs(bench) === 'sides' ? say('hem.turn', twice) : say('hem.turnAt', twice);
  return step({
    id: 'hem',
    after,
    station: 'machine',
    sentences: [
      under.value > 0 ? turn : say('hem.once', { depth }),
      skirt.extras.slits && !skirt.overlap
        ? say('hem.stitchSlits', { slits: skirt.extras.slits.sides.length, round: skirt.hemRound })
        : say(skirt.overlap ? 'hem.stitchAcross' : 'hem.stitch', { depth, round: skirt.hemRound }),
      !straight && say('hem.curve'),
    ],
    cautions: ['hotIron', 'needle', 'pins'],
    stitch: straightStitch,
    hands: hands(options.skill, paces.hem, 0, lengthOfLines(bench, 'hem')),
  });
}
