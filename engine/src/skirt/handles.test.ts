import { describe, expect, test } from 'vitest';
import { draftOf } from '../testing/drafts.ts';
import { inches, mm } from '../units/index.ts';
import type { RawRequest } from '../testing/requests.ts';
import { skirtHandles } from './index.ts';
import type { OptionHandle } from './handle.ts';

const handlesOf = (raw: RawRequest): readonly (readonly [string, OptionHandle])[] => {
  const { context, request, skirt } = draftOf(raw);
  return skirtHandles(context, request, skirt).map(({ path, handle }) => [path.join('.'), handle]);
};
const namesOf = (raw: RawRequest, path: string): string[] =>
  handlesOf(raw).flatMap(([at, { name }]) => (at === path ? [name] : []));
const handleOf = (raw: RawRequest, name: string): OptionHandle => {
  const found = handlesOf(raw).find(([, handle]) => handle.name === name);
  if (!found) throw new Error(`no handle ${name}`);
  return found[1];
};

describe('each cut offers', () => {
  const plain = { kind: 'plain waistband' };
  test.each<[string, RawRequest, string[]]>([
    ['flared', {}, ['hem', 'waistMark', 'hemMark']],
    ['gathered', { cut: { kind: 'gathered' } }, ['hem', 'waistMark']],
    ['circle', { cut: { kind: 'circle' } }, ['hem']],
    ['tiered', { cut: { kind: 'tiered' } }, ['hem', 'tier 1', 'tier 2']],
    ['gored, pulled on', { cut: { kind: 'gored' } }, ['hem', 'waistMark', 'hemMark']],
    ['gored, fitted', { cut: { kind: 'gored' }, waist: plain }, ['hem', 'hemMark']],
    ['wrap', { cut: { kind: 'wrap' } }, ['hem', 'overlap', 'hemMark']],
  ])('%s', (_, raw, names) => {
    expect(namesOf(raw, 'cut')).toEqual(names);
  });
});

describe('each waist offers', () => {
  test.each<[string, string[]]>([
    ['turned casing', ['casing']],
    ['separate casing', ['casing']],
    ['drawstring', ['casing']],
    ['flat front', ['band']],
    ['stretch band', ['band']],
    ['plain waistband', ['band', 'opening']],
  ])('%s', (kind, names) => {
    expect(namesOf({ waist: { kind } }, 'waist')).toEqual(names);
  });

  test('a wrap’s band does not open', () => {
    expect(namesOf({ cut: { kind: 'wrap' } }, 'waist')).toEqual(['band']);
  });
});

test('each extra offers what it has to move', () => {
  const extras = { pockets: {}, slits: {}, tucks: {}, lining: {} };
  const body = { waist: '22 in', hip: '26 in', waistToHem: '24 in', height: '50 in', age: 9 };
  expect(
    handlesOf({ body, extras }).flatMap(([at, { name }]) => (at.startsWith('extras') ? [[at, name]] : [])),
  ).toEqual([
    ['extras.pockets', 'pocket'],
    ['extras.slits', 'slit'],
    ['extras.tucks', 'tuck'],
  ]);
});

describe('what a move writes', () => {
  test('of gores the hem all round that brings the front gore’s half hem to its mark', () => {
    const handle = handleOf({ cut: { kind: 'gored', gores: 6, sideSeam: '1/4 in' } }, 'hemMark');
    // 6 gores of twice 10 in less a quarter inch of seam.
    expect(handle.writes(inches(10)).lengths?.['hemRound']).toBeCloseTo(inches(117), 6);
  });

  test('of a front gore with a hem of its own that hem alone', () => {
    const raw = { cut: { kind: 'gored', frontHem: '15 in', sideSeam: '1/4 in' } };
    expect(handleOf(raw, 'hemMark').writes(inches(8)).lengths).toEqual({ frontHem: inches(15.5) });
  });

  test('of three tiers of 30 in, the first seam 22 in above the hem: 8, 12 and 10 in', () => {
    const raw = { body: { waistToHem: '30 in' }, cut: { kind: 'tiered' } };
    const handle = handleOf(raw, 'tier 1');
    expect(handle.writes(inches(22)).numbers).toEqual({ shares: [1, 1.5, 1.25] });
  });

  test('of a deep hem what the hem is without what is to be let down', () => {
    const body = { waist: '22 in', hip: '26 in', waistToHem: '24 in', height: '50 in', age: 9 };
    const raw = { body, extras: { tucks: { how: 'deep hem', letsDown: '2 in' } } };
    const handle = handleOf(raw, 'hem');
    expect(handle.value).toBeCloseTo(inches(2.75), 6);
    expect(handle.writes(inches(3)).lengths?.['hem']).toBeCloseTo(inches(1), 6);
  });

  test('of a folded casing the elastic that it is for', () => {
    const raw = { waist: { kind: 'separate casing', elasticWidth: '1 in', ease: '1/2 in', seam: '5/8 in' } };
    const handle = handleOf(raw, 'casing');
    expect(handle.value).toBeCloseTo(inches(1.25), 6);
    expect(handle.writes(inches(1.75)).lengths?.['elasticWidth']).toBeCloseTo(inches(1.5), 6);
  });

  test('of a wrap the overlap', () => {
    const raw = { cut: { kind: 'wrap', overlap: '10 in' } };
    const handle = handleOf(raw, 'overlap');
    const { lengths = {} } = handle.writes(mm(handle.value + handle.step));
    const moved = draftOf({ cut: { ...raw.cut, overlap: `${String(lengths['overlap'])} mm` } });
    expect(moved.skirt.overlap?.width.value).toBeCloseTo(handle.value + handle.step, 6);
  });
});

describe('how far a handle goes', () => {
  test('a band stands over half of the skirt at most', () => {
    const raw = { body: { waistToHem: '10 in' }, waist: { kind: 'stretch band' } };
    expect(handleOf(raw, 'band').most).toBeCloseTo(inches(5), 6);
  });

  test('a pocket goes as far down as its bag still has room above the hem', () => {
    const raw = { body: { waistToHem: '20 in' }, extras: { pockets: {} } };
    const { most } = handleOf(raw, 'pocket');
    const at = (below: number) =>
      draftOf({ ...raw, extras: { pockets: { below: `${String(below)} mm` } } }).skirt.extras.pockets;
    expect(at(most)?.below.value).toBeCloseTo(most, 6);
    const past = at(most + inches(0.125));
    expect(past === null || past.below.value <= most + 1e-6).toBe(true);
  });

  test('no tier grows past five times another', () => {
    const raw = { body: { waistToHem: '30 in' }, cut: { kind: 'tiered', tiers: 2 } };
    const { least, most } = handleOf(raw, 'tier 1');
    expect([least, most].map((end) => end / inches(1))).toEqual([
      expect.closeTo(5, 6),
      expect.closeTo(25, 6),
    ]);
  });
});
