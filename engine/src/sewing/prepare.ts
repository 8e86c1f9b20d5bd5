import { lengthOf } from '../geometry/index.ts';
import { mm } from '../units/index.ts';
import { step, type Bench } from './bench.ts';
import { anyUnwashed, clothToPress, severalCloths, washSentences, weightsDiffer } from './cloths.ts';
import { say } from './sentence.ts';
import type { Step } from './step.ts';
import { hands, paces, waiting } from './time.ts';

/** A machine wash and a dry on the line or in the dryer; most of a beginner's waiting. Common practice, no source. */
const WASH_AND_DRY = 150;
const DAB_DRIES = 10;

/** From the tape to cloth that lies square on the table. */
export function prepareSteps(bench: Bench): Step[] {
  const { body, options, ribbonOptions } = bench;
  const { skill } = options;
  const washCloth = anyUnwashed(bench);
  const washRibbon = !ribbonOptions.washed && bench.ribbons.rows.length > 0;
  const steps: Step[] = [
    step({
      id: 'measure',
      after: [],
      station: 'table',
      sentences: [
        say(bench.skirt.waist.elastic ? 'measure.string' : 'measure.stringWaist'),
        body.wears === 'seated' && say('measure.seated'),
        body.expecting && say('measure.expecting'),
        say('measure.numbers', { waist: body.waist, hip: body.hip, length: body.waistToHem }),
        say('measure.twice'),
      ],
      hands: hands(skill, paces.measure),
    }),
    step({
      id: 'colourTest',
      after: [],
      station: 'wash',
      sentences: [
        say('colourTest.dab'),
        severalCloths(bench) && say('colourTest.cloths'),
        say('colourTest.apart'),
      ],
      hands: hands(skill, paces.colourTest),
      wait: waiting(DAB_DRIES),
    }),
  ];
  if (washCloth || washRibbon)
    steps.push(
      step({
        id: 'prewash',
        after: ['colourTest'],
        station: 'wash',
        sentences: [
          washCloth && say('prewash.edges'),
          ...(washCloth ? washSentences(bench) : []),
          washRibbon && say('prewash.ribbon'),
          washCloth && bench.skirt.parts.some((part) => part.cloth !== 'skirt') && say('prewash.others'),
          !severalCloths(bench) && say('prewash.asWorn'),
        ],
        cautions: ['hotWater'],
        hands: hands(skill, paces.prewash),
        wait: waiting(WASH_AND_DRY),
      }),
    );
  const washed = washCloth || washRibbon ? 'prewash' : 'colourTest';
  return [
    ...steps,
    step({
      id: 'pressCloth',
      after: [washed],
      station: 'iron',
      sentences: [say('pressCloth.flat'), weightsDiffer(bench) && say('pressCloth.weights')],
      cautions: ['hotIron'],
      hands: hands(skill, paces.pressCloth, 0, clothToPress(bench)),
    }),
    step({
      id: 'straighten',
      after: ['pressCloth'],
      station: 'table',
      sentences: [say('straighten.thread'), say('straighten.square')],
      cautions: ['shears'],
      hands: hands(skill, paces.straighten),
    }),
  ];
}

/** Length of the scissors' way round one panel. */
export const roundPanel = (bench: Bench) => mm(lengthOf(bench.skirt.panels[0].shape.cut));
