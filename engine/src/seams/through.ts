import type { Panel, PartName, Skirt, Work, WorkName } from '../skirt/index.ts';

/** What a line of stitching goes through: a panel, or a piece that is none by its name. */
export type SewnPiece = Panel | PartName;

const band = ['waistband', 'waistband back', 'casing strip'] as const satisfies readonly PartName[];

/** Pieces besides panels, and whether panels too; what lies outside, or above, comes first. */
const pieces: Readonly<
  Record<
    WorkName,
    { readonly over: readonly PartName[]; readonly panels: boolean; readonly under: readonly PartName[] }
  >
> = {
  'side seam': panels(),
  'gore seam': panels(),
  'strip join': panels(),
  'gathering rows': panels(),
  'tier seam': panels(),
  facing: panels(),
  casing: { over: ['casing strip'], panels: true, under: [] },
  'casing seam': { over: ['casing strip'], panels: true, under: [] },
  'casing join': alone('casing strip'),
  'band seam': { over: band, panels: true, under: [] },
  'band fold': alone(...band),
  'band ends': alone(...band),
  dart: panels(),
  placket: panels('placket'),
  zip: panels(),
  buttonhole: { over: band, panels: false, under: [] },
  button: { over: band, panels: false, under: [] },
  tie: alone('tie'),
  'elastic join': alone(),
  'elastic catch': { over: band, panels: true, under: [] },
  'cord eyelet': panels(),
  'cord catch': panels(),
  'pocket seam': panels('pocket bag'),
  'pocket bag': alone('pocket bag'),
  'slit edge': panels('slit facing'),
  tuck: panels(),
  'lining seam': alone(),
  'lining hem': alone(),
  'lining top': alone(),
};

function panels(...under: readonly PartName[]) {
  return { over: [], panels: true, under };
}

function alone(...over: readonly PartName[]) {
  return { over, panels: false, under: [] };
}

/** What each of a work's lines goes through: seams between panels one by one, all others alike. */
export function sewnBy(skirt: Skirt, work: Work): readonly (readonly SewnPiece[])[] {
  const { name, count } = work;
  if (name === 'strip join' && skirt.waist.works.includes(work)) return [partsOf(skirt, ['waistband'])];
  if (name === 'strip join' && skirt.overlap) return [partsOf(skirt, ['tie'])];
  if (name === 'side seam' || name === 'gore seam' || name === 'strip join')
    return pairs(roundOf(skirt, work.round), count);
  const { over, panels: through, under } = pieces[name];
  const above = name === 'tier seam' ? roundOf(skirt, work.round - 1) : [];
  const lowest = name === 'slit edge' ? skirt.rounds.length - 1 : work.round;
  return [
    [...partsOf(skirt, over), ...above, ...(through ? roundOf(skirt, lowest) : []), ...partsOf(skirt, under)],
  ];
}

/** The hem goes through the lowest panels, and through what they are faced with. */
export const sewnByHem = (skirt: Skirt): readonly SewnPiece[] => [
  ...roundOf(skirt, skirt.rounds.length - 1),
  ...partsOf(skirt, ['hem facing']),
];

const partsOf = ({ parts }: Skirt, names: readonly PartName[]): PartName[] =>
  names.filter((name) => parts.some((part) => part.name === name && part.cloth === 'skirt'));

const roundOf = ({ rounds }: Skirt, at: number): readonly Panel[] => rounds[at]?.panels ?? [];

/** Panels side by side round the body: each seam with the two that it joins. */
function pairs(round: readonly Panel[], seams: number): Panel[][] {
  const inOrder = [...round].sort((a, b) => a.around.from - b.around.from);
  return Array.from({ length: seams }, (_, i) => {
    const two = [inOrder[i % inOrder.length], inOrder[(i + 1) % inOrder.length]];
    return two.filter((each) => each !== undefined);
  });
}
