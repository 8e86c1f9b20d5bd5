export { parseRequest, parseRequestText, type ParsedRequest } from './parse.ts';
export { LARGEST_REQUEST } from './read.ts';
export { isClassText, parseClass, parseClassText, type ParsedClass } from './parseClass.ts';
export { classOfOne, type ClassCloth, type ClassRequest, type ClassSkirt } from './classRequest.ts';
export {
  languages,
  paperSizes,
  REQUEST_VERSION,
  markChoices,
  usualMark,
  writtenMark,
  type Language,
  type PaperSize,
  type SkirtRequest,
} from './request.ts';
export { classJsonSchema, requestJsonSchema } from './schema.ts';
export type { RequestError, RequestErrorCode } from './errors.ts';
export { changed, standingAt, undoing, type Change, type RequestDocument } from './change.ts';
export { exampleRequest } from './example.ts';
export { exampleClass } from './exampleClass.ts';
export { writtenGaps, writtenRows, type WrittenBand, type WrittenRow } from './written.ts';
export {
  cutWishes,
  extraWishes,
  waistWishes,
  type ChoiceValue,
  type Wish,
  type WishKeys,
  type WishRoom,
} from './wishes.ts';
