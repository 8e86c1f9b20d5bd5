import { expect, test } from 'vitest';
import fc from 'fast-check';
import type { Figure } from '../../../figure/index.ts';
import { flatten, point } from '../../../geometry/index.ts';
import type { SkirtPlan } from '../../../plan/index.ts';
import type { StepId } from '../../../sewing/index.ts';
import { anyRequest, planOf } from '../../../testing/requests.ts';
import { speakerOf } from '../../../testing/speakers.ts';
import type { Speaker } from '../../../words/index.ts';
import {
  eachMark,
  fontOf,
  placed,
  placedTexts,
  resolve,
  startBefore,
  type Drawing,
  type Mark,
} from '../../drawing/index.ts';
import { fonts } from '../../testing/fonts.ts';
import { stepPicture } from './index.ts';

const plans: Readonly<Record<string, SkirtPlan>> = {
  'flared at the double fold, in inches': planOf(),
  'gathered, rows round, glue and overlocker, in French': planOf({
    units: 'cm',
    language: 'fr',
    body: { waist: '74 cm', hip: '98 cm', waistToHem: '80 cm', height: '165 cm' },
    cut: { kind: 'gathered' },
    ribbons: {
      where: 'round',
      hold: 'glue',
      washed: false,
      ends: 'flame',
      colours: ['red', 'white', 'black', 'yellow'],
    },
    sewing: { overlocker: true },
  }),
  'curved level hem, spray, motif, lengthwise fold': planOf({
    cut: { kind: 'flared', hemline: 'level', hemAtFold: '26 in' },
    ribbons: {
      hold: 'spray',
      ends: 'none',
      rows: [{ width: '1 in' }, { touching: [{}, { width: '1/4 in' }] }],
    },
    cloth: { lay: 'lengthwise fold', width: '60 in', washed: true },
    sewing: { applique: true },
  }),
  'laid open, in French': planOf({ language: 'fr', cloth: { lay: 'open' } }),
  'folded crosswise, one row': planOf({
    cloth: { lay: 'crosswise fold', width: '60 in' },
    ribbons: { rows: 1 },
  }),
  'a child’s, nine rows on the front': planOf({
    units: 'cm',
    body: { waist: '60 cm', hip: '66 cm', waistToHem: '55 cm', age: 7, height: '125 cm' },
    ribbons: { rows: 9, width: '1 cm', where: 'front' },
  }),
  'six gores, a fitted band with a zip, pockets, a lining': planOf({
    cut: { kind: 'gored', front: 1.3, sideSeam: '1/2 in' },
    waist: { kind: 'plain waistband' },
    extras: { pockets: {}, lining: {} },
  }),
  'three tiers, in French': planOf({
    language: 'fr',
    cut: { kind: 'tiered' },
    waist: { kind: 'separate casing' },
  }),
  'three tiers of two cloths, a casing of a third': planOf({
    cut: { kind: 'tiered', tiers: 3 },
    waist: { kind: 'separate casing' },
    ribbons: { rows: 14, where: 'round' },
    contrast: [
      { pieces: ['tier 2'], cloth: { name: 'poplin', colour: 'red', weight: 'light' } },
      { pieces: ['casing strip'], cloth: { colour: 'black', washed: true } },
    ],
  }),
  'a wrap whose ties and one front are of another cloth, in French': planOf({
    language: 'fr',
    cut: { kind: 'wrap' },
    contrast: [{ pieces: ['left front', 'tie'], cloth: { name: 'popeline', colour: 'white' } }],
  }),
  'half a circle on a separate casing': planOf({ cut: { kind: 'circle' } }),
  'a wrap with ties': planOf({ cut: { kind: 'wrap' } }),
  'a wrap with buttons, darts, slits': planOf({
    cut: { kind: 'wrap', closes: 'buttons' },
    waist: { kind: 'plain waistband', takeUp: 'darts' },
    extras: { slits: {} },
  }),
  'gathered with darts and a placket': planOf({
    cut: { kind: 'gathered', fullness: 1 },
    waist: { kind: 'plain waistband', takeUp: 'darts', opens: 'placket' },
  }),
  'a drawstring, tucks, a flat front': planOf({ waist: { kind: 'drawstring' }, extras: { tucks: {} } }),
  'flat front, elastic behind': planOf({ waist: { kind: 'flat front' } }),
  'expecting, a stretch band': planOf({ body: { wears: 'expecting' }, waist: { kind: 'stretch band' } }),
};

const picturesOf = (plan: SkirtPlan, speaker: Speaker = speakerOf(plan.request)): [StepId, Drawing][] =>
  plan.sewing.steps.map((step) => [step.id, stepPicture(plan, step, speaker)]);

