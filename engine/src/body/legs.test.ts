import { describe, expect, test } from 'vitest';
import { mm, type Mm } from '../units/index.ts';
import { length } from './codes.ts';
import { legOf } from './legs.ts';
import { bodySettings } from './settings.ts';

const figure = (value: Mm | undefined) => (value === undefined ? null : length(value, 'body.calf'));
const girths = (calf?: Mm, thigh?: Mm) =>
  legOf(length(mm(1650), 'body.height'), { calf: figure(calf), thigh: figure(thigh) }, bodySettings).map(
    ({ girth }) => girth.value,
  );
const shares = bodySettings.legShares;

describe('a leg with its measured girths', () => {
  test('neither: each is a share of height', () => {
    expect(girths()).toEqual(
      [shares.ankle, shares.calf, shares.aboveKnee, shares.thigh].map(({ girth }) => 1650 * girth),
    );
  });

  test('a tenth more calf is a tenth more leg everywhere', () => {
    const usual = girths();
    for (const [at, girth] of girths(mm(1.1 * 1650 * shares.calf.girth)).entries())
      expect(girth / (usual[at] ?? NaN)).toBeCloseTo(1.1, 9);
  });

  test('a tenth more thigh is a tenth more leg down to the calf, and the same ankle', () => {
    const usual = girths();
    const more = girths(undefined, mm(1.1 * 1650 * shares.thigh.girth)).map(
      (girth, at) => girth / (usual[at] ?? NaN),
    );
    expect(more[0]).toBe(1);
    for (const ratio of more.slice(1)) expect(ratio).toBeCloseTo(1.1, 9);
  });

  test('both are where they were measured, and half each above the knee', () => {
    const [, calf, knee, thigh] = girths(mm(400), mm(700));
    expect([calf, thigh]).toEqual([400, 700]);
    const from = (girth: number, share: number) => (girth * shares.aboveKnee.girth) / share;
    expect(knee).toBeCloseTo((from(400, shares.calf.girth) + from(700, shares.thigh.girth)) / 2, 9);
  });
});
