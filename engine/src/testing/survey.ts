// The people of two open surveys, as bodies to draft for. ANSUR II: U.S. Army, 2010-2012 (waist and waist to floor at the navel).
// NHANES 2017-2018 (CDC/NCHS): everyone of 2 years and over with a waist (at the hip bone). Synthetic: finished length, a share of
// height; for NHANES waist to floor, 0.60 of height, and hips under 12 years, 1.0 to 1.2 of the waist. The two are told apart, never pooled.
import { numberIn, readCsv, sharedData } from './csv.ts';

export interface Person {
  readonly waist: number;
  readonly hip: number;
  readonly height: number;
  readonly waistToFloor: number;
  readonly age: number;
}

const army = { women: sharedData('ansur2/ansur2_female.csv'), men: sharedData('ansur2/ansur2_male.csv') };
const nation = sharedData('nhanes-2017-2018/bmx_j.csv');

/** Whether the surveys lie beside the checkout. */
export const surveysThere = army.women !== null && army.men !== null && nation !== null;

const soldiers = (text: string | null): readonly Person[] =>
  readCsv(text ?? '').map((row) => ({
    waist: numberIn(row, 'waistcircumference') ?? NaN,
    hip: numberIn(row, 'buttockcircumference') ?? NaN,
    height: numberIn(row, 'stature') ?? NaN,
    waistToFloor: numberIn(row, 'waistheightomphalion') ?? NaN,
    age: numberIn(row, 'Age') ?? NaN,
  }));

export const armyWomen = soldiers(army.women);
export const armyMen = soldiers(army.men);

const HIP_SHARES = [1, 1.1, 1.2];
export const people: readonly Person[] = readCsv(nation ?? '').flatMap((row, i): Person[] => {
  const age = numberIn(row, 'RIDAGEYR') ?? NaN;
  const [height, waist, hip] = ['BMXHT', 'BMXWAIST', 'BMXHIP'].map((name) => numberIn(row, name) ?? NaN);
  if (!(age >= 2) || !(height ?? NaN) || !(waist ?? NaN)) return [];
  const round = 10 * (waist ?? NaN);
  const measured = 10 * (hip ?? NaN);
  if (Number.isNaN(measured) && age >= 12) return [];
  return [
    {
      age,
      waist: round,
      hip: Number.isNaN(measured) ? Math.max(300, round * (HIP_SHARES[i % 3] ?? 1)) : measured,
      height: 10 * (height ?? NaN),
      waistToFloor: 6 * (height ?? NaN),
    },
  ];
});

const LENGTHS = [0.25, 0.31, 0.37, 0.43, 0.49, 0.55];
/** So many of the lengths for the person at `i`, from short to long as one goes on. */
export const lengthsOf = (i: number, count: number) =>
  Array.from(
    { length: count },
    (_, k) => LENGTHS[(i + k * (LENGTHS.length / count)) % LENGTHS.length] ?? NaN,
  );

const mm = (value: number) => `${value.toFixed(1)} mm`;
export const bodyOf = (person: Person, length: number) => ({
  waist: mm(person.waist),
  hip: mm(person.hip),
  height: mm(person.height),
  waistToFloor: mm(person.waistToFloor),
  waistToHem: mm(length * person.height),
  age: person.age,
});
