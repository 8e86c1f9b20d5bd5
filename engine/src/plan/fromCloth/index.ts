export type { FromCloth } from './answer.ts';
export type { FromClothFigureCode, FromClothNoticeCode } from './codes.ts';
export { fromAll, fromCloth, fromLengths } from './fromCloth.ts';
