import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anyRequest, planOf, type RawRequest } from '../../../testing/requests.ts';
import { speakerFor, speakerOf } from '../../../testing/speakers.ts';
import { boundsOf } from '../../../geometry/index.ts';
import { eachMark, type GroupMark, type Mark } from '../../drawing/index.ts';
import { writeSvg } from '../../svg/index.ts';
import { fallOf } from './fall.ts';
import { stanceOf, wornSides, type WornSide } from './stance.ts';
import { surfaceOf } from './surface.ts';
import { wornPicture } from './wornPicture.ts';

const body = { waist: '70 cm', hip: '92 cm', waistToHem: '80 cm', waistToFloor: '100 cm', height: '163 cm' };
const metric = (raw: RawRequest = {}): RawRequest => ({ measure: 'metric', mark: '1 mm', body, ...raw });
const seen = (raw: RawRequest = {}, side: WornSide = 'front', marks: 'measures' | 'none' = 'none') => {
  const plan = planOf(metric(raw));
  return { plan, stance: stanceOf(plan), ...wornPicture(plan, speakerOf(plan.request), side, { marks }) };
};
const handleOf = (picture: ReturnType<typeof seen>, name: string) => {
  const found = picture.handles.find((handle) => handle.name === name);
  if (!found) throw new Error(`No handle ${name}`);
  return found;
};
const groupsOf = (marks: readonly Mark[]): GroupMark[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? [mark, ...groupsOf(mark.marks)] : []));
const layer = (marks: readonly Mark[], name: string) =>
  groupsOf(marks).filter((group) => group.name === name);
const pathsIn = (group: GroupMark | undefined) => {
  const [first] = group?.marks ?? [];
  return first?.kind === 'path' ? first.paths : [];
};

describe('a worn skirt to scale', () => {
  test('its hem hangs above the floor by waist to floor less its length', () => {
    const picture = seen();
    const { stance } = picture;
    const above = (stance.floor - handleOf(picture, 'length').at.y) / stance.scale;
    expect(above).toBeCloseTo(200, 0);
    expect(stance.tall / stance.scale).toBeCloseTo(1630, 6);
  });

  test('a hem that is let down moves by as much, and the figure does not move', () => {
    const [short, long] = [seen(), seen({ body: { ...body, waistToHem: '90 cm' } })];
    expect(long.stance).toEqual(short.stance);
    const moved = handleOf(long, 'length').at.y - handleOf(short, 'length').at.y;
    expect(moved * handleOf(short, 'length').perMm).toBeCloseTo(100, 0);
  });

  test.each(wornSides)(
    'every row is drawn at its height above the hem, as wide as its ribbon, from the %s',
    (side) => {
      const { plan, stance, drawing } = seen({ ribbons: { rows: 5, width: '3 cm' } }, side);
      const surface = surfaceOf(plan, stance, side);
      const hem = surface.at(0, 1).y;
      for (const row of plan.ribbons.rows) {
        const [edge = []] = pathsIn(layer(drawing.marks, `row ${String(row.number)}`)[0]);
        // Straight down the middle, where nothing is lifted, are the lowest points of its two edges.
        const middle = edge.flatMap(({ ...each }) => (each.kind === 'line' ? [each.from] : []));
        const nearest = [...middle].sort((a, b) => Math.abs(a.x) - Math.abs(b.x)).slice(0, 2);
        const heights = nearest.map(({ y }) => (hem - y) / stance.scale).sort((a, b) => a - b);
        const drop = plan.skirt.hang.sideExcess.value;
        expect(Math.abs((heights[0] ?? 0) - row.fromHem.value)).toBeLessThan(3 + drop);
        expect(Math.abs((heights[1] ?? 0) - (heights[0] ?? 0) - 30)).toBeLessThan(1 + drop);
      }
    },
  );
});

