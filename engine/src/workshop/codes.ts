import { figures, notices } from '../figure/index.ts';

export type WorkshopFigureCode =
  'class.inARow' | 'class.enough' | 'class.saved' | 'class.skirts' | 'class.nothing';

export type WorkshopNoticeCode = 'class.otherWay' | 'class.byEye' | 'class.noWay' | 'class.notEnough';

export const figure = figures<WorkshopFigureCode>();
export const { caution, problem } = notices<WorkshopNoticeCode>();
