/**
 * What a calculation is: a pure function with a checked door.
 *
 * `calculation(input)` throws {@link InputError} for an input that it cannot work with, and
 * nothing else; `calculation.attempt(input)` gives the error back instead.
 */
import { type Fault, InputError, toldIn } from '../quantity/input-error';
import type { System } from '../quantity/units';
import { aResult } from './faults';
import { type Field, type JsonSchema, parse, schemaOf } from './fields';
import type { Limit } from './limits';
import { unusual } from './ordinary';
import { Pad } from './pad';
import { plainCopy } from './plain';
import type { Misfit } from './read';
import { isRecord } from './record';
import { type Caution, type FigureSet, makeResult, type Result } from './result';
import type { Source } from './source';
import { type StandardSchema, standardSchema } from './standard';
import { type ReckonOptions, settled, systemAsked, systemAsTyped, systemOfInput } from './system';
import { type TakeNote, takesOf } from './takes';

/** The outcome of {@link Calculation.attempt}. */
export type Attempt<F extends FigureSet> =
  | {
      /** It went through. */
      readonly ok: true;
      /** What came out. */
      readonly result: Result<F>;
    }
  | {
      /** It was refused. */
      readonly ok: false;
      /** Why. */
      readonly error: InputError;
    };

/**
 * A calculation: a pure function of its input, with its own description. Called, it throws {@link InputError} when the
 * input cannot be worked with, and nothing else. Its options name the family of units to reckon and show in, where
 * it is not to be that of the input.
 */
export interface Calculation<Input, F extends FigureSet> {
  // Without words of its own, so that an editor shows those of the calculation.
  (input: Input, options?: ReckonOptions): Result<F>;
  /** Reckon without throwing, for input of any kind at run time; what is `unknown` to the compiler is cast. */
  attempt(input: Input, options?: ReckonOptions): Attempt<F>;
  /** Stable id, for front-ends, vectors and bug reports. */
  readonly id: string;
  /** What it works out, in a few words. */
  readonly title: string;
  /** Raised when the figures for an input change. */
  readonly version: number;
  /** JSON Schema of the input, made when asked for. */
  readonly inputSchema: JsonSchema;
  /** Where its rules come from. */
  readonly sources: readonly Source[];
  /** How large a job it takes at once, beside the lengths of its lists, which are in the schema. */
  readonly limits: readonly Limit[];
  /** The Standard Schema interface, for form libraries and the like. */
  readonly '~standard': StandardSchema<Input>;
}

/** What {@link define} needs to know. */
export interface Definition<Parsed, F extends FigureSet> {
  readonly id: string;
  readonly title: string;
  readonly version: number;
  readonly sources: readonly Source[];
  /** How large a job it takes, where the length of a list does not say so. */
  readonly limits?: readonly Limit[];
  /** The door, built at first use. */
  readonly input: () => Field<Parsed>;
  readonly reckon: (input: Parsed, pad: Pad) => F;
  /**
   * Parts of the input are read by other calculations, and the family of units is that of its texts as typed: of this
   * much of it.
   */
  readonly asTyped?: (input: unknown) => unknown;
  /** What the job takes, by the figures that say how much of it. */
  readonly takes?: (figures: F, input: Parsed) => readonly TakeNote[];
}

/** Refuse an input that reads well but cannot be. */
export function refuse(path: string, fault: Fault): never {
  throw new InputError([{ ...fault, path }]);
}

/** A path as it is written: `openings[2].at.x`; a name that would come apart there stands in brackets and quotes. */
export function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, part) => {
    if (typeof part === 'number') return `${text}[${part}]`;
    const name = String(part);
    if (name === '' || /[.[\]]/.test(name)) return `${text}[${JSON.stringify(name)}]`;
    return text === '' ? name : `${text}.${name}`;
  }, '');
}

/** More faults at once help nobody, and may be as many as an outline has corners. */
const ISSUES_LISTED = 100;

/** The same slip in a long list is plain after a few. */
const DOUBTS_LISTED = 5;

/** An input as it was read, all of it in the units of one family, and what in it is out of the ordinary. */
export interface Job<T> {
  readonly value: T;
  readonly unusual: readonly Caution[];
  readonly system: System;
}

