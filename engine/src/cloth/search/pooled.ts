import type { CutPiece } from '../cutPieces.ts';
import { leastOf } from '../hand/least.ts';
import { crosswiseFold } from '../lays/crosswiseFold.ts';
import { open } from '../lays/open.ts';
import { mm } from '../../units/index.ts';
import type { ClothJob, Wanted } from '../job/found.ts';
import { handStart, type HandPlaced } from './handStart.ts';
import { lengthOf } from '../job/lengths.ts';
import type { Strip } from './strip.ts';

/** More pieces than this take too long to lay at once. */
const MOST = 500;

/** All skirts laid on the strip at once by hand, as if they were one, and the length of cloth that takes. */
interface Pooled {
  readonly placed: readonly HandPlaced[];
  readonly along: number;
}

/**
 * Several skirts laid by hand as if they were one: what stays free beside one takes pieces of the next. Null where
 * there is one skirt, more than one length, or no such lay.
 */
export function pooled(job: ClothJob, strip: Strip): Pooled | null {
  const { wanted, lengths, fabric } = job;
  if (wanted.length < 2 || lengths.length > 1) return null;
  const { all, whose } = asOne(wanted);
  if (whose.size > MOST) return null;
  const input = { ...all, fabric };
  const lay = leastOf([open(input), crosswiseFold(input)], fabric);
  if (!lay || lay.clothAfter.value > lengthOf(lengths[0], fabric)) return null;
  const placed = handStart([{ of: all, lay, length: 0, start: mm(0), short: false }], job, strip);
  const named = placed?.flatMap((each): HandPlaced[] => {
    const { cutting } = each.lying;
    const [copy] = cutting.copies;
    const owner = whose.get(copy?.panels[0] ?? copy?.parts[0] ?? cutting);
    return owner ? [{ ...each, lying: { ...each.lying, ...owner } }] : [];
  });
  return named?.length === whose.size ? { placed: named, along: lay.clothAfter.value } : null;
}

type Owner = Pick<HandPlaced['lying'], 'wearer' | 'cutting'>;

/** One skirt of all their pieces. Each has a label of its own (skirts drafted alike share theirs), by which its owner is known. */
function asOne(wanted: ClothJob['wanted']): { readonly all: Wanted; readonly whose: Map<object, Owner> } {
  const whose = new Map<object, Owner>();
  const marked = (wearer: string, cut: CutPiece): CutPiece => ({
    ...cut,
    copies: cut.copies.map((copy) => {
      const panels = copy.panels.map((panel) => ({ ...panel }));
      const parts = copy.parts.map((part) => ({ ...part }));
      for (const label of [...panels, ...parts].slice(0, 1))
        whose.set(label, { wearer, cutting: { cut, copies: [copy] } });
      return { ...copy, panels, parts };
    }),
  });
  const mains = wanted.flatMap((each) => each.mains.map((cut) => marked(each.wearer, cut)));
  const parts = wanted.flatMap((each) => each.parts.map((cut) => marked(each.wearer, cut)));
  const [first, ...others] = mains;
  if (!first) throw new RangeError('a skirt without a panel');
  return { all: { wearer: '', mains: [first, ...others], parts, marking: 'by piece', seams: [] }, whose };
}
