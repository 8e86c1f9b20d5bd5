import type { RequestDocument } from '@ribbonwright/engine';
import type { Desk } from '../../desk/desk.svelte.ts';
import type { ClassRecord } from '../../store/index.ts';

/** Adds a class to those that are kept. */
export function addClass(desk: Desk, document: RequestDocument): ClassRecord {
  const now = Date.now();
  const record: ClassRecord = { id: crypto.randomUUID(), document, made: now, touched: now };
  desk.keeper.change('classes', record.id, [{ path: [], value: record }]);
  return record;
}
