import type { Notice } from '../figure/index.ts';
import { caution } from './codes.ts';
import type { RowLimits } from './limits.ts';
import type { Row } from './row.ts';

/** The lowest row keeps clear of the hem's stitching; rows that would reach the casing were never placed. */
export function worksNotices(rows: readonly Row[], limits: RowLimits): Notice[] {
  const lowest = rows[0];
  if (!lowest || lowest.fromHem.value >= limits.hemStitching.value) return [];
  return [caution('ribbon.rowOnHemStitching', { row: lowest.fromHem, least: limits.hemStitching })];
}
