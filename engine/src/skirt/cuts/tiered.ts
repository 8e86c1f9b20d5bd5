import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure } from '../../figure/index.ts';
import { mm, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { Panels, Round, Rounds } from '../panel.ts';
import { work, type Work } from '../works.ts';
import { adultHemFloor, commonOptions, cutLength, hemOf, LAYERS, lengthsOf } from './common.ts';
import type { Cut, Marks } from './cut.ts';
import { flatHang } from './hang.ts';
import { fullnessLimits, shareLimits } from './limits.ts';
import { tierHandles } from './tierHandles.ts';
import { tierHeights } from './tierHeights.ts';
import { MOST_RATIO, tierRounds, type TierRound } from './tierRounds.ts';
import { tierPanels } from './tierPanels.ts';

const MOST_TIERS = 5;

const options = (fields: Fields) =>
  z.strictObject({
    kind: z.literal('tiered'),
    tiers: z.int().min(2).max(MOST_TIERS).default(3),
    /** Cloth of each tier below the first for each unit of the tier above it; 1½ where none is given. */
    ratios: z
      .array(z.number().min(1).max(MOST_RATIO))
      .max(MOST_TIERS - 1)
      .optional(),
    /** What each tier is of the length, from the top down, one against the other; equal where none is given. */
    shares: z.array(z.number().min(shareLimits.least).max(shareLimits.most)).max(MOST_TIERS).optional(),
    /** Cloth round the top tier for each unit of the widest part of the body. */
    fullness: z.number().min(fullnessLimits.least).max(fullnessLimits.most).default(1.25),
    /** Seam allowance where a tier hangs from the one above. */
    tierSeam: fields.usual({ least: mm(3), most: mm(60) }, { inches: '1/2 in', metric: '1.2 cm' }),
    hemFloor: adultHemFloor(fields),
    ...commonOptions(fields),
    /** Strips are cut or torn across straightened cloth: nothing is trimmed off them, unless it is asked for. */
    margin: fields.usual({ least: mm(0), most: mm(150) }, { inches: '0 in', metric: '0 cm' }),
  });

export type TieredOptions = z.infer<ReturnType<typeof options>>;

/**
 * Rounds of straight strips, each gathered onto the one above it, so that the skirt widens downwards by steps. A strip is
 * never wider than the cloth: a round is as many of them, all alike, as it needs.
 */
export const tiered: Cut<TieredOptions> = {
  kind: 'tiered',
  options,
  handles: tierHandles,
  draft(context, chosen, need) {
    const { finished, panel: length } = lengthsOf(context, need);
    const hem = hemOf(context, chosen.hem);
    const margin = figure.length(chosen.margin, 'skirt.margin');
    const seam = figure.length(chosen.sideSeam, 'skirt.sideSeam');
    const tierSeam = figure.length(chosen.tierSeam, 'skirt.tierSeam');
    const { tiers, notices } = tierRounds(context, chosen, need, seam);
    // What growth tucks take up lies below the waist, in the top tier: seams stay where they are above the hem.
    const tucks = context.inTucks?.value ?? 0;
    const high = tierHeights(mm(length.value - tucks), chosen, context.mark);
    const last = chosen.tiers - 1;
    const built = tiers.map((tier, i): Built => {
      const plain = high.heights[i] ?? { height: mm(0), fromHem: mm(0) };
      const { fromHem } = plain;
      const height = mm(plain.height + (i === 0 ? tucks : 0));
      const top = i === 0 ? need.allowance : tierSeam;
      const bottom = i === last ? hem : tierSeam;
      const cut = cutLength(figure.length(height, 'skirt.tierHeight'), top, bottom, margin, context.mark);
      const panels = tierPanels(context, tier, {
        isTop: i === 0,
        from: tiers.slice(0, i).reduce((sum, { strips }) => sum + strips.value, 0),
        seam: seam.value,
        height,
        top: { depth: top.value, turned: i === 0 && need.turned },
        bottom: { depth: bottom.value, turned: i === last },
        margin: mm(cut.value - height - top.value - bottom.value),
      });
      const { round } = tier;
      return {
        tier,
        round: { panels, fromHem, length: height, top: round, bottom: round, seams: panels.length },
        cut,
        top,
        bottom,
      };
    });
    const [first, ...others] = built;
    if (!first) throw new Error('A tiered skirt has tiers');
    const rounds: Rounds = [first.round, ...others.map(({ round }) => round)];
    const lowest = others.at(-1) ?? first;
    const cut = columnOf(
      built.map((each) => each.cut),
      { length, above: need.allowance, hem, seam: tierSeam, margin },
    );
    const marks = marksOf(first.tier, lowest.tier, cut);
    const panels: Panels = [
      rounds[0].panels[0],
      ...rounds[0].panels.slice(1),
      ...rounds.slice(1).flatMap((round) => round.panels),
    ];
    const flare = figure.length(mm(0), 'skirt.flareAtFold', {
      hem: marks.waistQuarter,
      top: marks.waistQuarter,
    });
    return {
      kind: tiered.kind,
      marking: 'by piece',
      rounds,
      panels,
      sideSeams: lowest.round.seams,
      marks,
      hang: flatHang({ length, flare, tolerance: mm(0), asked: false }).hang,
      sideSeamAllowance: seam,
      hemAllowance: hem,
      hemTurnUnder: mm(Math.min(chosen.hemTurnUnder, hem.value / 2)),
      margin,
      finishedLength: finished,
      panelLength: length,
      opening: roundOfTier('skirt.openingOfStrips', first.tier, seam),
      hemRound: roundOfTier('skirt.hemOfStrips', lowest.tier, seam),
      overlap: null,
      works: built.flatMap((each, i) => worksOf(each, i, built[i - 1]?.round)),
      parts: [],
      notices: [...notices, ...high.notices],
    };
  },
};

/** Two rows of long stitches along the top of each tier that is gathered. Common practice, no source. */
const GATHERING_ROWS = 2;

/** Cloth of a tier for each unit of the one above from which it is gathered; less is eased in. Common practice, no source. */
const GATHERED_FROM = 1.02;

interface Built {
  readonly tier: TierRound;
  readonly round: Round;
  /** Length to cut of its strips. */
  readonly cut: Figure<Mm>;
  /** Cloth beyond its two lines. */
  readonly top: Figure<Mm>;
  readonly bottom: Figure<Mm>;
}

/** Its strips joined into a round, raw edge to raw edge; and, below another, gathered and sewn to it. */
function worksOf({ round, top, bottom }: Built, at: number, over: Round | undefined): Work[] {
  const sewn = figure.length(round.length, 'skirt.tierHeight');
  const join = figure.length(mm(sewn.value + top.value + bottom.value), 'skirt.stripJoin', {
    sewn,
    above: top,
    below: bottom,
  });
  const joins = work('strip join', join, round.seams, at);
  if (!over) return [joins];
  const isGathered = round.top.value > GATHERED_FROM * over.bottom.value;
  return [
    joins,
    ...(isGathered ? [work('gathering rows', round.top, GATHERING_ROWS, at)] : []),
    work('tier seam', over.bottom, 1, at),
  ];
}

interface ColumnOf {
  readonly length: Figure<Mm>;
  readonly above: Figure<Mm>;
  readonly hem: Figure<Mm>;
  /** Of the seams between tiers. */
  readonly seam: Figure<Mm>;
  readonly margin: Figure<Mm>;
}

/** Length to cut of one strip of each tier together: what a column of them takes of the cloth. */
function columnOf(cuts: readonly Figure<Mm>[], of: ColumnOf): Figure<Mm> {
  const { length, above, hem, seam, margin } = of;
  const edges = figure.count(2 * (cuts.length - 1), 'skirt.tierSeamEdges');
  const value = mm(cuts.reduce((sum, cut) => sum + cut.value, 0));
  const exact = mm(
    length.value + above.value + hem.value + edges.value * seam.value + cuts.length * margin.value,
  );
  const inputs = { length, above, hem, edges, seam };
  if (margin.value === 0) return figure.length(value, 'skirt.tierCutLength', inputs, { exact });
  const tiers = figure.count(cuts.length, 'skirt.tiers');
  return figure.length(value, 'skirt.tierCutLengthTrimmed', { ...inputs, tiers, margin }, { exact });
}

/** Quarters of the raw round of the top and the lowest tier. */
function marksOf(top: TierRound, lowest: TierRound, cut: Figure<Mm>): Marks {
  const quarter = ({ strips, strip }: TierRound): Figure<Mm> =>
    figure.length(mm((strips.value * strip.value) / 4), 'skirt.tierQuarter', {
      strips,
      strip,
      layers: LAYERS,
    });
  const [waistQuarter, hemQuarter] = [quarter(top), quarter(lowest)];
  return {
    waistQuarter,
    hemQuarter,
    cutLength: cut,
    bottom: cut,
    casingEnd: waistQuarter,
    hemEnd: hemQuarter,
  };
}

/** Round of a tier by its strips, as they are cut. */
function roundOfTier(
  code: 'skirt.openingOfStrips' | 'skirt.hemOfStrips',
  { strips, strip, round }: TierRound,
  seam: Figure<Mm>,
): Figure<Mm> {
  return figure.length(round.value, code, {
    strips,
    strip,
    edges: figure.count(2 * strips.value, 'skirt.sideSeams'),
    seam,
  });
}
