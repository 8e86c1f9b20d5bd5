import { z } from 'zod';

/**
 * The same schema where any field of any group may be left out: what is not written here may be written elsewhere. A
 * choice of shapes is told apart by its kind where that is written, else any of them will do. Lists are taken whole, and
 * what fields ask of one another is asked once they are put together.
 */
export function partly(schema: z.ZodType): z.ZodType {
  if (schema instanceof z.ZodObject)
    return z.strictObject(
      Object.fromEntries(
        Object.entries(schema.shape).map(([key, field]) => [key, partly(field as z.ZodType).optional()]),
      ),
    );
  if (schema instanceof z.ZodUnion) return z.union(schema.options.map((each) => partly(each as z.ZodType)));
  const { innerType, defaultValue } = schema.def as {
    readonly innerType?: z.ZodType;
    readonly defaultValue?: unknown;
  };
  if (schema instanceof z.ZodOptional && innerType) return partly(innerType).optional();
  if (schema instanceof z.ZodPrefault && innerType && hasParts(innerType))
    return partly(innerType).prefault(defaultValue);
  return schema;
}

const hasParts = (schema: z.ZodType): boolean =>
  schema instanceof z.ZodObject || schema instanceof z.ZodUnion;
