import type { Notice } from '../../figure/index.ts';
import { caution } from '../codes.ts';
import type { Fabric } from '../fabric.ts';
import type { LayKind } from '../options.ts';

/** What is to be known of a one-way print that a lay lays on its side. */
export const aboutPrint = ({ oneWay }: Fabric, lay: LayKind, isOnItsSide: boolean): Notice[] =>
  oneWay && isOnItsSide ? [caution('cloth.printOnItsSide', { lay })] : [];

/** Whether a lay lays a one-way print on its side. */
export const isPrintOnItsSide = (notices: readonly Notice[]): boolean =>
  notices.some(({ code }) => code === 'cloth.printOnItsSide');