/**
 * Read an input at its door, settle the family of units that it is reckoned and shown in, and note what in it is out
 * of the ordinary. What is written in the other family is shown, rounded and held to limits as the rest of the job is.
 *
 * @param asked - the family that the caller asks for
 * @param asTyped - what is looked at of an input whose texts are left to be read later: the family is that which they
 * end in
 * @throws {InputError} with every issue found
 */
export function readJob<T>(
  door: Field<T>,
  input: unknown,
  asked?: System,
  asTyped?: (input: unknown) => unknown,
): Job<T> {
  const plain = plainCopy(input);
  const { value, faults, doubts } = parse(door, plain);
  if (faults.length > 0) {
    if (isRecord(plain) && plain['takes']) refuse('', aResult());
    const listed = faults.slice(0, ISSUES_LISTED);
    throw toldIn(
      new InputError(listed.map(({ remark, path }) => ({ ...remark, path: pathText(path) }))),
      asked ?? systemAsTyped(plain),
    );
  }
  const found = systemOfInput(value);
  const system = asked ?? (asTyped ? systemAsTyped(asTyped(plain)) : found.system);
  return {
    value: found.mixed || system !== found.system ? settled(value, system) : value,
    unusual: doubts
      .slice(0, DOUBTS_LISTED)
      .map(({ remark, path }) => unusual(pathText(path), remark, system)),
    system,
  };
}

/**
 * Read an input at its door, in the units of one family.
 *
 * @throws {InputError} with every issue found
 */
export const readInput = <T>(door: Field<T>, input: unknown, asked?: System): T =>
  readJob(door, input, asked).value;

/**
 * Make a calculation of its definition. What its fields read and what its input's type says are held to each other by
 * the compiler.
 *
 * @internal
 */
export function define<Input, Parsed, F extends FigureSet>(
  definition: Definition<Parsed, F>,
  ..._misfit: Misfit<Parsed, Input>
): Calculation<Input, F> {
  const { id, title, version } = definition;
  const sources = Object.freeze(definition.sources.map((source) => Object.freeze(source)));
  const limits = Object.freeze((definition.limits ?? []).map((limit) => Object.freeze(limit)));
  let field: Field<Parsed> | undefined;
  const door = (): Field<Parsed> => {
    field ??= definition.input();
    return field;
  };
  const inputSchema = (): JsonSchema => ({
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title,
    ...schemaOf(door()),
    ...(limits.length > 0 ? { 'x-limits': limits } : {}),
  });

  /** What is refused while it is reckoned is told in the units of the job too. */
  const reckoned = (value: Parsed, pad: Pad): F => {
    try {
      return definition.reckon(value, pad);
    } catch (error) {
      throw error instanceof InputError ? toldIn(error, pad.system) : error;
    }
  };

  const reckon = (input: unknown, options: unknown): Result<F> => {
    const {
      value,
      unusual: doubts,
      system,
    } = readJob(door(), input, systemAsked(options), definition.asTyped);
    const pad = new Pad(system);
    for (const doubt of doubts) pad.caution(doubt);
    const figures = reckoned(value, pad);
    const { working, assumed, cautions } = pad;
    const takes = definition.takes ? takesOf(figures, definition.takes(figures, value)) : [];
    return makeResult({ id, title, version, system, figures, working, assumed, cautions, takes, sources });
  };

  const attempt = (input: unknown, options?: unknown): Attempt<F> => {
    try {
      return { ok: true, result: reckon(input, options) };
    } catch (error) {
      if (error instanceof InputError) return { ok: false, error };
      throw error;
    }
  };

  return Object.freeze(
    Object.defineProperties((input: Input, options?: ReckonOptions) => reckon(input, options), {
      attempt: { value: attempt },
      id: { value: id, enumerable: true },
      title: { value: title, enumerable: true },
      version: { value: version, enumerable: true },
      sources: { value: sources, enumerable: true },
      limits: { value: limits, enumerable: true },
      inputSchema: { get: inputSchema },
      '~standard': { value: standardSchema<Input>(attempt) },
      name: { value: id },
    }),
  ) as unknown as Calculation<Input, F>;
}
