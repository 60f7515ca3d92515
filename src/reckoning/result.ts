/** What a calculation gives back: figures with their working, assumptions, cautions and sources. */
import { Quantity } from '../quantity/quantity';
import type { Assumption, Caution, FigureSet, ResultParts, Step } from './parts';
import type { Source } from './source';
import { worksheet } from './worksheet';

export type * from './parts';

/** A result: frozen throughout, and printed by Node as a worksheet. */
export interface Result<F extends FigureSet> extends ResultParts<F> {
  /** The worksheet, as Node's REPL prints it. */
  toString(): string;
}

/** Freeze plain data all the way down; what is frozen already is left alone. */
function frozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || value instanceof Quantity || Object.isFrozen(value)) {
    return value;
  }
  for (const name in value) {
    const part = value[name];
    if (typeof part === 'object') frozen(part);
  }
  return Object.freeze(value);
}

class Sheet<F extends FigureSet> implements Result<F> {
  readonly id: string;
  readonly title: string;
  readonly version: number;
  readonly figures: F;
  readonly working: readonly Step[];
  readonly assumed: readonly Assumption[];
  readonly cautions: readonly Caution[];
  readonly sources: readonly Source[];

  constructor(parts: ResultParts<F>) {
    this.id = parts.id;
    this.title = parts.title;
    this.version = parts.version;
    this.figures = frozen(parts.figures);
    this.working = frozen(parts.working);
    this.assumed = frozen(parts.assumed);
    this.cautions = frozen(parts.cautions);
    this.sources = frozen(parts.sources);
    Object.freeze(this);
  }

  toString(): string {
    return worksheet(this);
  }

  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return worksheet(this);
  }
}

/** Freeze the parts into a result. */
export function makeResult<F extends FigureSet>(parts: ResultParts<F>): Result<F> {
  return new Sheet(parts);
}
