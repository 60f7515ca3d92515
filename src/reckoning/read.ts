/**
 * What the declared type of an input reads into, so that the compiler holds a calculation's fields to its type: a member
 * of one that the other lacks, or that one may leave out and the other may not, or of another dimension, does not
 * compile.
 */
import type { Dimension } from '../quantity/dimensions';
import type { Quantity, QuantityData, QuantityInput } from '../quantity/quantity';

/** The dimension of the quantities that a type takes. */
type DimensionIn<I> = Extract<I, Quantity> extends Quantity<infer D extends Dimension> ? D : never;

/** What a type takes besides quantities in any way of writing them. */
type Besides<I> = [Extract<I, Quantity>] extends [never]
  ? I
  : Exclude<I, QuantityInput<DimensionIn<I>> | QuantityData>;

/** Words that follow a pattern are other names of those beside them, as `H12` is of `12 mm`: they are read into these. */
type ReadWord<I extends string> = Record<never, 1> extends Record<I, 1> ? never : I;

/** A plain number counts; rows of them are a table under its unit, and stay numbers. */
type ReadBare<I, Text> = I extends null
  ? undefined
  : I extends number
    ? Quantity<'count'>
    : I extends string
      ? string extends I
        ? Text
        : ReadWord<I>
      : I extends boolean
        ? I
        : I extends readonly (readonly (infer N extends number | null)[])[]
          ? readonly (readonly N[])[]
          : I extends readonly (infer Item)[]
            ? readonly Read<Item, Text>[]
            : {
                readonly [K in keyof I]-?: undefined extends I[K]
                  ? Read<Exclude<I[K], undefined>, Text> | undefined
                  : Read<I[K], Text>;
              };

/**
 * What an input of this type is read into: quantities for what is accepted where they are wanted.
 *
 * @typeParam Text - what free text is read into
 */
export type Read<I, Text = string> =
  | ([Extract<I, Quantity>] extends [never] ? never : Quantity<DimensionIn<I>>)
  | ReadBare<Besides<I>, Text>;

// biome-ignore lint/suspicious/noExplicitAny: text may be read into anything, a mesh style or a bar; only `any` is both ways.
type ReadFreely<I> = Read<I, any>;

/** Words beside a quantity are text to the input's type, as the quantity is: `left`, or an angle. */
type Spoken<P> = [Extract<P, Quantity>] extends [never] ? P : Exclude<P, string>;

/** Lists that may be changed are lists all the same. */
type Settled<P> = P extends Quantity
  ? P
  : P extends readonly (infer Item)[]
    ? readonly Settled<Item>[]
    : P extends object
      ? { readonly [K in keyof P]: Settled<Spoken<P[K]>> }
      : P;

/** Nothing where what the fields read is what the input's type reads into; else an argument that nobody gives. */
export type Misfit<Parsed, Input> = unknown extends Input
  ? []
  : [Settled<Parsed>] extends [ReadFreely<Input>]
    ? [ReadFreely<Input>] extends [Settled<Parsed>]
      ? []
      : [fieldsAskForMoreThanTheInputHas: ReadFreely<Input>]
    : [fieldsLackWhatTheInputHas: ReadFreely<Input>];
