import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../../geometry/index.ts';
import { anyBody } from '../../../testing/bodies.ts';
import { anyCircle, anyFlared, anyTiered } from '../../../testing/cuts.ts';
import { anyExtras } from '../../../testing/extras.ts';
import { planOf, type RawRequest } from '../../../testing/requests.ts';
import { anyWaist } from '../../../testing/waists.ts';
import { speakerFor, speakerOf } from '../../../testing/speakers.ts';
import { eachMark, type GroupMark, type Mark } from '../../drawing/index.ts';
import { writeSvg } from '../../svg/index.ts';
import { stanceOf, wornSides, type WornSide } from './stance.ts';
import { surfaceOf } from './surface.ts';
import { wornPicture } from './wornPicture.ts';

const body = { waist: '70 cm', hip: '92 cm', waistToHem: '80 cm', waistToFloor: '100 cm', height: '163 cm' };
const seen = (raw: RawRequest = {}, side: WornSide = 'front') => {
  const plan = planOf({ measure: 'metric', mark: '1 mm', ...raw, body: { ...body, ...raw.body } });
  const stance = stanceOf(plan);
  const surface = surfaceOf(plan, stance, side);
  return { plan, stance, surface, ...wornPicture(plan, speakerOf(plan.request), side) };
};
const groupsOf = (marks: readonly Mark[]): GroupMark[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? [mark, ...groupsOf(mark.marks)] : []));
const layer = (raw: RawRequest, side: WornSide, name: string): Mark[] =>
  groupsOf(seen(raw, side).drawing.marks)
    .filter((group) => group.name === name)
    .flatMap(({ marks }) => marks);
/** Left, right, top and bottom of each path of some marks, in the figure's own millimetres. */
const boxes = (marks: readonly Mark[]) => {
  const found: ReturnType<typeof boundsOf>[] = [];
  eachMark(marks, (mark) => mark.kind === 'path' && found.push(...mark.paths.map((path) => boundsOf(path))));
  return found;
};

describe('a wrap', () => {
  const wrap = { cut: { kind: 'wrap' } };

  test('shows its edge from waist to hem at the wearer’s left', () => {
    const { surface } = seen(wrap);
    const longest = Math.max(...boxes(layer(wrap, 'front', 'closings')).map(({ height }) => height));
    expect(longest).toBeGreaterThan(0.95 * surface.length);
    for (const { left } of boxes(layer(wrap, 'front', 'closings'))) expect(left).toBeGreaterThan(0);
    expect(layer(wrap, 'back', 'closings')).toEqual([]);
  });

  test('is tied in a bow, or buttoned', () => {
    const count = (closes: string) =>
      boxes(layer({ cut: { kind: 'wrap', closes } }, 'front', 'closings')).length;
    expect(count('ties')).not.toBe(count('buttons'));
    const words = (closes: string) => seen({ cut: { kind: 'wrap', closes } }).drawing.description;
    expect(words('ties')).toContain('tied in a bow');
    expect(words('buttons')).toContain('two buttons');
  });
});

describe('a waist', () => {
  test('of a cord has its bow in front, and not behind', () => {
    const raw = { waist: { kind: 'drawstring' } };
    const bow = boxes(layer(raw, 'front', 'closings'));
    expect(Math.min(...bow.map(({ left }) => left))).toBeLessThan(0);
    expect(Math.max(...bow.map(({ right }) => right))).toBeGreaterThan(0);
    expect(layer(raw, 'side', 'closings').length).toBeGreaterThan(0);
    expect(layer(raw, 'back', 'closings')).toEqual([]);
  });

  test('opens in a side seam where there is none behind, and behind where there is', () => {
    const band = { waist: { kind: 'plain waistband' } };
    const [middle] = boxes(layer(band, 'side', 'closings'));
    expect(Math.abs(middle?.left ?? 99)).toBeLessThan(2);
    // Her left side is the left edge from behind.
    for (const { right } of boxes(layer(band, 'back', 'closings'))) expect(right).toBeLessThan(-10);
    const circle = { ...band, cut: { kind: 'circle', fraction: '1/4', pieces: 1 } };
    const [behind] = boxes(layer(circle, 'back', 'closings'));
    expect(Math.abs(behind?.left ?? 99)).toBeLessThan(2);
    expect(seen(circle).drawing.description).toContain('zip behind');
  });

  test('of knit is another cloth', () => {
    expect(layer({ waist: { kind: 'stretch band' } }, 'front', 'band')).toHaveLength(1);
    expect(layer({ waist: { kind: 'separate casing' } }, 'front', 'band')).toEqual([]);
  });

  test('that stands above the panels leaves the rows where they are', () => {
    const rows = { ribbons: { rows: 3, highest: '40 cm' } };
    const heights = (raw: RawRequest) =>
      seen({ ...rows, ...raw })
        .handles.filter(({ name }) => name === 'length' || name.startsWith('row'))
        .map(({ at }) => Math.round(at.y * 10) / 10);
    expect(heights({ waist: { kind: 'separate casing' } })).toEqual(heights({}));
  });
});

