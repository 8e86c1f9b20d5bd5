import type { Figure } from '../figure/index.ts';
import { mm, type Mm } from '../units/index.ts';
import type { Body } from './body.ts';
import { length, ratio } from './codes.ts';
import { legOf, type Leg } from './legs.ts';
import { bodySettings, type BodySettings } from './settings.ts';

/** What walking needs to know of a body: its step, where the legs swing from, and the legs themselves. */
export interface Walker {
  readonly step: Figure<Mm>;
  readonly hipHeight: Figure<Mm>;
  /** A slit or a pleat counts only when it reaches above here. */
  readonly kneeHeight: Figure<Mm>;
  readonly leg: Leg;
  readonly ease: Figure<Mm>;
}

/** The walker of a body whose height is known or estimated; null for others, and for those who don't walk in the skirt. */
export function walkerOf(body: Body, settings: BodySettings = bodySettings): Walker | null {
  const { height } = body;
  if (!height || !body.walks) return null;
  const hipShare = ratio(settings.hipHeightShare, 'body.hipHeightShare');
  const kneeShare = ratio(settings.kneeHeightShare, 'body.kneeHeightShare');
  const stepShare = stepShareOf(body, settings);
  return {
    step: length(mm(height.value * stepShare.value), 'body.step', { height, stepShare }),
    hipHeight: length(mm(height.value * hipShare.value), 'body.hipHeight', { height, hipShare }),
    kneeHeight: length(mm(height.value * kneeShare.value), 'body.kneeHeight', { height, kneeShare }),
    leg: legOf(height, body, settings),
    ease: length(settings.everydayEase, 'body.everydayEase'),
  };
}

/** Step over height: the usual one at that age times the pace's factor. */
function stepShareOf({ age, pace }: Body, settings: BodySettings): Figure {
  const row = age === null ? undefined : settings.usualStepShares.findLast(({ fromAge }) => fromAge <= age);
  const usualShare = ratio(row?.share ?? settings.unknownAgeStepShare, 'body.usualStepShare');
  const paceFactor = ratio(settings.paceFactors[pace], 'body.paceFactor');
  return ratio(usualShare.value * paceFactor.value, 'body.stepShare', { usualShare, paceFactor });
}
