/** Every number in a piece of data with the path to it; what is shared is looked at once. */
export function* numbersIn(
  data: unknown,
  path = '',
  seen = new Set<object>(),
): Generator<readonly [string, number]> {
  if (typeof data === 'number') yield [path, data];
  if (typeof data !== 'object' || data === null || seen.has(data)) return;
  seen.add(data);
  for (const [key, value] of Object.entries(data)) yield* numbersIn(value, `${path}.${key}`, seen);
}
