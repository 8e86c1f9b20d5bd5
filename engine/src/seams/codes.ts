import { figures } from '../figure/index.ts';

export type SeamFigureCode =
  | 'seams.side'
  | 'seams.round'
  | 'seams.casingRound'
  | 'seams.edge'
  | 'seams.edges'
  | 'seams.ribbonEdge'
  | 'seams.join'
  | 'seams.catch'
  | 'seams.count'
  | 'seams.rounds'
  | 'seams.total';

export const figure = figures<SeamFigureCode>();
