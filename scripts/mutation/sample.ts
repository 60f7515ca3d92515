/** Drawing mutants by a seed, and what a sample says of all of them. */

/** Numbers from 0 to 1 that are the same for the same seed. */
export function numbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** So many of the list, each as likely as the other, in the order drawn. */
export function drawn<T>(list: readonly T[], most: number, seed: number): T[] {
  const next = numbers(seed);
  const left = [...list];
  for (let i = 0; i < Math.min(most, left.length); i += 1) {
    const j = i + Math.floor(next() * (left.length - i));
    [left[i], left[j]] = [left[j] as T, left[i] as T];
  }
  return left.slice(0, most);
}

/** The 95 % interval of a share by Wilson's score (1927), with the correction for a finite whole. */
export function interval(hits: number, of: number, whole: number): readonly [low: number, high: number] {
  if (of === 0) return [0, 1];
  const share = hits / of;
  if (of >= whole) return [share, share];
  // A sample without putting back tells as much as a larger one with: n (N - 1) / (N - n).
  const n = (of * (whole - 1)) / (whole - of);
  const z = 1.959_963_984_540_054;
  const middle = (share + (z * z) / (2 * n)) / (1 + (z * z) / n);
  const half = (z / (1 + (z * z) / n)) * Math.sqrt((share * (1 - share)) / n + (z * z) / (4 * n * n));
  return [Math.max(0, middle - half), Math.min(1, middle + half)];
}
