import { test } from 'vitest';
import { writeFileSync } from 'node:fs';
import { planOf } from '../../testing/requests.ts';
import { speakerOf } from '../../words/index.ts';
import { writeSvg } from '../svg/index.ts';
import { panelPicture } from './panel.ts';
import { wornPicture } from './worn/index.ts';
const all = {
  gored: { cut: { kind: 'gored', front: 1.4 }, waist: { kind: 'plain waistband' } },
  tiered: { cut: { kind: 'tiered', tiers: 3 }, waist: { kind: 'turned casing' } },
  wrap: { cut: { kind: 'wrap' } },
  extras: { waist: { kind: 'separate casing' }, extras: { slits: {}, pockets: {}, tucks: { count: 2 } } },
  circle: { cut: { kind: 'circle', fraction: 'full' }, waist: { kind: 'stretch band' } },
};
test('x', () => {
  for (const [name, raw] of Object.entries(all)) {
    const plan = planOf(raw);
    for (const [kind, pic] of [['flat', panelPicture(plan, speakerOf(plan.request))], ['worn', wornPicture(plan, speakerOf(plan.request), 'front', { shown: 'closer' })]] as const) {
      const svg = writeSvg(pic.drawing as never, {} as never) as unknown as string;
      const dots = pic.handles.map(({ name: n, at, towards }) => `<g opacity=".75"><circle cx="${at.x}" cy="${at.y}" r="3" fill="#2f4374" stroke="white" stroke-width=".5"/><line x1="${at.x}" y1="${at.y}" x2="${at.x + towards.x * 6}" y2="${at.y + towards.y * 6}" stroke="red" stroke-width=".6"/><text x="${at.x + 3.2}" y="${at.y + 1}" font-size="2.6" fill="#c00">${n}</text></g>`).join('');
      writeFileSync(`/tmp/h/${name}.${kind}.svg`, svg.replace('</svg>', dots + '</svg>'));
    }
  }
});
