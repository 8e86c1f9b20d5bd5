import { boundsOf } from '../../geometry/index.ts';
import { stancesOf, type Stance } from '../blocks.ts';
import { isPanelPiece, type CutPiece } from '../cutPieces.ts';
import type { Fabric } from '../fabric.ts';
import { oneByOne, pairAll } from '../lays/pairs.ts';
import type { LayKind } from '../options.ts';
import type { ClothJob, Wanted } from '../job/found.ts';
import { standing, type Lying, type OnFold } from './lying.ts';
import { onDoubleFold } from './foldedInFour.ts';

/** What is laid together on the folded or opened cloth, and what has to be cut in a single layer besides. */
export interface Variant {
  readonly lying: readonly Lying[];
  readonly loose: readonly Lying[];
}

/** Whether panels lie along the bolt or across it; and whether what may is cut on the fold, or four at once. */
interface Manner {
  readonly panels: 'along' | 'across';
  readonly onFold: boolean;
}

/** The different ways in which the pieces may be given to the packing. Never none. */
export function variantsOf(job: ClothJob, way: LayKind): Variant[] {
  const { fabric, wanted, lengths } = job;
  const mayLieAcross =
    !fabric.oneWay && (way === 'open' || way === 'crosswise fold') && fabric.pattern?.match !== true;
  const mayPair =
    way === 'lengthwise fold'
      ? wanted.some(mayBePaired)
      : way === 'double fold' && wanted.some((each) => onDoubleFold(each, true).lying.some(isInFour));
  const manners: Manner[] = [
    { panels: 'along', onFold: true },
    ...(mayLieAcross ? [{ panels: 'across', onFold: true } as const] : []),
    ...(mayPair ? [{ panels: 'along', onFold: false } as const] : []),
  ];
  return manners.map((manner) => {
    const all = wanted.map((each) => {
      if (way === 'lengthwise fold') return onLengthwiseFold(each, manner);
      if (way === 'double fold') return onDoubleFold(each, manner.onFold);
      if (way === 'crosswise fold') return onCrosswiseFold(each, manner, lengths.length === 1);
      return opened(each, manner);
    });
    const variant = { lying: all.flatMap(({ lying }) => lying), loose: all.flatMap(({ loose }) => loose) };
    return way === 'crosswise fold' ? atTheFold(variant, fabric) : variant;
  });
}

/** As many as find room below one another at a fold across the bolt, the longest first; others in a single layer. */
function atTheFold({ lying, loose }: Variant, fabric: Fabric): Variant {
  const { usable, between } = fabric;
  const sized = lying
    .filter(({ onFold }) => onFold === 'start')
    .map((each) => ({ each, box: boundsOf(standing(each)) }))
    .toSorted((one, other) => other.box.width - one.box.width);
  let deep = 0;
  const without = new Set<Lying>();
  for (const { each, box } of sized) {
    if (deep + box.height > usable.value + HAIR) without.add(each);
    else deep += box.height + between.value;
  }
  return {
    lying: lying.filter((each) => !without.has(each)),
    loose: [...loose, ...[...without].flatMap((each) => inSingleLayer(each, fabric))],
  };
}

const HAIR = 1e-6;

/** What was to be cut through layers or on a fold, one by one: across the bolt where it is too broad to lie along it. */
export function inSingleLayer({ wearer, cutting: { cut, copies } }: Lying, fabric: Fabric): Lying[] {
  const { usable, oneWay } = fabric;
  const usual = stancesOf(cut);
  const stances: readonly Stance[] = oneWay ? usual : [...usual, 'across'];
  return copies.map((copy): Lying => {
    const as = (stance: Stance): Lying => ({
      wearer,
      cutting: { cut, copies: [copy] },
      stance,
      onFold: 'no',
    });
    const hasRoom = (stance: Stance): boolean => boundsOf(standing(as(stance))).height <= usable.value + HAIR;
    return as(stances.find(hasRoom) ?? usual[0] ?? 'along');
  });
}

/** A piece lying so on a one-way cloth has its print on its side: only for want of any other way. */
export const onItsSide = ({ wanted }: ClothJob): Variant => ({
  lying: wanted.flatMap((each) => opened(each, { panels: 'across', onFold: false }).lying),
  loose: [],
});

const isMarkedOnFold = ({ marking }: Wanted): boolean =>
  marking === 'at the fold' || marking === 'straight widths';
const mayBePaired = (wanted: Wanted): boolean => !isMarkedOnFold(wanted);

const isInFour = ({ onFold }: Lying): boolean => onFold === 'no';

function stanceOf(cut: CutPiece, { panels }: Manner): Stance {
  if (!isPanelPiece(cut)) return stancesOf(cut)[0] ?? 'along';
  return panels === 'along' ? 'along' : cut.swing > 0 ? 'cornered' : 'across';
}

function opened({ wearer, mains, parts }: Wanted, manner: Manner): Variant {
  const lying = oneByOne([...mains, ...parts]).map((cutting): Lying => ({
    wearer,
    cutting,
    stance: stanceOf(cutting.cut, manner),
    onFold: 'no',
  }));
  return { lying, loose: [] };
}

/** Pieces with a left and a right in pairs; of the others each on the fold, or two at once and the odd one on the fold. */
function onLengthwiseFold(wanted: Wanted, manner: Manner): Variant {
  const { wearer, mains, parts } = wanted;
  const onFold = (cut: CutPiece): boolean =>
    cut.symmetric &&
    cut.grain !== 'across' &&
    mains.includes(cut) &&
    (isMarkedOnFold(wanted) || manner.onFold);
  const all = [...mains, ...parts];
  const { pairs, odd } = pairAll(all.filter((cut) => !onFold(cut)));
  const folded = oneByOne(all.filter(onFold));
  const as =
    (fold: OnFold) =>
    (cutting: Lying['cutting']): Lying => ({
      wearer,
      cutting,
      stance: stanceOf(cutting.cut, manner),
      onFold: fold,
    });
  const mayFold = ({ cut }: Lying['cutting']): boolean => cut.symmetric && cut.grain !== 'across';
  return {
    lying: [...folded.map(as('along')), ...pairs.map(as('no')), ...odd.filter(mayFold).map(as('along'))],
    loose: odd.filter((each) => !mayFold(each)).map(as('no')),
  };
}

/** In pairs through two layers; an odd piece that may lie across the bolt with its middle on the fold. */
function onCrosswiseFold({ wearer, mains, parts }: Wanted, manner: Manner, hasStart: boolean): Variant {
  const { pairs, odd } = pairAll([...mains, ...parts]);
  const mayFold = ({ cut }: Lying['cutting']): boolean =>
    hasStart &&
    cut.symmetric &&
    (isPanelPiece(cut) ? manner.panels === 'across' && cut.swing === 0 : cut.grain !== 'down');
  const as =
    (fold: OnFold) =>
    (cutting: Lying['cutting']): Lying => ({
      wearer,
      cutting,
      stance: fold === 'start' ? 'across' : stanceOf(cutting.cut, manner),
      onFold: fold,
    });
  return {
    lying: [...pairs.map(as('no')), ...odd.filter(mayFold).map(as('start'))],
    loose: odd.filter((each) => !mayFold(each)).map(as('no')),
  };
}
