import type { Figure } from '../../figure/index.ts';
import { lengthOf } from '../../geometry/index.ts';
import { mm, roundTo, stepsIn, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import { LAYERS } from '../cuts/common.ts';
import { sewn, turned } from '../cuts/edges.ts';
import { ringOf, ringShape } from '../cuts/ringShape.ts';
import { aroundInTurn } from '../cuts/round.ts';
import { straightShape, straightSideExcess } from '../cuts/straightShape.ts';
import type { Around, PanelShape, Part } from '../panel.ts';
import type { LiningCloth } from './extra.ts';
import { riseWithin } from './liningRise.ts';

interface Wanted {
  readonly context: DraftContext;
  readonly cloth: LiningCloth;
  /** Least rounds, seam to seam; the hem's is at least the top's. */
  readonly top: Figure<Mm>;
  readonly round: Figure<Mm>;
  /** Finished, from where it is sewn on to its hem. */
  readonly length: Mm;
  readonly seam: Figure<Mm>;
  readonly hem: Figure<Mm>;
}

interface Pieces {
  readonly parts: readonly Part[];
  readonly top: Figure<Mm>;
  readonly round: Figure<Mm>;
  readonly seams: number;
  /** One seam, raw edge to raw edge. */
  readonly side: Figure<Mm>;
}

/** A side may lean this much outwards for each unit of length; what a hem needs beyond is gathered into the top. */
const MOST_LEAN = 0.5;
/** Cloth for a lining that is not washed yet comes out of its wash narrower by this. Common practice, no source. */
const SHRINKS = 0.05;
/** Under the skirt nobody sees a hem dip by this. Common practice, no source. */
const DIPS_UNSEEN = mm(6);

/** A front and a back, wider at the hem where the step asks; on cloth too narrow for them, straight widths. */
export function liningPieces(wanted: Wanted): Pieces {
  const { context, cloth, seam } = wanted;
  const { mark } = context;
  const usable = Math.max(1, cloth.width.value * (1 - SHRINKS) - 2 * cloth.selvage.value);
  const edges = figure.count(4, 'skirt.sideSeams');
  const quarter = (
    code: 'skirt.liningTopQuarter' | 'skirt.liningHemQuarter',
    round: Figure<Mm>,
    least: number,
  ) => {
    const exact = mm((round.value + edges.value * seam.value) / LAYERS.value);
    const value = roundTo(mm(Math.max(exact, least)), mark, 'up');
    return figure.length(value, code, { round, edges, seam, layers: LAYERS }, { exact });
  };
  // On a leaning side the stitching takes more of the width than the allowance is deep.
  const slant = 4 * seam.value * (Math.hypot(1, MOST_LEAN) - 1);
  const flares = wanted.round.value > wanted.top.value;
  const hemQuarter = quarter(
    'skirt.liningHemQuarter',
    wanted.round,
    (wanted.round.value + 4 * seam.value + (flares ? slant : 0)) / 4,
  );
  const topQuarter = quarter(
    'skirt.liningTopQuarter',
    wanted.top,
    Math.max(
      hemQuarter.value - MOST_LEAN * wanted.length,
      (wanted.top.value + 4 * seam.value + (flares ? slant : 0)) / 4,
    ),
  );
  if (2 * hemQuarter.value > usable) return straightWidths(wanted, usable);
  const { length, side } = lengthsOf(wanted);
  const shapeFor = (around: Around): PanelShape =>
    shapeOf(wanted, topQuarter.value, hemQuarter.value, around);
  const part = (name: 'lining front' | 'lining back', around: Around): Part => {
    const shape = shapeFor(around);
    return {
      name,
      count: 1,
      cloth: 'lining',
      shape,
      grain: 'down',
      mirrored: false,
      measures: [topQuarter, hemQuarter, length, ...curvesOf(shape, mark)],
    };
  };
  const parts = [
    part('lining front', { from: -0.25, to: 0.25 }),
    part('lining back', { from: 0.25, to: 0.75 }),
  ];
  const roundOf = (of: Figure<Mm>): Figure<Mm> =>
    figure.length(mm(4 * of.value - edges.value * seam.value), 'skirt.liningRound', {
      layers: LAYERS,
      quarter: of,
      edges,
      seam,
    });
  return {
    parts,
    top: roundOf(topQuarter),
    round: roundOf(hemQuarter),
    seams: 2,
    side: side(parts[0]?.shape),
  };
}

/** How much higher than in the middle the curves of top and hem lie at the side; none on straight edges. */
function curvesOf({ apex }: PanelShape, mark: Mm): Figure<Mm>[] {
  if (!apex) return [];
  const atSide = (radius: Mm, code: 'skirt.liningTopCurve' | 'skirt.liningHemCurve') => {
    const exact = mm(radius * (1 - Math.cos(apex.halfSweep)));
    return figure.length(roundTo(exact, mark, 'nearest'), code, {}, { exact });
  };
  return [atSide(apex.waistRadius, 'skirt.liningTopCurve'), atSide(apex.hemRadius, 'skirt.liningHemCurve')];
}

/** Of all pieces: the length to cut, and one seam. */
function lengthsOf({ context, length, seam, hem }: Wanted) {
  const finished = figure.length(length, 'skirt.liningBody');
  const exact = mm(length + seam.value + hem.value);
  const cut = figure.length(
    roundTo(exact, context.mark, 'up'),
    'skirt.liningCut',
    { finished, seam, hem },
    { exact },
  );
  const side = (shape: Part['shape'] | undefined): Figure<Mm> => {
    const sewnLine = figure.length(
      lengthOf(shape?.edges.find(({ name }) => name === 'right')?.finished ?? []),
      'skirt.seamLine',
    );
    return figure.length(mm(sewnLine.value + seam.value + hem.value), 'skirt.liningSide', {
      sewn: sewnLine,
      seam,
      hem,
    });
  };
  return { length: cut, side };
}

function shapeOf(wanted: Wanted, halfTop: Mm, halfHem: Mm, around: Around): PanelShape {
  const { context, length, seam, hem } = wanted;
  const cut = lengthsOf(wanted).length;
  const beside = sewn(seam.value);
  const drawn = {
    length,
    top: sewn(seam.value),
    hem: turned(hem.value),
    left: beside,
    right: beside,
    // What rounding up added to the length is trimmed off the hem.
    margin: mm(cut.value - length - seam.value - hem.value),
    rise: riseWithin(context, around, length),
  };
  return straightSideExcess(length, mm(halfHem - halfTop)) > DIPS_UNSEEN
    ? ringShape({ ...drawn, ...ringOf(halfTop, halfHem, length) })
    : straightShape({ ...drawn, halfTop, halfHem });
}

/** A tube of as few widths as the hem needs, each cut down to its share. */
function straightWidths(wanted: Wanted, usable: number): Pieces {
  const { context, round, seam } = wanted;
  const room = Math.max(1, usable - 2 * seam.value);
  const widths = figure.count(Math.max(1, stepsIn(round.value, room, 'up')), 'skirt.liningWidths');
  const exact = mm(round.value / widths.value + 2 * seam.value);
  // A width of cloth that is just enough is used whole: the mark above it would lie beside the cloth.
  const value = exact <= usable ? Math.min(roundTo(exact, context.mark, 'up'), usable) : exact;
  const width = figure.length(mm(value), 'skirt.liningWidth', { round, widths, seam }, { exact });
  const { length, side } = lengthsOf(wanted);
  const half = mm(width.value / 2);
  const parts = aroundInTurn(widths.value).map((around): Part => ({
    name: 'lining width',
    count: 1,
    cloth: 'lining',
    shape: shapeOf(wanted, half, half, around),
    grain: 'down',
    mirrored: false,
    measures: [width, length],
  }));
  const all = figure.length(mm(widths.value * (width.value - 2 * seam.value)), 'skirt.liningOfWidths', {
    widths,
    width,
    seam,
  });
  return { parts, top: all, round: all, seams: widths.value, side: side(parts[0]?.shape) };
}
