/** Everything that can grow. */
import { drawings } from './drawings';
import { grade } from './grade';
import { ground } from './ground';
import type { Growth } from './growth';
import { joints } from './joints';
import { steel } from './steel';
import { volumes } from './volumes';

/** The sizes that are counted in the input, or that a length in it implies. */
export const SIZES: readonly Growth[] = [...volumes, ...ground, ...grade, ...joints, ...steel, ...drawings];
