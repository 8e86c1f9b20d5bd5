// Source: The Perfect Dressmaking System (1914), five gores for a waist of 25, hip of 40 and 2¼ yd round the bottom.
import { describe, expect, test } from 'vitest';
import { draftOf, type Drafted } from '../../testing/drafts.ts';
import { boundsOf, lengthOf } from '../../geometry/index.ts';
import { inches, mm, yards } from '../../units/index.ts';
import { shareRound } from './goreWidths.ts';

const inInches = (value: number): number => value / 25.4;

describe('the book’s five gores', () => {
  test('waist and hip are shared by five: 5 in and 8 in each', () => {
    expect(inInches(shareRound(inches(25), inches(5), 5))).toBeCloseTo(5, 9);
    expect(inInches(shareRound(inches(40), inches(8), 5))).toBeCloseTo(8, 9);
  });

  test('its front gore is twice as wide at the bottom as at the top, 10 in; its other four at 17½ in make 80 in, not 81', () => {
    const bottom = yards(2.25);
    const front = mm(2 * inches(5));
    expect(inInches(bottom)).toBeCloseTo(81, 9);
    expect(inInches(front)).toBeCloseTo(10, 9);
    expect(10 + 4 * 17.5).toBe(80);
    const exact = shareRound(bottom, front, 5);
    expect(inInches(exact)).toBeCloseTo(17.75, 9);
    expect(front + 4 * exact).toBeCloseTo(bottom, 9);
  });

  test.each([4, 6, 8, 10])('shared by %d gores, the front one and the others make the whole', (gores) => {
    const each = shareRound(yards(2.25), inches(10), gores);
    expect(inches(10) + (gores - 1) * each).toBeCloseTo(yards(2.25), 9);
  });

  test('a front gore of 10 in leaves the other five of six 14¼ in each, as 71 in by five is 14.2', () => {
    const { skirt } = draftOf({
      body: { waist: '24 in', hip: '30 in', waistToHem: '39 in' },
      cut: { kind: 'gored', frontHem: '10 in', hemRound: '81 in', fullness: 1 },
    });
    const hems = skirt.panels.map(({ shape }) => lengthOf(shape.edges[2]?.finished ?? []));
    expect(inInches(hems[0] ?? NaN)).toBeCloseTo(10, 6);
    for (const hem of hems.slice(1)) expect(inInches(hem)).toBeCloseTo(14.25, 6);
  });
});

describe('front 38, side 39, back 39½ in: the difference is made at the top', () => {
  const { skirt }: Drafted = draftOf({
    body: {
      waist: '25 in',
      hip: '40 in',
      waistToHem: '38 in',
      waistToFloor: '39 in',
      levels: { front: '38 in', left: '39 in', right: '39 in', back: '39 1/2 in' },
    },
    cut: { kind: 'gored', gores: 4 },
  });
  /** From the top of a gore's centre to its hem fold. */
  const centre = (i: number): number => {
    const edges = skirt.panels[i]?.shape.edges ?? [];
    const top = edges.find(({ name }) => name === 'waist')?.finished ?? [];
    const points = top.map((segment) => (segment.kind === 'line' ? segment.from : { x: 0, y: 0 }));
    const middle = points.reduce((best, each) => (Math.abs(each.x) < Math.abs(best.x) ? each : best));
    return boundsOf(edges.find(({ name }) => name === 'hem')?.finished ?? []).bottom - middle.y;
  };

  test('down the middle of its gore the front is 1 in shorter than the sides, the back ½ in longer', () => {
    const [front, side, back, other] = [0, 1, 2, 3].map(centre);
    expect(inInches((side ?? 0) - (front ?? 0))).toBeCloseTo(1, 2);
    expect(inInches((back ?? 0) - (side ?? 0))).toBeCloseTo(0.5, 2);
    expect(other).toBeCloseTo(side ?? 0, 6);
  });

  test('every gore has the same hem, at the same depth', () => {
    const hems = skirt.panels.map(({ shape }) => shape.edges.find(({ name }) => name === 'hem')?.finished);
    for (const hem of hems) expect(hem).toEqual(hems[0]);
  });
});
