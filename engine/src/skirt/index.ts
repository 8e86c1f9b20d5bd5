export { draftSkirt, type Skirt, type SkirtOptions } from './skirt.ts';
export { skirtHandles, type SkirtHandle } from './handles.ts';
export type { OptionHandleName } from './handle.ts';
export { alongHem } from './alongHem.ts';
export { clothWeights, type ClothWeight, type DraftContext, type DraftGiven } from './context.ts';
export {
  cutOptions,
  usualWaistFor,
  type CutKind,
  type CutOptions,
  type Draft,
  type Hang,
  type Marking,
  type Marks,
  type Overlap,
} from './cuts/index.ts';
export {
  waistOptions,
  type Closure,
  type Cord,
  type TakenUp,
  type WaistBuild,
  type WaistElastic,
  type WaistKind,
  type WaistOptions,
  type WaistPlan,
} from './waists/index.ts';
export {
  extrasOptions,
  type ExtraName,
  type Extras,
  type ExtrasOptions,
  type GrowthTucks,
  type Lining,
  type LiningCloth,
  type Pockets,
  type SeamSide,
  type Slits,
  type Takes,
} from './extras/index.ts';
export type {
  Apex,
  Around,
  EdgeName,
  Notch,
  NotchUse,
  Ordinate,
  Panel,
  PanelEdge,
  PanelName,
  Panels,
  PanelShape,
  Part,
  PartCloth,
  PartName,
  PieceShape,
  Round,
} from './panel.ts';
export { dotsOfCurve } from './cuts/chalkDots.ts';
export type { Work, WorkName } from './works.ts';
export type { SkirtFigureCode, SkirtNoticeCode } from './codes.ts';
