import { distance, midpoint, point, type Point } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { PanelShape } from '../../../skirt/index.ts';
import { mm } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { arrow, inks, label, straight, style, type Mark } from '../../drawing/index.ts';
import { thinLine } from '../../pictures/cloth.ts';
import { spread } from '../../pictures/fit.ts';
import { note } from '../../pictures/steps/wording.ts';
import { endOfRow } from './ribbon.ts';
import { halvesOf, WIDTH, type Sheet } from './sheet.ts';

/** Every word is read on a screen as wide as a small phone: fewer words rather than smaller ones. */
const SIZE = mm(4);
const LINE = 4.5;
/** Where the names at the left end at the least, so that the longest has room; how far they are moved clear of a slant. */
const NAMES = 18.4;
const MOST_LEAN = 6;
const NAME = { size: mm(3.8), ink: inks.grey } as const;

/** The numbers of the panel that stand round it. */
export function words(plan: SkirtPlan, speaker: Speaker, sheet: Sheet): Mark[] {
  return [
    ...across(plan, speaker, sheet),
    ...down(plan, speaker, sheet),
    ...rowDistances(plan, speaker, sheet),
  ];
}

/** Above, the width at the waist; below, the width at the hem, what is trimmed off, and how the sides meet. */
function across(plan: SkirtPlan, speaker: Speaker, sheet: Sheet): Mark[] {
  const { papers } = speaker.words;
  const { waist, hem } = halvesOf(plan);
  const widths = plan.skirt.marking === 'straight widths';
  const say = (message: string, half: typeof waist): string =>
    speaker.text(message, { whole: speaker.length(mm(2 * half)), half: speaker.length(half) });
  const look = { size: SIZE, bold: true, room: WIDTH - 4 } as const;
  const x = WIDTH / 2;
  return [
    ...note(point(x, sheet.from - 9.8), say(widths ? papers.panelAcross : papers.panelWaist, waist), look),
    ...(widths ? [] : note(point(x, sheet.to + 4.2), say(papers.panelHem, hem), look)),
    ...linesBelow(plan, speaker).map((line, i) =>
      label(point(x, sheet.to + (widths ? 5.4 : 10) + i * LINE), line, {
        ...NAME,
        align: 'middle',
        baseline: 'middle',
      }),
    ),
  ];
}

/** Letters of that size that go on one line. */
const ONE_LINE = 56;

/** What is trimmed off, and how the sides meet: on one line where there is room. */
export function linesBelow({ skirt }: SkirtPlan, speaker: Speaker): readonly string[] {
  const { papers } = speaker.words;
  const { hang, panels, marks } = skirt;
  const { length, topAllowance, hemAllowance, apex } = panels[0].shape;
  const margin = mm(marks.cutLength.value - length - topAllowance - hemAllowance);
  const parts = margin > 0.5 ? [speaker.text(papers.panelTrim, { value: speaker.length(margin) })] : [];
  if (apex)
    parts.push(
      speaker.text(papers.panelCurved, {
        value: speaker.length(mm(apex.hemRadius * (1 - Math.cos(apex.halfSweep)))),
      }),
    );
  else if (hang.sideAngle.value > 0.001)
    parts.push(`${speaker.name(hang.sideAngle)} ${speaker.value(hang.sideAngle)}`);
  const joined = parts.join(' · ');
  const depths = [skirt.waist.topAllowance, skirt.finishedLength, skirt.hemAllowance];
  return [
    ...(liesDown(panels[0].shape)
      ? [depths.map((depth) => `${speaker.name(depth)} ${speaker.value(depth)}`).join(' · ')]
      : []),
    ...(joined.length > ONE_LINE ? parts : [joined]),
  ];
}

/** Sides that lean so far leave no room beside them: what would stand there stands below. */
const LIES_DOWN = 0.85;
const liesDown = ({ apex }: PanelShape): boolean => apex !== null && apex.halfSweep > LIES_DOWN;

