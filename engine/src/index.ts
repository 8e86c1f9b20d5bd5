/**
 * The sewing arithmetic of Ribbonwright. Inside, every length is millimetres (`Mm`), every angle radians, every
 * duration minutes, money whole minor units. Nothing here reads files, clocks or randomness.
 *
 * The way through: `parseRequestText` → `planSkirt` → `speakerOf` → `paperSet` → `writePdf`, or `planDocument`.
 */
export {
  parseRequest,
  parseRequestText,
  requestJsonSchema,
  languages,
  paperSizes,
  LARGEST_REQUEST,
  REQUEST_VERSION,
} from './request/index.ts';
export type { Language, PaperSize, ParsedRequest, RequestError, SkirtRequest } from './request/index.ts';
export { fromCloth, hasProblems, planSkirt } from './plan/index.ts';
export type { FromCloth, SkirtPlan, Stage, StagedNotice } from './plan/index.ts';
export type { Figure, Notice } from './figure/index.ts';
export { parseLength } from './units/index.ts';
export type { MeasureSystem, Mm, Money } from './units/index.ts';
export { catalogues, speakerFor, speakerOf } from './words/index.ts';
export type { Catalogue, Speaker } from './words/index.ts';
export {
  buyText,
  foldDiagram,
  haveLines,
  layPicture,
  makePaper,
  missingGlyphs,
  openFont,
  panelRows,
  paperNames,
  paperSet,
  planDocument,
  planJsonSchema,
  stepPicture,
  stripsText,
  titleOf,
  writePdf,
  writeSvg,
} from './paper/index.ts';
export type {
  Drawing,
  Paper,
  PaperDocument,
  PaperFonts,
  PaperInput,
  PaperName,
  PlanDocument,
} from './paper/index.ts';
