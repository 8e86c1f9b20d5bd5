import { mm, roundTo, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { OptionHandle } from '../handle.ts';
import type { TopNeed } from '../top.ts';
import { wishFor, type Wishes } from '../wishFor.ts';
import { lengthsOf } from './common.ts';
import { fullnessWithin } from './fullness.ts';
import { goreLevels, type GoreLevels, type GoresWanted } from './goreLevels.ts';
import { goresOf, roundOfHalves, type Gores } from './goreWidths.ts';
import { frontHemLimits, fullnessLimits, hemRoundLimits } from './limits.ts';

interface Chosen extends GoresWanted {
  readonly gores: number;
  readonly front: number;
  readonly sideSeam: Mm;
}

/** The marks of the front gore, from its middle to its raw side: the top where it is pulled on, and the hem. */
export function goredHandles(context: DraftContext, chosen: Chosen, top: TopNeed): readonly OptionHandle[] {
  const length = lengthsOf(context, top).panel;
  const gores = goresOf(chosen.gores, chosen.front, figure.length(chosen.sideSeam, 'skirt.sideSeam'));
  const drafted = (wish: Partial<GoresWanted>): GoreLevels =>
    goreLevels(context, { ...chosen, ...wish }, top, gores, length);
  return [...waistMark(context, gores, drafted), hemMark(context, chosen, gores, drafted)];
}

type Drafted = (wish: Partial<GoresWanted>) => GoreLevels;

/** A fitted top is as wide as the waist asks; and where the way over the hips asks for more, the fullness decides nothing. */
function waistMark({ body, mark }: DraftContext, gores: Gores, drafted: Drafted): OptionHandle[] {
  const now = drafted({});
  const [least, most] = (['least', 'most'] as const).map(
    (end) => drafted({ fullness: fullnessLimits[end] }).top.front.value,
  ) as [Mm, Mm];
  if (now.fitted || most - least < mark / 2) return [];
  const fullness = (half: number): number =>
    ((half - gores.seam.value) * 2 * gores.units.value) / gores.front.value / body.widest.value;
  return [
    {
      name: 'waistMark',
      value: now.top.front.value,
      least,
      most,
      step: mark,
      writes: (value) => ({
        numbers: { fullness: fullnessWithin(fullness(value - mark), fullness(value)) },
      }),
    },
  ];
}

/** The hem of the front gore: of all the gores, or of its own where it has one. */
function hemMark({ mark }: DraftContext, { frontHem }: Chosen, gores: Gores, drafted: Drafted): OptionHandle {
  const key = frontHem === undefined ? 'hemRound' : 'frontHem';
  const limits = frontHem === undefined ? hemRoundLimits : frontHemLimits;
  const half = (wish: Mm): Mm => drafted({ [key]: wish }).hem.front.value;
  // No hem is narrower than what is above it: the least wish that is kept.
  const { hem } = drafted({ [key]: limits.least });
  const narrowest =
    frontHem === undefined ? roundOfHalves(gores, hem).value : 2 * (hem.front.value - gores.seam.value);
  const least = roundTo(mm(Math.max(limits.least, narrowest)), mark, 'up');
  const wishes: Wishes = { least, most: limits.most, mark, comesTo: half };
  return {
    name: 'hemMark',
    value: drafted({}).hem.front.value,
    least: half(least),
    // The last mark before the gores can flare no further.
    most: half(limits.most) - mark,
    step: mark,
    writes: (value) => ({ lengths: { [key]: wishFor(value, wishes) } }),
  };
}
