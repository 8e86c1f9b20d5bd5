import { exampleRequest, parseRequest, planSkirt, speakerFor, usualMark } from '@ribbonwright/engine';
import type { RequestDocument, SkirtPlan } from '@ribbonwright/engine';
import { describe, expect, test } from 'vitest';
import { compared } from './compared.ts';

const speaker = await speakerFor({ language: 'en', measure: 'inches', mark: usualMark('inches') });
function planOf(document: RequestDocument): SkirtPlan {
  const parsed = parseRequest(document);
  if (!parsed.ok) throw new Error(parsed.errors.map(({ path }) => path).join());
  return planSkirt(parsed.request);
}
const example = exampleRequest('en');
const one = planOf(example);

describe('this one or that one', () => {
  test('a skirt does not differ from itself', () => {
    const { differing, same } = compared(one, one, speaker);
    expect(differing).toEqual([]);
    expect(same.length).toBeGreaterThan(8);
  });

  test('without ribbons: the rows, the ribbon, the cost and the time differ, the hem round does not', () => {
    const bare = planOf({ ...example, ribbons: { rows: [] } });
    const { differing, same } = compared(one, bare, speaker);
    const words = speaker.words.table;
    const labels = differing.map(({ label }) => label);
    expect(labels).toEqual(expect.arrayContaining([words.rowsOfRibbon, words.ribbonTotals, words.costInAll]));
    expect(same.map(({ label }) => label)).toContain(words.hemRoundName);
    expect(differing.find(({ label }) => label === words.rowsOfRibbon)).toMatchObject({
      one: '6',
      other: '0',
    });
  });

  test('what neither skirt tells is not asked about', () => {
    const unpriced = planOf({ version: 1, body: { waist: '28 in', hip: '36 in', waistToHem: '33 in' } });
    const { differing, same } = compared(unpriced, unpriced, speaker);
    expect([...differing, ...same].map(({ label }) => label)).not.toContain(speaker.words.table.costInAll);
  });
});
