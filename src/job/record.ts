/** Telling objects with members from all else that JSON has. */
import type { Raw } from './document';

/** True for an object that is no list. */
export const isRecord = (value: unknown): value is Raw =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
