import type { Panels, Part, Skirt } from '../skirt/index.ts';
import { sharesOf, type ContrastOptions } from './contrast.ts';
import { panelPieces, partPieces, type CutPiece } from './cutPieces.ts';
import type { LayInput } from './lays/lay.ts';

/** Which of a skirt's cloths: its own, the lining's, or one of the others by its place in their list. */
export type WhichCloth = 'own' | 'lining' | number;

/** The pieces that are laid on one cloth, and how they are marked. */
export type Pieces = Omit<LayInput, 'fabric'>;

/** The pieces that are cut from one of a skirt's cloths; null where there are none. */
export function piecesOf(
  skirt: Skirt,
  contrast: readonly ContrastOptions[],
  which: WhichCloth,
): Pieces | null {
  if (which === 'lining') return ofParts(partPieces(skirt.parts, 'lining'));
  if (which === 'own') return ownPieces(skirt, contrast);
  const { panels: [first, ...others] = [], parts = [] } = sharesOf(skirt, contrast).others[which] ?? {};
  return first ? ofPanels(skirt, [first, ...others], parts) : ofParts(partPieces(parts, 'skirt'));
}

/** The pieces of the skirt's own cloth: never none. */
export function ownPieces(skirt: Skirt, contrast: readonly ContrastOptions[]): Pieces {
  const whole = ofPanels(skirt, skirt.panels, skirt.parts);
  if (contrast.length === 0) return whole;
  const { panels, parts } = sharesOf(skirt, contrast).own;
  const [first, ...others] = panels;
  return first ? ofPanels(skirt, [first, ...others], parts) : (ofParts(partPieces(parts, 'skirt')) ?? whole);
}

const ofPanels = ({ marking }: Skirt, panels: Panels, parts: readonly Part[]): Pieces => ({
  mains: panelPieces(panels, marking === 'swung'),
  parts: partPieces(parts, 'skirt'),
  marking,
});

function ofParts([first, ...others]: readonly CutPiece[]): Pieces | null {
  return first ? { mains: [first, ...others], parts: [], marking: 'by piece' } : null;
}
