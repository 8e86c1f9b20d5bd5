import type { Figure, Notice } from '../../figure/index.ts';
import { mm, radians, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import { chalkDots } from './chalkDots.ts';
import { OFF_GRAIN } from './common.ts';
import type { TopNeed } from '../top.ts';
import type { Hang } from './cut.ts';

import { straightSideExcess } from './straightShape.ts';

interface Hung {
  readonly hang: Hang;
  readonly notices: readonly Notice[];
}

/** Past this share of its shorter edge a turned curve no longer eases unseen. Common practice, no source. */
const EASED = 0.015;

/**
 * What an easing row draws in, of a hem: a 2 in hem on a gored skirt of 60 to 70 in round, as an extension leaflet gives it (Texas
 * Agricultural Extension L-359, The Hem of Your Dress or Skirt), has 7 % to lose. Past it the cloth ripples. Far off
 * the grain it stretches under the needle besides: narrow hems only, 3 % (common practice, no source).
 */
const EASED_BY_A_ROW = { onGrain: 0.07, offGrain: 0.03 };

const NO_EXTRA = figure.length(mm(0), 'skirt.noExtraDepth');

const excessOf = (length: Figure<Mm>, flare: Figure<Mm>) =>
  figure.length(straightSideExcess(length.value, flare.value), 'skirt.sideExcess', { length, flare });

/** A straight hem: level as far as the tolerance goes. */
export function flatHang(s: {
  readonly length: Figure<Mm>;
  readonly flare: Figure<Mm>;
  readonly tolerance: Mm;
  /** Whether the maker asked for a straight hem whatever it does. */
  readonly asked: boolean;
}): Hung {
  const sideExcess = excessOf(s.length, s.flare);
  const lean = Math.atan2(s.flare.value, s.length.value);
  const sideAngle = figure.angle(radians(2 * lean), 'skirt.sideAngle', { flare: s.flare, length: s.length });
  const notices: Notice[] = [];
  if (s.asked && sideExcess.value > s.tolerance)
    notices.push(
      caution('skirt.hemNotLevel', {
        sideExcess,
        sideAngle,
        tolerance: figure.length(s.tolerance, 'skirt.levelTolerance'),
      }),
    );
  return finish(
    { shape: 'straight', sideExcess, sideAngle, extraDepth: NO_EXTRA, waistOrdinates: [], hemOrdinates: [] },
    lean,
    notices,
  );
}

/** A hem curved about one apex, with the values to chalk it and what its turned edges will do. */
export function levelHang(s: {
  readonly context: DraftContext;
  /** Radius of the top line, with its working. */
  readonly apex: Figure<Mm>;
  readonly halfSweep: number;
  readonly length: Figure<Mm>;
  /** What a straight hem would have done, where one could have been cut: told as the reason for the curve. */
  readonly insteadOf: { readonly flare: Figure<Mm> } | null;
  readonly top: TopNeed;
  readonly hemAllowance: Figure<Mm>;
}): Hung {
  const { apex, halfSweep } = s;
  const hemRadius = figure.length(mm(apex.value + s.length.value), 'skirt.hemRadius', {
    apex,
    length: s.length,
  });
  const rawTop = Math.max(0, apex.value - s.top.allowance.value);
  const extraDepth = figure.length(
    mm(rawTop * (1 - Math.cos(Math.min(halfSweep, Math.PI)))),
    'skirt.extraDepth',
    {
      apex,
      casing: s.top.allowance,
    },
  );
  const notices: Notice[] = [
    ...(s.insteadOf
      ? [caution('skirt.curvedHem', { sideExcess: excessOf(s.length, s.insteadOf.flare), extraDepth })]
      : []),
    ...turnedEdges(apex, hemRadius, s.top, s.hemAllowance, halfSweep),
  ];
  const dots = (radius: Figure<Mm>, half: number) =>
    chalkDots(radius, radius.value * Math.sin(Math.min(half, Math.PI / 2)), s.context.mark);
  return finish(
    {
      shape: 'curved',
      sideExcess: figure.length(mm(0), 'skirt.levelSide'),
      sideAngle: figure.angle(radians(0), 'skirt.levelAngle'),
      extraDepth,
      waistOrdinates: dots(apex, halfSweep),
      hemOrdinates: dots(hemRadius, halfSweep),
    },
    halfSweep,
    notices,
  );
}

/** A hem turned up on an arc has 2·h·θ too much where it lands, a casing 2·d·θ too little. */
function turnedEdges(
  apex: Figure<Mm>,
  hemRadius: Figure<Mm>,
  top: TopNeed,
  hem: Figure<Mm>,
  lean: number,
): Notice[] {
  const casing = top.allowance;
  const notices: Notice[] = [];
  const short = (2 * casing.value) / Math.max(1, apex.value - casing.value);
  if (top.turned && short > EASED)
    notices.push(
      caution('skirt.casingTight', {
        share: figure.percent(short, 'skirt.casingShort', { casing, apex }),
        limit: figure.percent(EASED, 'skirt.easedLimit'),
        casing,
      }),
    );
  const excess = (2 * hem.value) / (hemRadius.value - hem.value);
  const limit = lean > OFF_GRAIN ? EASED_BY_A_ROW.offGrain : EASED_BY_A_ROW.onGrain;
  if (excess > limit)
    notices.push(
      caution('skirt.hemRipples', {
        share: figure.percent(excess, 'skirt.hemExcess', { hem, radius: hemRadius }),
        limit: figure.percent(limit, 'skirt.easedByRow'),
        hem,
      }),
    );
  return notices;
}

/** An edge that runs more than 15° off the grain drops; the skirt hangs a day before its hem is trued. */
function finish(hang: Omit<Hang, 'mustHang'>, lean: number, notices: readonly Notice[]): Hung {
  const mustHang = lean > OFF_GRAIN;
  const angle = figure.angle(radians(lean), 'skirt.offGrain');
  return {
    hang: { ...hang, mustHang },
    notices: mustHang ? [...notices, caution('skirt.offGrain', { angle })] : notices,
  };
}
