import { type ClothOptions, type ClothPlan } from '../cloth/index.ts';
import { colourKey } from '../fields/index.ts';
import type { Figure, Notice } from '../figure/index.ts';
import { ribbonTotals, type Composition, type RibbonOptions, type RibbonTotal } from '../ribbon/index.ts';
import type { StitchLine } from '../seams/index.ts';
import type { Skirt } from '../skirt/index.ts';
import {
  MM_PER_METRE,
  MM_PER_YARD,
  longest,
  mm,
  minorDigits,
  parseMoney,
  roundTo,
  times,
  type MeasureSystem,
  type Mm,
  type Money,
} from '../units/index.ts';
import { caution, figure } from './codes.ts';
import type { Advice, Item } from './item.ts';
import type { Notion, SuppliesOptions } from './options.ts';
import { threadTotals, type ThreadTotal } from './thread.ts';

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
  readonly lines: readonly StitchLine[];
  readonly clothOptions: ClothOptions;
  readonly ribbonOptions: RibbonOptions;
  readonly options: SuppliesOptions;
  /** Prices of lengths are for one yard or one metre. */
  readonly system: MeasureSystem;
}

export function listSupplies(input: SuppliesInput): Supplies {
  const totals = ribbonTotals(input.ribbons.rows);
  const thread = threadTotals(inOneColour(input), input.options.thread);
  const items = [
    clothItem(input),
    ...totals.map((total) => ribbonItem(total, input)),
    ...elasticItems(input),
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

/** A ribbon of the cloth's own colour is sewn with the cloth's thread: nobody buys one colour twice. */
const inOneColour = ({ lines, clothOptions }: SuppliesInput): StitchLine[] =>
  lines.map((line) =>
    line.top && colourKey(line.top) === colourKey(clothOptions.colour) ? { ...line, top: null } : line,
  );

function noticesOf({ ribbons, clothOptions, ribbonOptions }: SuppliesInput): Notice[] {
  const notices: Notice[] = [];
  if (ribbons.rows.length === 0) return notices;
  if (!ribbonOptions.washed)
    notices.push(caution('supplies.unwashedRibbon', { cloth: clothOptions.washed ? 'washed' : 'unwashed' }));
  if (ribbonOptions.ends === 'flame')
    notices.push(caution(ribbonOptions.hold === 'spray' ? 'supplies.flameAndSpray' : 'supplies.flame'));
  return notices;
}

/** Price of a length sold by the yard or the metre. */
function priced(price: string | undefined, buy: Figure<Mm>, input: SuppliesInput): Money | null {
  const each = unitPrice(price, input);
  return each && times(each, buy.value / (input.system === 'inches' ? MM_PER_YARD : MM_PER_METRE));
}

/** A price written finer than the currency's coins (12.50 yen) is taken to the nearest coin. */
function unitPrice(price: string | undefined, { options }: SuppliesInput): Money | null {
  if (price === undefined) return null;
  const coins = Number(price).toFixed(minorDigits(options.currency));
  const parsed = parseMoney(coins, options.currency);
  return parsed.ok ? parsed.value : null;
}

function clothItem(input: SuppliesInput): Item {
  const { chosen } = input.cloth;
  return {
    what: 'cloth',
    colour: input.clothOptions.colour,
    width: figure.length(input.clothOptions.width, 'supplies.boltWidth'),
    need: chosen.clothBefore,
    buy: chosen.toBuy,
    price: priced(input.clothOptions.price, chosen.toBuy, input),
    advice: ['boltWidth', 'cutCrooked'],
  };
}

type ByLength = SuppliesOptions['ribbon'];

function lengthToBuy(need: Figure<Mm>, { step, least }: ByLength): Figure<Mm> {
  const rounded = roundTo(longest(need.value, least), step, 'up');
  return figure.length(rounded, 'supplies.buy', {
    need,
    step: figure.length(step, 'supplies.step'),
    least: figure.length(least, 'supplies.least'),
  });
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

function elasticItems(input: SuppliesInput): Item[] {
  const { elastic } = input.skirt.waist;
  if (!elastic) return [];
  const buy = lengthToBuy(elastic.cut, input.options.elastic);
  const price = priced(input.options.elastic.price, buy, input);
  return [
    {
      what: 'elastic',
      colour: null,
      width: elastic.width,
      need: elastic.cut,
      buy,
      price,
      advice: ['elasticSoft'],
    },
  ];
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
