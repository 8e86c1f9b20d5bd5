import { boundsOf } from '../geometry/index.ts';
import type { Skirt } from '../skirt/index.ts';
import { mm, times } from '../units/index.ts';
import { figure } from './codes.ts';
import type { Item } from './item.ts';
import { lengthToBuy, priced, unitPrice, type Till } from './prices.ts';

/** Width that iron-on interfacing is sold in: 90 cm. Common practice, no source. */
const INTERFACING_WIDTH = mm(900);

/** A wrap that buttons has one at each of its edges. */
const WRAP_BUTTONS = 2;

/** What waist and closure take besides cloth: elastic, cord, stretch cloth, interfacing, a zip, buttons. */
export const waistItems = (skirt: Skirt, till: Till): Item[] => [
  ...knit(skirt, till),
  ...interfacing(skirt, till),
  ...elastic(skirt, till),
  ...cord(skirt, till),
  ...zip(skirt, till),
  ...buttons(skirt, till),
];

function elastic({ waist: { elastic } }: Skirt, till: Till): Item[] {
  if (!elastic) return [];
  const buy = lengthToBuy(elastic.cut, till.options.elastic);
  const price = priced(till.options.elastic.price, buy, till);
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

function cord({ waist: { cord } }: Skirt, till: Till): Item[] {
  if (!cord) return [];
  const buy = lengthToBuy(cord.cut, till.options.cord);
  const price = priced(till.options.cord.price, buy, till);
  return [
    { what: 'cord', colour: null, width: cord.width, need: cord.cut, buy, price, advice: ['cordEnds'] },
  ];
}

/** Stretch cloth, by the piece that is cut of it: round the body across the cloth, where it stretches. */
function knit({ parts }: Skirt, till: Till): Item[] {
  return parts
    .filter(({ cloth, count }) => cloth === 'knit' && count > 0)
    .map(({ shape, count }): Item => {
      const size = boundsOf(shape.cut);
      const pieces = figure.count(count, 'supplies.pieces');
      const height = figure.length(mm(size.height), 'supplies.pieceHeight');
      const need = figure.length(mm(count * size.height), 'supplies.knit', { pieces, height });
      const buy = lengthToBuy(need, till.options.knit);
      return {
        what: 'knit',
        colour: null,
        width: figure.length(mm(size.width), 'supplies.pieceWidth'),
        need,
        buy,
        price: priced(till.options.knit.price, buy, till),
        advice: ['knitStretches'],
      };
    });
}

/** As long as the longest piece of a band that does not stretch: all its pieces lie beside one another in its width. */
function interfacing({ waist, parts }: Skirt, till: Till): Item[] {
  const { use, price } = till.options.interfacing;
  const bands = parts.filter(({ name, count }) => name === 'waistband' && count > 0);
  if (!use || waist.build !== 'band' || bands.length === 0) return [];
  const longest = Math.max(...bands.map(({ shape }) => boundsOf(shape.cut).width));
  const need = figure.length(mm(longest), 'supplies.bandPiece');
  const buy = lengthToBuy(need, till.options.interfacing);
  return [
    {
      what: 'interfacing',
      colour: null,
      width: figure.length(INTERFACING_WIDTH, 'supplies.interfacingWidth'),
      need,
      buy,
      price: priced(price, buy, till),
      advice: ['interfacingTry'],
    },
  ];
}

/** A zip is bought by its length; a band above it closes with its button. */
function zip({ waist: { closure, above } }: Skirt, till: Till): Item[] {
  if (closure?.kind !== 'zip') return [];
  const length = figure.length(mm(closure.depth.value - above.value), 'supplies.zip', {
    opening: closure.depth,
    band: above,
  });
  return [
    {
      what: 'zip',
      colour: null,
      width: null,
      need: length,
      buy: length,
      price: unitPrice(till.options.notions.zip, till),
      advice: ['zipShortened'],
    },
  ];
}

function buttons({ waist: { closure }, overlap }: Skirt, till: Till): Item[] {
  const count = (closure?.buttons ?? 0) + (overlap?.closes === 'buttons' ? WRAP_BUTTONS : 0);
  if (count === 0) return [];
  const each = unitPrice(till.options.notions.buttons, till);
  return [
    {
      what: 'buttons',
      colour: null,
      width: null,
      need: null,
      buy: figure.count(count, 'supplies.pieces'),
      price: each && times(each, count),
      advice: ['buttonsFlat'],
    },
  ];
}
