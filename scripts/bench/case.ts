/** One thing to time. */
export interface Case {
  readonly name: string;
  readonly run: () => unknown;
}
