/** A stream of numbers, uniform over [0, 1). */
export type Random = () => number;

/**
 * A repeatable stream of uniform random numbers: the same seed gives the same numbers on every
 * machine, so a result does not flicker while a page is read.
 *
 * xoshiro128** (32-bit), its state filled from the seed by splitmix32; each number is 32 bits over
 * 2³². Its period, 2¹²⁸ − 1, exceeds any number of trials used here. No range: any seed.
 *
 * @param seed any whole number; only its last 32 bits count
 * @throws nothing
 * @source blackman-vigna-2021
 */
export function randomFrom(seed: number): Random {
  let fill = seed | 0;
  const next = () => {
    fill = (fill + 0x9e3779b9) | 0;
    let z = fill ^ (fill >>> 16);
    z = Math.imul(z, 0x21f0aaad);
    z ^= z >>> 15;
    z = Math.imul(z, 0x735a2d97);
    return z ^ (z >>> 15);
  };
  let [a, b, c, d] = [next(), next(), next(), next()] as [number, number, number, number];
  return () => {
    const five = Math.imul(b, 5);
    const result = Math.imul((five << 7) | (five >>> 25), 9);
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    return (result >>> 0) / 4294967296;
  };
}

/**
 * A stream of standard normal numbers from a uniform one, two at a time by the Box–Muller
 * transform: √(−2 ln r₁) times the sine and the cosine of 2π r₂. No range: a transformation.
 *
 * @throws nothing
 * @source jcgm-101 Annex C.4 (from memory)
 */
export function normalFrom(random: Random): Random {
  let spare = Number.NaN;
  return () => {
    if (!Number.isNaN(spare)) {
      const kept = spare;
      spare = Number.NaN;
      return kept;
    }
    // 1 − r lies in (0, 1], whose logarithm is finite.
    const radius = Math.sqrt(-2 * Math.log(1 - random()));
    const turn = 2 * Math.PI * random();
    spare = radius * Math.sin(turn);
    return radius * Math.cos(turn);
  };
}
