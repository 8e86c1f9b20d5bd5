import type { Piece, Placed } from './piece.ts';

/** A hair's breadth: sums of line heights are not exact. */
const SLACK = 1e-6;

/** Pieces that no page may part: from `start`, up to the first that need not stay with the next. */
function chainFrom(pieces: readonly Piece[], start: number): readonly Piece[] {
  let end = start;
  while (pieces[end]?.keepWithNext && pieces[end + 1]?.endsPage === false) end += 1;
  return pieces.slice(start, end + 1);
}

const heightOf = (chain: readonly Piece[], first: number): number =>
  chain.reduce((sum, each, i) => sum + each.height + (i === 0 ? first : each.gap), 0);

/**
 * Pieces on pages of one height, in order. What must stay together does, unless it is taller than a page;
 * a single piece taller than a page is made smaller until it fits. Nothing passes the foot of a page.
 */
export function paginate(pieces: readonly Piece[], height: number): readonly (readonly Placed[])[] {
  const pages: Placed[][] = [[]];
  let page: Placed[] = pages[0] ?? [];
  let y = 0;
  const turn = (): void => {
    page = [];
    pages.push(page);
    y = 0;
  };
  const put = (each: Piece): void => {
    const head = page.length === 0 ? each.repeat : null;
    if (head && head.height < height / 2) {
      page.push({ piece: head, y: 0, scale: 1 });
      y = head.height;
    }
    if (page.length > 0) y += each.gap;
    const room = height - y;
    const scale = each.height > room + SLACK ? room / each.height : 1;
    page.push({ piece: each, y, scale });
    y += each.height * scale;
  };
  let mustTurn = false;
  let at = 0;
  while (at < pieces.length) {
    const chain = chainFrom(pieces, at);
    const first = chain[0];
    if (!first) break;
    if (first.endsPage) {
      mustTurn = page.length > 0;
      at += 1;
      continue;
    }
    if (mustTurn) turn();
    mustTurn = false;
    const left = height - y + SLACK;
    const onNew = (each: Piece) => each.repeat?.height ?? 0;
    const fitsHere = heightOf(chain, page.length === 0 ? onNew(first) : first.gap) <= left;
    const fitsAlone = heightOf(chain, onNew(first)) <= height + SLACK;
    if (!fitsHere && fitsAlone && page.length > 0) turn();
    for (const each of chain) {
      if (page.length > 0 && y + each.gap + each.height > height + SLACK) turn();
      put(each);
    }
    at += chain.length;
  }
  return pages;
}
