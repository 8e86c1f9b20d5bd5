import { boundsOf } from '../../geometry/index.ts';
import { problem } from '../codes.ts';
import { assembled, knownOf, nothing, type Known } from './assemble.ts';
import { boundOf } from './bound.ts';
import type { ClothEffort } from './effort.ts';
import type { ClothJob, ClothLength, FoundCloth, Wanted } from './found.ts';
import { onDoubleFold } from './foldedInFour.ts';
import { standing } from './lying.ts';
import { packed } from './packed.ts';
import { partOf } from './shares.ts';
import { lengthOf } from './strip.ts';

/**
 * The best lays on cloth that is folded in four: as many skirts as find room below one another at the fold are cut from
 * one stretch of it, then the next. Null where the cloth is not of one length.
 */
export function inFours(
  known: Known,
  effort: ClothEffort,
  offer: (found: FoundCloth) => void,
): FoundCloth | null {
  const { job } = known;
  const [length, ...others] = job.lengths;
  if (others.length > 0 || length.flaws.length > 0 || job.fabric.oneWay) return null;
  const groups = groupsOf(job);
  if (groups === null) return assembled(known, nothing([problem('cloth.notFoldedInFour')]));
  // How much of it is taken is known at the end: until then it is laid as if it had none.
  const endless: ClothLength = { ...length, length: null };
  const stretches = groups.map((wanted, i) => {
    const part: ClothJob = { ...job, lengths: [endless], wanted };
    const from = i / groups.length;
    const share = partOf(effort, from, from + 1 / groups.length);
    const alone = groups.length === 1;
    return packed(
      { ...knownOf(part, 'double fold'), handBefore: known.handBefore },
      'double fold',
      share,
      (found) => {
        if (alone) offer(joined([found]));
      },
    );
  });
  return joined(stretches);

  function joined(found: readonly FoundCloth[]): FoundCloth {
    const tables = found.flatMap((each) =>
      each.tables.map((table) => ({
        ...table,
        from: length,
        where: table.where === 'first' ? ('another' as const) : table.where,
      })),
    );
    const long = lengthOf(length, job.fabric);
    let used = 0;
    const lacking = found.flatMap(({ clothAfter, clothBefore: needed }, i) => {
      used += clothAfter.value;
      const whose = used > long + HAIR ? (groups?.[i] ?? []) : [];
      return whose.map(({ wearer }) => problem('cloth.notEnoughFor', { wearer: wearer || 'nobody', needed }));
    });
    return assembled(known, {
      tables: tables.map((table, i) => (i === 0 ? { ...table, where: 'first' } : table)),
      bound: boundOf(job, 'double fold', []),
      evaluations: found.reduce((sum, { evaluations }) => sum + evaluations, 0),
      notices: [...found.flatMap(({ notices }) => notices), ...lacking],
    });
  }
}

const HAIR = 1e-6;

/** Skirts that find room below one another at the fold, the widest first; null where one does not by itself. */
function groupsOf({ wanted, fabric }: ClothJob): Wanted[][] | null {
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
  if (sized.some(({ deep }) => deep === 0 || deep > room)) return null;
  const groups: { deep: number; of: Wanted[] }[] = [];
  for (const { each, deep } of sized.toSorted((one, other) => other.wide - one.wide)) {
    const group = groups.find((some) => some.deep + deep <= room);
    if (group) {
      group.of.push(each);
      group.deep += deep;
    } else groups.push({ deep, of: [each] });
  }
  return groups.map(({ of }) => of);
}