/** At the left: casing, length fold to fold, hem. */
function down({ skirt }: SkirtPlan, speaker: Speaker, sheet: Sheet): Mark[] {
  if (liesDown(sheet.shape)) return [];
  const { side, shape } = sheet;
  const { length, topAllowance, hemAllowance } = shape;
  const middleOf = (from: number, to: number): Point => midpoint(side(-1, from), side(-1, to));
  const line = lengthLine(sheet);
  const lean = (line.from.x - line.to.x) / Math.max(1e-6, line.to.y - line.from.y);
  const items = [
    { name: skirt.waist.topAllowance, at: middleOf(-topAllowance, 0), leader: true, lift: LINE / 2 + 1.2 },
    { name: skirt.finishedLength, at: midpoint(line.from, line.to), leader: false, lift: 0 },
    { name: skirt.hemAllowance, at: middleOf(length, length + hemAllowance), leader: true, lift: 0 },
  ].map((item) => {
    const parts = speaker.name(item.name).split(' ');
    return { ...item, parts, tall: (parts.length + 1) * LINE };
  });
  const gap = Math.max(...items.map(({ tall }) => tall)) + 0.6;
  const heights = spread(
    items.map(({ at, lift }) => at.y - lift),
    gap,
    sheet.to - 1,
  );
  return [
    arrow(line.from, line.to, {
      tail: 'arrow',
      size: mm(1.9),
      style: style({ stroke: inks.grey, width: mm(0.2) }),
    }),
    ...items.flatMap(({ name, at, leader, lift, parts, tall }, i): Mark[] => {
      const y = heights[i] ?? at.y;
      const x = shape.apex
        ? Math.max(NAMES, at.x - (leader ? 4.2 : 1.4 + Math.min(MOST_LEAN, (lean * tall) / 2)))
        : line.from.x - 1.4;
      const first = y - tall / 2 + LINE / 2;
      return [
        ...(leader ? [straight(point(x + 0.6, y + lift), point(at.x - 0.3, at.y), thinLine)] : []),
        ...parts.map((part, k) =>
          label(point(x, first + k * LINE), part, { ...NAME, align: 'end', baseline: 'middle' }),
        ),
        label(point(x, first + parts.length * LINE), speaker.value(name), {
          size: SIZE,
          bold: true,
          align: 'end',
          baseline: 'middle',
        }),
      ];
    }),
  ];
}

/** From fold to fold: upright beside a straight panel; along the side of a ring, where every line is as long. */
function lengthLine({ shape, side, left }: Sheet): { readonly from: Point; readonly to: Point } {
  const [top, foot] = [side(-1, 0), side(-1, shape.length)];
  const off = 1.8;
  if (!shape.apex) return { from: point(left - off, top.y), to: point(left - off, foot.y) };
  const size = Math.max(1e-6, distance(top, foot));
  const out = { x: -(foot.y - top.y) / size, y: (foot.x - top.x) / size };
  const moved = ({ x, y }: Point): Point => point(x + out.x * off, y + out.y * off);
  return { from: moved(top), to: moved(foot) };
}

/**
 * At the right, how far each chalk line lies from the trimmed raw edge. Where there is no room for all of them,
 * some are left out; the ribbon list has the rest.
 */
function rowDistances({ ribbons }: SkirtPlan, speaker: Speaker, sheet: Sheet): Mark[] {
  const room = sheet.to - sheet.from;
  const every = Math.max(1, Math.ceil((ribbons.rows.length * LINE) / (room + LINE)));
  const written = ribbons.rows.flatMap((row) => {
    const end = (row.number - 1) % every === 0 ? endOfRow(row, sheet) : null;
    return end ? [{ row, end }] : [];
  });
  const heights = spread(
    written.map(({ end }) => end.y),
    LINE,
    sheet.to - 1,
  );
  return written.flatMap(({ row, end }, i): Mark[] => {
    const y = heights[i] ?? end.y;
    const x = sheet.right + 3.4;
    return [
      straight(point(end.x + 0.5, end.y), point(x - 0.6, y), thinLine),
      label(point(x, y), speaker.value(row.fromRawEdge), { size: SIZE, bold: true, baseline: 'middle' }),
    ];
  });
}
