import { z } from 'zod';
import { colourField, preset, type Colour, type Fields } from '../fields/index.ts';
import { mm, type Mm } from '../units/index.ts';

/** Most rows a request may ask for: a bound on slips of the key, far above any skirt. */
export const MOST_ROWS = 60;

const ribbonWidth = { least: mm(2), most: mm(200) };
/** What lies along the skirt: where rows begin and end, and the gaps between them. */
export const alongLimits = { least: mm(0), most: mm(1800) };

/** How the gaps between bands run from the hem up. */
export const spacings = ['even', 'growing', 'shrinking', 'by hand'] as const;
export type Spacing = (typeof spacings)[number];

/** Which panels carry rows, and whether each strip is sewn on its panel or one goes round the skirt. */
export const placements = ['front and back', 'front', 'back', 'round'] as const;
export type Placement = (typeof placements)[number];

/** The three ways to hold a ribbon before it is stitched. */
export const holds = ['pins', 'glue', 'spray'] as const;
export type Hold = (typeof holds)[number];

/** Ways to keep cut ribbon ends from fraying until the side seam holds them. */
export const endSeals = ['sealant', 'flame', 'none'] as const;
export type EndSeal = (typeof endSeals)[number];

const rowOptions = (fields: Fields) =>
  z.strictObject({ colour: colourField.optional(), width: fields.length(ribbonWidth).optional() });

const bandOptions = (fields: Fields) =>
  z.union([rowOptions(fields), z.strictObject({ touching: z.array(rowOptions(fields)).min(2).max(12) })]);

/** Six rows of ⅝ in, each colour in turn. Common practice, no source. */
export const ribbonOptions = (fields: Fields) =>
  z
    .strictObject({
      /** A number of equal rows, or each band from the hem up. */
      rows: z.union([z.int().min(0).max(MOST_ROWS), z.array(bandOptions(fields)).max(MOST_ROWS)]).prefault(6),
      colours: z.array(colourField).min(1).max(24).prefault(['teal', 'gold']),
      width: fields.usual(ribbonWidth, { inches: '5/8 in', metric: '1.6 cm' }),
      /** Lower edge of the lowest row and upper edge of the highest, both from the finished hem. */
      lowest: fields.usual(alongLimits, { inches: '2 in', metric: '5 cm' }),
      highest: fields.length(alongLimits).optional(),
      spacing: z.enum(spacings).default('even'),
      /** Each gap over the one below it, where gaps grow or shrink. */
      growth: z.number().min(1).max(3).default(1.25),
      gaps: z.array(fields.length(alongLimits)).max(MOST_ROWS).optional(),
      /** Ribbon beyond the panel at each end. */
      overhang: fields.usual({ least: mm(0), most: mm(150) }, { inches: '1/2 in', metric: '1.2 cm' }),
      where: z.enum(placements).default('front and back'),
      /** How a ribbon is held until it is stitched, and how its cut ends are kept from fraying. */
      hold: z.enum(holds).default('pins'),
      ends: z.enum(endSeals).default('sealant'),
      /** Whether the ribbon was washed, or is of a kind that does not change. */
      washed: z.boolean().default(true),
      /** Difference of a ribbon's edges on a curve that eases unseen, and with steam and care. */
      easesUnseen: fields.percent(0, 20).prefault(2),
      easesWithCare: fields.percent(0, 20).prefault(5),
    })
    .superRefine((chosen, context) => {
      if (chosen.spacing !== 'by hand') return;
      const bands = typeof chosen.rows === 'number' ? chosen.rows : chosen.rows.length;
      const expected = Math.max(0, bands - 1);
      const given = chosen.gaps?.length ?? 0;
      if (given !== expected)
        context.addIssue({
          code: 'custom',
          path: ['gaps'],
          input: chosen.gaps,
          params: { fault: 'gaps', expected, given },
        });
    });

export type RibbonOptions = z.infer<ReturnType<typeof ribbonOptions>>;

/** One ribbon of a band. */
export interface BandRow {
  readonly colour: Colour;
  readonly width: Mm;
}

/** Rows that touch, from the hem up; a single row is a band of one. */
export type Band = readonly BandRow[];

/** The composition as a plain list of bands, every colour and width filled in. */
export function bandsOf(chosen: RibbonOptions): Band[] {
  let turn = 0;
  const nextColour = (): Colour => chosen.colours[turn++ % chosen.colours.length] ?? preset('teal');
  const row = (given: { colour?: Colour | undefined; width?: Mm | undefined }): BandRow => ({
    colour: given.colour ?? nextColour(),
    width: given.width ?? chosen.width,
  });
  if (typeof chosen.rows === 'number') return Array.from({ length: chosen.rows }, () => [row({})]);
  return chosen.rows.map((band) => ('touching' in band ? band.touching.map(row) : [row(band)]));
}
