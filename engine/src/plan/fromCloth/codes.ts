import { figures, notices } from '../../figure/index.ts';

export type FromClothFigureCode =
  | 'have.cloth'
  | 'have.longest'
  | 'have.left'
  | 'have.fullness'
  | 'have.count'
  | 'have.none'
  | 'have.rows'
  | 'have.shortest'
  | 'have.missing';

export type FromClothNoticeCode =
  | 'have.tooNarrow'
  | 'have.tooShort'
  | 'have.shorten'
  | 'have.shortenOrLess'
  | 'have.tooWide'
  | 'have.noRows'
  | 'have.spoilt';

export const figure = figures<FromClothFigureCode>();
export const { caution, problem } = notices<FromClothNoticeCode>();
