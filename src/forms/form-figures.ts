/** What `form-materials` gives, edge by edge and in all. */
import type { Quantity } from '../quantity/quantity';
import type { Kerfed } from './bending';
import type { BoardSize, Reached } from './boards';
import type { Fastened, Released } from './fastening';
import type { StakeLength } from './staking';

/** Boards of one length. */
export interface BoardOrder {
  /** Length of a board as bought. */
  readonly length: Quantity<'length'>;
  /** How many to buy. */
  readonly boards: Quantity<'count'>;
}

/** Pieces of one length. */
export interface BoardPiece {
  /** Length of a piece as cut. */
  readonly length: Quantity<'length'>;
  /** How many. */
  readonly count: Quantity<'count'>;
}

/** Boards that are cut alike. */
export interface BoardCut {
  /** Length of the boards as bought. */
  readonly stock: Quantity<'length'>;
  /** How many boards are cut this way. */
  readonly boards: Quantity<'count'>;
  /** What is cut from each of them, longest first. */
  readonly cuts: readonly BoardPiece[];
  /** What is left of each. */
  readonly drop: Quantity<'length'>;
}

/** What to mark at a stake. */
export interface StakeMark {
  /** How far along the edge. */
  readonly at: Quantity<'length'>;
  /** How far the top of the form lies below its start, exact; negative above. */
  readonly down: Quantity<'length'>;
  /** The same to the nearest 1/16 in or mm. */
  readonly mark: Quantity<'length'>;
}

/** One edge. */
export interface FormedEdge extends Kerfed {
  /** Its name, or its number; sides of openings that are alike have that of the first of these. */
  readonly name: string;
  /** Its length. */
  readonly length: Quantity<'length'>;
  /** How many there are of it. */
  readonly count: Quantity<'count'>;
  /** Its radius, where it is round. */
  readonly radius?: Quantity<'length'>;
  /** Pieces that it is boarded with, of one course and one of its kind. */
  readonly pieces: readonly BoardPiece[];
  /** Joints between them. */
  readonly joints: Quantity<'count'>;
  /** Stakes behind it. */
  readonly stakes: Quantity<'count'>;
  /** What to mark at its stakes, where its fall is told. */
  readonly marks?: readonly StakeMark[];
}

/** Strips in layers around the curves. */
export interface LayeredCurves {
  /** How many layers. */
  readonly layers: Quantity<'count'>;
  /** Strips as long as a sheet, whole or cut. */
  readonly strips: Quantity<'count'>;
  /** Sheets to rip them from. */
  readonly sheets: Quantity<'count'>;
}

/** Figures of `form-materials`. */
export interface FormMaterialsFigures extends Reached, Partial<StakeLength>, Partial<Fastened> {
  /** Length of all edges. */
  readonly formLength: Quantity<'length'>;
  /** What of the forms touches concrete. */
  readonly contactArea: Quantity<'area'>;
  /** The boards as they are. */
  readonly board: BoardSize;
  /** Boards to buy. */
  readonly boards: Quantity<'count'>;
  /** The same by length. */
  readonly order: readonly BoardOrder[];
  /** The boards to buy end to end. */
  readonly lengthBought: Quantity<'length'>;
  /** Kerfs and drops. */
  readonly lengthLost: Quantity<'length'>;
  /** Lost over bought. */
  readonly waste: Quantity<'ratio'>;
  /** How to cut, board by board; whole boards stand in it too. */
  readonly plan: readonly BoardCut[];
  /** True when no plan for these pieces buys less. */
  readonly proved: boolean;
  /** Boards bought, for one of so many uses. */
  readonly lengthPerUse?: Quantity<'length'>;
  /** Cleats over joints, and at the ends of risers. */
  readonly cleats: Quantity<'count'>;
  /** Stakes in all, with those of braces; under risers the supports between their ends. */
  readonly stakes: Quantity<'count'>;
  /** Braces, each to a stake of its own. */
  readonly braces: Quantity<'count'>;
  /** Release on the faces. */
  readonly release?: Released;
  /** Layers around curves. */
  readonly layered?: LayeredCurves;
  /** The edges, those of the outline first. */
  readonly edges: readonly FormedEdge[];
}
