import type { Figure } from '../figure/index.ts';
import {
  MM_PER_METRE,
  MM_PER_YARD,
  longest,
  minorDigits,
  parseMoney,
  roundTo,
  times,
  type MeasureSystem,
  type Mm,
  type Money,
} from '../units/index.ts';
import { figure } from './codes.ts';
import type { SuppliesOptions } from './options.ts';

/** What prices are read by: the currency, and whether lengths are sold by the yard or the metre. */
export interface Till {
  readonly options: SuppliesOptions;
  readonly system: MeasureSystem;
}

/** Price of a length sold by the yard or the metre. */
export function priced(price: string | null | undefined, buy: Figure<Mm>, till: Till): Money | null {
  const each = unitPrice(price, till);
  return each && times(each, buy.value / (till.system === 'inches' ? MM_PER_YARD : MM_PER_METRE));
}

/** A price written finer than the currency's coins (12.50 yen) is taken to the nearest coin. */
export function unitPrice(price: string | null | undefined, { options }: Till): Money | null {
  if (price === undefined || price === null) return null;
  const coins = Number(price).toFixed(minorDigits(options.currency));
  const parsed = parseMoney(coins, options.currency);
  return parsed.ok ? parsed.value : null;
}

/** How the shop cuts what it sells by length. */
export type ByLength = Pick<SuppliesOptions['ribbon'], 'step' | 'least'>;

export function lengthToBuy(need: Figure<Mm>, { step, least }: ByLength): Figure<Mm> {
  const rounded = roundTo(longest(need.value, least), step, 'up');
  return figure.length(rounded, 'supplies.buy', {
    need,
    step: figure.length(step, 'supplies.step'),
    least: figure.length(least, 'supplies.least'),
  });
}
