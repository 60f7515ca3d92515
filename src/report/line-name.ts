/** What a line of a bid is called: by the name that somebody gave, or as the purchase list has it, in any language. */
import { ITEM_NAMES } from '../job/item-names';
import type { JobBidFigures } from '../job/job-bid';
import { isFaulty, readQuantity } from '../quantity/read-quantity';
import type { FigureSet, ResultParts } from '../reckoning/parts';
import type { Param, Words } from '../reckoning/words';

const OURS: ReadonlySet<string> = new Set(Object.values(ITEM_NAMES));

/** Names of the lines of a bid that have no price. */
export const unpricedIn = ({ cautions }: Pick<ResultParts<FigureSet>, 'cautions'>): string[] =>
  cautions.flatMap(({ code, params }) => {
    const name = params?.['name'];
    return code === 'no-price' && typeof name === 'string' ? [name] : [];
  });

/** Names of its lines that have one. */
export function pricedIn({
  figures,
  cautions,
}: Pick<ResultParts<JobBidFigures>, 'figures' | 'cautions'>): string[] {
  const without = unpricedIn({ cautions });
  return figures.lines.map(({ name }) => name).filter((name) => !without.includes(name));
}

/** A size as a length, which each reader has in units and fractions of their own; any other word as it is. */
function pieceOf(piece: string): Param {
  const size = readQuantity(piece, 'length', 'size');
  return isFaulty(size) ? piece : size;
}

/** How earth is measured, which tells whoever prices it how much there is, and a customer nothing. */
const MEASURED: ReadonlySet<string> = new Set(['bank', 'loose', 'compacted']);

/** A name of the purchase list, `vapor retarder, 20 ft, 100 ft`, in words of its own; any other as it was given. */
export function lineName(name: string): string | Words {
  const [item = '', ...sizes] = name.split(', ');
  if (!OURS.has(item)) return name;
  const pieces = [item, ...sizes.filter((size) => !MEASURED.has(size))];
  return {
    says: pieces.map((_, i) => `{piece${i}}`).join(', '),
    params: Object.fromEntries(pieces.map((piece, i) => [`piece${i}`, pieceOf(piece)])),
  };
}
