import type { Figure, Notice } from '../figure/index.ts';
import { lengthOf } from '../geometry/index.ts';
import { alongHem, type Panel, type Round, type Skirt } from '../skirt/index.ts';
import { longest, mm, roundTo, type Mm } from '../units/index.ts';
import { figure, problem } from './codes.ts';
import { curveOf, flatNotices } from './flat.ts';
import { rowLimits, type RowLimits } from './limits.ts';
import { openingNotices } from './openings.ts';
import { panelsWithRows, roundAt } from './place.ts';
import { bandsOf, type Band, type Placement, type RibbonOptions } from './options.ts';
import type { Row, RowLine, Strip } from './row.ts';
import { acrossTiers, onTierSeam } from './tiers.ts';
import { byHand, fitBands, roomNeeded, type Spaced } from './spacing.ts';
import { worksNotices } from './works.ts';

/** The ribbons of one skirt. */
export interface Composition {
  readonly rows: readonly Row[];
  readonly where: Placement;
  readonly overhang: Figure<Mm>;
  readonly notices: readonly Notice[];
}

/** Places rows on a drafted skirt and measures their strips. Never throws; rows without room are told of. */
export function composeRibbons(skirt: Skirt, chosen: RibbonOptions, mark: Mm): Composition {
  const bands = bandsOf(chosen);
  const limits = rowLimits(skirt, bands, chosen, mark);
  const { spaced, notices } = spaceBands(bands, limits, chosen, mark);
  const overhang = figure.length(chosen.overhang, 'ribbon.overhang');
  const rows = rowsOf({ skirt, bands, spaced, limits, overhang, where: chosen.where, mark });
  return {
    rows,
    where: chosen.where,
    overhang,
    notices: [
      ...notices,
      ...worksNotices(rows, limits),
      ...acrossTiers(skirt, rows),
      ...openingNotices(skirt, rows),
      ...flatNotices(rows, chosen),
    ],
  };
}

const heightOf = (band: Band): Mm => mm(band.reduce((sum, { width }) => sum + width, 0));

function spaceBands(
  bands: readonly Band[],
  limits: RowLimits,
  chosen: RibbonOptions,
  mark: Mm,
): { spaced: Spaced; notices: Notice[] } {
  const heights = bands.map(heightOf);
  const lowest = limits.lowest.value;
  if (chosen.spacing === 'by hand')
    return keepBelowTop(byHand(heights, chosen.gaps ?? [], lowest, mark), heights, limits);
  const growth = { even: 1, growing: chosen.growth, shrinking: 1 / chosen.growth }[chosen.spacing];
  const spaced = fitBands({ heights, growth, lowest, highest: limits.highest.value, mark });
  if (spaced) return keepBelowTop(spaced, heights, limits);
  const room = roomIn(limits);
  const needed = figure.length(roomNeeded(heights, lowest, mark), 'ribbon.roomNeeded');
  const kept = keepBelowTop(byHand(heights, [], lowest, mark), heights, limits);
  return {
    spaced: kept.spaced,
    notices: [problem('ribbon.noRoom', { rows: bands.flat().length, room, needed }), ...kept.notices],
  };
}

/** What binary fractions lose is no overlap. */
const HAIR = 0.01;

function roomIn({ highest, lowest }: RowLimits): Figure<Mm> {
  if (highest.value <= lowest.value) return figure.length(mm(0), 'ribbon.roomNone');
  return figure.length(mm(highest.value - lowest.value), 'ribbon.room', { highest, lowest });
}

/** Bands that would run into the casing are left off, and said so: a ribbon can't be sewn there. */
function keepBelowTop(
  spaced: Spaced,
  heights: readonly Mm[],
  limits: RowLimits,
): { spaced: Spaced; notices: Notice[] } {
  const top = limits.clearTop.value;
  const count = spaced.lower.filter((lower, i) => lower + (heights[i] ?? 0) <= top + HAIR).length;
  const left = spaced.lower.length - count;
  if (left === 0) return { spaced, notices: [] };
  return {
    spaced: { lower: spaced.lower.slice(0, count), gaps: spaced.gaps.slice(0, Math.max(0, count - 1)) },
    notices: [problem('ribbon.rowPastTop', { left, top: limits.clearTop })],
  };
}

interface RowsInput {
  readonly skirt: Skirt;
  readonly bands: readonly Band[];
  readonly spaced: Spaced;
  readonly limits: RowLimits;
  readonly overhang: Figure<Mm>;
  readonly where: Placement;
  readonly mark: Mm;
}

function rowsOf(input: RowsInput): Row[] {
  const rows: Row[] = [];
  input.spaced.lower.forEach((lower, bandIndex) => {
    let at = lower;
    for (const [inBand, ribbon] of (input.bands[bandIndex] ?? []).entries()) {
      const gap = inBand > 0 ? mm(0) : (input.spaced.gaps[bandIndex - 1] ?? mm(0));
      rows.push(rowAt(input, rows.at(-1), { ...ribbon, at, gap, band: bandIndex + 1 }));
      at = mm(at + ribbon.width);
    }
  });
  return rows;
}

