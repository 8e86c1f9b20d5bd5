import { buyLength, clothName, type ClassPlan, type LayKind, type Speaker } from '@ribbonwright/engine';
import type { Terminal } from '../terminal.ts';

const CLEAR_LINE = '\r\u001b[K';
/** A line that changes faster than this can't be read. */
const PAUSE = 150;

type At = { readonly cloth: string; readonly way: LayKind } | null;

/** One line on standard error that tells how far a search is; where nobody looks, only that it has begun. */
export function progressOn(
  terminal: Pick<Terminal, 'note' | 'showsProgress' | 'width'>,
  speaker: Speaker,
  seconds: number,
): { readonly show: (plan: ClassPlan, at: At) => void; readonly clear: () => void } {
  let began: number | null = null;
  let last = -Infinity;
  return {
    show(plan, at) {
      const now = performance.now();
      // As the search counts: what came before it is not of its time.
      began ??= now;
      const cloth = plan.cloths.find(({ key }) => key === at?.cloth);
      // Where nobody looks once is enough.
      const pause = terminal.showsProgress ? PAUSE : Infinity;
      if (!at || !cloth || now - last < pause) return;
      last = now;
      // A way that has found no room yet has nothing to tell: the best so far has.
      const way = cloth.ways.find(({ kind, fits }) => kind === at.way && fits) ?? cloth.chosen;
      const line = speaker.text(speaker.words.command.searching, {
        seconds: Math.min(seconds, Math.round((now - began) / 1000)),
        of: seconds,
        cloth: clothName(cloth, speaker),
        lay: at.way,
        buy: buyLength(way, speaker),
      });
      if (!terminal.showsProgress) terminal.note(`${line}\n`);
      else
        terminal.note(
          CLEAR_LINE +
            Array.from(line)
              .slice(0, terminal.width - 1)
              .join(''),
        );
    },
    clear() {
      if (terminal.showsProgress) terminal.note(CLEAR_LINE);
    },
  };
}
