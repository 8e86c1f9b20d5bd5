import { boundsOf } from '../../geometry/index.ts';
import { single } from '../blocks.ts';
import { isPanelPiece } from '../cutPieces.ts';
import type { Fabric, Pattern } from '../fabric.ts';
import type { Lying } from './lying.ts';
import { apart, MEETS, phasesOn, type Phases } from './match.ts';
import type { FoldOn } from './strip.ts';
import type { Variant } from './variants.ts';
import type { Wanted } from '../job/found.ts';

/**
 * Where the fold may lie so that a pattern meets on cloth that is folded once, its two layers line on line; nowhere where a panel
 * is cut besides, or two that are cut at once ask for the pattern at different places.
 */
export function foldsOn(
  { lying, loose }: Variant,
  wanted: readonly Wanted[],
  fabric: Fabric,
): readonly FoldOn[] {
  const { pattern } = fabric;
  if (!pattern || loose.some(({ cutting }) => isPanelPiece(cutting))) return [];
  const phases = phasesOn(fabric, wanted, { along: 0, across: 0 });
  return (['line', 'between'] as const).filter((on) =>
    lying.every((each) =>
      each.onFold === 'along' ? isOnFold(each, phases, pattern, on) : isAlikeThrough(each, phases, pattern),
    ),
  );
}

/** What is cut with its middle on the fold has a line of the pattern there, or is midway between two. */
function isOnFold(lying: Lying, phases: Phases, { across }: Pattern, on: FoldOn): boolean {
  const place = phases(lying)?.origin.y;
  const offset = across === null || on === 'line' ? 0 : across / 2;
  return place === undefined || apart(place - depthOf(lying) / 2 - offset, across) <= MEETS / 2;
}

/** Of what is cut through two layers the lower piece is the image of the upper: turned over across, and not along. */
function isAlikeThrough(lying: Lying, phases: Phases, { across, along }: Pattern): boolean {
  const { cut, copies } = lying.cutting;
  const [upper, lower] = copies.map((copy) => phases({ ...lying, cutting: { cut, copies: [copy] } })?.origin);
  if (!upper || !lower) return true;
  return (
    apart(upper.x - lower.x, along) <= MEETS / 2 &&
    apart(upper.y - (depthOf(lying) - lower.y), across) <= MEETS / 2
  );
}

/** How far across the cloth a whole piece reaches. */
const depthOf = ({ cutting, stance }: Lying): number =>
  boundsOf(single(cutting, stance).pieces[0]?.outline ?? []).height;
