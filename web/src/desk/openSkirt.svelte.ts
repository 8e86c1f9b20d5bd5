import {
  changed,
  parseRequest,
  planSkirt,
  type Change,
  type ParsedRequest,
  type RequestDocument,
  type RequestError,
  type SkirtPlan,
} from '@ribbonwright/engine';
import type { SkirtRecord } from '../store/index.ts';
import type { Keeper } from './keeper.svelte.ts';

/** The skirt on the table: its document and everything the engine derives from it. */
export class OpenSkirt {
  readonly #keeper: Keeper;
  readonly #idOf: () => string;
  readonly id: string = $derived.by(() => this.#idOf());
  readonly record: SkirtRecord | null = $derived.by(() => this.#keeper.all.skirts[this.id] ?? null);
  readonly document: RequestDocument | null = $derived(this.record?.document ?? null);
  readonly parsed: ParsedRequest | null = $derived(this.document && this.#read(this.document));
  readonly plan: SkirtPlan | null = $derived(this.parsed?.ok ? planSkirt(this.parsed.request) : null);

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
