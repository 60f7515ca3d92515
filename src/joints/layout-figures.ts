/** What a joint plan tells: its joints and panels with their places, what gives way, and how sure the search is. */
import type { Quantity } from '../quantity/quantity';
import type { FewerJoints } from './fewer-joints';
import type { BackerRod, IsolationBoard, Sawing, Sealant } from './layout/take-off';
import type { Place } from './layout-input';

/** Places along both edges of a strip. */
export interface EdgePlaces {
  /** Along the edge on the left. */
  readonly left: Quantity<'length'>;
  /** Along the edge on the right. */
  readonly right: Quantity<'length'>;
}

/** A joint of the plan. */
export interface PlanJoint {
  /** From 1, in the order of the list. */
  readonly number: Quantity<'count'>;
  /** What kind of joint it is. */
  readonly type: 'contraction' | 'construction' | 'isolation';
  /** Of a circle `from` and `to` are one point on it; an arc runs counterclockwise about its center. */
  readonly shape: 'straight' | 'circle' | 'arc';
  /** Where it begins. */
  readonly from: Place;
  /** Where it ends. */
  readonly to: Place;
  /** The middle of a circle or an arc. */
  readonly center?: Place;
  /**
   * How far along the edges a cut across a strip lies, to the left and to the right of who walks it, from the end
   * before joint 1.
   */
  readonly alongEdge?: EdgePlaces;
  /** From end to end, along the arc where it is one; once around for a circle. */
  readonly length: Quantity<'length'>;
  /** Contraction joints as cut; construction and isolation joints through the slab. */
  readonly depth: Quantity<'length'>;
}

/** A panel of the plan. */
export interface Panel {
  /** From 1, in the order of the list. */
  readonly number: Quantity<'count'>;
  /** The middle of the panel over all. */
  readonly at: Place;
  /** Over all in the direction of the joints; from circle to circle in a round slab. */
  readonly along: Quantity<'length'>;
  /** Over all across; mean width in a round or tapering slab. */
  readonly across: Quantity<'length'>;
  /** Openings taken out. */
  readonly area: Quantity<'area'>;
  /** Longer over shorter side, each over all. */
  readonly ratio: Quantity<'ratio'>;
}

/** A rule that could not be kept, and where. */
export interface GivenWay {
  /** The rule that gives way. */
  readonly rule:
    | 'sliver'
    | 'panel shape'
    | 'sharp corner'
    | 'corner not met'
    | 'opening passed by'
    | 'joint ends at a joint'
    | 'module';
  /** Which panel, where it is one. */
  readonly panel?: Quantity<'count'>;
  /** Which opening, by its place in `openings` from 1, where joints pass it by. */
  readonly opening?: Quantity<'count'>;
  /** The inside corner that no joint meets, or the middle of the opening. */
  readonly at?: Place;
  /** Shorter side of a sliver, ratio of a panel too long, else how many joints or corners break the rule. */
  readonly actual?: Quantity<'length'> | Quantity<'ratio'> | Quantity<'count'>;
  /** What the rule asks of a panel: least side, longest ratio, or sharpest corner. */
  readonly limit?: Quantity<'length'> | Quantity<'ratio'> | Quantity<'angle'>;
}

/** How sure it is that no shorter plan of the kind exists. */
export interface SearchNote {
  /** `exact`: none exists. `bounded`: none is shorter than `leastLength`. */
  readonly kind: 'exact' | 'bounded';
  /** All joints together: no plan of the kind comes to less. The length of this plan when exact. */
  readonly leastLength: Quantity<'length'>;
  /** What this plan has beyond the least length; none when exact. */
  readonly gap: Quantity<'length'>;
}

/** Figures of {@link jointLayout}. */
export interface JointLayoutFigures {
  /**
   * How the joints run: straight two ways; arcs and radial joints; a fan over a taper; across a strip; from an
   * opening outwards.
   */
  readonly pattern: 'straight' | 'round' | 'fan' | 'strip' | 'deck';
  /** How many panels. */
  readonly panelCount: Quantity<'count'>;
  /** Area of the slab, openings taken out: the sum of the panels. */
  readonly area: Quantity<'area'>;
  /** Contraction joints in all. */
  readonly contraction: Quantity<'length'>;
  /** Construction joints in all. */
  readonly construction: Quantity<'length'>;
  /** Isolation joints in all: openings, sides and fixed joints. */
  readonly isolation: Quantity<'length'>;
  /** Depth of the contraction joints. */
  readonly depth: Quantity<'length'>;
  /** Every joint in the slab with its place; isolation along sides and openings is not among them. */
  readonly joints: readonly PlanJoint[];
  /** Every panel with its place and size. */
  readonly panels: readonly Panel[];
  /** Rules that this plan does not keep, and where; empty when it keeps all. */
  readonly givesWay: readonly GivenWay[];
  /** How sure it is that this is the shortest plan of its kind. */
  readonly search: SearchNote;
  /** A plan with far fewer joints, where a few panels may be somewhat longer for their width than this one lets them. */
  readonly fewer?: FewerJoints;
  /** When the contraction joints are sawn. */
  readonly sawing?: Sawing;
  /** Board for all isolation joints; of no length where there are none. */
  readonly isolationBoard: IsolationBoard;
  /** Rod for the isolation joints, where they are sealed. */
  readonly backerRod?: BackerRod;
  /** Sealant for the joints that are sealed, where its width and depth are given. */
  readonly sealant?: Sealant;
  /** Dowels at construction joints, when their spacing is given. */
  readonly dowels?: Quantity<'count'>;
}
