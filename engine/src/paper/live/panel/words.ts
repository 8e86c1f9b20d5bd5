import { boundsOf, distance, midpoint, point, type Point } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { PanelShape } from '../../../skirt/index.ts';
import { mm } from '../../../units/index.ts';
import type { Speaker } from '../../../words/index.ts';
import { arrow, inks, label, straight, style, type Mark } from '../../drawing/index.ts';
import { thinLine } from '../../pictures/cloth.ts';
import { spread } from '../../pictures/fit.ts';
import { note } from '../../pictures/steps/wording.ts';
import { endOfRow } from './ribbon.ts';
import { halvesOf, isMarkedWhole, WIDTH, type Sheet, type Sheets } from './sheet.ts';

/** Every word is read on a screen as wide as a small phone: fewer words rather than smaller ones. */
const SIZE = mm(4);
const LINE = 4.5;
/** Where the names at the left end at the least, so that the longest has room; how far they are moved clear of a slant. */
const NAMES = 18.4;
const MOST_LEAN = 6;
const NAME = { size: mm(3.8), ink: inks.grey } as const;

/** The numbers of the panels that stand round them. */
export function words(plan: SkirtPlan, speaker: Speaker, sheets: Sheets): Mark[] {
  return [
    ...(isMarkedWhole(plan) ? across(plan, speaker, sheets.main) : named(plan, speaker, sheets)),
    ...below(plan, speaker, sheets),
    ...(sheets.tiers ? tierDepths(plan, speaker, sheets) : down(plan, speaker, sheets.all[0])),
    ...rowDistances(plan, speaker, sheets),
  ];
}

/** Above, the width at the waist; below, the width at the hem. */
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
  ];
}

/** Which panel is which: above panels side by side, in the gap above each tier with the width of its strips. */
function named({ skirt }: SkirtPlan, speaker: Speaker, sheets: Sheets): Mark[] {
  const { papers } = speaker.words;
  const { all, tiers } = sheets;
  const isNumbered = needsNumbers(speaker, sheets);
  return all.flatMap((sheet, i): Mark[] => {
    const { kind, left, right, top } = sheet;
    if (tiers) {
      const width = speaker.length(boundsOf(kind.panels[0].shape.cut).width);
      const text = `${speaker.text(papers.tierNumber, { number: kind.round })} · ${String(skirt.rounds[kind.round - 1]?.panels.length ?? 1)} × ${width}`;
      return note(point((left + right) / 2, top - 3), text, { size: SIZE, bold: true });
    }
    return isNumbered
      ? note(point((left + right) / 2, top - 5.6), String(i + 1), { size: SIZE, bold: true })
      : nameAbove(sheet, speaker, sheets);
  });
}

const calledOf = ({ kind }: Sheet, { words: { panels } }: Speaker): string =>
  [...new Set(kind.panels.map(({ name }) => panels[name]))].join(' + ');

function nameAbove(sheet: Sheet, speaker: Speaker, { all }: Sheets): Mark[] {
  const { left, right, top } = sheet;
  const room = all.length === 1 ? WIDTH - 4 : right - left + 3.4;
  return note(point((left + right) / 2, top - 5.6), calledOf(sheet, speaker), {
    size: SIZE,
    bold: true,
    room,
  });
}

/** Lines of a name that have room above a panel. */
const LINES_ABOVE = 2;

/** Panels too slender for their names are numbered, and named below. */
const needsNumbers = (speaker: Speaker, sheets: Sheets): boolean =>
  !sheets.tiers && sheets.all.some((sheet) => nameAbove(sheet, speaker, sheets).length > LINES_ABOVE);

/** Lowest: what is trimmed off, and how the sides meet. */
const below = (plan: SkirtPlan, speaker: Speaker, sheets: Sheets): Mark[] => {
  const single = plan.skirt.marking !== 'at the fold';
  return linesBelow(plan, speaker, sheets).map((line, i) =>
    label(point(WIDTH / 2, sheets.main.to + (single ? 5.4 : 10) + i * LINE), line, {
      ...NAME,
      align: 'middle',
      baseline: 'middle',
    }),
  );
};

