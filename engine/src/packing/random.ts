/** Numbers that look random and are the same on every machine for the same seed. */
export interface Random {
  /** In [0, 1). */
  readonly next: () => number;
  /** Whole, in [0, below). */
  readonly below: (below: number) => number;
}

/** xoshiro128** (Blackman and Vigna 2018), its state filled from the seed by splitmix32. */
export function randomFrom(seed: number): Random {
  let filling = seed | 0;
  const fill = (): number => {
    filling = (filling + 0x9e3779b9) | 0;
    let z = filling ^ (filling >>> 16);
    z = Math.imul(z, 0x21f0aaad);
    z ^= z >>> 15;
    z = Math.imul(z, 0x735a2d97);
    return z ^ (z >>> 15);
  };
  let a = fill();
  let b = fill();
  let c = fill();
  let d = fill() | 1;
  const rotate = (x: number, by: number): number => (x << by) | (x >>> (32 - by));
  const next = (): number => {
    const result = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
    const t = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= t;
    d = rotate(d, 11);
    return result / 4294967296;
  };
  return { next, below: (below) => Math.floor(next() * below) };
}
