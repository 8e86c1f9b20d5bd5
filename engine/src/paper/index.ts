export {
  openFont,
  type Drawing,
  type OpenFont,
  type Page,
  type PaperDocument,
  type PaperFonts,
} from './drawing/index.ts';
export { writeSvg, type SvgOptions } from './svg/index.ts';
export { missingGlyphs, writePdf } from './pdf/index.ts';
export {
  cardFigures,
  haveLines,
  haveTitle,
  haveWorkings,
  makePaper,
  paperNames,
  paperSet,
  riseTexts,
  rowPlace,
  stripsText,
  subtitle,
  titleOf,
  type Paper,
  type PaperInput,
  type PaperName,
} from './documents/index.ts';
export {
  buyText,
  cheaperThan,
  fromTexts,
  layRemarks,
  meetsText,
  patternTexts,
  wayLengths,
} from './documents/index.ts';
export {
  buyLength,
  classCards,
  classLayPaper,
  shelfTexts,
  classTitle,
  clothName,
  clothTitle,
  threadCaption,
  threadName,
  underText,
  leftTexts,
  lengthPictures,
  lengthTitle,
  noticeLead,
  ofCloth,
  restsOf,
  savedNotes,
  savedText,
  shelfTitle,
  toldPieces,
  unusedTexts,
  usedLength,
  wayNotices,
  wayRemarks,
  type ClassPaperInput,
} from './documents/index.ts';
export { layDocument, type LayDocument } from './layDocument.ts';
export { codePicture } from './pictures/codePicture.ts';
export { foldDiagram } from './pictures/foldDiagram.ts';
export { isCharted } from './pictures/pieces/charted.ts';
export { panelTexts, partTexts, pieceChart } from './pictures/pieceChart.ts';
export { panelRows } from './pictures/panelRows.ts';
export { clothCalled, clothSwatches } from './pictures/clothInks.ts';
export { layPicture, type LaySize } from './pictures/layPicture.ts';
export { stepPicture } from './pictures/steps/index.ts';
export { planDocument } from './planDocument.ts';
export { planJsonSchema, type PlanDocument } from './planSchema.ts';
export { wornPicture, wornSides } from './live/index.ts';
export { foldStages, panelPicture } from './live/index.ts';
export type { FoldStage } from './live/index.ts';
export type { LivePicture, PlacedHandle, WornOptions, WornSide } from './live/index.ts';
