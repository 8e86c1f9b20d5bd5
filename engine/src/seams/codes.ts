import { figures } from '../figure/index.ts';

export type SeamFigureCode =
  'seams.round' | 'seams.edges' | 'seams.ribbonEdge' | 'seams.count' | 'seams.total';

export const figure = figures<SeamFigureCode>();
