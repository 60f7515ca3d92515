/** Everything that can grow. */
import { drawings } from './drawings';
import { grade } from './grade';
import { ground } from './ground';
import type { Growth } from './growth';
import { joints } from './joints';
import { listsBut } from './lists';
import { steel } from './steel';
import { volumes } from './volumes';

const named: readonly Growth[] = [...volumes, ...ground, ...grade, ...joints, ...steel, ...drawings];

/** The sizes that are counted in the input, or that a length in it implies; where none are named, its lists. */
export const SIZES: readonly Growth[] = [...named, ...listsBut(new Set(named.map(({ of }) => of)))];
