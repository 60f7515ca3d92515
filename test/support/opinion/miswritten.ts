/** Slips in writing the figure down: in another unit, of another line, with its digits turned round. */
import type { Quantity, SlipCode } from '../../../src/index';
import { siOf, siOfUnit } from '../../../src/opinion/scale';
import { unitShown } from '../../../src/quantity/quantity';
import type { Chance } from '../relations/random';
import { transposed } from './misread';
import { figuresOf } from './notebook';
import type { Kind, Made } from './slip';

const written = (
  name: string,
  codes: readonly SlipCode[],
  weight: number,
  change: (q: Quantity, chance: Chance) => ((si: number) => number) | undefined,
): Kind => ({
  weight,
  made: ({ page }, chance) =>
    [...figuresOf(page.figures)].flatMap(([figure, q]): Made[] => {
      const other = siOf(q) > 0 && q.dimension !== 'temperature' ? change(q, chance) : undefined;
      return other ? [{ name, codes, figure, written: other }] : [];
    }),
});

/** The number of one figure under the name of another. */
const otherLine: Kind = {
  weight: 3,
  made: ({ page }) => {
    const all = [...figuresOf(page.figures)].filter(([path, q]) => !path.includes('[') && siOf(q) > 0);
    return all.flatMap(([figure, q]) =>
      all
        .filter(([other, p]) => other !== figure && kindred(q, p))
        .map(([, p]): Made => {
          // A line is copied with its unit; what is of another kind, by its number.
          const number = siOf(p) / siOfUnit(unitShown(q.dimension === p.dimension ? q : p));
          return {
            name: q.dimension === p.dimension ? 'the figure of another line' : 'area for perimeter',
            codes: ['other-figure'],
            figure,
            written: () => number * siOfUnit(unitShown(q)),
          };
        }),
    );
  },
};

const kindred = (q: Quantity, p: Quantity): boolean =>
  q.dimension === p.dimension
    ? ['volume', 'area', 'mass', 'length', 'money'].includes(q.dimension)
    : (q.dimension === 'area' && p.dimension === 'length') ||
      (q.dimension === 'length' && p.dimension === 'area');

export const MISWRITTEN: readonly Kind[] = [
  otherLine,
  written('cubic feet as cubic yards', ['not-divided-by-27'], 3, (q) =>
    unitShown(q).id === 'yd3' ? (si) => si * 27 : undefined,
  ),
  written('divided by 9', ['divided-by-9'], 2, (q) =>
    unitShown(q).id === 'yd3' ? (si) => si * 3 : undefined,
  ),
  written('pounds as kilograms', ['wrong-unit'], 1, (q) =>
    unitShown(q).id === 'lb' ? (si) => si * 0.45359237 : undefined,
  ),
  written('two digits turned round', ['digits-transposed'], 2, (q, chance) => {
    const unit = siOfUnit(unitShown(q));
    const number = Number((siOf(q) / unit).toPrecision(3 + chance.below(2)));
    const other = number >= 0.1 && number < 1e7 ? transposed(String(number), chance) : undefined;
    return other === undefined ? undefined : () => Number(other) * unit;
  }),
  written('point one place off', ['point-moved'], 2, () => (si) => si * 10),
  written('twice', ['doubled'], 1, () => (si) => si * 2),
];
