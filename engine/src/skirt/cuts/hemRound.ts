import type { Figure, Notice } from '../../figure/index.ts';
import { longest, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';

export interface HemWish {
  /** Makers' least round, 0 where there is none; what flare asks; what a step does, 0 where it is not known. */
  readonly floor: Figure<Mm>;
  readonly flare: Figure<Mm>;
  readonly step: Figure<Mm>;
  /** Round of the skirt above: no hem is narrower. */
  readonly above: Figure<Mm>;
  /** Widest that the panels flare to. */
  readonly most: Figure<Mm>;
  /** The maker's own. */
  readonly asked: Mm | undefined;
}

/** The finished hem all round: the largest of what it must be, or the maker's own, with what that goes against. */
export function hemRoundFor(wish: HemWish): {
  readonly round: Figure<Mm>;
  readonly notices: readonly Notice[];
} {
  const { above, most, floor } = wish;
  const asked = wish.asked === undefined ? usual(wish) : figure.length(wish.asked, 'skirt.hemRoundAsked');
  if (asked.value < above.value)
    return { round: above, notices: [caution('skirt.hemRoundWidened', { asked, above })] };
  if (asked.value > most.value)
    return { round: most, notices: [caution('skirt.hemRoundCapped', { asked, most })] };
  return {
    round: asked,
    notices: asked.value < floor.value ? [caution('skirt.hemRoundBelowFloor', { asked, floor })] : [],
  };
}

/** A sum names only what counts: a child has no floor, and where no step is known there is none to speak of. */
function usual({ floor, flare, step }: HemWish): Figure<Mm> {
  const value = longest(floor.value, flare.value, step.value);
  if (floor.value > 0 && step.value > 0)
    return figure.length(value, 'skirt.hemWanted', { floor, flare, step });
  if (floor.value > 0) return figure.length(value, 'skirt.hemWantedFloor', { floor, flare });
  if (step.value > 0) return figure.length(value, 'skirt.hemWantedStep', { flare, step });
  return figure.length(value, 'skirt.hemWantedFlare', { flare });
}