describe('how the hem hangs', () => {
  test('more hem on the same top, or more gathers, is never narrower, and never has fewer folds', () => {
    const share = fc.integer({ min: 0, max: 100 });
    fc.assert(
      fc.property(fc.constantFrom('flared', 'gathered'), share, share, (kind, one, other) => {
        const of = (each: number) =>
          planOf(
            metric({
              cut:
                kind === 'flared'
                  ? {
                      kind,
                      hemAtFold: `${String(380 + 5 * each)} mm`,
                      hemline: each % 2 === 0 ? 'level' : 'straight',
                    }
                  : { kind, fullness: 1.1 + each / 40 },
            }),
          );
        const [less, more] = [of(Math.min(one, other)), of(Math.max(one, other))];
        const [small, great] = [fallOf(less), fallOf(more)];
        expect(great.round).toBeGreaterThanOrEqual(small.round - 1);
        expect(great.folds).toBeGreaterThanOrEqual(small.folds);
        expect(great.round).toBeLessThanOrEqual(more.skirt.hemRound.value + 1e-9);
        const width = (plan: typeof less) => {
          const surface = surfaceOf(plan, stanceOf(plan), 'front');
          return surface.edges(surface.length)[1];
        };
        expect(width(more)).toBeGreaterThanOrEqual(width(less) - 0.05);
      }),
      { numRuns: 80 },
    );
  });

  test('a full hem is wider and has more folds than a narrow one', () => {
    const [narrow, full] = [1.2, 3].map((fullness) =>
      fallOf(planOf(metric({ cut: { kind: 'gathered', fullness } }))),
    );
    expect(full?.round).toBeGreaterThan((narrow?.round ?? 0) * 1.15);
    expect(full?.folds).toBeGreaterThan(narrow?.folds ?? 99);
    expect(full?.depth).toBeGreaterThan(narrow?.depth ?? 99);
  });
});

describe('rows', () => {
  const rowsOn = (where: string, side: WornSide) =>
    groupsOf(seen({ ribbons: { rows: 3, where } }, side).drawing.marks).filter(({ name }) =>
      name.startsWith('row '),
    );

  test('are on the named side only', () => {
    expect(rowsOn('front', 'front')).toHaveLength(3);
    expect(rowsOn('front', 'back')).toHaveLength(0);
    expect(rowsOn('back', 'front')).toHaveLength(0);
    expect(rowsOn('back', 'back')).toHaveLength(3);
    for (const where of ['round', 'front and back'])
      for (const side of wornSides) expect(rowsOn(where, side), `${where} ${side}`).toHaveLength(3);
  });

  test('seen from the side end at the seam: the front is to the left', () => {
    const ends = (where: string) => rowsOn(where, 'side').map((group) => boundsOf(pathsIn(group)[0] ?? []));
    const { plan, stance } = seen({}, 'side');
    const seam = surfaceOf(plan, stance, 'side').at(0, 0.9).x;
    for (const { right, left } of ends('front')) {
      expect(right).toBeLessThan(seam + 1);
      expect(left).toBeLessThan(seam - 5);
    }
    for (const { left } of ends('back')) expect(left).toBeGreaterThan(seam - 1);
  });
});

describe('handles', () => {
  const rows = (lowest: string) =>
    seen({
      ribbons: { rows: [{}, { touching: [{}, {}] }, {}], lowest, spacing: 'by hand', gaps: ['5 cm', '5 cm'] },
    });

  test('one for the length and one for each band, by its first row', () => {
    expect(rows('8 cm').handles.map(({ name }) => name)).toEqual(['length', 'row 1', 'row 2', 'row 4']);
    expect(seen({ ribbons: { rows: 3, where: 'front' } }, 'back').handles.map(({ name }) => name)).toEqual([
      'length',
    ]);
  });

  test('move with what they hold: the way they say, by as much as they say', () => {
    const [low, high] = [rows('8 cm'), rows('12 cm')];
    const [from, to] = [handleOf(low, 'row 1'), handleOf(high, 'row 1')];
    const along = (to.at.x - from.at.x) * from.towards.x + (to.at.y - from.at.y) * from.towards.y;
    expect(along).toBeGreaterThan(0);
    expect(Math.abs(along * from.perMm - 40)).toBeLessThan(2);
  });
});

