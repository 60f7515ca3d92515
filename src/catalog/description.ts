/** What is said of a calculation beside its title. */
import type { JsonSchema } from '../reckoning/fields';

/** What describes a calculation to people and to programs, in words and in JSON Schema. */
export interface Description {
  /**
   * The input as a form asks for it. Every field has a title and what has to be said about it, and examples;
   * quantities are text with `x-dimension` and `x-units`. Kinds of a thing are `oneOf` with titles, told apart by
   * the member named in `x-discriminator`. What is assumed for a field left out is in its words, and never its
   * `default`: a form would fill it in, and the result no longer list it among what it assumes.
   */
  readonly formSchema: JsonSchema;
  /** The input in short, as programs that call tools take it: one object, kinds of a thing in one. */
  readonly toolSchema: JsonSchema;
  /** The figures of a result as JSON: each with its label, what it is, and its `x-dimension`. */
  readonly outputSchema: JsonSchema;
}
