import { z } from 'zod';
import { priceField, type Fields } from '../../fields/index.ts';
import { mm } from '../../units/index.ts';
import { figure } from '../codes.ts';
import type { LiningCloth } from './extra.ts';

/** The cloth of lining and pocket bags, off a bolt of the usual width. Common practice, no source. */
export const liningClothOptions = (fields: Fields) =>
  z.strictObject({
    name: z.string().max(80).default(''),
    width: fields.usual({ least: mm(400), most: mm(4000) }, { inches: '44 in', metric: '112 cm' }),
    selvage: fields.usual({ least: mm(0), most: mm(80) }, { inches: '1/2 in', metric: '1.2 cm' }),
    /** Of one metre or one yard. */
    price: priceField.optional(),
  });

export type LiningClothOptions = z.infer<ReturnType<typeof liningClothOptions>>;

export const liningClothOf = ({ name, width, selvage, price }: LiningClothOptions): LiningCloth => ({
  name,
  width: figure.length(width, 'skirt.liningClothWidth'),
  selvage: figure.length(selvage, 'skirt.liningSelvage'),
  price: price ?? null,
});
