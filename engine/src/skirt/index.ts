export { draftSkirt, type Skirt } from './skirt.ts';
export { clothWeights, type ClothWeight, type DraftContext } from './context.ts';
export {
  cutOptions,
  type CutKind,
  type CutOptions,
  type Draft,
  type Hang,
  type Marks,
} from './cuts/index.ts';
export { waistOptions, type WaistOptions, type WaistPlan } from './waists/index.ts';
export type { Apex, EdgeName, Ordinate, Panel, PanelEdge, PanelName, Panels, PanelShape } from './panel.ts';
export type { SkirtFigureCode, SkirtNoticeCode } from './codes.ts';
