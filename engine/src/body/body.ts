import type { Figure, Notice } from '../figure/index.ts';
import type { Mm } from '../units/index.ts';
import { caution, type BodyNoticeCode } from './codes.ts';
import { heightOf, waistToFloorOf } from './estimate.ts';
import { hemHeightOf, hemNotices } from './hem-level.ts';
import type { BodyMeasures, MeasureName, Pace } from './measures.ts';
import { improbable } from './plausible.ts';
import { bodySettings, type BodySettings } from './settings.ts';
import { settled } from './takes.ts';

/** A body as the rest of the plan sees it. Estimated figures carry their ±. */
export interface Body {
  readonly waist: Figure<Mm>;
  readonly hip: Figure<Mm>;
  readonly waistToHem: Figure<Mm>;
  readonly waistToFloor: Figure<Mm> | null;
  readonly height: Figure<Mm> | null;
  readonly calf: Figure<Mm> | null;
  /** Of the hem above the floor, at least 0. */
  readonly hemHeight: Figure<Mm> | null;
  readonly adult: boolean;
  /** Years; null when not told. */
  readonly age: number | null;
  readonly pace: Pace;
  /** The larger of waist and hip, under its own name: what every skirt must pass. */
  readonly widest: Figure<Mm>;
  readonly notices: readonly Notice<BodyNoticeCode>[];
}

/**
 * Reads one body: settles second takes, estimates what an adult left out, and tells what looks like a slip of the tape.
 *
 * @param measures lengths inside `measureLimits`. Nothing well-formed is refused.
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
  const hip = take('hip', measures.hip, second?.hip);
  const waistToHem = take('waistToHem', measures.waistToHem, second?.waistToHem);
  const measured = { waistToFloor: offered('waistToFloor'), height: offered('height') };
  const calf = offered('calf');

  const age = measures.age ?? null;
  const adult = age === null || age >= settings.adultFromAge;
  const { waistToFloor, height } = adult ? completed(measured, settings) : measured;
  if (waistToFloor && !measured.waistToFloor)
    notices.push(caution('body.estimated', { measure: 'waistToFloor', estimate: waistToFloor }));
  if (height && !measured.height)
    notices.push(caution('body.estimated', { measure: 'height', estimate: height }));
  if (!adult && !waistToFloor) notices.push(caution('body.waistToFloorWanted'));

  const hemHeight = waistToFloor && hemHeightOf(waistToFloor, waistToHem);
  notices.push(
    ...improbable({ waist, hip, ...measured, adult, age }, settings),
    ...hemNotices({ waistToHem, waistToFloor, height, hemHeight }, settings),
  );
  const widest = hip.value >= waist.value ? hip : waist;
  return {
    waist,
    hip,
    waistToHem,
    waistToFloor,
    height,
    calf,
    hemHeight,
    adult,
    age,
    pace: measures.pace,
    widest,
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
