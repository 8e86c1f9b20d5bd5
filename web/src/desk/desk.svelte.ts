import {
  catalogueOf,
  exampleRequest,
  languages,
  speakerOver,
  usualMark,
  type Catalogue,
  type Language,
  type MeasureSystem,
  type Mm,
  type Speaker,
} from '@ribbonwright/engine';
import { getContext, setContext } from 'svelte';
import type { Store, TableRecord } from '../store/index.ts';
import { whenAlone } from './alone.ts';
import { Keeper } from './keeper.svelte.ts';
import { newSkirt } from './newSkirt.ts';
import { OpenSkirt } from './openSkirt.svelte.ts';
import { addressOf, Router } from './route.svelte.ts';

export const themes = ['auto', 'light', 'dark'] as const;
export type Theme = (typeof themes)[number];

/** What the browser answered when it was asked to keep what is here even when it runs short of room. */
export type Durable = 'asking' | 'granted' | 'refused' | 'nothing kept';

interface Spoken {
  readonly language: Language;
  readonly words: Catalogue;
}

/** The words of a language; where they cannot be fetched those of another, so that the table opens all the same. */
async function spokenFirst(
  language: Language,
  others: readonly Language[] = languages.filter((each) => each !== language),
): Promise<Spoken> {
  try {
    return { language, words: await catalogueOf(language) };
  } catch (error) {
    const [next, ...rest] = others;
    if (next === undefined) throw error;
    return spokenFirst(next, rest);
  }
}

const TABLE = 'table';
const KEY = Symbol('desk');

/**
 * Everything a view needs: the records, where the page is, the language and measure that are spoken. One
 * language and one measure for the whole table; a document keeps its own for when it is read elsewhere.
 */
export class Desk {
  readonly keeper: Keeper;
  readonly router = new Router();
  durable = $state.raw<Durable>('asking');
  /** Opens a newer version of the table, where one is ready. */
  openNewer = $state.raw<(() => void) | null>(null);
  /** What was just said, for those who hear the page. */
  said = $state.raw('');

  readonly #table: TableRecord = $derived.by(() => this.keeper.all.table[TABLE] ?? usualTable());
  /** The language that the table is set to; it is spoken once its words have come. */
  readonly asked: Language = $derived(languageOf(this.#table));
  /** What is spoken. Another language takes its place with all its words at once. */
  #spoken: Spoken;
  readonly language: Language = $derived.by(() => this.#spoken.language);
  /** Whether the words of the language that was asked for last could not be fetched. */
  wordsMissing = $state.raw(false);
  readonly measure: MeasureSystem = $derived(this.#table.measure === 'metric' ? 'metric' : 'inches');
  readonly theme: Theme = $derived.by(() => themes.find((each) => each === this.#table.theme) ?? 'auto');
  /** The skirt that is on the table, or was last. */
  readonly skirt: OpenSkirt;
  /** By itself, so that the speaker stays the same while a skirt is dragged. */
  readonly #mark: Mm = $derived.by(() => this.skirt.plan?.request.mark ?? usualMark(this.measure));
  readonly speaker: Speaker = $derived.by(() =>
    speakerOver(this.#spoken.words, {
      language: this.language,
      measure: this.measure,
      mark: this.#mark,
    }),
  );

  private constructor(keeper: Keeper, spoken: Spoken) {
    this.keeper = keeper;
    this.#spoken = $state.raw(spoken);
    this.skirt = new OpenSkirt(keeper, () =>
      this.router.route.at === 'part' ? this.router.route.id : this.#table.open,
    );
  }

  /** Opens the table on a store; on the first visit a skirt of our own lies on it. */
  static async open(store: Store): Promise<Desk> {
    const keeper = await Keeper.open(store);
    const language = languageOf(keeper.all.table[TABLE] ?? usualTable());
    const desk = new Desk(keeper, await spokenFirst(language));
    if (Object.keys(desk.keeper.all.table).length === 0) desk.#firstVisit();
    void whenAlone(() => desk.keeper.sweepPhotos());
    return desk;
  }

  set(settings: Partial<Omit<TableRecord, 'id'>>): void {
    this.keeper.set(
      'table',
      TABLE,
      Object.entries(settings).map(([key, value]) => ({ path: [key], value })),
    );
  }

  /** Has the language spoken that the table is set to. Where its words cannot be fetched the table is set back. */
  async speak(): Promise<void> {
    const { asked } = this;
    if (asked === this.language) return;
    this.wordsMissing = false;
    try {
      const words = await catalogueOf(asked);
      if (asked === this.asked) this.#spoken = { language: asked, words };
    } catch {
      if (asked === this.asked) this.set({ language: this.language });
      this.wordsMissing = true;
    }
  }

  /** Lays a skirt on the table: it is the one that is open when the table is opened again. */
  lay(id: string): void {
    if (this.#table.open !== id) this.set({ open: id });
  }

  /** Asks the browser to keep what is here even when it runs short of room. */
  async askForDurable(): Promise<void> {
    const { storage } = navigator;
    try {
      this.durable = (await storage.persisted()) || (await storage.persist()) ? 'granted' : 'refused';
    } catch {
      this.durable = 'refused';
    }
  }

  undo(): void {
    const deed = this.keeper.undo();
    this.#show(deed);
    this.say(deed ? this.speaker.words.table.undone : this.speaker.words.table.nothingToUndo);
  }

  redo(): void {
    const deed = this.keeper.redo();
    this.#show(deed);
    this.say(deed ? this.speaker.words.table.redone : this.speaker.words.table.nothingToRedo);
  }

  /** What was undone on another skirt is not undone unseen. */
  #show(deed: { readonly kind: string; readonly id: string } | null): void {
    const { route } = this.router;
    const isElsewhere = deed?.kind === 'skirts' && route.at === 'part' && route.id !== deed.id;
    if (isElsewhere && this.keeper.all.skirts[deed.id]) this.router.go(addressOf.part(deed.id, route.part));
  }

  say(text: string): void {
    // The same words twice in a row are heard twice only when they differ.
    this.said = this.said === text ? `${text}\u00a0` : text;
  }

  #firstVisit(): void {
    const table = usualTable();
    const skirt = newSkirt(exampleRequest(languageOf(table)));
    this.keeper.set('skirts', skirt.id, [{ path: [], value: skirt }]);
    this.keeper.set('table', TABLE, [{ path: [], value: { ...table, open: skirt.id } }]);
  }
}

const languageOf = ({ language }: TableRecord): Language =>
  languages.find((each) => each === language) ?? 'en';

/** A table that nobody has set yet speaks the browser's language, where it can. */
function usualTable(): TableRecord {
  const wanted = navigator.languages.map((each) => each.slice(0, 2));
  const language = languages.find((each) => wanted[0] === each) ?? 'en';
  return { id: TABLE, language, measure: language === 'fr' ? 'metric' : 'inches', theme: 'auto', open: '' };
}

export const placeDesk = (desk: Desk): Desk => setContext(KEY, desk);
export const useDesk = (): Desk => getContext<Desk>(KEY);
