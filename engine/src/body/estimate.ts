import type { Figure } from '../figure/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { length, ratio, type BodyFigureCode } from './codes.ts';
import type { WaistLevel } from './settings.ts';
import {
  WITHIN_90,
  heightFromWaistToFloor,
  hipDepthFromHeight,
  hipFromWaist,
  waistToFloorFromHeight,
  type Line,
} from './survey.ts';

/** The two constants of a line, as figures a person can read back. */
export const lineFigures = (line: Line) => ({
  start: length(mm(line.start), 'body.lineStart'),
  slope: ratio(line.slope, 'body.lineSlope'),
});

/** The value of a line for a measurement: start + slope × measurement. */
export function onLine(line: Line, measure: Figure<Mm>, rule: BodyFigureCode, sd?: number): Figure<Mm> {
  return length(
    mm(line.start + line.slope * measure.value),
    rule,
    { ...lineFigures(line), measure },
    sd === undefined ? {} : { plusMinus: mm(WITHIN_90 * sd) },
  );
}

/** Waist to floor of an adult from her height; ± holds 90 % of army women (ANSUR II). */
export function waistToFloorOf(height: Figure<Mm>, level: WaistLevel): Figure<Mm> {
  const line = waistToFloorFromHeight[level];
  return onLine(line, height, 'body.waistToFloorFromHeight', line.sd);
}

/** Height of an adult from her waist to floor; ± holds 90 % of army women (ANSUR II). */
export function heightOf(waistToFloor: Figure<Mm>, level: WaistLevel): Figure<Mm> {
  const line = heightFromWaistToFloor[level];
  return onLine(line, waistToFloor, 'body.heightFromWaistToFloor', line.sd);
}

/** Hip of an adult from her waist; ± holds 90 % of army women (ANSUR II), fewer of others: see `hipFromWaist`. */
export function hipOf(waist: Figure<Mm>, level: WaistLevel): Figure<Mm> {
  const line = hipFromWaist[level];
  return onLine(line, waist, 'body.hipFromWaist', line.sd);
}

/** Waist to hip line from a height; ± holds 90 % of army women (ANSUR II). */
export function hipDepthOf(height: Figure<Mm>, level: WaistLevel): Figure<Mm> {
  const { share, sd } = hipDepthFromHeight[level];
  const depthShare = ratio(share, 'body.hipDepthShare');
  return length(
    mm(height.value * share),
    'body.hipDepthFromHeight',
    { height, depthShare },
    { plusMinus: mm(WITHIN_90 * sd) },
  );
}
