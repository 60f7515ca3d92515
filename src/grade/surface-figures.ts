/** What is found on a surface: facets, valleys, ponds, paths and the verdict. */

import type { Quantity } from '../quantity/quantity';

/** A point in plan. */
export interface PlanPointFigure {
  /** How far along, as the spots are measured. */
  readonly x: Quantity<'length'>;
  /** How far across, as the spots are measured. */
  readonly y: Quantity<'length'>;
}

/** One facet of the surface. */
export interface FacetFigure {
  /** Names of its three spots. */
  readonly spots: readonly string[];
  /** Slope along the steepest way down: the hypotenuse of the falls along x and y. */
  readonly slope: Quantity<'slope'>;
  /** Fall along x; negative when it rises. */
  readonly alongX: Quantity<'slope'>;
  /** Fall along y; negative when it rises. */
  readonly alongY: Quantity<'slope'>;
  /** Direction of the fall from the x axis, counterclockwise from 0 to 360 degrees; left out when level. */
  readonly direction?: Quantity<'angle'>;
  /** The building line nearest to its middle. */
  readonly nearest?: string;
  /** Slope straight away from that line; negative when it runs to it. */
  readonly away?: Quantity<'slope'>;
  /** Angle between the fall and the way straight off that line: 0 away, 180 to the wall. */
  readonly angleToWall?: Quantity<'angle'>;
  /** What is at fault with it, or `drains`; one both too steep and otherwise at fault is listed twice. */
  readonly verdict: 'drains' | 'too flat' | 'runs to the building' | 'too steep';
}

/** A valley: the side that two facets drain into, or the foot of a curb. */
export interface ValleyFigure {
  /** Its higher end. */
  readonly from: string;
  /** Its lower end. */
  readonly to: string;
  /** Fall along it. */
  readonly fall: Quantity<'slope'>;
  /** The least that it must fall. */
  readonly required: Quantity<'slope'>;
  /** Length in plan. */
  readonly length: Quantity<'length'>;
  /** The curb that it runs along, where it does. */
  readonly curb?: string;
  /** Whether it falls as it must. */
  readonly verdict: 'drains' | 'too flat';
}

/** What of the surface falls back toward a building. */
export interface FallsBackFigure {
  /** The building line nearest to it. */
  readonly line: string;
  /** Plan area that falls back. */
  readonly area: Quantity<'area'>;
  /** Part of it whose water gets to a building. */
  readonly reaching: Quantity<'area'>;
  /** Part of it whose water stands on the way, in a valley too flat or a pond. */
  readonly standing: Quantity<'area'>;
  /** Part of it that a valley or a drain catches before the building. */
  readonly caught: Quantity<'area'>;
}

/** Water that stands. */
export interface PondFigure {
  /** Its deepest spot. */
  readonly lowest: string;
  /** The spot that it spills over. */
  readonly spillsOver: string;
  /** Elevation that it fills to. */
  readonly level: Quantity<'length'>;
  /** Depth at its deepest spot. */
  readonly depth: Quantity<'length'>;
  /** Water that it holds when full. */
  readonly volume: Quantity<'volume'>;
  /** Plan area under water. */
  readonly area: Quantity<'area'>;
  /** The water's edge, one ring or more. */
  readonly outline: readonly (readonly PlanPointFigure[])[];
  /** Building lines that it stands against. */
  readonly against: readonly string[];
}

/** A spot from which water would have to climb. */
export interface LowSpotFigure {
  /** Name of the spot. */
  readonly spot: string;
  /** How far it lies below the spot that water must get over. */
  readonly below: Quantity<'length'>;
  /** The spot downstream that is higher. */
  readonly downstream: string;
}

/** Water that reaches a building line. */
export interface ReachFigure {
  /** Name of the building line. */
  readonly line: string;
  /** Spots of the facets that it comes from, highest first; at most 50. */
  readonly from: readonly string[];
  /**
   * Plan area whose rain gets there, to six figures. That holds only where water from above is not
   * divided within a facet. A facet that drains over two sides divides it by its own areas, not by
   * where it comes in, and a facet whose water reaches two lines counts for one; then it is an estimate.
   */
  readonly area: Quantity<'area'>;
}

/** The way that water takes from one place. */
export interface PathFigure {
  /** The spot where it starts, or the inflow where that is at no spot. */
  readonly from: string;
  /** The line it leaves over, the drain it enters, or `open edge`. */
  readonly leavesOver: string;
  /** Length in plan, good to 0.01 mm. */
  readonly length: Quantity<'length'>;
  /** The first building line that it meets. */
  readonly reaches?: string;
  /** Points in plan, good to 0.01 mm; at most 100. */
  readonly points: readonly PlanPointFigure[];
}

/** A sill over the surface. */
export interface SillFigure {
  /** Name of the sill. */
  readonly name: string;
  /** How far the surface lies below it. */
  readonly clearance: Quantity<'length'>;
}

/** Where an inflow goes. */
export interface InflowFigure extends PathFigure {
  /** Name of the inflow. */
  readonly name: string;
  /** How much it brings, as given. */
  readonly flow?: Quantity<'volume-rate'>;
}

/** Figures of the drainage check of a surface. */
export interface SurfaceDrainageFigures {
  /** The gravest that was found. */
  readonly verdict: 'drains' | 'too flat' | 'ponding' | 'runs to the building';
  /** How many spots were given, those off the slab too. */
  readonly spots: Quantity<'count'>;
  /** How many facets the surface has. */
  readonly facets: Quantity<'count'>;
  /** Least slope away from a building. */
  readonly required: Quantity<'slope'>;
  /** Least slope elsewhere. */
  readonly requiredBeyond: Quantity<'slope'>;
  /** Slope of the steepest facet. */
  readonly steepest: Quantity<'slope'>;
  /** Slope of the flattest facet. */
  readonly flattest: Quantity<'slope'>;
  /** How many facets run to a building within the zone, but for those behind a valley or drain that takes it. */
  readonly reverse: Quantity<'count'>;
  /** How many facets fall less than required. */
  readonly short: Quantity<'count'>;
  /** Facets at fault, the worst first, at most 100; then the others where there are no more than 100 in all. */
  readonly facetList: readonly FacetFigure[];
  /** How many valleys there are: sides that two facets drain into, and feet of curbs. */
  readonly valleys: Quantity<'count'>;
  /** How many of them fall less than they must. */
  readonly flatValleys: Quantity<'count'>;
  /** The valley that lacks most of the fall it must have, or has least to spare; left out where there is none. */
  readonly worstValley?: ValleyFigure;
  /** Valleys, the worst first, at most 100. */
  readonly valleyList: readonly ValleyFigure[];
  /** Plan area that falls back toward a building, near or far. */
  readonly areaBack: Quantity<'area'>;
  /** That area by building line. */
  readonly fallsBack: readonly FallsBackFigure[];
  /** How many ponds there are, however shallow. */
  readonly pondCount: Quantity<'count'>;
  /** Ponds, the largest first, at most 100. */
  readonly ponds: readonly PondFigure[];
  /** Volume of the ponds listed. */
  readonly pondVolume: Quantity<'volume'>;
  /** Spots lower than a spot downstream of them, the lowest first, at most 100. */
  readonly lowSpots: readonly LowSpotFigure[];
  /** The longest way found that water takes from a spot. */
  readonly longestPath: PathFigure;
  /** Water that reaches a building, by line. */
  readonly reaches: readonly ReachFigure[];
  /** Each sill checked, in the order given. */
  readonly sills: readonly SillFigure[];
  /** Where each inflow goes, in the order given. */
  readonly inflows: readonly InflowFigure[];
}
