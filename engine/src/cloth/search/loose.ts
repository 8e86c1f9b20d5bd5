import { boundsOf } from '../../geometry/index.ts';
import { mm } from '../../units/index.ts';
import { single, stancesOf, type Cutting } from '../blocks.ts';
import type { Fabric } from '../fabric.ts';
import type { LayKind } from '../options.ts';
import { choiceOf, layLoose, NO_STRIPS, type Strips } from '../lays/loose.ts';
import type { Choice } from '../place.ts';
import type { ClothLength, FoundTable } from '../job/found.ts';
import { restOf, stripTaken } from '../job/rest.ts';
import { lotsOf, packLots, placedOf } from './lots.ts';
import type { Lying } from './lying.ts';
import { FREE } from './match.ts';
import { stripOf } from './strip.ts';
import { tablesOf } from './tables.ts';

interface LooseLaid {
  /** Those of the folded cloth, then what is laid besides. */
  readonly tables: readonly FoundTable[];
  readonly unfit: readonly Cutting[];
}

/**
 * Pieces that make no pair and lie on no fold: on what is left beside the folded ones of the bolt, then beyond them.
 * Where room is to be kept or flaws gone round they are all packed beyond.
 */
export function looseOn(
  loose: readonly Lying[],
  folded: readonly FoundTable[],
  way: LayKind,
  bolt: ClothLength,
  fabric: Fabric,
): LooseLaid {
  if (loose.length === 0) return { tables: folded, unfit: [] };
  const table = folded.find(({ from }) => from === bolt);
  if (fabric.between.value > 0 || bolt.flaws.length > 0) {
    const beyond = packedBeyond(loose, table, bolt, fabric);
    return { ...beyond, tables: [...folded, ...beyond.tables] };
  }
  const { more, unfit } = layLoose(
    loose.map(({ cutting }) => cutting),
    table ? stripsOf(table, way, fabric) : NO_STRIPS,
    fabric,
    choicesOf(loose),
  );
  const whose = wearersOf(loose);
  const tables = more.map((each): FoundTable => {
    const pieces = each.pieces.map((piece) => ({
      ...piece,
      wearer: whose(piece.panels[0] ?? piece.parts[0]),
    }));
    return {
      ...each,
      from: bolt,
      // What is cut beside takes no more of the bolt.
      used: each.where === 'beside' ? ZERO : each.along,
      pieces,
      flaws: [],
      leftOver: restOf(each, fabric),
      uncut: null,
      beneath: null,
    };
  });
  const strip = tables.find(({ where }) => where === 'beside');
  // A strip that single pieces are cut from is not left over.
  const left = (each: FoundTable): FoundTable['leftOver'] =>
    strip && each === table
      ? restOf(each, fabric, [...each.flaws, stripTaken(each, strip.across)])
      : each.leftOver;
  return { tables: [...folded.map((each) => ({ ...each, leftOver: left(each) })), ...tables], unfit };
}

/** In a single layer, from where the folded cloth ends: the first answer of the packing. */
function packedBeyond(
  loose: readonly Lying[],
  table: FoundTable | undefined,
  bolt: ClothLength,
  fabric: Fabric,
): LooseLaid {
  const before = table ? table.used / (1 - fabric.lengthwise.value) : 0;
  const rest: ClothLength = {
    ...bolt,
    flaws: bolt.flaws.flatMap((flaw) =>
      flaw.along + flaw.length > before
        ? [
            {
              ...flaw,
              along: mm(Math.max(0, flaw.along - before)),
              length: mm(flaw.length - Math.max(0, before - flaw.along)),
            },
          ]
        : [],
    ),
  };
  const strip = stripOf({ fabric, lengths: [rest], wanted: [] }, 'open');
  const lots = lotsOf(loose, fabric, FREE);
  const result = packLots(lots, strip, fabric, { seed: 0 });
  if (!result.ok) return { tables: [], unfit: loose.map(({ cutting }) => cutting) };
  const tables = tablesOf(placedOf(lots, result.packing.placements), strip, 'open', fabric);
  return { tables: tables.map((each) => ({ ...each, from: bolt, where: 'beyond' })), unfit: [] };
}

/** A piece lies as it may by itself; one that is too broad for that only as it was turned. */
function choicesOf(loose: readonly Lying[]): (cutting: Cutting) => Choice {
  const stances = new Map(loose.map(({ cutting, stance }) => [cutting, stance]));
  return (cutting) => {
    const stance = stances.get(cutting);
    return !stance || stancesOf(cutting.cut).includes(stance) ? choiceOf(cutting) : [single(cutting, stance)];
  };
}

const ZERO = 0 as FoundTable['used'];

function stripsOf({ pieces, along, used }: FoundTable, way: LayKind, { selvage, usable }: Fabric): Strips {
  const bounds = pieces.map(({ outline }) => boundsOf(outline));
  if (way === 'lengthwise fold') {
    const upper = Math.min(...bounds.map(({ top }) => top));
    return { count: 2, along, across: Math.max(0, upper - selvage.value) };
  }
  const lower = Math.max(...bounds.map(({ bottom }) => bottom));
  return { count: 1, along: used, across: Math.max(0, usable.value + selvage.value - lower) };
}

/** Two skirts drafted alike share their panels: each wearer gets as many as are hers. */
function wearersOf(loose: readonly Lying[]): (label: object | undefined) => string {
  const waiting = new Map<object, string[]>();
  for (const { wearer, cutting } of loose)
    for (const { panels, parts } of cutting.copies)
      for (const label of [...panels, ...parts]) waiting.set(label, [...(waiting.get(label) ?? []), wearer]);
  return (label) => (label ? (waiting.get(label)?.shift() ?? '') : '');
}
