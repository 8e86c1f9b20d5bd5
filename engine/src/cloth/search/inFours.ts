import { boundsOf } from '../../geometry/index.ts';
import { caution, problem } from '../codes.ts';
import { assembled, nothing } from '../job/assembled.ts';
import { knownOf, type Known } from './known.ts';
import { boundOf } from '../job/bound.ts';
import type { ClothEffort } from './effort.ts';
import type { ClothJob, ClothLength, FoundCloth, FoundTable, Wanted } from '../job/found.ts';
import { onDoubleFold } from './foldedInFour.ts';
import { standing } from './lying.ts';
import { packed } from './packed.ts';
import { partOf } from './shares.ts';
import { lengthOf } from '../job/lengths.ts';
import { piecesIn } from '../job/wanted.ts';

/** Skirts that are cut from one stretch of the cloth, folded in four or opened out. */
interface Stretch {
  readonly wanted: readonly Wanted[];
  readonly way: 'double fold' | 'open';
}

/**
 * The best lays on cloth that is folded in four: as many skirts as find room below one another at the fold are cut from
 * one stretch of it, then the next; of several skirts those that can't be folded so from the last, opened out. Null where
 * the cloth is not of one length.
 */
export function inFours(
  known: Known,
  effort: ClothEffort,
  offer: (found: FoundCloth) => void,
): FoundCloth | null {
  const { job } = known;
  const [length, ...more] = job.lengths;
  if (more.length > 0 || length.flaws.length > 0 || job.fabric.oneWay) return null;
  const stretches = stretchesOf(job);
  if (stretches.every(({ way }) => way === 'open'))
    return assembled(known, nothing([problem('cloth.notFoldedInFour')]));
  // How much of it is taken is known at the end: until then it is laid as if it had none.
  const endless: ClothLength = { ...length, length: null };
  const alone = stretches.length === 1;
  const pieces = stretches.map(({ wanted }) => piecesIn(wanted));
  const all = pieces.reduce((sum, count) => sum + count, 0);
  let from = 0;
  const laid = stretches.map(({ wanted, way }, i) => {
    const part: ClothJob = { ...job, lengths: [endless], wanted };
    const to = from + (pieces[i] ?? 0) / all;
    const share = partOf(effort, from, to);
    from = to;
    return packed({ ...knownOf(part, way), handBefore: known.handBefore }, way, share, (found) => {
      if (alone) offer(joined([found]));
    });
  });
  return joined(laid);

  function joined(found: readonly FoundCloth[]): FoundCloth {
    const tables = found.flatMap((each, i) =>
      each.tables.map((table): FoundTable => ({ ...table, from: length, where: whereOf(table, i) })),
    );
    const long = lengthOf(length, job.fabric);
    let used = 0;
    const lacking = found.flatMap(({ clothAfter, clothBefore: needed }, i) => {
      used += clothAfter.value;
      const whose = used > long + HAIR ? (stretches[i]?.wanted ?? []) : [];
      return whose.map(({ wearer }) =>
        problem('cloth.notEnoughFor', { wearer: wearer || 'nobody', needed, why: 'sought' }),
      );
    });
    const apart = stretches.flatMap(({ way, wanted }) => (way === 'open' ? wanted : []));
    return assembled(known, {
      tables: tables.map((table, i) => (i === 0 ? { ...table, where: 'first' } : table)),
      bound: boundOf(job, 'double fold', []),
      evaluations: found.reduce((sum, { evaluations }) => sum + evaluations, 0),
      notices: [
        ...found.flatMap(({ notices }) => notices),
        ...(apart.length > 0
          ? [
              caution('cloth.apart', {
                wearers: apart.map(({ wearer }) => wearer).join(', '),
                lay: 'double fold',
              }),
            ]
          : []),
        ...lacking,
      ],
    });
  }

  function whereOf({ where }: FoundTable, stretch: number): FoundTable['where'] {
    if (where !== 'first') return where;
    return stretches[stretch]?.way === 'open' ? 'beyond' : 'another';
  }
}

const HAIR = 1e-6;

/** Skirts that find room below one another at the fold, the widest first; then those of which one does not by itself. */
function stretchesOf({ wanted, fabric }: ClothJob): Stretch[] {
  const between = fabric.between.value;
  const sized = wanted.map((each) => {
    const boxes = onDoubleFold(each, true)
      .lying.filter(({ onFold }) => onFold === 'start')
      .map((lying) => boundsOf(standing(lying)));
    return {
      each,
      deep: boxes.reduce((sum, { height }) => sum + height + between, 0),
      wide: Math.max(0, ...boxes.map(({ width }) => width)),
    };
  });
  const room = fabric.usable.value + between + HAIR;
  const fits = ({ deep }: { readonly deep: number }): boolean => deep > 0 && deep <= room;
  const groups: { deep: number; of: Wanted[] }[] = [];
  for (const { each, deep } of sized.filter(fits).toSorted((one, other) => other.wide - one.wide)) {
    const group = groups.find((some) => some.deep + deep <= room);
    if (group) {
      group.of.push(each);
      group.deep += deep;
    } else groups.push({ deep, of: [each] });
  }
  const others = sized.filter((each) => !fits(each)).map(({ each }) => each);
  return [
    ...groups.map(({ of }): Stretch => ({ wanted: of, way: 'double fold' })),
    ...(others.length > 0 ? [{ wanted: others, way: 'open' } as const] : []),
  ];
}
