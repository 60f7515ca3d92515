/** What a joint plan is asked for: as it is written, and as it is read. */

import type { Outline, PointInput } from '../outline/outline';
import type { Opening, RegionInput } from '../outline/region';
import type { Quantity, QuantityInput } from '../quantity/quantity';
import { type Field, fields, quantity } from '../reckoning/fields';
import type { JointMethod } from './joint-depth';
import type { IsolationLine } from './layout/isolation';
import type { SawOrder } from './layout/saw-order';
import type { FixedType } from './layout/site';
import type { TakeOffInput } from './layout/take-off';

type Length = Quantity<'length'>;

/** What the slab is kept apart from. */
export type Neighbor = 'building' | 'column' | 'curb' | 'existing-slab' | 'steps' | 'wall';

/** A line along one side of the outline where the slab is kept apart from something. */
export interface IsolationInput {
  /** What stands there; it changes no figure. */
  readonly against: Neighbor;
  /** Where the line begins, on a side of the outline. */
  readonly from: PointInput;
  /** Where it ends, on the same side. */
  readonly to: PointInput;
}

/** A joint that must be where it is, from edge to edge (or to an opening). */
export interface FixedJointInput {
  /** What kind of joint it is. */
  readonly type: 'contraction' | 'construction' | 'isolation';
  /** One end, on an edge of the slab or of an opening. */
  readonly from: PointInput;
  /** The other end, on an edge as well. */
  readonly to: PointInput;
}

/** Input of {@link jointLayout}. Joints of a rectangle, L or polygon are placed as its corners are. */
export interface JointLayoutInput extends RegionInput {
  /** Thickness of the slab. */
  readonly thickness: QuantityInput<'length'>;
  /** The farthest apart that joints may be, from the plans or from `jointSpacing`; at least 1 ft. */
  readonly spacing: QuantityInput<'length'>;
  /** How long a panel may be for its width; by default 1.5 to 1. */
  readonly longestRatio?: QuantityInput<'ratio'>;
  /** Narrower panels are slivers; by default 2 ft, or half the spacing where that is less. */
  readonly minimumSide?: QuantityInput<'length'>;
  /** Openings that hold a column, by number from 1: joints are led through them both ways. */
  readonly columns?: readonly number[];
  /** Which way the joints run, from the x axis; by default along the longest side. */
  readonly direction?: QuantityInput<'angle'>;
  /** Joints fall on whole multiples of this from the corner of the slab, as for stamps or pavers. */
  readonly module?: QuantityInput<'length'>;
  /** Joints that must be where they are; none by default. */
  readonly fixed?: readonly FixedJointInput[];
  /** Points on the outline where joints of the neighboring slab end and must go on. */
  readonly continued?: readonly PointInput[];
  /** Sides, or parts of sides, with an isolation joint. Openings always have one. */
  readonly isolation?: readonly IsolationInput[];
  /** In a round slab joints may start at the middle of another panel; by default not if avoidable. */
  readonly tees?: 'allowed' | 'avoided';
  /** How the contraction joints are made; by default with a conventional saw. */
  readonly method?: 'conventional-saw' | 'early-entry-saw' | 'hand-groover' | 'preformed-strip';
  /** Depth of the contraction joints; by default by thickness and method. */
  readonly depth?: QuantityInput<'length'>;
  /** How deep the saw goes in one pass; by default the whole depth. */
  readonly depthPerPass?: QuantityInput<'length'>;
  /** How far the saw gets in a given time, cutting. */
  readonly sawRate?: SawRateInput;
  /** Joints are sawn one after another from the end the plan counts from; `reverse` where placing began at the other. */
  readonly sawOrder?: 'consecutive' | 'reverse';
  /** Thickness of the isolation board; by default 1/2 in. */
  readonly boardThickness?: QuantityInput<'length'>;
  /** Sealant is reckoned where its width and depth are given. */
  readonly sealant?: SealantInput;
  /** Dowels at construction joints, center to center; none by default. */
  readonly dowelSpacing?: QuantityInput<'length'>;
}

/** A length cut in a time. */
export interface SawRateInput {
  /** How far the blade gets in that time. */
  readonly length: QuantityInput<'length'>;
  /** How long it takes for that. */
  readonly in: QuantityInput<'time'>;
}

/** Sealant in the top of the joints. */
export interface SealantInput {
  /** Width of the bead, across the joint. */
  readonly width: QuantityInput<'length'>;
  /** Depth of the bead, down from the surface. */
  readonly depth: QuantityInput<'length'>;
  /** Which joints are sealed; by default all. */
  readonly joints?: 'all' | 'isolation' | 'sawn';
}

/** A place in plan. */
export interface Place {
  /** Along x, in the coordinates of the outline. */
  readonly x: Quantity<'length'>;
  /** Along y, in the coordinates of the outline. */
  readonly y: Quantity<'length'>;
}

export interface LayoutParsed extends Omit<TakeOffInput, 'thickness'> {
  readonly outline: Outline;
  readonly openings: readonly Opening[] | undefined;
  readonly thickness: Length;
  readonly spacing: Length;
  readonly longestRatio: Quantity<'ratio'> | undefined;
  readonly minimumSide: Length | undefined;
  readonly columns: readonly Quantity<'count'>[] | undefined;
  readonly direction: Quantity<'angle'> | undefined;
  readonly module: Length | undefined;
  readonly fixed: readonly { type: FixedType; from: Place; to: Place }[] | undefined;
  readonly continued: readonly Place[] | undefined;
  readonly isolation: readonly IsolationLine[] | undefined;
  readonly tees: 'allowed' | 'avoided' | undefined;
  readonly method: JointMethod | undefined;
  readonly depth: Length | undefined;
  readonly sawOrder: SawOrder | undefined;
}

export const FIXED_LIMIT = 200;

export const point = (): Field<Place> =>
  fields({ x: quantity('length', 'x', 'any'), y: quantity('length', 'y', 'any') });

export const FIXED_TYPES: readonly FixedType[] = ['contraction', 'construction', 'isolation'];
export const NEIGHBORS: readonly Neighbor[] = [
  'building',
  'column',
  'curb',
  'existing-slab',
  'steps',
  'wall',
];
export const SEALED = ['all', 'isolation', 'sawn'] as const;
