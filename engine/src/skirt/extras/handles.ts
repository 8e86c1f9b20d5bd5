import type { DraftContext } from '../context.ts';
import type { Draft } from '../cuts/index.ts';
import type { OptionHandle } from '../handle.ts';
import type { WaistPlan } from '../waists/index.ts';
import { wishFor } from '../wishFor.ts';
import type { Extras } from './extra.ts';
import { letsDownOf } from './letsDown.ts';
import { planPockets, pocketBelowLimits, type PocketOptions } from './pockets.ts';
import { planSlits, slitLimits, type SlitOptions } from './slits.ts';
import { tuckDepths } from './tuckDepths.ts';
import { tuckDepthLimits, type TuckOptions } from './tuckOptions.ts';

interface Chosen {
  readonly pockets?: PocketOptions | undefined;
  readonly slits?: SlitOptions | undefined;
  readonly tucks?: TuckOptions | undefined;
}

/** The skirt that the extras were made on. */
export interface MadeOn {
  readonly context: DraftContext;
  readonly draft: Draft;
  readonly waist: WaistPlan;
  readonly extras: Extras;
}

/** What can be taken hold of, with the extra that offers it. */
export function extrasHandles(
  on: MadeOn,
  { pockets, slits, tucks }: Chosen,
): readonly (readonly [keyof Chosen, OptionHandle])[] {
  return [
    ...(pockets ? pocketHandles(on, pockets).map((each) => ['pockets', each] as const) : []),
    ...(slits ? slitHandles(on, slits).map((each) => ['slits', each] as const) : []),
    ...(tucks ? tuckHandles(on, tucks).map((each) => ['tucks', each] as const) : []),
  ];
}

/** Where the openings of the pockets begin, as far down as a bag below still holds anything. */
function pocketHandles({ context, draft, waist, extras }: MadeOn, chosen: PocketOptions): OptionHandle[] {
  if (!extras.pockets) return [];
  const { mark } = context;
  const comesTo = (below: PocketOptions['below']): number =>
    planPockets(context, { ...chosen, below }, draft, waist).extra?.below.value ?? Infinity;
  const lowest = wishFor(Number.MAX_VALUE, { ...pocketBelowLimits, mark, comesTo });
  return [
    {
      name: 'pocket',
      value: extras.pockets.below.value,
      least: comesTo(pocketBelowLimits.least),
      most: comesTo(lowest),
      step: mark,
      writes: (below) => ({ lengths: { below } }),
    },
  ];
}

/** How high the slits reach, clear of the waist's stitching and of tucks. */
function slitHandles({ context, draft, waist, extras }: MadeOn, chosen: SlitOptions): OptionHandle[] {
  // A step may ask for less than anybody would write: that stands where it is.
  if (!extras.slits || extras.slits.height.value < slitLimits.least) return [];
  const highest = planSlits(context, { ...chosen, height: slitLimits.most }, draft, waist, extras.tucks);
  return [
    {
      name: 'slit',
      value: extras.slits.height.value,
      least: slitLimits.least,
      // A height goes up to the next mark, which may lie past what can be written.
      most: Math.min(slitLimits.most, highest.extra?.height.value ?? slitLimits.most),
      step: context.mark,
      writes: (height) => ({ lengths: { height } }),
    },
  ];
}

/** The depth of one tuck, fold to stitching: where nobody counted them, there are as many as the growth takes. */
function tuckHandles({ context, extras }: MadeOn, chosen: TuckOptions): OptionHandle[] {
  if (extras.tucks?.how !== 'tucks') return [];
  const { value } = extras.tucks.depth;
  // What the growth takes may be less or more than anybody would write: that stands where it is.
  if (value < tuckDepthLimits.least || value > tuckDepthLimits.most) return [];
  const { letsDown } = letsDownOf(context, chosen);
  const comesTo = (depth: TuckOptions['depth']): number =>
    tuckDepths(context, { ...chosen, depth }, letsDown).depth.value;
  return [
    {
      name: 'tuck',
      value,
      least: comesTo(tuckDepthLimits.least),
      most: Math.min(tuckDepthLimits.most, comesTo(tuckDepthLimits.most)),
      step: context.mark,
      writes: (depth) => ({ lengths: { depth } }),
    },
  ];
}
