import { test } from 'vitest';
import { requestOf } from '../testing/requests.ts';
import { planSkirt } from '../plan/index.ts';
import { layAll } from './index.ts';
import { unlike } from './testing/unlike.ts';
const time = (name: string, f: () => unknown, n = 200) => {
  for (let i = 0; i < 50; i++) f();
  const t: number[] = [];
  for (let i = 0; i < n; i++) { const a = performance.now(); f(); t.push(performance.now() - a); }
  t.sort((a, b) => a - b);
  console.log(name, t[n >> 1]!.toFixed(3), t[Math.floor(n * 0.95)]!.toFixed(3));
};
test('time', () => {
  for (const [name, skirt] of Object.entries(unlike)) for (const width of ['44 in', '60 in']) {
    const { cloth } = requestOf({ cloth: { width } });
    time(`lay ${name} ${width}`, () => layAll(skirt, cloth));
  }
  for (const raw of [{}, { cut: { kind: 'circle', fraction: 'full', pieces: 4 }, waist: { kind: 'separate casing' }, cloth: { width: '60 in' } }, { cut: { kind: 'tiered', tiers: 5 }, waist: { kind: 'plain waistband' }, extras: { pockets: {}, lining: {} } }, { cut: { kind: 'gored', gores: 10 }, waist: { kind: 'plain waistband' }, extras: { pockets: {} } }]) {
    let request; try { request = requestOf(raw); } catch (e) { console.log(JSON.stringify(raw), String(e).slice(0, 300)); continue; }
    const plan = planSkirt(request);
    time('plan ' + JSON.stringify(raw), () => planSkirt(request));
    time('  its lays', () => layAll(plan.skirt, request.cloth));
  }
});
