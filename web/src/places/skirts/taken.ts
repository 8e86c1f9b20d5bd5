import type { Desk } from '../../desk/desk.svelte.ts';
import type { Kind, Records } from '../../store/index.ts';

/** What was taken away, whole: enough to bring it back whatever was done since. */
export interface Taken {
  /** What was done, in words. */
  readonly said: string;
  readonly records: readonly { readonly kind: Kind; readonly record: Records[Kind] }[];
}

/** Takes records away and says so; undo brings them back one by one, `bringBack` all together. */
export function takeAway(desk: Desk, records: Taken['records'], said: string): Taken {
  for (const { kind, record } of records)
    desk.keeper.change(kind, record.id, [{ path: [], value: undefined }]);
  desk.say(said);
  return { said, records };
}

/** What of it is still away: undo may have brought some of it back. */
export const stillAway = (desk: Desk, { records }: Taken): Taken['records'] =>
  records.filter(({ kind, record }) => !desk.keeper.all[kind][record.id]);

export function bringBack(desk: Desk, taken: Taken): void {
  for (const { kind, record } of stillAway(desk, taken))
    desk.keeper.change(kind, record.id, [{ path: [], value: record }]);
  desk.say(desk.speaker.words.table.broughtBack);
}
