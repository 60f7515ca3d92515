/** Random numbers that come the same for the same seed. */

/** What a relation needs of chance. */
export interface Chance {
  /** A number from 0 up to 1. */
  next(): number;
  /** A whole number from 0 up to `n`. */
  below(n: number): number;
  /** One of a list. */
  pick<T>(items: readonly T[]): T;
  /** The list in another order. */
  shuffled<T>(items: readonly T[]): T[];
}

/** A generator by the multiplication of Lehmer, `x = 48271 x mod (2^31 − 1)`. */
export function chance(seed: number): Chance {
  const modulus = 2_147_483_647;
  let x = (Math.abs(Math.trunc(seed)) % (modulus - 1)) + 1;
  const next = (): number => {
    x = (x * 48_271) % modulus;
    return (x - 1) / (modulus - 1);
  };
  const below = (n: number): number => Math.floor(next() * n);
  return {
    next,
    below,
    pick: <T>(items: readonly T[]): T => items[below(items.length)] as T,
    shuffled: <T>(items: readonly T[]): T[] => {
      const out = [...items];
      for (let i = out.length - 1; i > 0; i--) {
        const j = below(i + 1);
        [out[i], out[j]] = [out[j] as T, out[i] as T];
      }
      return out;
    },
  };
}
