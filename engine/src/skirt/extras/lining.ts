import { z } from 'zod';
import { hemNeededAt, walkerOf } from '../../body/index.ts';
import type { Fields } from '../../fields/index.ts';
import type { Figure } from '../../figure/index.ts';
import { longest, mm, type Mm } from '../../units/index.ts';
import { caution, figure } from '../codes.ts';
import type { DraftContext } from '../context.ts';
import type { Draft } from '../cuts/index.ts';
import { hipNeed } from '../goesOn.ts';
import type { WaistPlan } from '../waists/index.ts';
import { work } from '../works.ts';
import type { Lining, LiningCloth, Planned } from './extra.ts';
import { liningPieces } from './liningPieces.ts';

const seam = { least: mm(3), most: mm(40) };

/** A lining, or underskirt. Defaults are common practice, no source. */
export const liningOptions = (fields: Fields) =>
  z.strictObject({
    /** How much shorter than the skirt. */
    shorter: fields.usual({ least: mm(0), most: mm(1000) }, { inches: '2 in', metric: '5 cm' }),
    /** Cloth round its top for each unit of the widest part of the body. */
    fullness: z.number().min(1).max(3).default(1.1),
    seam: fields.usual(seam, { inches: '1/2 in', metric: '1.2 cm' }),
    hem: fields.usual({ least: mm(6), most: mm(150) }, { inches: '3/4 in', metric: '2 cm' }),
  });

export type LiningOptions = z.infer<ReturnType<typeof liningOptions>>;

/** A lining is at least this share of the skirt, however much shorter it was asked. */
const LEAST_SHARE = 1 / 3;

/** A plain skirt inside the skirt: it passes the hips, it is walked in, and it never shows below the hem. */
export function planLining(
  context: DraftContext,
  chosen: LiningOptions,
  draft: Draft,
  waist: WaistPlan,
  cloth: LiningCloth,
): Planned<Lining> {
  const { body } = context;
  const skirt = withoutTucks(draft.panelLength, context.inTucks);
  const shorter = figure.length(chosen.shorter, 'skirt.liningShorter');
  const exact = mm(skirt.value - shorter.value);
  const least = mm(skirt.value * LEAST_SHARE);
  const held = exact < least;
  const length = held
    ? figure.length(least, 'skirt.liningLeast', { skirt })
    : figure.length(exact, 'skirt.liningLength', { skirt, shorter });
  const hem = figure.length(chosen.hem, 'skirt.liningHem');
  // Under a turned casing it is caught in the casing's stitching; else it goes in with the panels' own seam.
  const starts = figure.length(
    mm(waist.build === 'turned' ? Math.min(waist.depth, length.value / 2) : 0),
    'skirt.liningStarts',
  );
  const hip = hipNeed(body);
  const full = figure.length(mm(body.widest.value * chosen.fullness), 'skirt.fullRound', {
    girth: body.widest,
    fullness: figure.ratio(chosen.fullness, 'skirt.fullness'),
  });
  const top = figure.length(longest(full.value, hip.value), 'skirt.liningTop', { full, hip });
  const step = stepAt(context, mm(skirt.value - length.value));
  const pieces = liningPieces({
    context,
    cloth,
    top,
    round: figure.length(longest(top.value, step.value), 'skirt.liningNeed', { top, step }),
    length: mm(length.value - starts.value),
    seam: figure.length(chosen.seam, 'skirt.liningSeam'),
    hem,
  });
  const onto = figure.length(pieces.top.value, 'skirt.liningTopLine');
  const extra: Lining = {
    length,
    hem,
    top: pieces.top,
    round: pieces.round,
    starts,
    cloth,
    parts: pieces.parts,
    works: [
      work('lining seam', pieces.side, pieces.seams),
      work('lining hem', figure.length(pieces.round.value, 'skirt.liningHemLine')),
      work('lining top', onto),
    ],
    notices: held ? [caution('skirt.liningHeld', { shorter, length })] : [],
  };
  return { extra, notices: [] };
}

/** A waist may stand so high on a doll's skirt that its panels are hardly more than their tucks. */
const LEAST = mm(10);

/** The panels as they hang, their tucks taken. */
function withoutTucks(panel: Figure<Mm>, tucks: Figure<Mm> | null): Figure<Mm> {
  if (!tucks) return panel;
  const value = mm(panel.value - tucks.value);
  return value < LEAST
    ? figure.length(LEAST, 'skirt.liningBody')
    : figure.length(value, 'skirt.belowWaist', { panel, tucks });
}

/** What a step asks at a hem so much higher than the skirt's own. */
function stepAt({ body, stride }: DraftContext, higher: Mm): Figure<Mm> {
  const walker = walkerOf(body);
  if (!walker || !body.hemHeight) return stride.needed;
  const level = figure.length(mm(body.hemHeight.value + higher), 'skirt.liningLevel');
  return hemNeededAt(walker, level).everyday;
}
