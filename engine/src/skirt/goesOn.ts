import type { Body } from '../body/index.ts';
import type { Figure, Notice } from '../figure/index.ts';
import { inches, mm, type Mm } from '../units/index.ts';
import { figure, problem } from './codes.ts';

/** Ease for pulling the opening over the widest part: 1 in. Common practice, no source (1 to 2 in). */
const HIP_EASE = inches(1);

/** Round that passes over the hips, flat, with its ease. */
export function hipNeed(body: Body): Figure<Mm> {
  const { hip } = body;
  const ease = figure.length(HIP_EASE, 'skirt.hipEase');
  if (hip.plusMinus === undefined)
    return figure.length(mm(hip.value + HIP_EASE), 'skirt.openingNeeded', { hip, ease });
  // Of a hip that was only estimated the wider end counts.
  const unsure = figure.length(hip.plusMinus, 'skirt.hipUnsure');
  return figure.length(mm(hip.value + unsure.value + HIP_EASE), 'skirt.openingNeededUnsure', {
    hip,
    unsure,
    ease,
  });
}

/** Below a hundredth of a millimetre two lengths are one: what binary fractions lose is no tightness. */
const HAIR = 0.01;

/** It goes on when its seam-to-seam opening is at least hip + 1 in. */
export function goesOn(body: Body, opening: Figure<Mm>): Notice[] {
  const needed = hipNeed(body);
  return opening.value < needed.value - HAIR ? [problem('skirt.doesNotGoOn', { opening, needed })] : [];
}
