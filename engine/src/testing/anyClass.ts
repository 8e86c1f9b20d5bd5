import fc from 'fast-check';
import { anyBody } from './bodies.ts';
import { anyCloth } from './cloths.ts';
import { anyRequest } from './requests.ts';

type Group = Readonly<Record<string, unknown>>;

/** What is written once for a class; a skirt of it has none of it. */
const ofTheClass = ['language', 'units', 'measure', 'mark', 'paper'] as const;
const NAMES = ['navy', 'berry', 'old sheet'] as const;

const without = (group: Group, keys: readonly string[]): Group =>
  Object.fromEntries(Object.entries(group).filter(([key]) => !keys.includes(key)));
const only = (group: Group, keys: readonly string[]): Group =>
  Object.fromEntries(Object.entries(group).filter(([key]) => keys.includes(key)));

const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Parts a group in two: some fields, at any depth, are shared by all, the others are each skirt's own. */
function parted(whole: Group, isShared: () => boolean): [shared: Group, own: Group] {
  const shared: Record<string, unknown> = {};
  const own: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(whole)) {
    if (isGroup(value)) [shared[key], own[key]] = parted(value, isShared);
    else if (isShared()) shared[key] = value;
    else own[key] = value;
  }
  return [shared, own];
}

/** Teachings, and other cloths by name or described: what `anyRequest` leaves out and a class may have. */
const more = fc.record(
  {
    teachings: fc.record({ text: fc.string({ maxLength: 20 }), print: fc.boolean() }),
    contrast: fc.array(
      fc.record(
        { pieces: fc.constant(['front', 'tier 2']), cloth: fc.oneof(fc.constantFrom(...NAMES), anyCloth) },
        { requiredKeys: ['pieces'] },
      ),
      { maxLength: 3 },
    ),
  },
  { requiredKeys: [] },
);

/** A class whose skirts have one design, parted at random between what is shared and what each writes itself. */
export const anyClass: fc.Arbitrary<Group> = fc
  .tuple(
    anyRequest,
    more,
    fc.array(anyBody, { minLength: 1, maxLength: 3 }),
    fc.array(fc.boolean(), { minLength: 7, maxLength: 31 }),
    fc.array(anyCloth, { minLength: NAMES.length, maxLength: NAMES.length }),
    fc.option(fc.constantFrom(...NAMES), { nil: undefined }),
  )
  .map(([request, extra, bodies, coins, cloths, cloth]) => {
    let at = 0;
    const toss = (): boolean => coins[at++ % coins.length] ?? false;
    const design = { ...without(request, [...ofTheClass, 'body', 'cloth']), ...extra };
    const [shared, own] = parted(design, toss);
    return {
      ...only(request, ofTheClass),
      ...(Object.keys(shared).length > 0 ? { skirt: shared } : {}),
      skirts: bodies.map((body, i) => ({
        ...own,
        body,
        wearer: `wearer ${String(i)}`,
        ...(cloth ? { cloth } : {}),
      })),
      cloths: Object.fromEntries(NAMES.map((name, i) => [name, cloths[i]])),
    };
  });