const pictureOf = (plan: SkirtPlan, id: StepId): Drawing => {
  const found = picturesOf(plan).find(([each]) => each === id);
  if (!found) throw new Error(`No step ${id} in this plan`);
  return found[1];
};

const textsOf = ({ marks }: Drawing): string[] => placedTexts(marks).map(({ text }) => text);

/** Every point that is drawn, words left out. */
function drawnPoints(marks: readonly Mark[]) {
  const found: ReturnType<typeof point>[] = [];
  eachMark(marks, (mark, by) => {
    for (const plain of resolve(mark))
      if (plain.kind === 'path')
        for (const path of plain.paths) found.push(...flatten(path).map((at) => placed(at, by)));
  });
  return found;
}

const isIn = (drawing: Drawing, { x, y }: { x: number; y: number }, slack: number): boolean =>
  x >= -slack && y >= -slack && x <= drawing.width + slack && y <= drawing.height + slack;

/** The four corners of each line of words, by the widths of the font it is set in. */
const wordCorners = (drawing: Drawing) =>
  placedTexts(drawing.marks).flatMap((mark) => {
    const width = fontOf(mark, fonts).widthOf(mark.text, mark.size);
    const start = -startBefore(mark, fonts);
    const up = { foot: 0.75, middle: 0.5, top: 0.1 }[mark.baseline] * mark.size;
    return [start, start + width].flatMap((dx) =>
      [-up, mark.size - up].map((dy) => ({
        text: mark.text,
        x: mark.at.x + dx * Math.cos(mark.angle) - dy * Math.sin(mark.angle),
        y: mark.at.y + dx * Math.sin(mark.angle) + dy * Math.cos(mark.angle),
      })),
    );
  });

/** Every figure that a plan holds, with all that went into it. */
function figuresOf(value: unknown, seen = new Set<unknown>()): Figure[] {
  if (typeof value !== 'object' || value === null || seen.has(value)) return [];
  seen.add(value);
  const isFigure = 'rule' in value && 'kind' in value && 'inputs' in value;
  return [
    ...(isFigure ? [value as Figure] : []),
    ...Object.values(value).flatMap((each) => figuresOf(each, seen)),
  ];
}

test.each(Object.entries(plans))('%s: every step has its drawing, titled and told in words', (_, plan) => {
  const { words } = speakerOf(plan.request);
  for (const [id, drawing] of picturesOf(plan)) {
    expect(drawing.title).toBe(words.steps[id]);
    expect(drawing.description).toContain(words.steps[id]);
    expect(drawing.marks.length).toBeGreaterThan(3);
    expect(drawing.width).toBe(86);
    expect(drawing.height, id).toBeGreaterThanOrEqual(34);
    // Below it stand the names of the cloths, a line or two, where there are several.
    expect(drawing.height, id).toBeLessThanOrEqual(plan.cloths.length > 1 ? 78 : 66);
  }
});

test.each(Object.entries(plans))(
  '%s: words and lines stay within their drawing, words 3 mm or more',
  (_, plan) => {
    for (const [id, drawing] of picturesOf(plan)) {
      expect(
        wordCorners(drawing).filter((corner) => !isIn(drawing, corner, 0)),
        id,
      ).toEqual([]);
      expect(
        drawnPoints(drawing.marks).filter((at) => !isIn(drawing, at, 0)),
        id,
      ).toEqual([]);
      for (const { size } of placedTexts(drawing.marks)) expect(size).toBeGreaterThanOrEqual(3);
    }
  },
);

test.each(Object.entries(plans))(
  '%s: a number shown is one of the plan’s, as its speaker says it',
  (_, plan) => {
    const speaker = speakerOf(plan.request);
    const figures = figuresOf(plan);
    const rows = plan.ribbons.rows.map((row) => String(row.number));
    const dots = plan.skirt.hang.hemOrdinates.map(({ across }) => speaker.length(across));
    const layers = [1, 2, 4].map((count) => speaker.text(speaker.words.papers.layers, { layers: count }));
    const order = ['1', '2', '3', '4'];
    const known = [...new Set([...figures.map(speaker.value), ...rows, ...dots, ...layers, ...order])].sort(
      (a, b) => b.length - a.length,
    );
    for (const [id, drawing] of picturesOf(plan))
      for (const text of textsOf(drawing).filter((each) => /\d/.test(each))) {
        const value = known.find(
          (each) => text === each || text.endsWith(` ${each}`) || text.startsWith(`${each} `),
        );
        expect(value, `${id}: ${text}`).toBeDefined();
        expect(text.replace(value ?? '', '')).not.toMatch(/\d/);
      }
  },
);

test('the same plan gives the same drawings', () => {
  for (const plan of Object.values(plans)) expect(picturesOf(plan)).toEqual(picturesOf(plan));
});

