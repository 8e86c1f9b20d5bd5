import type { Figure, NoticeParam } from '../figure/index.ts';
import type { Ordinate } from '../skirt/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { step, type Bench } from './bench.ts';
import { figure } from './codes.ts';
import { roundPanel } from './prepare.ts';
import { say, type Sentence, type Step, type StepId } from './step.ts';
import { hands, paces, waiting } from './time.ts';

/** Hours that a skirt cut off the grain hangs before its hem is trued: 24 in extension leaflets (48 in one). */
const HANG_HOURS = 24;

/** From square cloth to panels with their rows' edge trimmed true. */
export function cuttingSteps(bench: Bench): Step[] {
  const { skirt, cloth, options } = bench;
  const { skill } = options;
  const lay = cloth.chosen;
  const cutsThroughFour = lay.table.layers === 4;
  const cuts = cutsThroughFour ? 1 : lay.table.pieces.length;
  const straightWidths = skirt.marking === 'straight widths';
  const trimOff = figure.length(
    mm(
      skirt.marks.cutLength.value -
        skirt.finishedLength.value -
        skirt.hemAllowance.value -
        skirt.waist.topAllowance.value,
    ),
    'sewing.trimOff',
    {
      cutLength: skirt.marks.cutLength,
      length: skirt.finishedLength,
      hem: skirt.hemAllowance,
      casing: skirt.waist.topAllowance,
    },
  );
  const steps = [
    step({
      id: 'fold',
      after: ['straighten', 'measure'],
      station: 'table',
      sentences: foldSentences(bench),
      hands: hands(skill, paces.fold),
    }),
    step({
      id: 'mark',
      after: ['fold'],
      station: 'table',
      sentences: straightWidths ? widthMarks(bench) : flaredMarks(bench),
      hands: hands(skill, paces.mark, 4 * cuts),
    }),
    step({
      id: 'cut',
      after: ['mark'],
      station: 'table',
      sentences: [
        say('cut.pinLayers', { layers: lay.table.layers }),
        say('cut.smooth'),
        cutsThroughFour && say('cut.slitFold'),
        straightWidths && say('cut.tear'),
        say('cut.frontBack'),
      ],
      cautions: ['shears', 'pins'],
      hands: hands(skill, paces.cut, 0, mm((cutsThroughFour ? 0.5 : cuts) * roundPanel(bench))),
    }),
    step({
      id: 'trim',
      after: ['cut'],
      station: 'table',
      sentences: [
        skirt.hang.shape === 'curved'
          ? say('trim.curve', { hem: skirt.hemAllowance })
          : say('trim.square', { trimOff }),
        say('trim.check', { length: rawLength(bench) }),
        say('trim.beforeRows'),
      ],
      cautions: ['shears'],
      hands: hands(skill, paces.trim, skirt.panels.length),
    }),
  ];
  if (!skirt.hang.mustHang) return steps;
  return [
    ...steps,
    step({
      id: 'hang',
      after: ['trim'],
      station: 'table',
      sentences: [say('hang.day', { hours: figure.count(HANG_HOURS, 'sewing.hangHours') }), say('hang.true')],
      hands: hands(skill, paces.hang),
      wait: waiting(HANG_HOURS * 60),
    }),
  ];
}

/** The step after which panels are ready for their rows. */
export const panelsReady = (bench: Bench): StepId => (bench.skirt.hang.mustHang ? 'hang' : 'trim');

/** Raw edge to raw edge once trimmed, along the centre. */
const rawLength = ({ skirt }: Bench) =>
  figure.length(
    mm(skirt.finishedLength.value + skirt.hemAllowance.value + skirt.waist.topAllowance.value),
    'sewing.rawLength',
    { length: skirt.finishedLength, hem: skirt.hemAllowance, casing: skirt.waist.topAllowance },
  );

function foldSentences({ cloth, skirt }: Bench): Sentence[] {
  const lay = cloth.chosen;
  const size: Record<string, NoticeParam> = { cloth: lay.tableCloth, panels: skirt.panels.length };
  // Straight widths are only cut across: nothing is marked at a fold.
  const stack =
    skirt.marking === 'at the fold' ? [say(lay.headToTail ? 'fold.wholePanels' : 'fold.stack')] : [];
  switch (lay.kind) {
    case 'double fold':
      return [say('fold.double', size), say('fold.doubleEdges'), say('fold.grain')];
    case 'lengthwise fold':
      return [say('fold.lengthwise', size), say('fold.grain')];
    case 'crosswise fold':
      return [
        say('fold.crosswise', size),
        ...(cloth.fabric.oneWay && !lay.printOnItsSide ? [say('fold.crosswiseTurn')] : []),
        ...stack,
      ];
    case 'open':
      return [say(lay.headToTail ? 'fold.openHeadToTail' : 'fold.open', size), ...stack];
  }
}

function flaredMarks({ skirt, cloth }: Bench): Sentence[] {
  const { marks, waist, finishedLength, hang } = skirt;
  const casing = waist.topAllowance;
  const rise = hang.extraDepth;
  // On a curve the centre of the panel lies lower than its sides, which reach the top edge.
  const casingLine =
    rise.value === 0
      ? casing
      : figure.length(mm(casing.value + rise.value), 'sewing.casingLine', { casing, rise });
  const hemLine = figure.length(mm(casingLine.value + finishedLength.value), 'sewing.hemLine', {
    casingLine,
    length: finishedLength,
  });
  const start = [say('mark.chalkScrap'), say(cloth.chosen.headToTail ? 'mark.fromCentre' : 'mark.fromFold')];
  const end = [
    say('mark.bottom', { bottomLine: marks.bottom }),
    ...(cloth.chosen.table.layers > 1 ? [say('mark.through')] : []),
  ];
  if (hang.shape === 'curved') return [...start, ...curvedMarks(skirt, casingLine, hemLine), ...end];
  return [
    ...start,
    say('mark.waist', { casingLine, waistQuarter: marks.waistQuarter }),
    say('mark.hem', { hemLine, hemQuarter: marks.hemQuarter }),
    say('mark.join'),
    say('mark.casingEnd', { casingEnd: marks.casingEnd }),
    say('mark.hemEnd', { hemEnd: marks.hemEnd }),
    ...end,
  ];
}

/** On a curve the side's dots lie above the lines that cross the fold, and the scissors follow curves of their own. */
function curvedMarks(skirt: Bench['skirt'], casingLine: Figure<Mm>, hemLine: Figure<Mm>): Sentence[] {
  const { hang, waist, marks, finishedLength } = skirt;
  const at = (dot: Ordinate | undefined): Record<string, NoticeParam> =>
    dot ? { across: figure.length(dot.across, 'sewing.acrossCurve'), up: dot.up } : {};
  const casing = waist.topAllowance;
  const beyond = figure.length(
    mm(marks.cutLength.value - finishedLength.value - casing.value),
    'sewing.beyondHem',
    {
      cut: marks.cutLength,
      length: finishedLength,
      casing,
    },
  );
  return [
    say('mark.curveWaist', { casingLine, ...at(hang.waistOrdinates.at(-1)) }),
    say('mark.curveHem', { hemLine, ...at(hang.hemOrdinates.at(-1)) }),
    say('mark.curve'),
    say('mark.curveCut', { casing, beyond }),
    say('mark.curveJoin'),
  ];
}

function widthMarks({ skirt }: Bench): Sentence[] {
  return [
    say('mark.chalkScrap'),
    say('mark.widths', { panels: skirt.panels.length, cutLength: skirt.marks.cutLength }),
  ];
}
