import { mm, type Mm } from '../../units/index.ts';

/** Whose growth a child's is read against. */
export const growthReferences = ['girls', 'boys'] as const;
export type GrowthReference = (typeof growthReferences)[number];

/** A spread of heights at one age: Box-Cox power, median, coefficient of variation (Cole's LMS). */
export interface Lms {
  readonly L: number;
  readonly M: Mm;
  readonly S: number;
}

/** A row of the reference, at an age in months. */
export interface LmsAt extends Lms {
  readonly ageMonths: number;
}

interface Columns {
  readonly halfMonths: readonly number[];
  readonly L: readonly number[];
  readonly M: readonly number[];
  readonly S: readonly number[];
}

/** Ages that the reference holds, in months: 2 to 20 years. */
export const referenceAges = { least: 24, most: 240 } as const;

/**
 * Stature for age, standing, 24 to 240 months. Source: CDC/NCHS, CDC Growth Charts, United States (2000), `statage`; public domain
 * in the United States. Method: Kuczmarski et al. (2002), Vital and Health Statistics 11(246).
 *
 * Of the 218 published ages a sex these are the ones that are needed: straight lines between them give every published percentile
 * (P3 to P97) at every published age within 0.03 cm, and each line of growth keeps rising. L to 0.001, M to 0.01 cm,
 * S to 0.00001; ages in half months. `growth.outside.test.ts` holds them against the published file.
 */
const published: Readonly<Record<GrowthReference, Columns>> = {
  girls: {
    halfMonths: [
      48, 55, 59, 63, 67, 71, 81, 107, 133, 147, 159, 171, 183, 195, 207, 221, 235, 245, 253, 261, 267, 273,
      279, 285, 291, 297, 303, 309, 315, 321, 327, 333, 339, 345, 353, 363, 375, 393, 423, 473, 480,
    ],
    L: [
      1072, 971, 868, 762, 664, 580, 429, 100, -159, -225, -233, -203, -143, -66, 16, 111, 221, 337, 469, 644,
      797, 958, 1112, 1240, 1327, 1363, 1348, 1294, 1215, 1130, 1052, 989, 943, 914, 896, 897, 918, 961, 1029,
      1101, 1108,
    ],
    M: [
      8498, 8800, 8958, 9105, 9240, 9363, 9652, 10389, 11149, 11559, 11901, 12230, 12540, 12829, 13100, 13397,
      13690, 13912, 14104, 14314, 14484, 14662, 14846, 15029, 15207, 15373, 15524, 15656, 15770, 15866, 15946,
      16011, 16064, 16108, 16154, 16197, 16234, 16271, 16306, 16332, 16334,
    ],
    S: [
      4079, 4150, 4169, 4180, 4189, 4197, 4241, 4373, 4465, 4501, 4527, 4550, 4574, 4602, 4642, 4712, 4816,
      4908, 4981, 5037, 5056, 5046, 5003, 4926, 4823, 4703, 4578, 4459, 4352, 4262, 4189, 4132, 4089, 4057,
      4028, 4005, 3989, 3978, 3970, 3964, 3964,
    ],
  },
  boys: {
    halfMonths: [
      48, 49, 53, 57, 61, 67, 73, 83, 95, 113, 127, 143, 167, 183, 195, 205, 217, 231, 257, 269, 279, 287,
      295, 303, 313, 321, 329, 335, 343, 349, 355, 361, 367, 373, 381, 389, 397, 405, 415, 425, 437, 451, 469,
      480,
    ],
    L: [
      942, 1007, 681, 408, 174, -124, -391, 223, 758, 1196, 1277, 1163, 786, 551, 442, 405, 416, 469, 513,
      470, 427, 417, 456, 567, 816, 1085, 1382, 1601, 1861, 2017, 2133, 2205, 2235, 2225, 2162, 2056, 1927,
      1791, 1630, 1491, 1361, 1259, 1188, 1167,
    ],
    M: [
      8645, 8686, 8842, 8991, 9133, 9336, 9527, 9840, 10194, 10699, 11081, 11512, 12151, 12563, 12861, 13100,
      13373, 13676, 14207, 14458, 14683, 14879, 15093, 15326, 15641, 15903, 16165, 16354, 16588, 16746, 16889,
      17014, 17123, 17216, 17318, 17399, 17463, 17513, 17561, 17597, 17628, 17653, 17675, 17685,
    ],
    S: [
      4032, 4040, 4072, 4091, 4097, 4084, 4053, 4078, 4125, 4217, 4290, 4360, 4435, 4480, 4520, 4562, 4622,
      4701, 4852, 4913, 4957, 4988, 5013, 5031, 5033, 5013, 4966, 4915, 4827, 4751, 4670, 4589, 4510, 4436,
      4348, 4273, 4211, 4161, 4115, 4082, 4058, 4042, 4036, 4037,
    ],
  },
};

const rowsOf = ({ halfMonths, L, M, S }: Columns): readonly LmsAt[] =>
  halfMonths.map((age, at) => ({
    ageMonths: age / 2,
    L: (L[at] ?? NaN) / 1000,
    M: mm((M[at] ?? NaN) / 10),
    S: (S[at] ?? NaN) / 1e5,
  }));

/** The reference's rows by age. */
export const growthRows: Readonly<Record<GrowthReference, readonly LmsAt[]>> = {
  girls: rowsOf(published.girls),
  boys: rowsOf(published.boys),
};
