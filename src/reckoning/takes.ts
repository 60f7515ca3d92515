/**
 * What a job takes: concrete, gravel, bars, boards, what is to be bought or hauled for it.
 *
 * Each calculation lists its own, by kind and by what tells it from others of its kind, so that the lists of a whole
 * job are merged without knowing any figure by name. Amounts are those of the figure named, before they are rounded
 * to what is sold where several parts of a job may share that.
 */
import { isQuantity, type Quantity } from '../quantity/quantity';

/**
 * Kinds of things that a job takes. Concrete is what is in place, ready-mix what is ordered for it, other what the job
 * itself names.
 */
export type TakeItem =
  | 'anchor-bolt'
  | 'backer-rod'
  | 'bar'
  | 'bagged-mix'
  | 'bar-support'
  | 'base'
  | 'blanket'
  | 'board'
  | 'brace'
  | 'color'
  | 'concrete'
  | 'dowel'
  | 'dowel-basket'
  | 'epoxy'
  | 'fibers'
  | 'fill'
  | 'foam-board'
  | 'form-tube'
  | 'geotextile'
  | 'haul-away'
  | 'isolation-board'
  | 'joint-strip'
  | 'liquid'
  | 'mesh'
  | 'nail'
  | 'other'
  | 'powder'
  | 'ready-mix'
  | 'release-oil'
  | 'saw-cut'
  | 'sealant'
  | 'seam-tape'
  | 'seed'
  | 'sheet'
  | 'stake'
  | 'straw'
  | 'tie'
  | 'tie-bar'
  | 'topsoil'
  | 'vapor-retarder';

/** Pieces of one length that are cut from what is bought. */
export interface TakeCut {
  /** Length of a piece. */
  readonly length: Quantity<'length'>;
  /** How many of them. */
  readonly count: Quantity<'count'>;
}

/** Something that a job takes. */
export interface Take {
  /** What it is. */
  readonly item: TakeItem;
  /** What tells it from others of its kind: its size, make or stock. */
  readonly of: Readonly<Record<string, Quantity | string>>;
  /** How much of it. */
  readonly quantity: Quantity;
  /** The figure that it comes from, as a path. */
  readonly from: string;
  /** The pieces that it is cut into, so that a whole job can be cut by one plan. */
  readonly cuts?: readonly TakeCut[];
}

/** What a calculation says of something that its job takes; how much is what the figure says. */
export interface TakeNote extends Omit<Take, 'of' | 'quantity'> {
  /** What tells it from others of its kind; what is not known is left out. */
  readonly of?: Readonly<Record<string, Quantity | string | undefined>>;
}

/** Names in a path, `liquids[1].volume`. */
const NAMES = /[^.[\]]+/g;

/** A figure by its path. */
export const figureAt = (figures: object, path: string): unknown =>
  (path.match(NAMES) ?? []).reduce<unknown>(
    (x, name) => (x as Record<string, unknown> | undefined)?.[name],
    figures,
  );

/** The takes with their amounts; what a result has no figure of, or none, is not taken. */
export const takesOf = (figures: object, notes: readonly TakeNote[]): Take[] =>
  notes.flatMap(({ item, of = {}, from, cuts }) => {
    const quantity = figureAt(figures, from);
    if (!isQuantity(quantity) || quantity.sign() <= 0) return [];
    const known = Object.entries(of).filter(
      (each): each is [string, Quantity | string] => each[1] !== undefined,
    );
    return [{ item, of: Object.fromEntries(known), quantity, from, ...(cuts && { cuts }) }];
  });
