import {
  closerThan,
  keptLays,
  withLays,
  type ClassPlan,
  type ClothLay,
  type HowMany,
  type PlannedCloth,
} from '@ribbonwright/engine';
import type { Order, Place, Told } from './order.ts';

/** What a search begins with. */
export interface Start {
  readonly order: Order;
  /** With the best lays known; the search only ever takes from it. */
  readonly plan: ClassPlan;
  /** As it is laid now: what is found is compared with that. */
  readonly now: ClassPlan;
  readonly lays: readonly ClothLay[];
  /** Called once, with the best that was found. */
  readonly end: (lays: readonly ClothLay[], isBetter: boolean) => void;
}

type Outcome = 'better' | 'nothing' | 'failed';

/** A worker that has not come back by then is ended, and what it told so far is what was found. */
const GRACE = 1500;
const TICK = 250;

/** A search for closer lays, beside the page: it stays in the hand meanwhile, and the best so far is always there. */
export class Search {
  isOn = $state.raw(false);
  plan = $state.raw<ClassPlan | null>(null);
  place = $state.raw<Place | null>(null);
  /** What can be cut from what is at hand, once that has been looked for. */
  shelf = $state.raw<readonly HowMany[] | null>(null);
  /** Seconds since it began, and how many there are. */
  spent = $state.raw(0);
  seconds = $state.raw(0);
  outcome = $state.raw<Outcome | null>(null);
  /** Cloths that lie closer now than when it began. */
  closer = $state.raw<readonly PlannedCloth[]>([]);

  #worker: Worker | null = null;
  #ticks: ReturnType<typeof setInterval> | null = null;
  #lays: readonly ClothLay[] = [];
  #now: ClassPlan | null = null;
  #end: Start['end'] = () => undefined;

  start({ order, plan, now, lays, end }: Start): void {
    this.stop();
    this.isOn = true;
    this.plan = plan;
    this.place = null;
    this.shelf = null;
    this.spent = 0;
    this.seconds = order.seconds;
    this.outcome = null;
    this.closer = [];
    this.#now = now;
    this.#lays = lays;
    this.#end = end;
    const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    this.#worker = worker;
    worker.onmessage = ({ data }: MessageEvent<Told>) => {
      if (data.kind === 'begun') this.#tick();
      else if (data.kind === 'turnsTo') this.place = data.place;
      else if (data.kind === 'shelf') this.shelf = data.shelf;
      else if (data.kind === 'better') this.#take(data.lays);
      else this.#finish(data.kind === 'failed');
    };
    // A worker that could not be fetched tells of it like this too.
    worker.onerror = () => {
      this.#finish(true);
    };
    worker.postMessage(order);
  }

  /** Stops with the best so far. */
  stop(): void {
    if (this.isOn) this.#finish(false);
  }

  /** Stops, and nobody is told: what it was for is gone. */
  leave(): void {
    this.#end = () => undefined;
    this.stop();
    this.outcome = null;
    this.plan = null;
  }

  /** Time is counted from when the search began, not from when its worker was made. */
  #tick(): void {
    const began = performance.now();
    this.#ticks = setInterval(() => {
      const past = performance.now() - began;
      this.spent = Math.min(this.seconds, past / 1000);
      if (past > this.seconds * 1000 + GRACE) this.#finish(false);
    }, TICK);
  }

  #take(found: readonly ClothLay[]): void {
    if (!this.plan) return;
    const plan = withLays(this.plan, found);
    if (plan === this.plan) return;
    this.plan = plan;
    this.#lays = keptLays(plan, [...this.#lays, ...found]);
  }

  #finish(failed: boolean): void {
    this.#worker?.terminate();
    this.#worker = null;
    if (this.#ticks !== null) clearInterval(this.#ticks);
    this.#ticks = null;
    this.isOn = false;
    // A way that is not taken even so is no closer lay.
    this.closer = this.plan && this.#now ? closerThan(this.plan, this.#now) : [];
    const isBetter = this.closer.length > 0;
    this.outcome = isBetter ? 'better' : failed ? 'failed' : 'nothing';
    this.#end(this.plan ? keptLays(this.plan, this.#lays) : [], isBetter);
  }
}
