import { z } from 'zod';

/** Colours a maker may call by name. Named by colour alone; none carries a meaning here. */
export const presetColours = {
  red: '#c4242b',
  darkRed: '#7d1a22',
  pink: '#e58aa6',
  orange: '#e0762c',
  gold: '#d6a021',
  yellow: '#f2d13c',
  lightGreen: '#8cc27a',
  green: '#2f7d46',
  darkGreen: '#1d4a33',
  teal: '#14716f',
  turquoise: '#39b2b4',
  lightBlue: '#8fbfe0',
  blue: '#2a5aa8',
  navy: '#1d2c55',
  purple: '#6b3f94',
  plum: '#6f2a52',
  brown: '#6d4526',
  beige: '#dcc8a4',
  white: '#fbfaf6',
  grey: '#8b8a86',
  black: '#1f1d1c',
} as const;

export type PresetColour = keyof typeof presetColours;

/**
 * A colour as it is drawn and as it is called: a preset's name (its words are in the catalogues) or the
 * maker's own words.
 */
export interface Colour {
  readonly hex: string;
  readonly preset: PresetColour | null;
  readonly name: string;
}

/** As a document may write it: `dark red`. */
export const spelled = (name: string): string =>
  name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
const presetNames = Object.keys(presetColours).map(spelled).join(', ');

const isPreset = (text: string): text is PresetColour => Object.hasOwn(presetColours, text);
const HEX = /^#[0-9a-fA-F]{6}$/;

export const preset = (name: PresetColour): Colour => ({ hex: presetColours[name], preset: name, name });

/** Two strips are of one colour when a maker would ask for them by one name at the counter. */
export const colourKey = (colour: Colour): string => `${colour.name} ${colour.hex}`;

/** A colour as a document writes it; read again it is the same. */
export function writtenColour({ hex, preset, name }: Colour): string | { name: string; hex: string } {
  if (preset) return spelled(preset);
  return name === hex ? hex : { name, hex };
}

const named = z.strictObject({ name: z.string().min(1).max(60), hex: z.string().regex(HEX) });

export const colourField: z.ZodType<Colour, string | { name: string; hex: string }> = z
  .union([z.string(), named])
  .transform((value, context): Colour => {
    if (typeof value !== 'string') return { hex: value.hex.toLowerCase(), preset: null, name: value.name };
    const key = value.trim().replace(/\s+(\w)/g, (_, letter: string) => letter.toUpperCase());
    if (isPreset(key)) return preset(key);
    if (HEX.test(value)) return { hex: value.toLowerCase(), preset: null, name: value.toLowerCase() };
    context.addIssue({ code: 'custom', input: value, params: { fault: 'colour', known: presetNames } });
    return z.NEVER;
  })
  .meta({
    description: `A colour: one of ${presetNames}; "#14716f"; or {"name": "sea", "hex": "#14716f"}.`,
  });

/** Reads a colour as a document writes it; null where it is none. */
export function parseColour(written: unknown): Colour | null {
  const parsed = colourField.safeParse(written);
  return parsed.success ? parsed.data : null;
}
