import type { ClassRequest, SkirtRequest } from '@ribbonwright/engine';

/** Raised when kept lays of an older table can no longer be drawn, or what they tell no longer be said. */
const VERSION = 5;

/** What of a cloth a lay depends on: not what it is called and costs, nor which way is liked best. */
const clothKey = (cloth: SkirtRequest['cloth']): unknown => ({
  ...cloth,
  name: null,
  colour: null,
  price: null,
  lay: null,
});

const skirtParts = ({ body, cut, waist, extras, mark, cloth, contrast }: SkirtRequest): unknown => ({
  body,
  cut,
  waist,
  extras,
  mark,
  cloth: clothKey(cloth),
  contrast: contrast.map((each) => ({ ...each, cloth: clothKey(each.cloth) })),
});

/** All of a request that its lays depend on, as text: kept lays hold for as long as it stays the same. */
export const laysKey = (request: SkirtRequest): string => JSON.stringify([VERSION, skirtParts(request)]);

/** The same of a class: whose each skirt is, too, for it stands on the pieces. */
export const classLaysKey = ({ skirts, cloths }: ClassRequest): string =>
  JSON.stringify([
    VERSION,
    skirts.map(({ label, cloth, contrast, request }) => ({
      label,
      cloth,
      contrast,
      of: skirtParts(request),
    })),
    cloths.map(({ name, options }) => ({ name, options: clothKey(options) })),
  ]);
