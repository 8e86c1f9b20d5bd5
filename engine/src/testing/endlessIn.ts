/**
 * Which numbers in a piece of data are none or have no end, each as "path is what". What is shared is looked at once. A
 * plan holds some tens of thousands of numbers: paths are written only of those that are told.
 */
export function endlessIn(data: unknown, seen = new Set<object>()): string[] {
  if (typeof data === 'number') return Number.isFinite(data) ? [] : [` is ${String(data)}`];
  if (typeof data !== 'object' || data === null || seen.has(data)) return [];
  seen.add(data);
  const found: string[] = [];
  for (const key of Object.keys(data))
    for (const end of endlessIn((data as Record<string, unknown>)[key], seen)) found.push(`.${key}${end}`);
  return found;
}
