/** Parts of the job of one skirt, in its order. */
export const parts = ['body', 'cut', 'ribbons', 'cloth', 'supplies', 'sew'] as const;
export type Part = (typeof parts)[number];

/** The larger places beside a single skirt. */
export const places = ['skirts', 'people', 'shelf', 'workshops'] as const;
export type Place = (typeof places)[number];

export type Route =
  | { readonly at: 'part'; readonly id: string; readonly part: Part }
  | { readonly at: 'place'; readonly place: Place }
  | { readonly at: 'workshop'; readonly id: string }
  | { readonly at: 'beside'; readonly ids: readonly [string, string] }
  | { readonly at: 'start' }
  /** A skirt that came in the address itself, from another device. */
  | { readonly at: 'arriving'; readonly packed: string }
  | { readonly at: 'home' };

const isPart = (text: string | undefined): text is Part => parts.some((part) => part === text);
const isPlace = (text: string | undefined): text is Place => places.some((place) => place === text);

/** Reads the part of the address after #. Anything unknown is home. */
export function readRoute(hash: string): Route {
  const [first, second, third] = hash.replace(/^#\/?/, '').split('/').map(decoded);
  if (first === 'skirt' && second && isPart(third)) return { at: 'part', id: second, part: third };
  if (first === 'workshop' && second) return { at: 'workshop', id: second };
  if (first === 'beside' && second && third) return { at: 'beside', ids: [second, third] };
  if (first === 'arriving' && second) return { at: 'arriving', packed: second };
  if (first === 'start') return { at: 'start' };
  return isPlace(first) ? { at: 'place', place: first } : { at: 'home' };
}

/** A bad escape in the address is read as it stands. */
function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

export const addressOf = {
  part: (id: string, part: Part): string => `#/skirt/${encodeURIComponent(id)}/${part}`,
  place: (place: Place): string => `#/${place}`,
  workshop: (id: string): string => `#/workshop/${encodeURIComponent(id)}`,
  beside: (one: string, other: string): string =>
    `#/beside/${encodeURIComponent(one)}/${encodeURIComponent(other)}`,
  arriving: (packed: string): string => `#/arriving/${packed}`,
  start: '#/start',
  home: '#/',
} as const;

/** Where the page is, following its address. */
export class Router {
  hash = $state.raw(location.hash);
  readonly route: Route = $derived(readRoute(this.hash));

  constructor() {
    // `hashchange` comes a moment after the press; in that moment the view that is left could still be typed in.
    for (const told of ['popstate', 'hashchange'])
      window.addEventListener(told, () => {
        this.hash = location.hash;
      });
  }

  go(address: string): void {
    location.hash = address;
  }

  /** Goes on from an address that nobody goes back to. */
  goOn(address: string): void {
    location.replace(address);
  }
}
