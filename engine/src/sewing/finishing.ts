import { step, zigzagStitch, type Bench } from './bench.ts';
import { hemStep } from './construct.ts';
import { say, type Step, type StepId } from './step.ts';
import { hands, paces } from './time.ts';

/** From a hemmed tube to a skirt that was tried on. */
export function finishingSteps(bench: Bench): Step[] {
  const { skirt, options, body } = bench;
  const { skill } = options;
  const { elastic } = skirt.waist;
  const isLong = body.notices.some(({ code }) => code === 'body.longHem' || code === 'body.hemBelowFloor');
  const elasticSteps = elastic
    ? [
        step({
          id: 'threadElastic',
          after: ['casing'],
          station: 'table',
          sentences: [
            say('threadElastic.cut', { cut: elastic.cut, width: elastic.width }),
            say('threadElastic.thread'),
            say('threadElastic.pin'),
            say('threadElastic.tryOn', { length: skirt.finishedLength }),
          ],
          cautions: ['pins'],
          hands: hands(skill, paces.threadElastic),
        }),
        step({
          id: 'closeElastic',
          after: ['threadElastic'],
          station: 'machine',
          sentences: [
            say('closeElastic.even'),
            say('closeElastic.join'),
            say('closeElastic.opening'),
            say('closeElastic.catch', { seams: skirt.sideSeams }),
          ],
          cautions: ['needle'],
          stitch: zigzagStitch,
          hands: hands(skill, paces.closeElastic),
        }),
      ]
    : [];
  const triedOn: StepId = elastic ? 'closeElastic' : 'casing';
  return [
    ...elasticSteps,
    hemStep(bench, [triedOn]),
    step({
      id: 'finish',
      after: ['hem'],
      station: 'iron',
      sentences: [say('finish.ends'), say('finish.press'), say('finish.note')],
      cautions: ['pins', 'satinIron', isLong && 'longHem'],
      hands: hands(skill, paces.finish),
    }),
  ];
}
