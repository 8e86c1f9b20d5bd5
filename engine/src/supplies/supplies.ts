import {
  boughtFor,
  type ClothOptions,
  type ClothPlan,
  type ContrastPlan,
  type SkirtCloths,
} from '../cloth/index.ts';
import { colourKey, type Colour } from '../fields/index.ts';
import type { Notice } from '../figure/index.ts';
import { ribbonTotals, type Composition, type RibbonOptions, type RibbonTotal } from '../ribbon/index.ts';
import type { StitchLine } from '../seams/index.ts';
import type { Skirt } from '../skirt/index.ts';
import { mm, times, type MeasureSystem, type Money } from '../units/index.ts';
import { caution, figure } from './codes.ts';
import type { Advice, Item } from './item.ts';
import type { Notion, SuppliesOptions } from './options.ts';
import { lengthToBuy, priced, unitPrice } from './prices.ts';
import { threadTotals, type Sewn, type ThreadTotal } from './thread.ts';
import { threadColour } from './threadColour.ts';
import { waistItems } from './waistItems.ts';

/** All that must be bought or found for one skirt. */
export interface Supplies {
  readonly ribbons: readonly RibbonTotal[];
  readonly thread: readonly ThreadTotal[];
  readonly items: readonly Item[];
  /** Sum of the priced items, and how many have no price. */
  readonly total: Money;
  readonly unpriced: number;
  readonly notices: readonly Notice[];
}

export interface SuppliesInput {
  readonly skirt: Skirt;
  readonly ribbons: Composition;
  readonly cloth: ClothPlan;
  /** Null where nothing is cut from a cloth of its own. */
  readonly lining: ClothPlan | null;
  /** The skirt's other cloths. */
  readonly contrast: readonly ContrastPlan[];
  /** What is cut from which. */
  readonly cloths: SkirtCloths;
  readonly lines: readonly StitchLine[];
  readonly clothOptions: ClothOptions;
  readonly ribbonOptions: RibbonOptions;
  readonly options: SuppliesOptions;
  /** Prices of lengths are for one yard or one metre. */
  readonly system: MeasureSystem;
}

export function listSupplies(input: SuppliesInput): Supplies {
  const totals = ribbonTotals(input.ribbons.rows);
  const thread = threadTotals(sewnOf(input), input.options.thread);
  const items = [
    clothItem(input.cloth, input.clothOptions, input),
    ...input.contrast.map(({ cloth, options }) => clothItem(cloth, options, input)),
    ...liningItems(input),
    ...totals.map((total) => ribbonItem(total, input)),
    ...waistItems(input.skirt, input),
    ...thread.map((each) => threadItem(each, input)),
    ...notionItems(input),
  ];
  const { currency } = input.options;
  const minor = items.reduce((sum, { price }) => sum + (price?.minor ?? 0), 0);
  return {
    ribbons: totals,
    thread,
    items,
    total: { minor, currency },
    unpriced: items.filter(({ price }) => price === null).length,
    notices: noticesOf(input),
  };
}

/**
 * Stitching by its threads. A ribbon of a cloth's colour is sewn with that cloth's thread: nobody buys one colour twice. The
 * overlocker keeps its cones, whatever the cloth.
 */
function sewnOf({ lines, cloths, clothOptions, options }: SuppliesInput): Sewn[] {
  const own = colourKey(clothOptions.colour);
  const named = (colour: Colour): Colour | null => (colourKey(colour) === own ? null : colour);
  return lines.flatMap(({ stitch, top, through }) =>
    through.map(({ pieces, length, starts }) => {
      if (stitch === '504') return { stitch, length, starts, top: null, under: null };
      const under = threadColour(cloths, pieces, options.thread.colour);
      return { stitch, length, starts, top: named(top ?? under), under: named(under) };
    }),
  );
}

function noticesOf({ ribbons, clothOptions, ribbonOptions }: SuppliesInput): Notice[] {
  const notices: Notice[] = [];
  if (ribbons.rows.length === 0) return notices;
  if (!ribbonOptions.washed)
    notices.push(caution('supplies.unwashedRibbon', { cloth: clothOptions.washed ? 'washed' : 'unwashed' }));
  if (ribbonOptions.ends === 'flame')
    notices.push(caution(ribbonOptions.hold === 'spray' ? 'supplies.flameAndSpray' : 'supplies.flame'));
  return notices;
}

function clothItem(
  { chosen }: ClothPlan,
  { name, colour, width, price, bolt, have }: ClothOptions,
  input: SuppliesInput,
): Item {
  return {
    what: 'cloth',
    ...(name === '' ? {} : { name }),
    colour,
    width: figure.length(width, 'supplies.boltWidth'),
    // Of a cloth that is partly at hand what comes off the bolt.
    need: boughtFor(chosen.toBuy) ?? chosen.clothBefore,
    buy: chosen.toBuy,
    price: priced(price, chosen.toBuy, input),
    advice:
      chosen.toBuy.value === 0 ? [] : bolt && have === undefined ? ['boltWidth', 'cutCrooked'] : ['noMore'],
  };
}

/** Of the lining, and of pocket bags where they are cut from it. */
function liningItems(input: SuppliesInput): Item[] {
  const { lining, skirt } = input;
  const cloth = skirt.extras.liningCloth;
  if (!lining || !cloth) return [];
  const { clothBefore, toBuy } = lining.chosen;
  return [
    {
      what: 'lining',
      colour: null,
      width: cloth.width,
      need: clothBefore,
      buy: toBuy,
      price: priced(cloth.price, toBuy, input),
      advice: ['liningWashes'],
    },
  ];
}

function ribbonItem({ colour, width, total }: RibbonTotal, input: SuppliesInput): Item {
  const spare = figure.length(input.options.ribbonSpare, 'supplies.spare');
  const need = figure.length(mm(total.value + spare.value), 'supplies.withSpare', { total, spare });
  const buy = lengthToBuy(need, input.options.ribbon);
  return {
    what: 'ribbon',
    colour,
    width,
    need,
    buy,
    price: priced(input.options.ribbon.price, buy, input),
    advice: ['washable', 'dyeLot', 'realWidth'],
  };
}

function threadItem({ colour, overlock, total, spools }: ThreadTotal, input: SuppliesInput): Item {
  const { thread } = input.options;
  const each = unitPrice(overlock ? thread.conePrice : thread.price, input);
  return {
    what: overlock ? 'overlock thread' : 'thread',
    colour: colour ?? input.clothOptions.colour,
    width: null,
    need: total,
    buy: spools,
    price: each && times(each, spools.value),
    advice: overlock ? [] : ['threadColour'],
  };
}

function notionItems(input: SuppliesInput): Item[] {
  const { hold, ends } = input.ribbonOptions;
  const wanted: [Notion, Advice][] = [
    ['needles', 'satinNeedle'],
    ['chalk', 'chalkWashesOut'],
    ['pins', 'pinsFine'],
  ];
  const hasRows = input.ribbons.rows.length > 0;
  if (hasRows && hold === 'glue') wanted.push(['glue', 'glueWashable']);
  if (hasRows && hold === 'spray') wanted.push(['spray', 'sprayTemporary']);
  if (hasRows && ends === 'sealant') wanted.push(['sealant', 'sealantDries']);
  return wanted.map(([what, advice]) => ({
    what,
    colour: null,
    width: null,
    need: null,
    buy: figure.count(1, 'supplies.pieces'),
    price: unitPrice(input.options.notions[what], input),
    advice: [advice],
  }));
}