/** At the left of tiers: the casing, the finished height of each, the hem. */
function tierDepths({ skirt }: SkirtPlan, speaker: Speaker, { all, main }: Sheets): Mark[] {
  const depths = all.map((sheet) => {
    const [from, to] = [sheet.side(-1, 0), sheet.side(-1, sheet.shape.length)];
    return {
      from: point(from.x - 1.8, from.y),
      to: point(to.x - 1.8, to.y),
      text: speaker.length(sheet.shape.length),
    };
  });
  const [first] = all;
  const hem = main.side(-1, main.shape.length + main.shape.hemAllowance / 2);
  const top = first.side(-1, -first.shape.topAllowance / 2);
  return [
    ...depths.flatMap(({ from, to, text }): Mark[] => [
      arrow(from, to, {
        tail: 'arrow',
        size: mm(1.9),
        style: style({ stroke: inks.grey, width: mm(0.2) }),
      }),
      ...note(point(from.x - 1.4, (from.y + to.y) / 2), text, { size: SIZE, bold: true, align: 'end' }),
    ]),
    ...note(point(top.x - 3.2, top.y - 1), speaker.value(skirt.waist.topAllowance), {
      ...NAME,
      align: 'end',
    }),
    ...note(point(hem.x - 3.2, hem.y + 1.4), speaker.value(skirt.hemAllowance), { ...NAME, align: 'end' }),
  ];
}

/** Letters of that size that go on one line. */
const ONE_LINE = 56;

/** Names of numbered panels; what is trimmed off, and how the sides meet: on one line where there is room. */
export function linesBelow(plan: SkirtPlan, speaker: Speaker, sheets: Sheets): readonly string[] {
  const { papers } = speaker.words;
  const { skirt } = plan;
  const { hang, rounds } = skirt;
  const [first] = skirt.panels;
  const { shape } = first;
  const { length, hemAllowance, apex } = shape;
  const margin = mm(boundsOf(shape.cut).bottom - length - hemAllowance);
  const parts = margin > 0.5 ? [speaker.text(papers.panelTrim, { value: speaker.length(margin) })] : [];
  if (apex && isMarkedWhole(plan))
    parts.push(
      speaker.text(papers.panelCurved, {
        value: speaker.length(mm(apex.hemRadius * (1 - Math.cos(apex.halfSweep)))),
      }),
    );
  else if (!apex && hang.sideAngle.value > 0.001)
    parts.push(`${speaker.name(hang.sideAngle)} ${speaker.value(hang.sideAngle)}`);
  const joined = parts.join(' · ');
  const depths = [skirt.waist.topAllowance, skirt.panelLength, skirt.hemAllowance];
  const isNumbered = !isMarkedWhole(plan) && needsNumbers(speaker, sheets);
  return [
    ...(isNumbered
      ? sheets.all.map((sheet, i) => `${String(i + 1)} ${calledOf(sheet, speaker)}`)
      : []
    ).reduce<string[]>(inLines, []),
    ...(liesDown(shape) && rounds.length === 1
      ? depths.map((depth) => `${speaker.name(depth)} ${speaker.value(depth)}`)
      : []
    ).reduce<string[]>(inLines, []),
    ...(joined.length > ONE_LINE ? parts : [joined]),
  ];
}

/** As many words on a line as go there. */
function inLines(lines: readonly string[], next: string): string[] {
  const last = lines.at(-1);
  const longer = last === undefined ? next : `${last} · ${next}`;
  return last !== undefined && longer.length <= ONE_LINE ? [...lines.slice(0, -1), longer] : [...lines, next];
}

