/** What goes into `rebar-layout` over an outline, and what comes out. */
import type { OutlineInput } from '../outline/outline';
import type { OpeningInput } from '../outline/region';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import type { AnyBarSize, BarName } from './bars';
import type { CastAgainst, Exposure } from './cover';

/** Near the bottom of the slab or near its top. */
export type MatLayer = 'bottom' | 'top';

/** A mat of bars in two directions. */
export interface MatInput {
  /** Where in the slab the mat lies. */
  readonly layer: MatLayer;
  /** Size of the bars that run along, and across by default. */
  readonly bar: BarName;
  /** Bars that run across, where they differ. */
  readonly barAcross?: BarName;
  /** Center to center at most; give this or `lines`. */
  readonly spacing?: QuantityInput<'length'>;
  /** How many lines run along. */
  readonly lines?: number;
  /** Of the bars that run across; by default as along. */
  readonly spacingAcross?: QuantityInput<'length'>;
  /** How many lines run across. */
  readonly linesAcross?: number;
  /** Direction of the bars along, counterclockwise from x; by default along x. */
  readonly angle?: QuantityInput<'angle'>;
  /** Direction of the bars across; by default square to the others. */
  readonly angleAcross?: QuantityInput<'angle'>;
  /** From the face of the slab to the nearer bars, where the cover is to be checked. */
  readonly faceCover?: QuantityInput<'length'>;
}

/** Bars that tie the slab to what it is cast against, along one side. */
export interface MatDowelInput {
  /** Which side: 1 is that from the first corner of the outline to the second, counterclockwise. */
  readonly side: number;
  /** Size of the bars. */
  readonly bar: BarName;
  /** Center to center at most. */
  readonly spacing: QuantityInput<'length'>;
  /** Length of each bar, both sides of the joint together. */
  readonly length: QuantityInput<'length'>;
  /** From the ends of the side to the first bar; by default half the spacing. */
  readonly endDistance?: QuantityInput<'length'>;
}

/** Bars in steps that are cast with the slab. */
export interface MatStepsInput {
  /** How many risers; each has a nosing bar. */
  readonly risers: number;
  /** Length of each step. */
  readonly width: QuantityInput<'length'>;
  /** Size of all bars in the steps. */
  readonly bar: BarName;
  /** Bars along each tread besides the one at the nosing; by default 1. */
  readonly treadBars?: number;
  /** Between bent starters from the slab; leave out for none. */
  readonly starterSpacing?: QuantityInput<'length'>;
  /** Each leg of a starter; by default the lap of its bar. */
  readonly starterLeg?: QuantityInput<'length'>;
}

/** Input of `rebarLayout` for any outline. */
export interface RebarRegionInput {
  /** Outer edge of the slab. */
  readonly outline: OutlineInput;
  /** Holes in the slab, from which bars keep the cover; none by default. */
  readonly openings?: readonly OpeningInput[];
  /** One mat, or a bottom and a top mat. */
  readonly mats: readonly MatInput[];
  /** From an edge to the end of a bar and to the outermost bar; by default 3 in, or 75 mm. */
  readonly cover?: QuantityInput<'length'>;
  /** Length of the bars as bought; by default 20 ft, or 6 m. */
  readonly stockLength?: QuantityInput<'length'>;
  /** Overlap of two bars in a line; by default the larger of 40 diameters and 12 in, or 300 mm. */
  readonly lap?: QuantityInput<'length'>;
  /** Bars along every edge that no line of the mat lies on; by default yes. */
  readonly edgeBars?: boolean;
  /** Bars across each corner that juts into the slab; by default one. */
  readonly cornerBars?: number;
  /** Length of these; by default 4 ft, or 1.2 m. */
  readonly cornerBarLength?: QuantityInput<'length'>;
  /** Lengths are rounded down to a multiple of this; by default 1/16 in, or 1 mm. */
  readonly cutTo?: QuantityInput<'length'>;
  /** Shorter bars are left out; by default half the spacing, at most 12 in. */
  readonly shortest?: QuantityInput<'length'>;
  /** Thickness of the slab, to check the mats against. */
  readonly thickness?: QuantityInput<'length'>;
  /** Whether the top of the slab is in the weather or inside a building; by default in the weather. */
  readonly exposure?: Exposure;
  /** What the edges are cast against, forms or the ground of the dig; without it the cover is told for both. */
  readonly edges?: CastAgainst;
  /** Bars into what the slab is cast against, side by side; none by default. */
  readonly dowels?: readonly MatDowelInput[];
  /** Steps cast with the slab; none by default. */
  readonly steps?: MatStepsInput;
  /** Between chairs or blocks, both ways; by default 4 ft, or 1.2 m; 3 ft, or 0.9 m, under #4 and thinner. */
  readonly supports?: QuantityInput<'length'>;
  /** Wire for one tie; by default 12 in, or 0.3 m. */
  readonly wirePerTie?: QuantityInput<'length'>;
  /** Weight of the wire; by default 1 lb for 79 ft, or 1 kg for 53 m. */
  readonly wireWeight?: QuantityInput<'mass-per-length'>;
}

