import { expect, test } from 'vitest';
import { planOf } from '../../testing/requests.ts';
import { searchPlan } from '../../workshop/index.ts';
import { cheaperThan } from './wayTexts.ts';

test.each([{ pattern: { across: '2 in' } }, { between: '5 mm' }])(
  'beside a lay that keeps %j no way by hand is said to take less',
  (asked) => {
    const cloth = { width: '44 in', step: '1 mm', least: '0 mm', lay: 'lengthwise fold' };
    const plain = planOf({ cloth });
    expect(cheaperThan(plain)).not.toBeNull();
    const plan = planOf({ cloth: { ...cloth, ...asked } });
    expect(cheaperThan(plan)).not.toBeNull();
    const found = searchPlan(plan.request, { seed: 1, evaluations: 2000 });
    const least = Math.min(...found.cloth.lays.map(({ toBuy }) => toBuy.value));
    expect(least).toBeLessThan(found.cloth.chosen.toBuy.value);
    expect(cheaperThan(found)).toBeNull();
  },
);
