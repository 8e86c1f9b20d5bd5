import {
  changed,
  parseRequest,
  planSkirt,
  type Change,
  type ClothLay,
  type ParsedRequest,
  type RequestDocument,
  type RequestError,
  type SkirtPlan,
  type SkirtRequest,
  type planLaid,
} from '@ribbonwright/engine';
import { laysKey } from '../laying/key.ts';
import type { KeptLays, SkirtRecord } from '../store/index.ts';
import type { Keeper } from './keeper.svelte.ts';

const NONE: readonly ClothLay[] = [];

/** The skirt on the table: its document and everything the engine derives from it. */
export class OpenSkirt {
  readonly #keeper: Keeper;
  readonly #idOf: () => string;
  readonly id: string = $derived.by(() => this.#idOf());
  readonly record: SkirtRecord | null = $derived.by(() => this.#keeper.all.skirts[this.id] ?? null);
  readonly document: RequestDocument | null = $derived(this.record?.document ?? null);
  readonly parsed: ParsedRequest | null = $derived(this.document && this.#read(this.document));
  /** The closer lay that is kept for it, where it still holds; `stale` where the skirt was changed since. */
  readonly closer: KeptLays | 'stale' | null = $derived.by(() => {
    const { record, parsed } = this;
    if (!record?.closer || !parsed?.ok) return null;
    return record.closer.key === laysKey(parsed.request) ? record.closer : 'stale';
  });
  /** The closer lay that is cut from. */
  readonly lays: readonly ClothLay[] = $derived(
    this.closer !== null && this.closer !== 'stale' && this.closer.used ? this.closer.lays : NONE,
  );
  readonly plan: SkirtPlan | null = $derived(this.parsed?.ok ? this.#planned(this.parsed.request) : null);

  constructor(keeper: Keeper, idOf: () => string) {
    this.#keeper = keeper;
    this.#idOf = idOf;
  }

  /**
   * Makes changes on the document if it can still be read with them; else nothing is changed and the errors say why.
   *
   * @param gesture changes with one name are one thing to undo.
   */
  change(changes: readonly Change[], gesture: string | null = null): readonly RequestError[] {
    if (!this.document) return [];
    const parsed = this.#read(changed(this.document, changes));
    if (!parsed.ok) return parsed.errors;
    this.keep(
      changes.map(({ path, value }) => ({ path: ['document', ...path], value })),
      gesture,
    );
    return [];
  }

  /** Lays a skirt as it was found; null until it is fetched. Until then it lies as it is laid by hand. */
  #planLaid = $state.raw<typeof planLaid | null>(null);
  #isFetching = false;
  #planned(request: SkirtRequest): SkirtPlan {
    if (this.lays.length > 0 && this.#planLaid) return this.#planLaid(request, this.lays);
    if (this.lays.length > 0) void this.#fetch();
    return planSkirt(request);
  }
  async #fetch(): Promise<void> {
    if (this.#isFetching) return;
    this.#isFetching = true;
    try {
      this.#planLaid = (await import('../laying/laid.ts')).planLaid;
    } catch {
      // Tried again with the next plan.
      this.#isFetching = false;
    }
  }

  /** The last document that was read. What is tried before it is made is read once, not twice, in each frame of a drag. */
  #last: { readonly text: string; readonly parsed: ParsedRequest } | null = null;
  #read(document: RequestDocument): ParsedRequest {
    const text = JSON.stringify(document);
    if (this.#last?.text !== text) this.#last = { text, parsed: parseRequest(document) };
    return this.#last.parsed;
  }

  /** Changes on what is kept beside the document: ticks, timers, what is settled. */
  keep(changes: readonly Change[], gesture: string | null = null): void {
    if (!this.record) return;
    this.#keeper.change('skirts', this.id, [...changes, { path: ['touched'], value: Date.now() }], gesture);
  }
}
