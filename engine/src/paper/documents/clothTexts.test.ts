import { expect, test } from 'vitest';
import { classPlanOf, roster } from '../../testing/classes.ts';
import { speakerOf } from '../../testing/speakers.ts';
import { leftTexts, restsOf } from './clothTexts.ts';

test.each(['en', 'fr'] as const)(
  'what is left is told along × across, as its heading says, in %s',
  (language) => {
    const plan = classPlanOf(roster(3, { language }));
    const speaker = speakerOf(plan.request);
    let told = 0;
    for (const { chosen } of plan.cloths) {
      const texts = leftTexts(chosen, speaker);
      const sizes = chosen.tables.flatMap((table) => restsOf(table).map(({ opened }) => opened));
      for (const [i, { along, across }] of sizes.entries()) {
        expect(texts[i]).toMatch(new RegExp(`${speaker.length(along)} × ${speaker.length(across)}$`));
        if (speaker.length(along) !== speaker.length(across)) told++;
      }
    }
    expect(told).toBeGreaterThan(0);
  },
);
