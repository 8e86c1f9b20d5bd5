import { writeFileSync } from 'node:fs';
import { test } from 'vitest';
import { planOf, requestOf } from '../testing/requests.ts';
import { speakerOf } from '../words/index.ts';
import { layPicture } from '../paper/pictures/layPicture.ts';
import { writeSvg } from '../paper/index.ts';
import { fonts } from '../paper/testing/fonts.ts';
import { mm } from '../units/index.ts';
import { looks } from './zz-looks.ts';

test.each(Object.entries(looks))('%s', (name, raw) => {
  let plan;
  try {
    plan = planOf(raw as never);
  } catch (e) {
  console.log(name, String(e).slice(0, 600));
    return;
  }
  const speaker = speakerOf(requestOf(raw as never));
    console.log(plan.supplies.items.map((i) => `${i.what} ${i.width ? speaker.value(i.width) : ''} need ${i.need ? speaker.value(i.need) : ''} buy ${speaker.value(i.buy)}`).slice(0, 9).join('; '), plan.lining && plan.lining.chosen.kind + plan.lining.chosen.clothAfter.value);
  if (plan.lining) writeFileSync(`/tmp/lay/${name}-lining.svg`, writeSvg(layPicture(plan.lining.chosen, speaker, 'large', { width: mm(180), height: mm(110) }), { fonts }));
  for (const lay of plan.cloth.lays) {
    const d = layPicture(lay, speaker, 'large', { width: mm(180), height: mm(lay.more.length ? 150 : 110) });
    writeFileSync(`/tmp/lay/${name}-${lay.kind.replaceAll(' ', '-')}.svg`, writeSvg(d, { fonts }));
  }
  console.log(
    name,
    plan.skirt.panels.map((p) => p.name).join(','),
    '|',
    plan.skirt.parts.map((p) => `${p.count}×${p.name}/${p.cloth}`).join(','),
    '\n  ',
    plan.cloth.lays
      .map(
        (l) =>
          `${l === plan.cloth.chosen ? '*' : ''}${l.kind}: ${l.fits ? '' : 'NO '}${Math.round(l.clothAfter.value)} (${l.table.pieces.length}+${l.more.map((m) => `${m.where}:${m.pieces.length}`).join(',')}) ${l.notices.map((n) => n.code).join(' ')}`,
      )
      .join('\n   '),
  );
});
