import type { Apex } from '../../skirt/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import type { Bench } from '../bench.ts';
import { figure } from '../codes.ts';
import { say, type Sentence } from '../sentence.ts';

/** Sweeps that differ by less than this are one: a circle that is slit open stops a hair short. */
const HAIR = 0.001;

/** Arcs about one dot, with string or tape: a circle or a part of one. */
export function swungMarks({ skirt }: Bench): Sentence[] {
  const [{ shape, name }] = skirt.panels;
  const { apex } = shape;
  if (!apex) return [];
  const { waist, marks, panelLength, hemAllowance } = skirt;
  const radius = figure.length(apex.waistRadius, 'sewing.topRadius');
  const hemRadius = figure.length(apex.hemRadius, 'sewing.hemRadius', { radius, length: panelLength });
  const top = waist.topAllowance;
  const beyond = figure.length(
    mm(marks.cutLength.value - panelLength.value - top.value),
    'sewing.beyondHem',
    { cut: marks.cutLength, length: panelLength, casing: top },
  );
  const rawTop = figure.length(mm(Math.max(0, radius.value - top.value)), 'sewing.rawTopRadius', {
    radius,
    top,
  });
  const rawHem = figure.length(mm(hemRadius.value + beyond.value), 'sewing.rawHemRadius', {
    hemRadius,
    beyond,
  });
  return [
    say('mark.swingPoint', { pieces: skirt.panels.length, piece: `panel ${name}`, radius }),
    say('mark.swingString'),
    say(waist.build === 'turned' ? 'mark.swingTop' : 'mark.swingTopSewn', { rawTop, radius }),
    say('mark.swingHem', { rawHem, hemRadius, hem: hemAllowance }),
    sides(apex, rawHem.value),
  ];
}

/** How far the sides of a piece lie apart. */
function sides({ halfSweep }: Apex, radius: Mm): Sentence {
  const is = (sweep: number): boolean => Math.abs(2 * halfSweep - sweep) < HAIR;
  if (is(2 * Math.PI)) return say('mark.swingSlit');
  if (is(Math.PI)) return say('mark.swingHalf');
  if (is(Math.PI / 2)) return say('mark.swingSquare');
  const chord = figure.length(mm(2 * radius * Math.sin(halfSweep)), 'sewing.chord');
  return say('mark.swingSides', { chord });
}
