import type { Figure } from '../../figure/index.ts';
import type { Mm } from '../../units/index.ts';
import type { Speaker } from '../../words/index.ts';

/** Thousandths of a millimetre: finer than any cloth, and free of binary dust. */
const tidy = (value: number): number => Math.round(value * 1000) / 1000 + 0;

/** Values as the plan document has them: for machines in millimetres, and as their reader sees them. */
export function saying(speaker: Speaker) {
  const plain = (value: Mm) => ({ mm: tidy(value), shown: speaker.length(value) });
  const length = (figure: Figure) => ({ mm: tidy(figure.value), shown: speaker.value(figure) });
  return {
    plain,
    length,
    amount: (figure: Figure) => ({ value: tidy(figure.value), shown: speaker.value(figure) }),
    dot: ({ across, up }: { readonly across: Mm; readonly up: Figure }) => ({
      across: plain(across),
      up: length(up),
    }),
  };
}
