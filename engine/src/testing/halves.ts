/** Uniform numbers in [0, 1) from a seed (mulberry32): the same ones everywhere. */
function* uniform(seed: number): Generator<number, never> {
  let state = seed >>> 0;
  for (;;) {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    yield ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }
}

/**
 * Two random halves of a survey, always the same two: its rows in file order, shuffled from the end down (Fisher and Yates), cut in
 * the middle. Constants are fitted on the first, and tried on the second.
 */
export function halvesOf<T>(
  rows: readonly T[],
  seed = 1,
): readonly [fitted: readonly T[], others: readonly T[]] {
  const numbers = uniform(seed);
  const order = [...rows.keys()];
  for (let i = order.length - 1; i > 0; i--) {
    const j = Math.floor(numbers.next().value * (i + 1));
    const [a, b] = [order[i] ?? i, order[j] ?? j];
    order[i] = b;
    order[j] = a;
  }
  const half = Math.floor(order.length / 2);
  const at = (places: readonly number[]) => places.map((place) => rows[place] as T);
  return [at(order.slice(0, half)), at(order.slice(half))];
}
