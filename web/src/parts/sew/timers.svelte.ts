import type { Desk } from '../../desk/desk.svelte.ts';
import { endOf } from './countdown.ts';
import type { Step } from './steps.ts';

interface Timer {
  readonly id: Step['id'];
  readonly end: number;
  readonly isOver: boolean;
}

/**
 * The waits that run, each kept by the moment it ends: a closed page or a device that slept loses nothing.
 * To be made while a component is made.
 */
export class Timers {
  readonly #desk: Desk;
  now = $state.raw(Date.now());
  readonly all: readonly Timer[] = $derived.by(() =>
    (this.#desk.skirt.plan?.sewing.steps ?? []).flatMap(({ id }) => {
      const end = this.#desk.skirt.record?.timers[id];
      return end === undefined ? [] : [{ id, end, isOver: end <= this.now }];
    }),
  );

  constructor(desk: Desk) {
    this.#desk = desk;
    const isRunning = $derived(this.all.some(({ isOver }) => !isOver));
    $effect(() => {
      if (!isRunning) return;
      const ticking = setInterval(() => (this.now = Date.now()), 250);
      return () => {
        clearInterval(ticking);
      };
    });
    // A wait that is over is said once, in whatever step she is.
    let said: readonly string[] = [];
    $effect(() => {
      for (const { id, end, isOver } of this.all) {
        const key = `${id} ${String(end)}`;
        if (!isOver || said.includes(key)) continue;
        said = [...said, key];
        const { words, text } = desk.speaker;
        desk.say(text(words.table.timerOver, { step: words.steps[id] }));
      }
    });
  }

  start({ id, wait }: Step): void {
    this.now = Date.now();
    this.#desk.skirt.keep([{ path: ['timers', id], value: endOf(this.now, wait.value) }]);
  }

  stop(id: Step['id']): void {
    this.#desk.skirt.keep([{ path: ['timers', id], value: undefined }]);
  }
}
