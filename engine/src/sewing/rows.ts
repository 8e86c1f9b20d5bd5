import type { Row } from '../ribbon/index.ts';
import { mm, type Mm } from '../units/index.ts';
import { seamRows, step, straightStitch, stripsOf, type Bench } from './bench.ts';
import { figure } from './codes.ts';
import { flatRows } from './bench.ts';
import { GLUE_DRIES, holdCautions, holdSentence } from './hold.ts';
import { say, type Sentence } from './sentence.ts';
import type { Step, StepId } from './step.ts';
import { hands, paces, together, waiting } from './time.ts';

/** Both edges of every strip. */
export const edgesAlong = (rows: readonly Row[]): Mm =>
  mm(
    2 * rows.reduce((sum, { strips }) => sum + strips.reduce((all, { length }) => all + length.value, 0), 0),
  );

/** All ribbon, wherever it goes. */
export function cutRibbon(bench: Bench): Step[] {
  const { ribbons, ribbonOptions, options, skirt } = bench;
  if (ribbons.rows.length === 0) return [];
  const { skill } = options;
  const strips = stripsOf(ribbons.rows);
  const rows = figure.count(ribbons.rows.length, 'sewing.rows');
  const round = ribbons.where === 'round';
  return [
    step({
      id: 'cutRibbon',
      // Strips are measured for this body; ribbon that is washed is cut after its wash.
      after: ribbonOptions.washed ? ['measure'] : ['measure', 'prewash'],
      station: 'table',
      sentences: [
        round
          ? say(skirt.overlap ? 'cutRibbon.edge' : 'cutRibbon.round', { rows })
          : say('cutRibbon.strips', { strips: figure.count(strips, 'sewing.strips') }),
        say(`cutRibbon.${ribbonOptions.ends}`),
      ],
      cautions: [
        ribbonOptions.ends === 'flame' && 'flame',
        ribbonOptions.ends === 'sealant' && 'liquid',
        'shears',
      ],
      hands: together(
        hands(skill, paces.cutRibbon, strips),
        ...(ribbonOptions.ends === 'none' ? [] : [hands(skill, paces.seal, 2 * strips)]),
      ),
    }),
  ];
}

/** Rows that cover the seam between two tiers: their ends are turned under, for every other seam is closed by then. */
export function seamRowSteps(bench: Bench, after: readonly StepId[]): Step[] {
  const rows = seamRows(bench);
  if (rows.length === 0) return [];
  const { ribbons, ribbonOptions, options } = bench;
  const { skill } = options;
  const strips = stripsOf(rows);
  const { overhang } = ribbons;
  return [
    step({
      id: 'seamRows',
      after: [...after, 'cutRibbon'],
      station: 'machine',
      sentences: [
        ...chalked(rows),
        say('seamRows.lay'),
        holdSentence(ribbonOptions.hold),
        ribbons.where === 'round' ? say('seamRows.lap', { overhang }) : say('seamRows.meet'),
        say('seamRows.stitch'),
        say('pressRows.cool'),
      ],
      cautions: [...holdCautions(ribbonOptions.hold), 'needle', 'satinIron'],
      stitch: straightStitch,
      hands: together(
        hands(skill, flatRows(bench).length > 0 ? paces.seamRows : paces.seamRowsAlone),
        // As the others are chalked, held, stitched and pressed, without getting ready anew.
        ...[paces.chalkRows, paces.hold, paces.pressRows].map((pace) =>
          hands(skill, { ...pace, setUp: 0 }, strips),
        ),
        hands(skill, { ...paces.stitchRibbon, setUp: 0 }, 2 * strips, edgesAlong(rows)),
        hands(skill, paces.rethread, rows.length),
      ),
      ...(ribbonOptions.hold === 'glue' ? { wait: waiting(GLUE_DRIES) } : {}),
    }),
  ];
}

/** How far below its seam each row's line is chalked: once where all are alike. */
function chalked(rows: readonly Row[]): Sentence[] {
  const below = rows.flatMap(({ number, onSeam }) => (onSeam ? [{ number, onSeam }] : []));
  const [first] = below;
  if (!first) return [];
  return below.every(({ onSeam }) => Math.abs(onSeam.value - first.onSeam.value) < 0.5)
    ? [say('seamRows.chalk', { rows: below.length, below: first.onSeam })]
    : below.map(({ number, onSeam }) => say('seamRows.each', { row: number, below: onSeam }));
}
