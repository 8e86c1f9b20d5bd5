import { figures, notices } from '../figure/index.ts';

export type ClothFigureCode =
  | 'cloth.width'
  | 'cloth.selvage'
  | 'cloth.selvages'
  | 'cloth.change'
  | 'cloth.changeMeasured'
  | 'cloth.changeUpper'
  | 'cloth.changeDone'
  | 'cloth.squareBefore'
  | 'cloth.squareAfter'
  | 'cloth.usable'
  | 'cloth.beforeWash'
  | 'cloth.toBuy'
  | 'cloth.step'
  | 'cloth.least'
  | 'cloth.panelWidth'
  | 'cloth.panelDepth'
  | 'cloth.panels'
  | 'cloth.pairs'
  | 'cloth.stacked'
  | 'cloth.pairsStacked'
  | 'cloth.pairsAbreast'
  | 'cloth.rowsStacked'
  | 'cloth.abreast'
  | 'cloth.headToTail'
  | 'cloth.nest'
  | 'cloth.leftWidth'
  | 'cloth.nothingLeft'
  | 'cloth.leftLength'
  | 'cloth.have'
  | 'cloth.doubleWidth'
  | 'cloth.foldedWidth'
  | 'cloth.across'
  | 'cloth.layers'
  | 'cloth.rows'
  | 'cloth.more';

export type ClothNoticeCode =
  | 'cloth.panelTooDeep'
  | 'cloth.panelTooWide'
  | 'cloth.noLayFits'
  | 'cloth.onlyTwoAlike'
  | 'cloth.oddPanels'
  | 'cloth.oneWayCrosswise'
  | 'cloth.printOnItsSide'
  | 'cloth.notEnough'
  | 'cloth.changeIsRange'
  | 'cloth.layWished';

export const figure = figures<ClothFigureCode>();
export const { caution, problem } = notices<ClothNoticeCode>();
