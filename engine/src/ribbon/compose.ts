import type { Figure, Notice } from '../figure/index.ts';
import { lengthOf } from '../geometry/index.ts';
import type { Panel, Skirt } from '../skirt/index.ts';
import { longest, mm, roundTo, type Mm } from '../units/index.ts';
import { alongHem } from './across.ts';
import { figure, problem } from './codes.ts';
import { curveOf, flatNotices } from './flat.ts';
import { rowLimits, type RowLimits } from './limits.ts';
import { bandsOf, type Band, type Placement, type RibbonOptions } from './options.ts';
import type { Row, Strip } from './row.ts';
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
    notices: [...notices, ...worksNotices(rows, limits), ...flatNotices(rows, chosen)],
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
  const hem = skirt.hemAllowance;
  const fromRawEdge = figure.length(mm(placed.at + hem.value), 'ribbon.fromRawEdge', { fromHem, hem });
  const panels = panelsWithRows(skirt.panels, input.where);
  // Panels of one cut share a shape; other cuts' panels are measured one by one.
  const shapes = new Map(panels.map(({ shape }) => [shape, edgesOf(shape, placed)]));
  const firstShape = panels[0]?.shape;
  const edges = firstShape && shapes.get(firstShape);
  return {
    number: (below?.number ?? 0) + 1,
    band: placed.band,
    colour: placed.colour,
    width,
    fromHem,
    fromRawEdge,
    gapBelow,
    lower: edges?.lower ?? [],
    upper: edges?.upper ?? [],
    strips: stripsOf(input, panels, (panel) => shapes.get(panel.shape)?.across ?? mm(0)),
    curve: firstShape?.apex ? curveOf(firstShape.apex, placed, width) : null,
  };
}

function edgesOf(shape: Panel['shape'], { at, width }: Placed) {
  const lower = alongHem(shape, at);
  const upper = alongHem(shape, mm(at + width));
  // Cut by the wider edge: a strip may be trimmed, never stretched.
  return { lower, upper, across: longest(lengthOf(lower), lengthOf(upper)) };
}

function panelsWithRows(panels: readonly Panel[], where: Placement): readonly Panel[] {
  if (where === 'front and back' || where === 'round') return panels;
  const chosen = panels.filter(({ name }) => name === where);
  // A skirt of plain widths has no named front: its first width is worn in front, its last behind.
  return chosen.length > 0
    ? chosen
    : panels.slice(where === 'front' ? 0 : -1, where === 'front' ? 1 : undefined);
}

function stripsOf(input: RowsInput, panels: readonly Panel[], acrossOf: (panel: Panel) => Mm): Strip[] {
  if (input.where !== 'round')
    return panels.map((panel) => ({
      panel: panel.name,
      number: panel.number,
      length: stripLength(figure.length(acrossOf(panel), 'ribbon.across'), input),
    }));
  // Sewn on after all seams but one: the seams are out of it already, its ends are caught in the last.
  const seam = input.skirt.sideSeamAllowance;
  const flat = panels.reduce((sum, panel) => sum + acrossOf(panel), 0);
  const sewn = Math.max(0, input.skirt.sideSeams - 1);
  const across = figure.length(mm(flat - 2 * sewn * seam.value), 'ribbon.acrossRound', { seam });
  return [{ panel: 'round', number: 1, length: stripLength(across, input) }];
}

function stripLength(across: Figure<Mm>, { overhang, mark }: RowsInput): Figure<Mm> {
  const exact = mm(across.value + 2 * overhang.value);
  return figure.length(roundTo(exact, mark, 'up'), 'ribbon.stripLength', { across, overhang }, { exact });
}