/** Sides that lean so far leave no room beside them: what would stand there stands below. */
const LIES_DOWN = 0.85;
const liesDown = ({ apex }: PanelShape): boolean => apex !== null && apex.halfSweep > LIES_DOWN;

/** At the left: casing, length fold to fold, hem. */
function down({ skirt }: SkirtPlan, speaker: Speaker, sheet: Sheet): Mark[] {
  if (liesDown(sheet.shape)) return [];
  const { side, shape } = sheet;
  const { length, topAllowance, hemAllowance } = shape;
  const turnedTop = shape.edges.some(({ name, turned }) => name === 'waist' && turned);
  const middleOf = (from: number, to: number): Point => midpoint(side(-1, from), side(-1, to));
  const line = lengthLine(sheet);
  const lean = (line.from.x - line.to.x) / Math.max(1e-6, line.to.y - line.from.y);
  const items = [
    {
      figure: skirt.waist.topAllowance,
      name: turnedTop ? speaker.name(skirt.waist.topAllowance) : speaker.words.papers.edgeSeam,
      at: middleOf(-topAllowance, 0),
      leader: true,
      lift: LINE / 2 + 1.2,
    },
    {
      figure: skirt.panelLength,
      name: speaker.name(skirt.panelLength),
      at: midpoint(line.from, line.to),
      leader: false,
      lift: 0,
    },
    {
      figure: skirt.hemAllowance,
      name: speaker.name(skirt.hemAllowance),
      at: middleOf(length, length + hemAllowance),
      leader: true,
      lift: 0,
    },
  ].map((item) => {
    const parts = shortLines(item.name);
    return { ...item, parts, tall: (parts.length + 1) * LINE };
  });
  const gap = Math.max(...items.map(({ tall }) => tall)) + 0.6;
  const heights = spread(
    items.map(({ at, lift, tall }) => Math.max(at.y - lift, tall / 2 + 0.5)),
    gap,
    sheet.to - 1,
  );
  return [
    arrow(line.from, line.to, {
      tail: 'arrow',
      size: mm(1.9),
      style: style({ stroke: inks.grey, width: mm(0.2) }),
    }),
    ...items.flatMap(({ figure, at, leader, lift, parts, tall }, i): Mark[] => {
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
        label(point(x, first + parts.length * LINE), speaker.value(figure), {
          size: SIZE,
          bold: true,
          align: 'end',
          baseline: 'middle',
        }),
      ];
    }),
  ];
}

/** Letters on a line of a name at the left. */
const SHORT = 9;

/** The words of a name on as few short lines as they go on. */
const shortLines = (name: string): string[] =>
  name.split(' ').reduce<string[]>((lines, word) => {
    const last = lines.at(-1);
    return last !== undefined && last.length + word.length < SHORT
      ? [...lines.slice(0, -1), `${last} ${word}`]
      : [...lines, word];
  }, []);

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
function rowDistances({ ribbons }: SkirtPlan, speaker: Speaker, sheets: Sheets): Mark[] {
  const { from, to } = sheets.main;
  const every = Math.max(1, Math.ceil((ribbons.rows.length * LINE) / (to - from + LINE)));
  const written = ribbons.rows.flatMap((row) => {
    const end = (row.number - 1) % every === 0 ? endOfRow(row, sheets) : null;
    return end ? [{ row, end }] : [];
  });
  const heights = spread(
    written.map(({ end }) => end.y),
    LINE,
    to - 1,
  );
  return written.flatMap(({ row, end }, i): Mark[] => {
    const y = heights[i] ?? end.y;
    const x = sheets.right + 3.4;
    const text = row.onSeam
      ? speaker.text(speaker.words.papers.rowBelowSeam, { below: row.onSeam })
      : speaker.value(row.fromRawEdge);
    return [
      straight(point(end.x + 0.5, end.y), point(x - 0.6, y), thinLine),
      label(point(x, y), text, { size: row.onSeam ? mm(3.5) : SIZE, bold: true, baseline: 'middle' }),
    ];
  });
}
