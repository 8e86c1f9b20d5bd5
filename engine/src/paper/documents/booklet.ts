import type { Step } from '../../sewing/index.ts';
import { mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';
import type { PaperDocument } from '../drawing/index.ts';
import {
  bold,
  figure as picture,
  flow,
  heading,
  list,
  paragraph,
  plain,
  sideBySide,
  together,
  type Block,
} from '../layout/index.ts';
import { stepPicture } from '../pictures/steps/index.ts';
import { documentOf, sheetOf, titleOf, type PaperInput } from './paperSet.ts';

/** The sewing booklet: every step with its numbers, its drawing, its times and its cautions. */
export function booklet(input: PaperInput): PaperDocument {
  const { plan, speaker, fonts } = input;
  const { papers } = speaker.words;
  const { sewing } = plan;
  const blocks: Block[] = [
    heading(1, titleOf(input)),
    paragraph(speaker.text(papers.bookletIntro, { hands: sewing.hands, wait: sewing.wait })),
    paragraph(papers.drawingsLegend, { quiet: true, size: 'small' }),
    ...sewing.steps.map((step, i) => stepBlock(step, i + 1, input)),
    paragraph(papers.localRules, { quiet: true }),
    ...teachings(input),
  ];
  return documentOf(input, papers.booklet, flow(blocks, sheetOf(input, papers.booklet), fonts));
}

/** Drawn smaller than this their words would be too small at arm's length; names of several cloths stand below them. */
const TALLEST = { one: mm(60), several: mm(71) };

function stepBlock(step: Step, number: number, { plan, speaker }: PaperInput): Block {
  const { steps } = speaker.words;
  return together(
    heading(2, `${String(number)}. ${steps[step.id]}`),
    paragraph(settings(step, speaker).join(' · '), { quiet: true, size: 'small' }),
    sideBySide(
      {
        share: 1.12,
        blocks: [
          list(
            step.sentences.map((sentence) => speaker.sentence(sentence)),
            'box',
          ),
          ...step.cautions.map((code) => cautionLine(code, speaker)),
        ],
      },
      {
        share: 1,
        blocks: [
          picture(stepPicture(plan, step, speaker), {
            maxHeight: plan.cloths.length > 1 ? TALLEST.several : TALLEST.one,
          }),
        ],
      },
    ),
  );
}

const cautionLine = (code: Step['cautions'][number], speaker: Speaker): Block =>
  paragraph(
    [
      bold(`${speaker.text(speaker.words.papers.lead, { what: speaker.words.levels.caution })} `),
      plain(speaker.words.cautions[code]),
    ],
    {
      size: 'small',
    },
  );

/** Where, how long, and how the machine is set. */
function settings(step: Step, speaker: Speaker): string[] {
  const { papers, stations, stitches } = speaker.words;
  const { stitch } = step;
  const set = stitch && {
    stitch: stitches[stitch.stitch],
    length: stitch.length,
    ...(stitch.width ? { width: stitch.width } : {}),
  };
  return [
    stations[step.station],
    speaker.text(papers.timeHands, { time: step.hands }),
    ...(step.wait.value > 0 ? [speaker.text(papers.timeWait, { time: step.wait })] : []),
    ...(set ? [speaker.text(stitch.width ? papers.stitchWidth : papers.stitchLength, set)] : []),
  ];
}

/** What the maker was taught is hers: printed only where she said so. */
function teachings({ plan, speaker }: PaperInput): Block[] {
  const { teachings: told } = plan.request;
  if (!told?.print || told.text.trim() === '') return [];
  return [heading(2, speaker.words.papers.teachings), paragraph(told.text)];
}
