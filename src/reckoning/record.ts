/** Telling objects with members from all else that JSON has. */

/** True for an object that is no list. */
export const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
