import type { Body } from '../../body/index.ts';
import type { Figure } from '../../figure/index.ts';
import { inches, mm, roundTo, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';

/** A grown hand round the knuckles, and a child's as a share of its height. Common practice, no source. */
const GROWN_HAND = inches(9);
const HAND_SHARE = 0.14;
const CHILD_HAND = inches(7);
/** Room for the hand: in the opening, and in the bag. Common practice, no source. */
const OPENING_EASE = inches(1.5);
const BAG_EASE = inches(2);
/** Round the knuckles: as measured, or as is usual at that height. */
export function handOf(body: Body, hand: Mm | undefined): Figure<Mm> {
  if (hand !== undefined) return figure.length(hand, 'skirt.hand');
  if (body.adult) return figure.length(GROWN_HAND, 'skirt.handUsual');
  const { height } = body;
  if (!height) return figure.length(CHILD_HAND, 'skirt.handUsual');
  const share = figure.percent(HAND_SHARE, 'skirt.handShare');
  return figure.length(mm(height.value * HAND_SHARE), 'skirt.handOfHeight', { height, share });
}

function halfHand(
  code: 'skirt.pocketOpening' | 'skirt.pocketBagWidth',
  hand: Figure<Mm>,
  ease: Figure<Mm>,
  mark: Mm,
): Figure<Mm> {
  const exact = mm(hand.value / 2 + ease.value);
  return figure.length(roundTo(exact, mark, 'up'), code, { hand, ease }, { exact });
}

/** The hand goes in flat, with ease. */
export const openingFor = (hand: Figure<Mm>, mark: Mm): Figure<Mm> =>
  halfHand('skirt.pocketOpening', hand, figure.length(OPENING_EASE, 'skirt.pocketEase'), mark);

export const bagWidthFor = (hand: Figure<Mm>, mark: Mm): Figure<Mm> =>
  halfHand('skirt.pocketBagWidth', hand, figure.length(BAG_EASE, 'skirt.pocketBagEase'), mark);
