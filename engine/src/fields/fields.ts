import { z } from 'zod';
import { isCurrency, parseLength, type LengthUnit, type MeasureSystem, type Mm } from '../units/index.ts';

/** Why a value was refused: data; the words are in the catalogues. */
export type FieldFault =
  | { readonly fault: 'length'; readonly reason: string }
  | { readonly fault: 'lengthRange'; readonly least: Mm; readonly most: Mm }
  | { readonly fault: 'percent' }
  | { readonly fault: 'percentRange'; readonly least: number; readonly most: number }
  | { readonly fault: 'colour'; readonly known: string }
  | { readonly fault: 'currency' }
  | { readonly fault: 'price' }
  | { readonly fault: 'date' };

export interface LengthLimits {
  readonly least: Mm;
  readonly most: Mm;
}

/** The trade's usual figure in each system of measure: a metric maker turns 2 cm, not ¾ in. */
export interface UsualLength {
  readonly inches: string;
  readonly metric: string;
}

type LengthField = z.ZodType<Mm, string | number>;
type RatioField = z.ZodType<number, string | number>;

/** How the values of a request are read, once its units are known. Every room's options are built of these. */
export interface Fields {
  readonly length: (limits: LengthLimits) => LengthField;
  readonly usual: (limits: LengthLimits, usual: UsualLength) => z.ZodPrefault<LengthField>;
  readonly percent: (least: number, most: number) => RatioField;
  readonly system: MeasureSystem;
}

const report = (context: z.RefinementCtx, input: unknown, fault: FieldFault): typeof z.NEVER => {
  context.addIssue({ code: 'custom', input, params: { ...fault } });
  return z.NEVER;
};

const written = z.union([z.string(), z.number()]);

export function fieldsFor(bareUnit: LengthUnit | undefined, system: MeasureSystem): Fields {
  const length = ({ least, most }: LengthLimits): LengthField =>
    written
      .transform((text, context) => {
        const parsed = parseLength(text, bareUnit);
        if (!parsed.ok) return report(context, text, { fault: 'length', reason: parsed.fault });
        if (parsed.value < least || parsed.value > most)
          return report(context, text, { fault: 'lengthRange', least, most });
        return parsed.value;
      })
      .meta({
        reads: 'length',
        description: 'A length: "28 3/8 in", "72.5 cm"; a bare number takes the document\'s units.',
      });
  return {
    system,
    length,
    usual: (limits, usual) => length(limits).prefault(usual[system]),
    percent: (least, most) =>
      written
        .transform((text, context) => {
          const value = typeof text === 'number' ? text : percentIn(text);
          if (!Number.isFinite(value)) return report(context, text, { fault: 'percent' });
          if (value < least || value > most)
            return report(context, text, { fault: 'percentRange', least, most });
          return value / 100;
        })
        .meta({ reads: 'percent', description: 'A percentage: 5 or "5 %".' }),
  };
}

function percentIn(text: string): number {
  const match = /^\s*(\d+(?:[.,]\d+)?)\s*%?\s*$/.exec(text);
  return match?.[1] === undefined ? NaN : Number(match[1].replace(',', '.'));
}

export const currencyField = z
  .string()
  .transform((code, context) => (isCurrency(code) ? code : report(context, code, { fault: 'currency' })))
  .meta({ description: 'ISO 4217 code, such as CAD.' });

/** An amount of money as written; its currency is known only beside it, so it is read by `parseMoney` there. */
export const priceField = z
  .union([z.number().nonnegative(), z.string()])
  .transform((text, context) =>
    /^\s*\d{1,7}([.,]\d{1,2})?\s*$/.test(String(text))
      ? String(text).trim().replace(',', '.')
      : report(context, text, { fault: 'price' }),
  )
  .meta({ description: 'A price: 12.5 or "12,50".' });

/** The kind that is meant where none is written: `kind` may be left out of its options. */
export const usualKind = <Kind extends string>(kind: Kind) =>
  z
    .literal(kind)
    .optional()
    .transform(() => kind);
