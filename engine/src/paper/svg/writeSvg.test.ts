import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { arc, point } from '../../geometry/index.ts';
import { inches, mm, radians } from '../../units/index.ts';
import {
  arrow,
  circle,
  dimension,
  drawing,
  group,
  label,
  place,
  rectangle,
  stroke,
  type Drawing,
} from '../drawing/index.ts';
import { fonts } from '../testing/fonts.ts';
import { readXml } from '../testing/xml.ts';
import { writeSvg } from './index.ts';

const panel = (words = 'hem'): Drawing =>
  drawing({
    width: inches(8.5),
    height: mm(120),
    title: `Panel & ${words}`,
    description: `A panel <${words}>`,
    marks: [
      rectangle(10, 10, 60, 30, { fill: '#f2d13c', pattern: 'dots' }),
      stroke([arc(point(50, 50), mm(33.333333), radians(0.3), radians(-2 * Math.PI + 0.1))], {
        dash: 'chalk',
      }),
      circle(point(20, 20), mm(4)),
      arrow(point(0, 0), point(20, 20)),
      dimension({ from: point(0, 0), to: point(0, 60), text: words, offset: mm(5) }),
      group('rows "1"', [label(point(3, 4), words, { bold: true, align: 'middle' })], {
        placement: { dx: mm(1), scale: 0.5, angle: radians(Math.PI / 6) },
      }),
    ],
  });

describe('SVG', () => {
  test('is in millimetres at true size', () => {
    expect(writeSvg(panel())).toContain('width="215.9mm" height="120mm" viewBox="0 0 215.9 120"');
  });

  test('is one image, named and described by its own title and description', () => {
    const svg = writeSvg(panel(), { id: 'front' });
    expect(svg).toContain('role="img" aria-labelledby="front-title front-desc"');
    expect(svg).toContain('<title id="front-title">Panel &amp; hem</title>');
    expect(svg).toContain('<desc id="front-desc">A panel &lt;hem&gt;</desc>');
  });

  test('is well formed whatever the words, live or as outlines', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 12 }), (words) => {
        readXml(writeSvg(panel(words)));
        readXml(writeSvg(panel(words), { fonts }));
      }),
      { numRuns: 25 },
    );
  });

  test('has no number with more than four decimals, but for scales; none with an exponent', () => {
    const data = writeSvg(panel(), { fonts }).replace(/scale\([^)]*\)/g, '');
    expect(data.match(/\d\.\d{5,}/g)).toBeNull();
    expect(data.match(/\d[eE][-+]?\d/g)).toBeNull();
    expect(data.match(/-0(?![.\d])/g)).toBeNull();
  });

  test('equal drawings give equal text', () => {
    expect(writeSvg(panel(), { fonts })).toBe(writeSvg(panel(), { fonts }));
  });

  test('with fonts there is no live text, and the words are still there', () => {
    const svg = writeSvg(panel('13½ in'), { fonts });
    expect(readXml(svg)).not.toContain('text');
    expect(svg).toContain('data-text="13½ in"');
    expect(readXml(writeSvg(panel()))).toContain('text');
  });

  test('a full circle is written in pieces and comes back to its start', () => {
    const round = drawing({ ...panel(), marks: [circle(point(20, 20), mm(4))] });
    const data = / d="([^"]*)"/.exec(writeSvg(round))?.[1] ?? '';
    expect(data.startsWith('M24 20A')).toBe(true);
    expect(data.endsWith(' 24 20Z')).toBe(true);
    expect(data.match(/A/g)?.length).toBeGreaterThan(2);
  });

  test('an arc keeps its way round: clockwise on the sheet is a positive sweep', () => {
    const quarter = (sweep: number) =>
      writeSvg(
        drawing({
          ...panel(),
          marks: [stroke([arc(point(0, 0), mm(10), radians(0), radians((sweep * Math.PI) / 2))])],
        }),
      );
    expect(quarter(1)).toContain('d="M10 0A10 10 0 0 1 0 10"');
    expect(quarter(-1)).toContain('d="M10 0A10 10 0 0 0 0 -10"');
  });

  test('what is see-through says so, of area and line; what is not says nothing of it', () => {
    const look = { fill: '#000000', opacity: 0.25 };
    const of = (changes: object) =>
      writeSvg(drawing({ ...panel(), marks: [rectangle(0, 0, 9, 9, changes)] }));
    expect(of(look)).toContain('fill-opacity="0.25"');
    expect(of(look)).toContain('stroke-opacity="0.25"');
    expect(of({ ...look, stroke: null })).not.toContain('stroke-opacity');
    expect(of({ fill: '#000000', opacity: 1 })).toBe(of({ fill: '#000000' }));
    expect(of({ fill: '#000000' })).not.toContain('opacity');
  });

  test('a drawing in a drawing is moved and scaled as a whole', () => {
    const outer = drawing({ ...panel(), marks: [place(panel(), mm(5), mm(7), 0.25)] });
    expect(writeSvg(outer)).toContain('transform="translate(5 7) scale(0.25)"');
  });
});
