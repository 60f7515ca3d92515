/**
 * The input of a calculation as other tools read it: the Standard Schema interface, version 1, that form libraries
 * and routers take (standardschema.dev).
 */
import type { InputError } from '../quantity/input-error';

/** What is wrong with a value, for who shows it beside its field. */
export interface StandardIssue {
  /** What is wrong and what to write instead. */
  readonly message: string;
  /** Where in the input, member by member. */
  readonly path: readonly (string | number)[];
}

/** The outcome of a validation: the input as it was given, or what is wrong with it. */
export type StandardOutcome<Input> =
  | {
      /** The input, which a calculation takes as it is. */
      readonly value: Input;
      /** Left out. */
      readonly issues?: undefined;
    }
  | {
      /** What is wrong. */
      readonly issues: readonly StandardIssue[];
    };

/** What stands under `~standard`. */
export interface StandardSchema<Input> {
  /** Version of the interface. */
  readonly version: 1;
  /** Who made the schema. */
  readonly vendor: 'flatwork-reckoner';
  /** Reckon with the input and say what is wrong with it, if anything. */
  readonly validate: (value: unknown) => StandardOutcome<Input>;
  /** For types only; there is nothing at run time. */
  readonly types?: {
    /** What is taken. */
    readonly input: Input;
    /** What comes out: the same. */
    readonly output: Input;
  };
}

/** `openings[2].at.x` to its members; a name in quotes is one that a dot or a bracket would take apart. */
const partsOfPath = (path: string): (string | number)[] =>
  [...path.matchAll(/\[("(?:[^"\\]|\\.)*"|\d+)\]|[^.[\]]+/g)].map(([name, inBrackets]) =>
    inBrackets === undefined ? name : (JSON.parse(inBrackets) as string | number),
  );

type Attempted = { readonly ok: true } | { readonly ok: false; readonly error: InputError };

/** The interface over the attempt of a calculation. */
export const standardSchema = <Input>(attempt: (input: unknown) => Attempted): StandardSchema<Input> => ({
  version: 1,
  vendor: 'flatwork-reckoner',
  validate: (value) => {
    const tried = attempt(value);
    if (tried.ok) return { value: value as Input };
    return {
      issues: tried.error.issues.map(({ sentence, path }) => ({
        message: sentence,
        path: partsOfPath(path),
      })),
    };
  },
});
