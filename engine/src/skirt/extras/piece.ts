import { offsetOutline } from '../../geometry/index.ts';
import type { Notch, PanelEdge, PieceShape } from '../panel.ts';

/** A small piece by its finished edges, which run clockwise end to end; the cloth beyond each is its allowance. */
export function pieceOf(edges: readonly PanelEdge[], notches: readonly Notch[] = []): PieceShape {
  const raw = offsetOutline(
    edges.map(({ finished, allowance }) => ({ path: finished, distance: allowance })),
  ).flat();
  return { edges, trimmed: raw, cut: raw, notches, symmetric: false };
}
