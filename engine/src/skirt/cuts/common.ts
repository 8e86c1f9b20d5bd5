import { z } from 'zod';
import type { Fields } from '../../fields/index.ts';
import type { Figure } from '../../figure/index.ts';
import { inches, mm, roundTo, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { TopNeed } from '../top.ts';
import { hemLimits } from './limits.ts';

const seam = { least: mm(3), most: mm(60) };

/** Options that every cut of straight or curved panels shares. Defaults are common practice, no source. */
export const commonOptions = (fields: Fields) => ({
  sideSeam: fields.usual(seam, { inches: '1/4 in', metric: '0.6 cm' }),
  /** Cloth below the hem fold: ½ in of hem and ¼ in turned under. */
  hem: fields.usual(hemLimits, { inches: '3/4 in', metric: '2 cm' }),
  hemTurnUnder: fields.usual({ least: mm(0), most: mm(60) }, { inches: '1/4 in', metric: '0.6 cm' }),
  /** Straightening margin, trimmed off when the raw edges are squared. */
  margin: fields.usual({ least: mm(0), most: mm(150) }, { inches: '1 in', metric: '2.5 cm' }),
});

export type CommonOptions = z.infer<z.ZodObject<ReturnType<typeof commonOptions>>>;

/** Narrowest adult hem that makers mark at the double fold: 15 in. Common practice, no source. */
export const adultHemFloor = (fields: Fields) =>
  fields.usual({ least: mm(0), most: mm(1500) }, { inches: '15 in', metric: '38 cm' });

/** The makers' least hem mark, which is that of grown people who walk. */
export const floorOf = ({ body }: DraftContext, floor: Mm): Figure<Mm> =>
  figure.length(body.adult && body.walks ? floor : mm(0), 'skirt.hemFloor');

/** Round that a step asks for. An adult whose step could not be worked out gets the floor, no more; see the body's own caution. */
export const stepOf = ({ body, stride }: DraftContext): Figure<Mm> =>
  stride.checked || !body.adult ? stride.needed : figure.length(mm(0), 'skirt.hemStrideUnknown');

/** Cloth below the hem line: the hem as asked, and what is kept in it to be let down. */
export function hemOf({ inHem }: DraftContext, asked: Mm): Figure<Mm> {
  const hem = figure.length(asked, 'skirt.hemAllowance');
  if (!inHem) return hem;
  return figure.length(mm(asked + inHem.value), 'skirt.hemDeepened', { hem, more: inHem });
}

export const LAYERS = figure.count(4, 'skirt.layers');

export interface Lengths {
  /** From the top of the waist to the hem, at a mark that can be chalked: all that follows is computed from it. */
  readonly finished: Figure<Mm>;
  /** Of the panels, top line to hem. */
  readonly panel: Figure<Mm>;
}

/** The finished length as asked, and what of it the panels are: less what the waist stands above them, and what is kept in tucks. */
export function lengthsOf(context: DraftContext, top: TopNeed): Lengths {
  const asked = context.body.waistToHem;
  const finished = figure.length(
    roundTo(asked.value, context.mark, 'nearest'),
    'skirt.finishedLength',
    { asked },
    { exact: asked.value },
  );
  const { above } = top;
  const tucks = context.inTucks;
  if (above.value === 0 && !tucks) return { finished, panel: finished };
  const kept = tucks?.value ?? 0;
  const value = mm(Math.max(LEAST_PANEL, finished.value - above.value) + kept);
  const panel = tucks
    ? figure.length(value, 'skirt.panelLengthTucked', { finished, above, tucks })
    : figure.length(value, 'skirt.panelLength', { finished, above });
  return { finished, panel };
}

/** A panel is not less than this, however high the waist stands on a doll's skirt. */
const LEAST_PANEL = 10;

/** Length to cut = finished + casing + hem + straightening margin. */
export function cutLength(
  length: Figure<Mm>,
  casing: Figure<Mm>,
  hem: Figure<Mm>,
  margin: Figure<Mm>,
  mark: Mm,
): Figure<Mm> {
  const exact = mm(length.value + casing.value + hem.value + margin.value);
  return figure.length(
    roundTo(exact, mark, 'up'),
    'skirt.cutLength',
    { length, casing, hem, margin },
    { exact },
  );
}

/** Round of a skirt whose quarter is `quarter`, with its seams taken out. */
export function roundOf(
  code: 'skirt.opening' | 'skirt.hemRound',
  quarter: Figure<Mm>,
  seamAllowance: Figure<Mm>,
  seams: number,
): Figure<Mm> {
  const edges = figure.count(2 * seams, 'skirt.sideSeams');
  return figure.length(mm(4 * quarter.value - edges.value * seamAllowance.value), code, {
    quarter,
    layers: LAYERS,
    edges,
    seam: seamAllowance,
  });
}

/**
 * Distance between the dots of a chalked curve, and the angle past which an edge counts as off the grain.
 * Common practice, no source.
 */
export const DOT_SPACING = { inches: inches(2), metric: mm(50) } as const;
export const OFF_GRAIN = (15 * Math.PI) / 180;