/** What a bar is there for. */
export type MarkUse =
  | 'along'
  | 'across'
  | 'edge'
  | 'corner'
  | 'dowel'
  | 'nosing'
  | 'tread'
  | 'starter'
  | 'tie';

/** Bars that are alike. */
export interface BarMark {
  /** Mark on the bar list: `BL3` is bottom mat, along, third longest. */
  readonly mark: string;
  /** The mat that it belongs to; left out for dowels and steps. */
  readonly layer?: MatLayer;
  /** What the bars are there for. */
  readonly use: MarkUse;
  /** Size of the bars. */
  readonly bar: AnyBarSize;
  /** Straight, bent to follow an edge, bent once, or bent around and closed. */
  readonly shape: 'straight' | 'follows-edge' | 'one-bend' | 'closed';
  /** Length of each bar, along the bar where it is bent. */
  readonly length: Quantity<'length'>;
  /** How many bars. */
  readonly count: Quantity<'count'>;
  /** All of them end to end. */
  readonly totalLength: Quantity<'length'>;
  /** Weight of all of them. */
  readonly weight: Quantity<'mass'>;
}

/** The lines that run one way. */
export interface MatLines {
  /** From the first place to the last. */
  readonly lines: Quantity<'count'>;
  /** Center to center; exact along the axes, else to a millionth of a meter. */
  readonly evenSpacing: Quantity<'length'>;
  /** Between the faces of two bars. */
  readonly clearSpacing: Quantity<'length'>;
}

/** A mat as it comes out. */
export interface MatFigures {
  /** Where in the slab the mat lies. */
  readonly layer: MatLayer;
  /** Lines that run along. */
  readonly along: MatLines;
  /** Lines that run across. */
  readonly across: MatLines;
  /** Places where a line along crosses a line across. */
  readonly crossings: Quantity<'count'>;
  /** Every crossing where the bars are a foot or more apart both ways, else every other. */
  readonly ties: Quantity<'count'>;
  /** Laps in the lines, edge bars and corner bars. */
  readonly laps: Quantity<'count'>;
  /** Laps beside a lap of the next line: none unless the stock is short for its lap. */
  readonly lapsInLine: Quantity<'count'>;
  /** Chairs or blocks under this mat. */
  readonly supports: Quantity<'count'>;
}

/** Bar of one size in all. */
export interface SizeTotal {
  /** Size of the bars. */
  readonly bar: AnyBarSize;
  /** Bars of this size to buy, each as long as `stockLength`; drops are used again. */
  readonly barsToBuy: Quantity<'count'>;
  /** Length of a bar as bought. */
  readonly stockLength: Quantity<'length'>;
  /** No plan of cutting takes fewer bars for this bar list. */
  readonly leastBars: Quantity<'count'>;
  /** All bars of the size end to end, laps included. */
  readonly length: Quantity<'length'>;
  /** Weight of all bars of the size. */
  readonly weight: Quantity<'mass'>;
  /** Overlap of two bars of the size. */
  readonly lap: Quantity<'length'>;
}

/** Figures that every form of `rebarLayout` gives. */
export interface RebarListFigures {
  /** Bars to buy in all, of the stock length; by size in `sizes`. */
  readonly barsToBuy: Quantity<'count'>;
  /** The bar list. */
  readonly bars: readonly BarMark[];
  /** Length, weight and bars to buy by bar size, smallest first. */
  readonly sizes: readonly SizeTotal[];
  /** Pieces of bar as cut and placed: not the bars to buy, from which several are cut. */
  readonly pieces: Quantity<'count'>;
  /** Bar in all, laps included, with nothing for waste. */
  readonly totalLength: Quantity<'length'>;
  /** Weight of all bars, laps included. */
  readonly weight: Quantity<'mass'>;
  /** Wire ties. */
  readonly ties: Quantity<'count'>;
  /** Wire for all ties. */
  readonly tieWire: Quantity<'mass'>;
  /** Chairs or blocks. */
  readonly supports: Quantity<'count'>;
  /** Cover used at the edges. */
  readonly cover: Quantity<'length'>;
}

/** Figures of `rebarLayout` for any outline. */
export interface RebarRegionFigures extends RebarListFigures {
  /** Each mat as it comes out, in the order given. */
  readonly mats: readonly MatFigures[];
  /** Crossings of two lines in all mats. */
  readonly intersections: Quantity<'count'>;
}