test('a drawing shows the numbers that its step speaks of', () => {
  const shown: Readonly<Partial<Record<StepId, readonly string[]>>> = {
    prewash: ['before', 'after'],
    fold: ['cloth'],
    mark: ['casingLine', 'hemLine', 'waistQuarter', 'hemQuarter'],
    trim: ['trimOff', 'length'],
    sideSeams: ['seam'],
    hem: ['depth', 'turnUnder'],
    casing: ['depth', 'opening'],
    threadElastic: ['cut', 'width', 'length'],
  };
  const plan = planOf();
  const { value } = speakerOf(plan.request);
  for (const step of plan.sewing.steps) {
    const params = Object.assign({}, ...step.sentences.map((each) => each.params)) as Record<string, unknown>;
    const words = textsOf(pictureOf(plan, step.id)).join(' ');
    for (const name of shown[step.id] ?? []) {
      expect(params[name], `${step.id}: ${name}`).toBeDefined();
      expect(words, `${step.id}: ${name}`).toContain(value(params[name] as Figure));
    }
  }
});

test('the rows’ drawing shows their lines from the raw edge, never from the hem', () => {
  const plan = planOf();
  const { value } = speakerOf(plan.request);
  const words = textsOf(pictureOf(plan, 'chalkRows'));
  for (const row of plan.ribbons.rows.slice(0, 2)) {
    expect(words).toContain(value(row.fromRawEdge));
    expect(words).not.toContain(value(row.fromHem));
  }
});

test('the double fold is told apart: two folds at the centre, one fold and two raw ends at the side', () => {
  const { papers } = speakerOf(planOf().request).words;
  const words = textsOf(pictureOf(planOf(), 'fold')).join(' ');
  expect(words).toContain(papers.twoFolds);
  expect(words).toContain(papers.foldAndEnds);
  const folded = textsOf(
    pictureOf(planOf({ cloth: { lay: 'lengthwise fold', width: '60 in' } }), 'fold'),
  ).join(' ');
  expect(folded).not.toContain(papers.foldAndEnds);
});

test('what is drawn follows the plan: hold, edge finish, cut, hem, and how the cloth is laid', () => {
  const differ = (id: StepId, ...all: readonly SkirtPlan[]) => {
    const drawn = all.map((plan) => JSON.stringify(pictureOf(plan, id).marks));
    expect(new Set(drawn).size, id).toBe(all.length);
  };
  const held = (['pins', 'glue', 'spray'] as const).map((hold) => planOf({ ribbons: { hold } }));
  differ('holdRibbon', ...held);
  differ(
    'cutRibbon',
    ...(['sealant', 'flame', 'none'] as const).map((ends) => planOf({ ribbons: { ends } })),
  );
  differ('finishEdges', planOf(), planOf({ sewing: { overlocker: true } }));
  differ('mark', planOf(), planOf({ cut: { kind: 'gathered' } }));
  differ('hem', planOf(), planOf({ cut: { kind: 'flared', hemline: 'level' } }));
  const lays = ['double fold', 'lengthwise fold', 'crosswise fold', 'open'] as const;
  differ('fold', ...lays.map((lay) => planOf({ cloth: { lay, width: '60 in' } })));
});

test('ribbons of unlike colours are filled unlike, so that a black-and-white print tells them apart', () => {
  const plan = planOf({ ribbons: { rows: 4, colours: ['red', 'green', 'blue', 'purple'] } });
  const patterns = new Map<string, Set<string>>();
  eachMark(pictureOf(plan, 'cutRibbon').marks, (mark) => {
    if (mark.kind !== 'path' || mark.style.fill === null) return;
    if (!plan.ribbons.rows.some(({ colour }) => colour.hex === mark.style.fill)) return;
    patterns.set(mark.style.fill, (patterns.get(mark.style.fill) ?? new Set()).add(mark.style.pattern));
  });
  expect(patterns.size).toBe(4);
  expect(new Set([...patterns.values()].map((names) => [...names].join()))).toHaveProperty('size', 4);
});

test('any plan at all: finite numbers, words and lines within the drawing', () => {
  fc.assert(
    fc.property(anyRequest, (raw) => {
      const plan = planOf(raw);
      const speaker = speakerOf(plan.request);
      for (const [id, drawing] of picturesOf(plan, speaker)) {
        const points = drawnPoints(drawing.marks);
        expect(
          points.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y)),
          id,
        ).toBe(true);
        expect(Number.isFinite(drawing.height), id).toBe(true);
        expect(
          wordCorners(drawing).filter((corner) => !isIn(drawing, corner, 0)),
          id,
        ).toEqual([]);
        expect(
          points.filter((at) => !isIn(drawing, at, 0)),
          id,
        ).toEqual([]);
      }
    }),
    { numRuns: 25 },
  );
}, 60_000);
