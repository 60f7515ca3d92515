/**
 * What long computations add up as they go: cells of a search, roots and angles to many digits. A cell is about a
 * thirtieth of a microsecond.
 *
 * Time is never measured, so that what is left undone for its sake is the same on any machine.
 */
export const effort: { spent: number } = { spent: 0 };

/** What a root and an angle are beside a cell, with what is usually reckoned about them. */
export const A_ROOT = 4000;
export const AN_ANGLE = 16_000;
