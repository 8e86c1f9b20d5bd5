import type { Figure, Notice } from '../figure/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { caution, length, type BodyNoticeCode } from './codes.ts';
import { girths, type MeasureName } from './measures.ts';
import { SLACK } from './slack.ts';
import type { BodySettings } from './settings.ts';

export interface Settled {
  readonly figure: Figure<Mm>;
  readonly notices: readonly Notice<BodyNoticeCode>[];
}

/**
 * One measurement out of its one or two takes.
 *
 * Of two takes round the body the larger counts, because a skirt that is too tight can't be mended; of two along it, the mean.
 * Takes further apart than the tolerance are used the same way and told.
 */
export function settled(
  name: MeasureName,
  [one, two]: readonly [Mm, (Mm | undefined)?],
  settings: BodySettings,
): Settled {
  const first = length(one, `body.${name}`);
  if (two === undefined) return { figure: first, notices: [] };
  const second = length(two, `body.${name}`);
  const takes = { first, second };
  const figure = girths.includes(name)
    ? length(mm(Math.max(first.value, second.value)), 'body.largerOfTwo', takes)
    : length(mm((first.value + second.value) / 2), 'body.meanOfTwo', takes);
  const [larger, smaller] = first.value >= second.value ? [first, second] : [second, first];
  const difference = length(mm(larger.value - smaller.value), 'body.takesDifference', { larger, smaller });
  const agree = difference.value <= settings.takeTolerance + SLACK;
  return {
    figure,
    notices: agree
      ? []
      : [caution('body.takesDiffer', { measure: name, first, second, difference, used: figure })],
  };
}