describe('extras', () => {
  test('pockets lie below the waist at both sides', () => {
    const raw = { extras: { pockets: {} } };
    const { plan, stance } = seen(raw);
    const found = boxes(layer(raw, 'front', 'extras'));
    expect(found.some(({ right }) => right < -3)).toBe(true);
    expect(found.some(({ left }) => left > 3)).toBe(true);
    const top = Math.min(...found.map((box) => box.top));
    const below = plan.skirt.extras.pockets?.below.value ?? NaN;
    expect(Math.abs((top - stance.waist) / stance.scale - below)).toBeLessThan(25);
  });

  test('a slit is open from the hem up by its height', () => {
    const raw = { extras: { slits: { where: 'left side', height: '24 cm' } } };
    const { stance, surface } = seen(raw, 'side');
    const found = boxes(layer(raw, 'side', 'extras'));
    const top = Math.min(...found.map((box) => box.top));
    expect((surface.at(0, 1).y - top) / stance.scale).toBeCloseTo(240, -1);
    expect(found.every(({ left, right }) => left > -6 && right < 6)).toBe(true);
  });

  test('each tuck has its fold, the stitching above it', () => {
    const raw = { extras: { tucks: { count: 2, depth: '2 cm' } } };
    const { plan, stance } = seen(raw);
    const lines = boxes(layer(raw, 'front', 'extras')).filter(({ height }) => height < 4);
    // Two folds, the shade below each, two lines of stitching.
    expect(lines).toHaveLength(6);
    const first = plan.skirt.extras.tucks?.below.value ?? NaN;
    const lowest = lines.map(({ bottom }) => (bottom - stance.waist) / stance.scale).sort((a, b) => a - b);
    expect(Math.abs((lowest[0] ?? 0) - first)).toBeLessThan(4);
  });
});

describe('in words', () => {
  test('says the cut, the waist and the extras as they are seen', () => {
    const { drawing } = seen({
      cut: { kind: 'tiered', tiers: 3 },
      waist: { kind: 'flat front' },
      extras: { pockets: {}, slits: { height: '20 cm' } },
      body: { wears: 'seated' },
    });
    expect(drawing.description).toContain('The wearer sits. 3 tiers');
    expect(drawing.description).toContain('flat in front, with elastic behind');
    expect(drawing.description).not.toMatch(/[{}]/);
    expect(seen({ cut: { kind: 'gored', gores: 8 } }).drawing.description).toContain('8 seams');
  });

  test('in French as well', () => {
    const plan = planOf({ cut: { kind: 'wrap' }, body: { ...body, wears: 'expecting' } });
    const { description } = wornPicture(
      plan,
      speakerFor({ ...plan.request, language: 'fr' }),
      'front',
    ).drawing;
    expect(description).toContain('Elle croise devant\u00a0: son bord');
    expect(description).toContain('ventre');
  });
});

const someCut = fc.oneof(
  anyFlared,
  anyCircle,
  anyTiered,
  fc.record({ kind: fc.constant('gored'), gores: fc.constantFrom(4, 6, 8, 10) }),
  fc.record({ kind: fc.constant('wrap'), closes: fc.constantFrom('ties', 'buttons') }),
);

test('on a front that rises half a metre above the back everything to take hold of is in the drawing', () => {
  const plan = planOf({
    body: {
      hip: undefined,
      waist: '250.8 mm',
      size: { from: '300.8 mm', to: '300.8 mm' },
      levels: { front: '766.6 mm', back: '250.8 mm', right: '466.3 mm' },
      waistToHem: '1607.4 mm',
      waistToFloor: '250.8 mm',
    },
    waist: { kind: 'plain waistband', height: '10.8 mm' },
  });
  for (const side of wornSides) {
    const { drawing, handles } = wornPicture(plan, speakerOf(plan.request), side, { marks: 'measures' });
    for (const { at } of handles)
      expect(at.x >= 0 && at.x <= drawing.width && at.y >= 0 && at.y <= drawing.height).toBe(true);
  }
});

test('any cut with any waist on any body is drawn in finite numbers, not too heavy to drag', () => {
  fc.assert(
    fc.property(
      fc.record({ body: anyBody, cut: someCut, waist: anyWaist, extras: anyExtras }),
      fc.constantFrom(...wornSides),
      fc.constantFrom('measures' as const, 'none' as const),
      (raw, side, marks) => {
        // A wrap's usual waist is another one: without its kind a waist's options would be unknown to it.
        const plan = planOf({ ...raw, waist: { kind: 'turned casing', ...raw.waist } });
        const { drawing, handles } = wornPicture(plan, speakerOf(plan.request), side, { marks });
        const svg = writeSvg(drawing);
        expect(svg).not.toMatch(/NaN|Infinity|undefined/);
        expect(svg.length).toBeLessThan(140_000);
        for (const { at, perMm, towards } of handles) {
          expect(perMm > 0 && Number.isFinite(perMm)).toBe(true);
          expect(Math.hypot(towards.x, towards.y)).toBeCloseTo(1, 6);
          expect(at.x >= 0 && at.x <= drawing.width && at.y >= 0 && at.y <= drawing.height).toBe(true);
        }
      },
    ),
    { numRuns: 200 },
  );
}, 60_000);
