import { parseClass, planClass, speakerOf } from '@ribbonwright/engine';
import { expect, test } from 'vitest';
import { progressOn } from './progress.ts';

test('a way that has found no room tells what the best so far takes, not that nothing is to buy', async () => {
  const body = { waist: '34 in', hip: '44 in', waistToHem: '36 in' };
  const parsed = parseClass({
    cloths: { red: {} },
    skirts: [{ wearer: 'Robin', body, cut: { kind: 'gored', gores: 6 } }],
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.errors));
  const plan = planClass(parsed.request);
  const [cloth] = plan.cloths;
  if (!cloth) throw new Error('no cloth');
  expect(cloth.ways.find(({ kind }) => kind === 'double fold')?.fits).toBe(false);
  const speaker = await speakerOf(parsed.request);
  const notes: string[] = [];
  const progress = progressOn(
    { note: (text) => notes.push(text), showsProgress: false, width: 80 },
    speaker,
    5,
  );
  progress.show(plan, { cloth: cloth.key, way: 'double fold' });
  progress.show(plan, { cloth: cloth.key, way: 'open' });
  expect(notes).toEqual([`0 of 5 s · red, double fold · to buy: ${speaker.value(cloth.chosen.toBuy)}\n`]);
});
