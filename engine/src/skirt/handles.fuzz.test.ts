import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changed } from '../request/index.ts';
import { codesOf, draftOf, samples } from '../testing/drafts.ts';
import { anyCircle, anyFlared, anyGathered, anyGored, anyTiered, anyWrap } from '../testing/cuts.ts';
import { anyRequest, type RawRequest } from '../testing/requests.ts';
import { mm } from '../units/index.ts';
import { skirtHandles } from './index.ts';

/** A waist that names no kind would be read as the cut's usual one. */
const anySkirt = fc
  .tuple(anyRequest, fc.oneof(anyFlared, anyGathered, anyCircle, anyTiered, anyGored, anyWrap))
  .map(([{ body = {}, mark, measure, waist, extras, cloth }, cut]): RawRequest => {
    const named = waist && { waist: { kind: 'turned casing', ...waist } };
    return { body, mark, measure, cut, ...named, ...(extras && { extras }), ...(cloth && { cloth }) };
  });

test(
  'whatever is moved lies within a step of where it was brought',
  samples(
    anySkirt,
    draftOf,
    150,
  )(({ raw, context, request, skirt }) => {
    // Of widths that are cut down some quarters can't be had: the plan's own test allows for them.
    const isCutDown = request.cut.kind === 'gathered' && !request.cut.wholeWidths;
    for (const { path, handle } of skirtHandles(context, request, skirt)) {
      const { name, least, most, step, from = 0, writes } = handle;
      if (isCutDown && name === 'waistMark') continue;
      const [first, last] = [
        Math.ceil((least - from) / step - 1e-6),
        Math.floor((most - from) / step + 1e-6),
      ];
      if (first > last) continue;
      for (const share of [0, 0.4, 1]) {
        const wish = mm(from + Math.round(first + share * (last - first)) * step);
        const { lengths = {}, numbers = {} } = writes(wish);
        const written = [
          ...Object.entries(lengths).map(([key, value]) => [key, `${value.toFixed(6)} mm`] as const),
          ...Object.entries(numbers),
        ];
        const then = draftOf(
          changed(
            raw,
            written.map(([key, value]) => ({ path: [...path, key], value })),
          ),
        );
        const now = skirtHandles(then.context, then.request, then.skirt).find(
          (each) => each.handle.name === name,
        );
        if (!now || Math.abs(now.handle.value - wish) > step + 1e-6)
          throw new Error(`${name}: ${String(wish)} wished, ${String(now?.handle.value)} came of it`);
      }
    }
  }),
  60_000,
);

const held: Readonly<Record<string, readonly string[]>> = {
  hemMark: ['skirt.hemRoundWidened', 'skirt.hemRoundCapped', 'skirt.frontHemHeld'],
  overlap: ['skirt.overlapHeld'],
};

test(
  'at both ends of a gored or wrapped hem, and of an overlap, the cut keeps what is written',
  samples(
    fc
      .tuple(anyRequest, fc.oneof(anyGored, anyWrap))
      .map(([{ body, mark, measure }, cut]): RawRequest => ({ body: { ...body }, mark, measure, cut })),
    (raw) => ({ raw, drafted: draftOf(raw) }),
    200,
  )(({ raw, drafted: { context, request, skirt } }) => {
    for (const { handle } of skirtHandles(context, request, skirt)) {
      const own = held[handle.name];
      if (!own) continue;
      // What is held already, as a front gore's hem on a skirt that can't flare, has no ends to go to.
      if (handle.least > handle.most) continue;
      for (const end of [handle.least, handle.most]) {
        const { lengths = {} } = handle.writes(mm(end));
        const written = Object.entries(lengths).map(([key, length]) => [key, `${String(length)} mm`]);
        const codes = codesOf(
          draftOf({ ...raw, cut: { ...raw.cut, ...(Object.fromEntries(written) as object) } }).skirt,
        );
        const before = codesOf(skirt);
        expect(codes.filter((code) => own.includes(code) && !before.includes(code))).toEqual([]);
      }
    }
  }),
);
