import type { Figure } from '../../figure/index.ts';
import { mm, roundTo, type Mm } from '../../units/index.ts';
import { figure } from '../codes.ts';

type EndCode = 'skirt.widerEnd' | 'skirt.narrowerEnd';

/** How the sides lean: by `flare` along `length`; the raw edge lies `depth` beyond the line. */
interface Lean {
  readonly flare: Figure<Mm>;
  readonly depth: Figure<Mm>;
  readonly length: Figure<Mm>;
}

/** Quarter width at a raw edge beyond a line whose quarter is known. */
export function rawEnd(code: EndCode, quarter: Figure<Mm>, { flare, depth, length }: Lean): Mm {
  const lean = (flare.value * depth.value) / length.value;
  return mm(code === 'skirt.widerEnd' ? quarter.value + lean : quarter.value - lean);
}

/** The same at the nearest mark that can be chalked. */
export function chalkedEnd(code: EndCode, quarter: Figure<Mm>, lean: Lean, mark: Mm): Figure<Mm> {
  const exact = rawEnd(code, quarter, lean);
  return figure.length(roundTo(exact, mark, 'nearest'), code, { quarter, ...lean }, { exact });
}
