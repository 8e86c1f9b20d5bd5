import type { Figure, Notice } from '../figure/index.ts';
import type { Mm } from '../units/index.ts';
import { caution, type BodyNoticeCode } from './codes.ts';
import { onLine } from './estimate.ts';
import type { MeasureName } from './measures.ts';
import type { BodySettings } from './settings.ts';
import {
  YOUNGEST_WAIST,
  hipForHeight,
  hipForWaist,
  waistForChildHeight,
  waistToFloorSpreads,
  type Spreads,
} from './survey.ts';

/** What was measured, never an estimate: an estimate always agrees with what it was made from. */
export interface MeasuredBody {
  readonly waist: Figure<Mm>;
  readonly hip: Figure<Mm> | null;
  readonly waistToFloor: Figure<Mm> | null;
  readonly height: Figure<Mm> | null;
  readonly adult: boolean;
  readonly age: number | null;
}

type Told = readonly Notice<BodyNoticeCode>[];
interface Named {
  readonly name: MeasureName;
  readonly figure: Figure<Mm>;
}

const lowest = (figures: readonly Figure<Mm>[]) => figures.reduce((a, b) => (b.value < a.value ? b : a));
const highest = (figures: readonly Figure<Mm>[]) => figures.reduce((a, b) => (b.value > a.value ? b : a));

/** Names the pair when the second is outside what every one of the spreads holds for the first. */
function pair(first: Named, second: Named, spreads: Spreads): Told {
  const given = first.figure;
  const least = lowest(spreads.map(({ low }) => onLine(low, given, 'body.least')));
  const most = highest(spreads.map(({ high }) => onLine(high, given, 'body.most')));
  if (second.figure.value >= least.value && second.figure.value <= most.value) return [];
  return [
    caution('body.improbablePair', {
      firstName: first.name,
      secondName: second.name,
      first: given,
      second: second.figure,
      expected: onLine(spreads[0].middle, given, 'body.expected'),
      least,
      most,
    }),
  ];
}

/** Improbable pairs of measurements: a slip of the tape, or an unusual body. Told, never refused. */
export function improbable(body: MeasuredBody, settings: BodySettings): Told {
  const waist: Named = { name: 'waist', figure: body.waist };
  const hip: Named | null = body.hip && { name: 'hip', figure: body.hip };
  const height: Named | null = body.height && { name: 'height', figure: body.height };
  const floor: Named | null = body.waistToFloor && { name: 'waistToFloor', figure: body.waistToFloor };
  if (!body.adult) return improbableChild(body, waist, hip, height, floor);
  return [
    ...(hip ? pair(waist, hip, hipForWaist) : []),
    ...(height && hip ? pair(height, hip, hipForHeight) : []),
    ...(height && floor ? pair(height, floor, waistToFloorSpreads(settings.waistLevel)) : []),
  ];
}

/** No survey took children's hips below 12 years or their waist to floor: those are held against what cannot be. */
function improbableChild(
  body: MeasuredBody,
  waist: Named,
  hip: Named | null,
  height: Named | null,
  floor: Named | null,
): Told {
  const old = body.age !== null && body.age >= YOUNGEST_WAIST;
  return [
    ...(height && old ? pair(height, waist, waistForChildHeight) : []),
    ...(hip && hip.figure.value < waist.figure.value
      ? [caution('body.hipBelowWaist', { waist: waist.figure, hip: hip.figure })]
      : []),
    ...(height && floor && floor.figure.value >= height.figure.value
      ? [
          caution('body.longerThanHeight', {
            measure: floor.name,
            length: floor.figure,
            height: height.figure,
          }),
        ]
      : []),
  ];
}
