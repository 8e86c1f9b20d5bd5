import type { Figure, NoticeParam } from '../../figure/index.ts';
import type { Ordinate } from '../../skirt/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { Bench } from '../bench.ts';
import { figure } from '../codes.ts';
import { say, type Sentence } from '../sentence.ts';

/** Panels that are chalked from their centre fold. */
export function flaredMarks({ skirt, cloth }: Bench): Sentence[] {
  const { marks, waist, panelLength, hang } = skirt;
  const casing = waist.topAllowance;
  const rise = hang.extraDepth;
  // On a curve the centre of the panel lies lower than its sides, which reach the top edge.
  const casingLine =
    rise.value === 0
      ? casing
      : figure.length(mm(casing.value + rise.value), 'sewing.casingLine', { casing, rise });
  const hemLine = figure.length(mm(casingLine.value + panelLength.value), 'sewing.hemLine', {
    casingLine,
    length: panelLength,
  });
  const start = say(cloth.chosen.headToTail ? 'mark.fromCentre' : 'mark.fromFold');
  const end = [
    say('mark.bottom', { bottomLine: marks.bottom }),
    ...(cloth.chosen.table.layers > 1 ? [say('mark.through')] : []),
  ];
  if (hang.shape === 'curved') return [start, ...curvedMarks(skirt, casingLine, hemLine), ...end];
  return [
    start,
    say(waist.build === 'turned' ? 'mark.waist' : 'mark.top', {
      casingLine,
      waistQuarter: marks.waistQuarter,
    }),
    say('mark.hem', { hemLine, hemQuarter: marks.hemQuarter }),
    say('mark.join'),
    ...(waist.build === 'turned' ? [say('mark.casingEnd', { casingEnd: marks.casingEnd })] : []),
    say('mark.hemEnd', { hemEnd: marks.hemEnd }),
    ...end,
  ];
}

/** On a curve the side's dots lie above the lines that cross the fold, and the scissors follow curves of their own. */
function curvedMarks(skirt: Bench['skirt'], casingLine: Figure<Mm>, hemLine: Figure<Mm>): Sentence[] {
  const { hang, waist, marks, panelLength } = skirt;
  const at = (dot: Ordinate | undefined): Record<string, NoticeParam> =>
    dot ? { across: figure.length(dot.across, 'sewing.acrossCurve'), up: dot.up } : {};
  const casing = waist.topAllowance;
  const beyond = figure.length(
    mm(marks.cutLength.value - panelLength.value - casing.value),
    'sewing.beyondHem',
    { cut: marks.cutLength, length: panelLength, casing },
  );
  const turned = waist.build === 'turned';
  return [
    say(turned ? 'mark.curveWaist' : 'mark.curveTop', { casingLine, ...at(hang.waistOrdinates.at(-1)) }),
    say('mark.curveHem', { hemLine, ...at(hang.hemOrdinates.at(-1)) }),
    say('mark.curve'),
    say(turned ? 'mark.curveCut' : 'mark.curveCutSewn', { casing, beyond }),
    say('mark.curveJoin'),
  ];
}

/** Lengths of the cloth's width. */
export const widthMarks = ({ skirt }: Bench): Sentence[] => [
  say('mark.widths', { panels: skirt.panels.length, cutLength: skirt.marks.cutLength }),
];
