import { ordinates } from '../../geometry/index.ts';
import type { Figure } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { Ordinate } from '../panel.ts';
import { DOT_SPACING } from './common.ts';

/** "Measure up from the line": y = R − √(R² − x²), every 2 in or 5 cm from the centre out, and where the curve ends. */
export function chalkDots(radius: Figure<Mm>, reach: number, mark: Mm): Ordinate[] {
  // Inch marks are no whole number of millimetres.
  const step = Number.isInteger(mark) ? DOT_SPACING.metric : DOT_SPACING.inches;
  const places = Array.from({ length: Math.floor(reach / step) }, (_, i) => mm((i + 1) * step));
  if (reach - (places.at(-1) ?? 0) > 1) places.push(mm(reach));
  const heights = ordinates(radius.value, places);
  return places.map((across, i) => {
    const exact = mm(heights[i] ?? 0);
    return {
      across,
      up: figure.length(
        roundTo(exact, mark, 'nearest'),
        'skirt.ordinate',
        { radius, across: figure.length(across, 'skirt.ordinateAt') },
        { exact },
      ),
    };
  });
}

/** The same of any curve by its radius alone: of a panel that is unlike the first. */
export const dotsOfCurve = (radius: Mm, reach: number, mark: Mm): Ordinate[] =>
  chalkDots(figure.length(radius, 'skirt.curveRadius'), reach, mark);
