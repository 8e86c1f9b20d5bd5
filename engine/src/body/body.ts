import type { Figure, Notice } from '../figure/index.ts';
import type { Mm } from '../units/index.ts';
import { caution, type BodyNoticeCode } from './codes.ts';
import { readGrowth, type Growth } from './growth/growth.ts';
import { heightOf, waistToFloorOf } from './estimate.ts';
import { hemHeightOf, hemNotices } from './hem-level.ts';
import { hipDepthFor, hipDepthNotices } from './hip-depth.ts';
import { readHip } from './hip.ts';
import { floorFromLevels, levelNotices, readLevels, risesOf, type Rises } from './levels.ts';
import type { BodyMeasures, Halves, MeasureName, Pace, WayToWear } from './measures.ts';
import { improbable } from './plausible.ts';
import { bodySettings, type BodySettings } from './settings.ts';
import { settled } from './takes.ts';

/** A body as the rest of the plan sees it. Estimated figures carry their ±. */
export interface Body {
  readonly waist: Figure<Mm>;
  readonly hip: Figure<Mm>;
  /** The hip's two halves, centre front to centre back; they add up to it. */
  readonly hipSides: Halves<Figure<Mm>>;
  readonly waistToHem: Figure<Mm>;
  readonly waistToFloor: Figure<Mm> | null;
  /** How much longer (less than 0: shorter) the skirt is there, from the waist to its level hem, than its finished length. */
  readonly rises: Rises;
  readonly height: Figure<Mm> | null;
  /** From the waist down to the hip line, along the side; measured or usual. */
  readonly hipDepth: Figure<Mm>;
  readonly calf: Figure<Mm> | null;
  /** Round one leg, at its fullest. */
  readonly thigh: Figure<Mm> | null;
  /** Of the hem above the floor, at least 0; seated, above the footrest. */
  readonly hemHeight: Figure<Mm> | null;
  readonly adult: boolean;
  /** Years; null when not told. */
  readonly age: number | null;
  readonly pace: Pace;
  readonly wears: WayToWear;
  /** Whether the skirt is walked in, so that the hem needs room for a step. */
  readonly walks: boolean;
  /** Whether the waist is going to grow. */
  readonly expecting: boolean;
  /** The larger of waist and hip, under its own name: what every skirt must pass. */
  readonly widest: Figure<Mm>;
  /** How a child will grow; null where nothing was told of it or no forecast can be made. */
  readonly growth: Growth | null;
  readonly notices: readonly Notice<BodyNoticeCode>[];
}

/**
 * Reads one body: settles second takes, estimates what an adult left out, and tells what looks like a slip of the tape.
 *
 * @param measures lengths inside their limits. Nothing well-formed is refused.
 */
export function readBody(measures: BodyMeasures, settings: BodySettings = bodySettings): Body {
  const notices: Notice<BodyNoticeCode>[] = [];
  const take = (name: MeasureName, first: Mm, second?: Mm): Figure<Mm> => {
    const found = settled(name, [first, second], settings);
    notices.push(...found.notices);
    return found.figure;
  };
  const { second } = measures;
  const offered = (name: MeasureName): Figure<Mm> | null => {
    const [first, again] = [measures[name], second?.[name]].filter((value) => value !== undefined);
    return first === undefined ? null : take(name, first, again);
  };
  const waist = take('waist', measures.waist, second?.waist);
  const taped = offered('hip');
  const waistToHem = take('waistToHem', measures.waistToHem, second?.waistToHem);
  const levels = readLevels(measures.levels);
  const base = offered('waistToFloor') ?? floorFromLevels(levels);
  const measured = { waistToFloor: base, height: offered('height') };
  const [measuredDepth, calf, thigh] = [offered('hipDepth'), offered('calf'), offered('thigh')];

  const { growing } = measures;
  const age = measures.age ?? (growing ? growing.ageMonths / 12 : null);
  const adult = age === null || age >= settings.adultFromAge;
  const wears = measures.wears ?? 'standing';
  const walks = wears !== 'seated';
  // Seated lengths go along the thigh and over the knee: no survey has them, nor do they tell a height.
  const { waistToFloor, height } = adult && walks ? completed(measured, settings) : measured;
  const hip = readHip({ waist, taped, halves: measures.halves, size: measures.size, adult }, settings);
  notices.push(...hip.notices, ...hipDepthNotices(measuredDepth, adult, settings));
  if (waistToFloor && !measured.waistToFloor)
    notices.push(caution('body.estimated', { measure: 'waistToFloor', estimate: waistToFloor }));
  if (height && !measured.height)
    notices.push(caution('body.estimated', { measure: 'height', estimate: height }));
  if (!adult && walks && !waistToFloor) notices.push(caution('body.waistToFloorWanted'));

  const hemHeight = waistToFloor && hemHeightOf(waistToFloor, waistToHem);
  const taken = {
    waist,
    hip: hip.measured ? hip.hip : null,
    waistToFloor: walks ? measured.waistToFloor : null,
    height: measured.height,
    adult,
    age,
  };
  notices.push(
    ...levelNotices(levels, base, settings),
    ...improbable(taken, settings),
    ...hemNotices({ waistToHem, waistToFloor, height, hemHeight, walks }, settings),
  );
  // An estimated height has no place in the reference.
  const grown = growing && readGrowth({ height: measured.height, waistToHem, waistToFloor }, growing);
  if (grown) notices.push(...grown.notices);
  const hipIsWidest = hip.hip.value >= waist.value && hip.hip.rule !== 'body.hipAsWaist';
  return {
    waist,
    hip: hip.hip,
    hipSides: hip.sides,
    waistToHem,
    waistToFloor,
    rises: risesOf({ levels, base, waistToHem, wears }, settings),
    height,
    hipDepth: hipDepthFor(measuredDepth, height, adult, settings),
    calf,
    thigh,
    hemHeight,
    adult,
    age,
    pace: measures.pace,
    wears,
    walks,
    expecting: wears === 'expecting',
    growth: grown?.growth ?? null,
    widest: hipIsWidest ? hip.hip : waist,
    notices,
  };
}

interface Uprights {
  readonly waistToFloor: Figure<Mm> | null;
  readonly height: Figure<Mm> | null;
}

/** Of an adult, the one of the two that was left out is estimated from the other. */
function completed({ waistToFloor, height }: Uprights, { waistLevel }: BodySettings): Uprights {
  return {
    waistToFloor: waistToFloor ?? (height && waistToFloorOf(height, waistLevel)),
    height: height ?? (waistToFloor && heightOf(waistToFloor, waistLevel)),
  };
}
