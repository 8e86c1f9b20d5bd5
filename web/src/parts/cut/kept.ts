import type { Wish } from '@ribbonwright/engine';

/** Of what stands in a document for one kind, what another kind has a field for too: the rest means nothing to it. */
export function keptFor(written: unknown, wishes: readonly Wish[]): Record<string, unknown> {
  if (typeof written !== 'object' || written === null) return {};
  return Object.fromEntries(
    Object.entries(written).filter(([key, value]) => {
      const wish = wishes.find((each) => each.key === key);
      if (!wish) return false;
      return wish.choices.length === 0 || wish.choices.some((each) => each === value);
    }),
  );
}
