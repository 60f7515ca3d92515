/**
 * How many random inputs a property is tried on: all in CI and with `EFFORT=full`, a fifth otherwise, so
 * that the tests stay quick at the desk.
 */
const FULL = process.env['EFFORT'] === 'full' || (process.env['CI'] && process.env['EFFORT'] !== 'quick');

/** `full` runs where there is time for all, fewer elsewhere. */
export const runs = (full: number): number => (FULL ? full : Math.max(1, Math.ceil(full / 5)));
