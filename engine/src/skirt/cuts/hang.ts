import { ordinates } from '../../geometry/index.ts';
import type { Figure, Notice } from '../../figure/index.ts';
import { mm, radians, roundTo, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { Ordinate } from '../panel.ts';
import { DOT_SPACING, OFF_GRAIN } from './common.ts';
import type { TopNeed } from '../top.ts';
import type { Hang } from './cut.ts';

import { straightSideExcess } from './straightShape.ts';

interface Hung {
  readonly hang: Hang;
  readonly notices: readonly Notice[];
}

/** Past this share of its shorter edge a turned curve no longer eases unseen. Common practice, no source. */
const EASED = 0.015;

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
    ...turnedEdges(apex, hemRadius, s.top, s.hemAllowance),
  ];
  const dots = (radius: Figure<Mm>, half: number) => chalkDots(radius, half, s.context.mark);
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

/** "Measure up from the line": y = R − √(R² − x²), every 2 in or 5 cm from the centre fold, and at the side. */
function chalkDots(radius: Figure<Mm>, halfSweep: number, mark: Mm): Ordinate[] {
  // Inch marks are no whole number of millimetres.
  const step = Number.isInteger(mark) ? DOT_SPACING.metric : DOT_SPACING.inches;
  const reach = radius.value * Math.sin(Math.min(halfSweep, Math.PI / 2));
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

/** A hem turned up on an arc has 2·h·θ too much where it lands, a casing 2·d·θ too little. */
function turnedEdges(apex: Figure<Mm>, hemRadius: Figure<Mm>, top: TopNeed, hem: Figure<Mm>): Notice[] {
  const casing = top.allowance;
  const limit = figure.percent(EASED, 'skirt.easedLimit');
  const notices: Notice[] = [];
  const short = (2 * casing.value) / Math.max(1, apex.value - casing.value);
  if (top.turned && short > EASED)
    notices.push(
      caution('skirt.casingTight', {
        share: figure.percent(short, 'skirt.casingShort', { casing, apex }),
        limit,
        casing,
      }),
    );
  const excess = (2 * hem.value) / (hemRadius.value - hem.value);
  if (excess > EASED)
    notices.push(
      caution('skirt.hemRipples', {
        share: figure.percent(excess, 'skirt.hemExcess', { hem, radius: hemRadius }),
        limit,
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