type Placed = Band[number] & { readonly at: Mm; readonly gap: Mm; readonly band: number };

function rowAt(input: RowsInput, below: Row | undefined, placed: Placed): Row {
  const { skirt, limits } = input;
  const width = figure.length(placed.width, 'ribbon.width');
  const gapBelow = below ? figure.length(placed.gap, 'ribbon.gap') : null;
  const fromHem =
    below && gapBelow
      ? figure.length(placed.at, 'ribbon.nextRow', {
          below: below.fromHem,
          width: below.width,
          gap: gapBelow,
        })
      : figure.length(placed.at, 'ribbon.lowestRow', { lowest: limits.lowest });
  // A row on the seam of two tiers is measured on the upper one, whose lower edge is as long as the seam.
  const seamed = onTierSeam(skirt, placed.at, placed.width);
  const { round, number } = seamed ?? roundAt(skirt, placed.at);
  const local = mm(placed.at - round.fromHem);
  const panels = panelsWithRows(round.panels, input.where);
  // On the upper tier such a row shows from the seam up; it is as long as the seam.
  const shown = {
    ...placed,
    at: longest(local, mm(0)),
    width: mm(Math.min(placed.width, placed.width + local)),
  };
  const lines = linesOf(panels, shown);
  const [first] = lines;
  return {
    number: (below?.number ?? 0) + 1,
    band: placed.band,
    round: number,
    onSeam: seamed ? figure.length(mm(-local), 'ribbon.belowSeam') : null,
    colour: placed.colour,
    width,
    fromHem,
    fromRawEdge: rawEdge(skirt, round, fromHem),
    gapBelow,
    lines,
    lower: first?.lower ?? [],
    upper: first?.upper ?? [],
    strips: stripsOf(input, round, lines),
    curve: sharpest(lines, shown, width),
  };
}

/** From the raw edge of the panels it lies on: the hem's, or the seam's of the tier. */
function rawEdge(skirt: Skirt, round: Round, fromHem: Figure<Mm>): Figure<Mm> {
  if (round.fromHem === 0) {
    const hem = skirt.hemAllowance;
    return figure.length(mm(fromHem.value + hem.value), 'ribbon.fromRawEdge', { fromHem, hem });
  }
  const tier = figure.length(round.fromHem, 'ribbon.tierFromHem');
  const seam = figure.length(round.panels[0].shape.hemAllowance, 'ribbon.tierSeam');
  return figure.length(mm(fromHem.value - tier.value + seam.value), 'ribbon.fromTierEdge', {
    fromHem,
    tier,
    seam,
  });
}

/** Panels that share a shape are measured once. */
function linesOf(panels: readonly Panel[], placed: Placed): RowLine[] {
  const shapes = new Map<Panel['shape'], Pick<RowLine, 'lower' | 'upper'>>();
  return panels.map((panel) => {
    const { shape } = panel;
    const known = shapes.get(shape) ?? {
      lower: alongHem(shape, placed.at),
      upper: alongHem(shape, mm(placed.at + placed.width)),
    };
    shapes.set(shape, known);
    return { panel, ...known };
  });
}

/** How the ribbon takes the tightest curve among its panels. */
function sharpest(lines: readonly RowLine[], placed: Placed, width: Figure<Mm>): Row['curve'] {
  const curves = lines.flatMap(({ panel: { shape } }) =>
    shape.apex ? [curveOf(shape.apex, placed, width)] : [],
  );
  return curves.reduce<Row['curve']>(
    (most, each) => (most && most.share.value >= each.share.value ? most : each),
    null,
  );
}

/** Cut by the wider edge: a strip may be trimmed, never stretched. */
const acrossOf = ({ lower, upper }: RowLine): Mm => longest(lengthOf(lower), lengthOf(upper));

function stripsOf(input: RowsInput, round: Round, lines: readonly RowLine[]): Strip[] {
  if (input.where !== 'round')
    return lines.map((line) => ({
      panel: line.panel.name,
      number: line.panel.number,
      length: stripLength(figure.length(acrossOf(line), 'ribbon.across'), input),
    }));
  // Sewn on after all seams but the last: the seams are out of it already, its ends are caught in the last one. What
  // does not close into a round has no last one.
  const { sideSeamAllowance: seam, overlap } = input.skirt;
  const flat = lines.reduce((sum, line) => sum + acrossOf(line), 0);
  const sewn = overlap ? round.seams : Math.max(0, round.seams - 1);
  const across = figure.length(mm(flat - 2 * sewn * seam.value), 'ribbon.acrossRound', { seam });
  return [{ panel: 'round', number: 1, length: stripLength(across, input) }];
}

function stripLength(across: Figure<Mm>, { overhang, mark }: RowsInput): Figure<Mm> {
  const exact = mm(across.value + 2 * overhang.value);
  return figure.length(roundTo(exact, mark, 'up'), 'ribbon.stripLength', { across, overhang }, { exact });
}
