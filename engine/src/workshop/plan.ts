import {
  clothJobOf,
  layByHand,
  layKinds,
  laysOn,
  piecesOf,
  wantedOf,
  type ClothJob,
  type ClothOptions,
  type FoundCloth,
  type LayKind,
} from '../cloth/index.ts';
import { planSkirt } from '../plan/index.ts';
import type { ClassRequest, ClassSkirt } from '../request/index.ts';
import { chosenOf, noticed, type ClassPlan } from './class.ts';
import { sharedCloths, type ClothShare, type PlannedSkirt, type SharedCloth } from './shares.ts';

/**
 * Plans every skirt of a class, and lays those of each cloth one after the other as they are laid by hand: there at
 * once. Never throws on a parsed request; what can't be met is among its notices.
 */
export function planClass(request: ClassRequest): ClassPlan {
  const skirts = request.skirts.map(planned);
  const cloths = sharedCloths(request, skirts).map((cloth) => {
    const ways = waysByHand(cloth.shares, jobOf(cloth));
    return { ...cloth, ways, chosen: chosenOf(ways, cloth.options.lay) };
  });
  return noticed({ request, skirts, cloths });
}

/**
 * What the class has of a cloth is shared by all: a skirt by itself is planned as if the bolt had no end. A cloth that is
 * called nothing else is called what the class calls it.
 */
function planned({ label, cloth, contrast, request }: ClassSkirt): PlannedSkirt {
  const endless = (options: ClothOptions, name: string): ClothOptions => ({
    ...options,
    name: options.name || name,
    have: undefined,
    lengths: [],
    bolt: true,
  });
  const alone = {
    ...request,
    cloth: endless(request.cloth, cloth),
    contrast: request.contrast.map((each, at) => ({
      ...each,
      cloth: endless(each.cloth, contrast[at] ?? ''),
    })),
  };
  const described = request.contrast.map((each) => each.cloth);
  return { label, cloth, contrast, described, plan: planSkirt(alone) };
}

/** All that is cut from one cloth, each piece labelled for its wearer. */
export function jobOf({ options, shares }: Pick<SharedCloth, 'options' | 'shares'>): ClothJob {
  const wanted = shares.flatMap(
    ({ which, skirt: { label, plan } }) => wantedOf(plan.skirt, plan.request.contrast, which, label) ?? [],
  );
  return clothJobOf(options, wanted);
}

/** Every way in which what is cut from one cloth is laid skirt after skirt by hand. */
export function waysByHand(shares: readonly ClothShare[], job: ClothJob): [FoundCloth, ...FoundCloth[]] {
  const [first, ...others] = layKinds;
  const skirts = shares.map(({ lays, which, skirt: { label, plan } }) => ({
    wearer: label,
    lays,
    on: laysOn(job, lays, () => piecesOf(plan.skirt, plan.request.contrast, which)),
  }));
  const laid = (kind: LayKind): FoundCloth => layByHand(skirts, job, kind);
  return [laid(first), ...others.map(laid)];
}
