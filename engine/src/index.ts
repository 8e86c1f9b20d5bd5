/**
 * The sewing arithmetic of Ribbonwright. Inside, every length is millimetres (`Mm`), every angle radians, every
 * duration minutes, money whole minor units. Nothing here reads files, clocks or randomness.
 *
 * The way through: `parseRequestText` → `planSkirt` → `speakerOf` → `paperSet` → `writePdf`, or `planDocument`.
 */
export {
  changed,
  classJsonSchema,
  classOfOne,
  exampleClass,
  isClassText,
  parseClass,
  parseClassText,
  cutWishes,
  extraWishes,
  exampleRequest,
  parseRequest,
  parseRequestText,
  requestJsonSchema,
  languages,
  paperSizes,
  LARGEST_REQUEST,
  REQUEST_VERSION,
  markChoices,
  usualMark,
  writtenMark,
  writtenGaps,
  writtenRows,
  standingAt,
  undoing,
  waistWishes,
} from './request/index.ts';
export type {
  Change,
  ClassRequest,
  Language,
  ParsedClass,
  PaperSize,
  ParsedRequest,
  RequestDocument,
  RequestError,
  RequestErrorCode,
  SkirtRequest,
  Wish,
  WishRoom,
  WrittenBand,
  WrittenRow,
} from './request/index.ts';
export { parseColour, presetColours } from './fields/index.ts';
export type { Colour, PresetColour } from './fields/index.ts';
export { fromAll, fromCloth, fromLengths, handlesOf, hasProblems, moved, planSkirt } from './plan/index.ts';
export type { FromCloth, Handle, HandleName, SkirtPlan, Stage, StagedNotice } from './plan/index.ts';
export {
  asLaid,
  classHasProblems,
  closerThan,
  howMany,
  keptLays,
  laidClass,
  laidFromShelf,
  planClass,
  planLaid,
  searchPlan,
  searchClass,
  toldBeside,
  withFound,
  withLays,
} from './workshop/index.ts';
export type {
  ClassEffort,
  ClassNotice,
  ClassPlan,
  ClothLay,
  FromShelf,
  HowMany,
  PlannedCloth,
} from './workshop/index.ts';
export {
  clothJobOf,
  contrastChoices,
  laidOf,
  layFound,
  layKinds,
  searchCloth,
  flawsBeyond,
  seamMeets,
  wantedOf,
} from './cloth/index.ts';
export type { ClothEffort, ClothJob, FoundCloth, LayKind, SeamMeet, Wanted } from './cloth/index.ts';
export type { Figure, Notice } from './figure/index.ts';
export { parseLength, writeLength } from './units/index.ts';
export type { MeasureSystem, Mm, Money } from './units/index.ts';
export { catalogueOf, languageName, speakerFor, speakerOf, speakerOver } from './words/index.ts';
export type { Catalogue, Speaker } from './words/index.ts';
export {
  buyLength,
  buyText,
  classCards,
  classLayPaper,
  shelfTexts,
  classTitle,
  clothCalled,
  clothName,
  clothTitle,
  clothSwatches,
  layDocument,
  lengthTitle,
  lengthPictures,
  leftTexts,
  restsOf,
  savedNotes,
  savedText,
  shelfTitle,
  toldPieces,
  wayLengths,
  unusedTexts,
  usedLength,
  wayNotices,
  wayRemarks,
  cardFigures,
  cheaperThan,
  fromTexts,
  codePicture,
  foldDiagram,
  haveLines,
  haveTitle,
  haveWorkings,
  isCharted,
  layPicture,
  layRemarks,
  meetsText,
  patternTexts,
  makePaper,
  missingGlyphs,
  openFont,
  panelRows,
  panelTexts,
  paperNames,
  paperSet,
  partTexts,
  pieceChart,
  planDocument,
  planJsonSchema,
  threadCaption,
  threadName,
  underText,
  riseTexts,
  rowPlace,
  stepPicture,
  stripsText,
  subtitle,
  titleOf,
  writePdf,
  writeSvg,
} from './paper/index.ts';
export type {
  ClassPaperInput,
  Drawing,
  LayDocument,
  Paper,
  PaperDocument,
  OpenFont,
  PaperFonts,
  PaperInput,
  PaperName,
  PlanDocument,
} from './paper/index.ts';
export { wornPicture, wornSides } from './paper/index.ts';
export { foldStages, panelPicture } from './paper/index.ts';
export type { FoldStage } from './paper/index.ts';
export type { LivePicture, PlacedHandle, WornOptions, WornSide } from './paper/index.ts';
