import { mm, roundTo, type Mm } from '../../units/index.ts';
import type { DraftContext } from '../context.ts';
import type { OptionHandle } from '../handle.ts';
import type { TopNeed } from '../top.ts';
import { lengthsOf } from './common.ts';
import { shareLimits } from './limits.ts';
import { tierHeights } from './tierHeights.ts';

interface Chosen {
  readonly tiers: number;
  readonly shares?: readonly number[] | undefined;
}

/** Every seam between two tiers, by its height above the hem: the two take from one another, all others stay. */
export function tierHandles(context: DraftContext, chosen: Chosen, top: TopNeed): readonly OptionHandle[] {
  const { mark } = context;
  const length = mm(lengthsOf(context, top).panel.value - (context.inTucks?.value ?? 0));
  const { heights } = tierHeights(length, chosen, mark);
  const ends = [length, ...heights.map(({ fromHem }) => fromHem)];
  const seams = ends.slice(1, -1);
  // A doll's tiers, lower than the marks lie apart, have no seams that could be moved by one.
  if (seams.some((seam) => Math.abs(roundTo(seam, mark, 'nearest') - seam) > HAIR)) return [];
  return seams.map((value, i): OptionHandle => {
    const [upper, lower] = [ends[i] ?? length, ends[i + 2] ?? mm(0)];
    const others = heights.filter((_, tier) => tier !== i && tier !== i + 1);
    const [least, most] = lowerTier(mm(upper - lower), others);
    return {
      name: `tier ${i + 1}`,
      value,
      least: lower + least,
      most: lower + most,
      step: mark,
      writes: (wish) => ({
        numbers: { shares: sharesOf(ends.with(i + 1, wish), chosen.tiers, mark) },
      }),
    };
  });
}

/** What binary fractions lose is no difference. */
const HAIR = 1e-6;

/** Between what heights the lower of two tiers lies, so that no tier is a larger share of another than shares may be. */
function lowerTier(both: Mm, others: readonly { readonly height: Mm }[]): [number, number] {
  const apart = shareLimits.most / shareLimits.least;
  const heights = others.map(({ height }) => height);
  const least = Math.max(0, ...heights) / apart;
  const most = Math.min(Infinity, ...heights) * apart;
  const even = both / (1 + apart);
  return [Math.max(least, even, both - most), Math.min(most, both - even, both - least)];
}

/** Decimals at which shares of the longest skirt bring each seam to its mark. */
const MOST_DECIMALS = 5;

/** Shares that bring every seam where it is wished, in the fewest decimals; the lowest tier of all is 1. */
function sharesOf(ends: readonly Mm[], tiers: number, mark: Mm): number[] {
  const [length = mm(0), ...seams] = ends;
  const heights = seams.map((end, i) => (ends[i] ?? length) - end);
  const unit = Math.min(...heights);
  let shares: number[] = [];
  for (let decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
    shares = heights.map((height) => {
      const share = Number((height / unit).toFixed(decimals));
      return Math.min(shareLimits.most, Math.max(shareLimits.least, share));
    });
    const landed = tierHeights(length, { tiers, shares }, mark).heights;
    if (landed.every(({ fromHem }, i) => Math.abs(fromHem - (seams[i] ?? 0)) < HAIR)) return shares;
  }
  return shares;
}
