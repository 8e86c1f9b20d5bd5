import { undoing, type Change, type RequestDocument } from '@ribbonwright/engine';
import { kinds, recordAfter, type Kind, type Records, type Store } from '../store/index.ts';

type All = { readonly [K in Kind]: Readonly<Record<string, Records[K]>> };

/** Changes on one record that are made here and not kept yet. */
interface Batch {
  readonly kind: Kind;
  readonly id: string;
  readonly changes: readonly Change[];
}

/** One thing done, with what brings it back. Changes of one drag are one thing. */
interface Deed extends Batch {
  readonly back: readonly Change[];
  readonly gesture: string | null;
}

/** At most this long after it is made a change is kept; a drag is not written for each of its frames. */
const KEEP_AFTER = 250;
const TRY_AGAIN_AFTER = 4000;
const MOST_DEEDS = 300;

const empty: All = { skirts: {}, classes: {}, people: {}, shelf: {}, table: {} };

/**
 * All records, as they are kept and with what was changed since; and everything that was done, to undo it.
 * What a view shows is `kept` with `waiting` on top: there is no second copy that could differ.
 */
export class Keeper {
  #kept = $state.raw<All>(empty);
  #waiting = $state.raw<readonly Batch[]>([]);
  #done = $state.raw<readonly Deed[]>([]);
  #undone = $state.raw<readonly Deed[]>([]);
  /** Why the last change could not be kept; null when all is kept. */
  trouble = $state.raw<'full' | 'other' | null>(null);
  /** Counts photos that were kept here: a photo is followed by its id, which stays when another takes its place. */
  photosKept = $state(0);
  readonly all: All = $derived(withBatches(this.#kept, this.#waiting));
  readonly isKept = $derived(this.#waiting.length === 0);

  readonly #store: Store;
  #timer: ReturnType<typeof setTimeout> | null = null;
  #writing: Promise<void> | null = null;

  private constructor(store: Store) {
    this.#store = store;
    store.watch(({ kind, id, record }) => {
      this.#kept = withRecord(this.#kept, kind, id, record);
    });
  }

  static async open(store: Store): Promise<Keeper> {
    const keeper = new Keeper(store);
    for (const kind of kinds)
      for (const record of await store.all(kind))
        keeper.#kept = withRecord(keeper.#kept, kind, record.id, record);
    return keeper;
  }

  get canUndo(): boolean {
    return this.#done.length > 0;
  }
  get canRedo(): boolean {
    return this.#undone.length > 0;
  }

  /** Makes changes on a record; an empty path makes, replaces or takes away the whole. */
  change(kind: Kind, id: string, changes: readonly Change[], gesture: string | null = null): void {
    if (changes.length === 0) return;
    const back = undoing(this.all[kind][id] as unknown as RequestDocument, changes);
    this.#remember({ kind, id, changes, back, gesture });
    this.#make({ kind, id, changes });
  }

  /** A change that is no deed: how the table is set, what is open. */
  set(kind: Kind, id: string, changes: readonly Change[]): void {
    this.#make({ kind, id, changes });
  }

  /** Undoes the last deed if it is of this gesture, as if it had never been. */
  takeBack(gesture: string): void {
    const last = this.#done.at(-1);
    if (last?.gesture !== gesture) return;
    this.#done = this.#done.slice(0, -1);
    this.#make({ ...last, changes: last.back });
  }

  /** Undoes the last deed whose record is still there, and hands it back. */
  undo(): Deed | null {
    const deed = this.#done.at(-1);
    if (!deed) return null;
    this.#done = this.#done.slice(0, -1);
    // Another tab took it away: there is nothing left to undo it on.
    const isGone = this.all[deed.kind][deed.id] === undefined && deed.back[0]?.path.length !== 0;
    if (isGone) return this.undo();
    this.#undone = [...this.#undone, deed];
    this.#make({ ...deed, changes: deed.back });
    return deed;
  }

  redo(): Deed | null {
    const deed = this.#undone.at(-1);
    if (!deed) return null;
    this.#undone = this.#undone.slice(0, -1);
    this.#done = [...this.#done, deed];
    this.#make(deed);
    return deed;
  }

  /** Keeps what waits, now. Resolves when it is kept, or `trouble` says why not. */
  async keep(): Promise<void> {
    if (this.#timer !== null) clearTimeout(this.#timer);
    this.#timer = null;
    this.#writing ??= this.#write().finally(() => {
      this.#writing = null;
    });
    await this.#writing;
  }

  /** Takes away photos of skirts that are gone. Only where no page is open that could still bring one back. */
  async sweepPhotos(): Promise<void> {
    for (const id of await this.#store.photos())
      if (!this.#kept.skirts[id]?.photo) await this.#store.keepPhoto(id, null);
  }

  photo(id: string): Promise<Blob | null> {
    return this.#store.photo(id);
  }
  async keepPhoto(id: string, photo: Blob | null): Promise<void> {
    await this.#store.keepPhoto(id, photo);
    this.photosKept += 1;
  }

  #remember(deed: Deed): void {
    this.#undone = [];
    const last = this.#done.at(-1);
    const goesOn = last && deed.gesture !== null && last.gesture === deed.gesture && last.id === deed.id;
    this.#done = goesOn
      ? [
          ...this.#done.slice(0, -1),
          {
            ...deed,
            changes: lastOfEach([...last.changes, ...deed.changes]),
            back: lastOfEach([...deed.back, ...last.back]),
          },
        ]
      : [...this.#done, deed].slice(-MOST_DEEDS);
  }

  #make(batch: Batch): void {
    this.#waiting = joined(this.#waiting, batch);
    this.#timer ??= setTimeout(() => void this.keep(), this.trouble ? TRY_AGAIN_AFTER : KEEP_AFTER);
  }

  async #write(): Promise<void> {
    while (this.#waiting.length > 0) {
      const [first] = this.#waiting;
      if (!first) return;
      const count = first.changes.length;
      try {
        const record = await this.#store.change(first.kind, first.id, first.changes);
        this.#kept = withRecord(this.#kept, first.kind, first.id, record);
      } catch (error) {
        this.trouble = isFull(error) ? 'full' : 'other';
        this.#timer ??= setTimeout(() => void this.keep(), TRY_AGAIN_AFTER);
        return;
      }
      // What was changed while this was written waits on.
      const [now, ...others] = this.#waiting;
      const left = now?.changes.slice(count) ?? [];
      this.#waiting = now && left.length > 0 ? [{ ...now, changes: left }, ...others] : others;
    }
    // Only now: who is told that all is well may close the page at once.
    this.trouble = null;
  }
}

/** Of changes at one path only the last counts, where it stands: a drag is kept by where it ended. */
function lastOfEach(changes: readonly Change[]): Change[] {
  const last = new Map<string, Change>();
  for (const change of changes) {
    const key = JSON.stringify(change.path);
    last.delete(key);
    last.set(key, change);
  }
  return [...last.values()];
}

const isFull = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'QuotaExceededError';

function withRecord<K extends Kind>(all: All, kind: K, id: string, record: Records[K] | null): All {
  const others = Object.fromEntries(Object.entries(all[kind]).filter(([key]) => key !== id));
  return { ...all, [kind]: record === null ? others : { ...others, [id]: record } };
}

const withBatches = (all: All, batches: readonly Batch[]): All =>
  batches.reduce(
    (each, { kind, id, changes }) => withRecord(each, kind, id, recordAfter(each[kind][id], changes)),
    all,
  );

/** Changes of one record that come one after the other are written together. */
function joined(waiting: readonly Batch[], batch: Batch): readonly Batch[] {
  const last = waiting.at(-1);
  return last?.kind === batch.kind && last.id === batch.id
    ? [...waiting.slice(0, -1), { ...last, changes: [...last.changes, ...batch.changes] }]
    : [...waiting, batch];
}
