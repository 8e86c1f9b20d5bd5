/**
 * One change of a request document: the value that stands at a path from now on. Undefined takes the key away,
 * so that its default holds again.
 */
export interface Change {
  readonly path: readonly (string | number)[];
  readonly value: unknown;
}

/** A request document as it is written, before it is read: plain JSON. */
export type RequestDocument = Readonly<Record<string, unknown>>;

type Node = Readonly<Record<string | number, unknown>> | readonly unknown[];
const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

/** What stands at a path of a document; undefined where there is nothing. */
export const standingAt = (document: unknown, path: Change['path']): unknown =>
  path.reduce<unknown>(
    (node, key) =>
      isNode(node) && Object.hasOwn(node, key) ? (node as Record<string | number, unknown>)[key] : undefined,
    document,
  );

/** The document with its changes made, in their order. The given one stays as it is; what is untouched is shared. */
export const changed = (document: RequestDocument, changes: readonly Change[]): RequestDocument =>
  changes.reduce<RequestDocument>(
    (each, { path, value }) => setAt(each, path, value) as RequestDocument,
    document,
  );

function setAt(node: unknown, path: Change['path'], value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const inner = setAt(isNode(node) ? standingAt(node, [key]) : undefined, rest, value);
  // Of a list, an entry that is taken away leaves no hole, and one beyond its end comes after the last.
  if (Array.isArray(node) && typeof key === 'number')
    return node.toSpliced(key, 1, ...(inner === undefined ? [] : [inner]));
  const entries = isNode(node) ? Object.entries(node) : [];
  const others = entries.filter(([name]) => name !== key);
  if (inner === undefined) return Object.fromEntries(others);
  return entries.some(([name]) => name === key)
    ? Object.fromEntries(entries.map(([name, old]) => [name, name === key ? inner : old]))
    : Object.fromEntries([...entries, [key, inner]]);
}

/** The changes that bring back what stands in the document now at the paths of `changes`. */
export const undoing = (document: RequestDocument, changes: readonly Change[]): Change[] =>
  changes
    .map(({ path }) => {
      const back = path.slice(0, depthToBringBack(document, path));
      return { path: back, value: standingAt(document, back) };
    })
    .toReversed();

/**
 * How far along a path what stands there is brought back: up to a list, which comes back whole, or to the first key that
 * is not there, which goes again with all that was made for it.
 */
function depthToBringBack(document: RequestDocument, path: Change['path']): number {
  for (let depth = 0; depth < path.length; depth++) {
    const node = standingAt(document, path.slice(0, depth));
    if (node === undefined || Array.isArray(node)) return depth;
  }
  return path.length;
}
