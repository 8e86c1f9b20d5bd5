import {
  keptLays,
  planClass,
  withFound,
  type ClassPlan,
  type ClassRequest,
  type ClothLay,
  type HowMany,
} from '@ribbonwright/engine';
import type { Terminal } from '../terminal.ts';
import type { Asked, Told } from './messages.ts';
import { searchThread } from './thread.ts';

export interface Searched {
  readonly plan: ClassPlan;
  /** What is taken of each cloth, and the best that was found of its other ways. */
  readonly lays: readonly ClothLay[];
  readonly shelf: readonly HowMany[];
  /** Whether somebody stopped it before its time was over. */
  readonly isStopped: boolean;
  /** Cloths by their keys that the search did not come to. */
  readonly left: readonly string[];
}

/** A search that has not come back by then is ended, and what it told so far is what was found. */
const GRACE = 1500;

/**
 * Searches on a thread of its own for as long as was asked, or until somebody interrupts: then with the best so far.
 * `showing` is called with the plan each time something better was found or the search turns elsewhere.
 */
export function search(
  request: ClassRequest,
  asked: Asked,
  terminal: Pick<Terminal, 'onInterrupt'>,
  showing: (plan: ClassPlan, at: Extract<Told, { readonly kind: 'turnsTo' }> | null) => void,
): Promise<Searched> {
  let plan = planClass(request);
  const lays = new Map<string, ClothLay>();
  let shelf: readonly HowMany[] = [];
  let at: Extract<Told, { readonly kind: 'turnsTo' }> | null = null;
  const left = new Set(plan.cloths.map(({ key }) => key));
  return new Promise((resolve, reject) => {
    const worker = searchThread(asked);
    let timer: NodeJS.Timeout | undefined;
    const end = (isStopped: boolean): void => {
      clearTimeout(timer);
      off();
      void worker.terminate();
      resolve({ plan, lays: keptLays(plan, [...lays.values()]), shelf, isStopped, left: [...left] });
    };
    const off = terminal.onInterrupt(() => {
      end(true);
    });
    worker.on('message', (told: Told) => {
      // Time is counted from when the search began, not from when its thread was made.
      timer ??= setTimeout(
        () => {
          end(false);
        },
        asked.seconds * 1000 + GRACE,
      );
      if (told.kind === 'better') {
        const { cloth, found } = told;
        plan = withFound(plan, cloth, found);
        lays.set(`${cloth} ${found.kind}`, { cloth, found });
      }
      if (told.kind === 'turnsTo') {
        at = told;
        left.delete(told.cloth);
      }
      if (told.kind === 'shelf') shelf = told.shelf;
      if (told.kind === 'done') end(false);
      else showing(plan, at);
    });
    worker.on('error', (error) => {
      clearTimeout(timer);
      off();
      reject(error);
    });
  });
}