describe('layers', () => {
  test('the cloth is one area of its own colour, alone', () => {
    const [cloth, ...others] = layer(seen({ cloth: { colour: 'plum' } }).drawing.marks, 'cloth');
    expect(others).toEqual([]);
    expect(cloth?.marks).toHaveLength(1);
    expect(cloth?.marks[0]).toMatchObject({
      kind: 'path',
      closed: true,
      style: { fill: '#6f2a52', stroke: null },
    });
  });

  test('shade is see-through everywhere', () => {
    const [shade] = layer(seen().drawing.marks, 'shade');
    const styles: (number | undefined)[] = [];
    eachMark(shade?.marks ?? [], (mark) => mark.kind === 'path' && styles.push(mark.style.opacity));
    expect(styles.length).toBeGreaterThan(8);
    for (const opacity of styles) expect(opacity).toBeLessThan(0.3);
  });

  test('measures are there when they are asked for, those that are known', () => {
    const words = (raw: RawRequest) => {
      const texts: string[] = [];
      eachMark(layer(seen(raw, 'front', 'measures').drawing.marks, 'measures'), (mark) => {
        if (mark.kind === 'text') texts.push(mark.text);
      });
      return texts.sort();
    };
    expect(words({})).toEqual([
      'hip 92\u00a0cm',
      'waist 70\u00a0cm',
      'waist to floor 100\u00a0cm',
      'waist to hem 80\u00a0cm',
    ]);
    expect(words({ body: { ...body, waistToFloor: undefined, height: undefined, age: 6 } })).toHaveLength(3);
    expect(layer(seen().drawing.marks, 'measures')).toEqual([]);
  });
});

describe('in words', () => {
  test('says length, rows from the hem up and the hem above the floor', () => {
    const { drawing } = seen({ ribbons: { rows: 2, colours: ['red', 'gold'] } });
    expect(drawing.title).toBe('The skirt as worn, from the front');
    expect(drawing.description).toContain('Finished length: 80\u00a0cm');
    expect(drawing.description).toContain('2 ribbon rows, from the hem up: red, gold.');
    expect(drawing.description).toContain('Hem above the floor: 20\u00a0cm');
    expect(seen({ ribbons: { rows: 0 } }).drawing.description).toContain('No ribbon rows.');
  });

  test('in French as well', () => {
    const plan = planOf(metric({ ribbons: { rows: 1, colours: ['red'] } }));
    const { drawing } = wornPicture(plan, speakerFor({ ...plan.request, language: 'fr' }), 'side');
    expect(drawing.title).toBe('La jupe portée, vue de côté');
    expect(drawing.description).toContain('1 rang de ruban, à partir de l’ourlet\u00a0: rouge.');
  });
});

test('any request is drawn in finite numbers, its handles within the picture, in few enough marks', () => {
  fc.assert(
    fc.property(anyRequest, fc.constantFrom(...wornSides), (raw, side) => {
      const plan = planOf(raw);
      const { drawing, handles } = wornPicture(plan, speakerOf(plan.request), side, { marks: 'measures' });
      const svg = writeSvg(drawing);
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      expect(svg.split('<path').length - 1).toBeLessThan(250);
      for (const { at, perMm } of handles) {
        expect(perMm > 0 && Number.isFinite(perMm)).toBe(true);
        expect(at.x >= 0 && at.x <= drawing.width && at.y >= 0 && at.y <= drawing.height).toBe(true);
      }
    }),
    { numRuns: 150 },
  );
});

describe('how much is seen', () => {
  const plan = planOf(metric());
  const look = (shown: 'whole' | 'closer' | 'alone') =>
    wornPicture(plan, speakerOf(plan.request), 'front', { shown });

  test('closer, the same skirt at the same scale takes most of the drawing', () => {
    const [whole, closer] = [look('whole'), look('closer')];
    expect(closer.drawing.height).toBeLessThan(whole.drawing.height * 0.75);
    expect(closer.handles.map(({ perMm }) => perMm)).toEqual(whole.handles.map(({ perMm }) => perMm));
    // The hem hangs as far above the foot of the drawing.
    const below = ({ drawing, handles }: ReturnType<typeof look>) =>
      drawing.height - (handles[0]?.at.y ?? NaN);
    expect(below(closer)).toBeCloseTo(below(whole), 6);
  });

  test('alone, there is nobody in it and no floor under it', () => {
    const { drawing } = look('alone');
    expect(layer(drawing.marks, 'figure')).toEqual([]);
    expect(layer(drawing.marks, 'floor')).toEqual([]);
    expect(layer(drawing.marks, 'cloth')).toHaveLength(1);
    expect(drawing.height).toBeLessThan(look('closer').drawing.height);
  });
});
