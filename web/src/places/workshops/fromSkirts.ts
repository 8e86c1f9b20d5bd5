import { parseColour, standingAt, type RequestDocument } from '@ribbonwright/engine';

/** What a class has once for all its skirts; the first skirt that says so says it for all. */
const ofTheClass = ['language', 'measure', 'units', 'mark', 'paper'] as const;
/** What of a skirt's document has no place in a class. */
const left = new Set<string>([...ofTheClass, 'version', 'cloth']);

/** How a cloth is told apart from others where the maker gave it no name. */
export type NameOf = (cloth: unknown, at: number) => string;

/** A class of skirts that are kept by themselves: skirts of the same cloth share it. */
export function classFrom(
  skirts: readonly RequestDocument[],
  { name, nameOf }: { readonly name: string; readonly nameOf: NameOf },
): RequestDocument {
  const [first = {}] = skirts;
  const cloths = new Map<string, { readonly called: string; readonly cloth: unknown }>();
  const taken = new Set<string>();
  const members = skirts.map((skirt) => {
    const cloth = skirt['cloth'] ?? {};
    const text = JSON.stringify(cloth);
    const called = cloths.get(text)?.called ?? free(nameOf(cloth, cloths.size), taken);
    taken.add(called);
    cloths.set(text, { called, cloth });
    return { ...Object.fromEntries(Object.entries(skirt).filter(([key]) => !left.has(key))), cloth: called };
  });
  return {
    version: 1,
    name,
    ...Object.fromEntries(ofTheClass.flatMap((key) => (key in first ? [[key, first[key]]] : []))),
    cloths: Object.fromEntries([...cloths.values()].map(({ called, cloth }) => [called, cloth])),
    skirts: members,
  };
}

/** A name that no other cloth has yet. */
function free(name: string, taken: ReadonlySet<string>): string {
  let tried = name;
  for (let i = 2; taken.has(tried); i++) tried = `${name} ${String(i)}`;
  return tried;
}

/** What the maker calls a cloth, else its colour. */
export function clothCalled(
  cloth: unknown,
  colourName: (colour: NonNullable<ReturnType<typeof parseColour>>) => string,
): string {
  const name = standingAt(cloth, ['name']);
  if (typeof name === 'string' && name.trim() !== '') return name.trim().slice(0, 70);
  const colour = parseColour(standingAt(cloth, ['colour']) ?? 'navy');
  return colour ? colourName(colour).slice(0, 70) : '1';
}
