import fc from 'fast-check';
import { anyRequest } from './requests.ts';

type Key = string | number;
type Path = readonly Key[];

const isTree = (value: unknown): value is Record<Key, unknown> => typeof value === 'object' && value !== null;

/** Every place in a document, the document itself first. */
function placesIn(value: unknown, path: Path = []): Path[] {
  if (!isTree(value)) return [path];
  const keys: Key[] = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  return [path, ...keys.flatMap((key) => placesIn(value[key], [...path, key]))];
}

type Change = (holder: Record<Key, unknown>, key: Key) => void;

function changed(document: unknown, path: Path, change: Change): unknown {
  const copy: unknown = structuredClone(document);
  let holder = copy;
  for (const key of path.slice(0, -1)) holder = isTree(holder) ? holder[key] : undefined;
  const last = path.at(-1);
  if (isTree(holder) && last !== undefined) change(holder, last);
  return copy;
}

/** What people, programs and slips of the key put where something else belongs. */
export const oddValues: readonly unknown[] = [
  null,
  true,
  '',
  ' ',
  '0',
  '-1 in',
  '10 km',
  'NaN',
  'Infinity mm',
  '1e9 mm',
  '1,000 mm',
  '1/0 in',
  'x'.repeat(5000),
  '½',
  '٣ in',
  '__proto__',
  0,
  -0,
  -1,
  0.1 + 0.2,
  1e308,
  5e-324,
  NaN,
  Infinity,
  [],
  [[]],
  {},
  { toString: 1 },
  { kind: 'circle' },
];

const oddKeys = ['__proto__', 'constructor', 'toString', 'hasOwnProperty', '', 'Waist', 'a.b', '[0]', 'ключ'];

/** Adds a key as JSON does: `__proto__` becomes a key like any other, and a list has none. */
const setOwn = (holder: Record<Key, unknown>, key: Key, value: unknown): void => {
  if (Array.isArray(holder)) return;
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
};

const change: fc.Arbitrary<Change> = fc.oneof(
  {
    arbitrary: fc.constantFrom(...oddValues).map((value): Change => (holder, key) => {
      holder[key] = value;
    }),
    weight: 4,
  },
  {
    arbitrary: fc.jsonValue({ maxDepth: 3 }).map((value): Change => (holder, key) => {
      holder[key] = value;
    }),
    weight: 1,
  },
  {
    arbitrary: fc.constant<Change>((holder, key) => {
      Reflect.deleteProperty(holder, key);
    }),
    weight: 1,
  },
  {
    arbitrary: fc
      .tuple(fc.constantFrom(...oddKeys), fc.constantFrom(...oddValues))
      .map(([name, value]): Change => (holder) => {
        setOwn(holder, name, value);
      }),
    weight: 1,
  },
);

/** A document, with one or two places of it changed for something odd. */
export const mutated = (documents: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
  fc
    .tuple(documents, fc.array(fc.tuple(fc.nat(), change), { minLength: 1, maxLength: 2 }))
    .map(([raw, changes]) =>
      changes.reduce<unknown>((document, [at, each]) => {
        const places = placesIn(document).slice(1);
        const path = places[at % Math.max(1, places.length)];
        return path ? changed(document, path, each) : document;
      }, raw),
    );

/** A request that parses, so changed. */
export const anyMutation: fc.Arbitrary<unknown> = mutated(anyRequest);
