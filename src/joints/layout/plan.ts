/** What a plan of joints is made of: its joints, its panels, and what it misses. */
import type { Corner } from '../../geometry/polygon';
import type { Decimal } from '../../quantity/decimal';
import type { PanelRule } from './rules';
import type { FixedType } from './site';

/** An opening that joints pass by. */
export interface PassedBy {
  /** Its place among the openings. */
  readonly index: number;
  readonly at: Corner;
  /** Its corners that no joint meets. */
  readonly corners: number;
}

/** How far along both edges of a strip, seen from the end that is counted from. */
export interface Along {
  readonly left: Decimal;
  readonly right: Decimal;
}

/** A joint of the plan. */
export interface LaidJoint {
  readonly type: FixedType;
  readonly shape: 'straight' | 'circle' | 'arc';
  readonly from: Corner;
  readonly to: Corner;
  /** Of a circle or an arc, which runs counterclockwise from its beginning to its end. */
  readonly center?: Corner;
  readonly length: Decimal;
  /** Of a cut across a strip. */
  readonly along?: Along;
  /** Joints of one run have one key and lie on one line. */
  readonly run: string;
  /** Which family of parallel lines the run belongs to, and its place among them. */
  readonly family: string;
  readonly place: Decimal;
}

/** A panel of the plan. */
export interface LaidPanel {
  readonly at: Corner;
  readonly along: Decimal;
  readonly across: Decimal;
  /** Across where it is widest, of a panel that narrows. */
  readonly widest?: Decimal;
  readonly area: Decimal;
  readonly broken: readonly PanelRule[];
}

/** A plan. */
export interface Laid {
  readonly pattern: 'straight' | 'round' | 'fan' | 'strip' | 'deck';
  readonly joints: readonly LaidJoint[];
  readonly panels: readonly LaidPanel[];
  /** Joints that start at a joint though that is not allowed. */
  readonly tees: number;
  /** Lines that do not fall on the module. */
  readonly offModule: number;
  /** Inside corners that no joint meets. */
  readonly missed?: readonly Corner[];
  /** Openings that the joints pass by. */
  readonly passedBy?: readonly PassedBy[];
  /** What it would take to keep every rule, where that would cut up the slab: panels, and meters of joints. */
  readonly kept?: { readonly cells: number; readonly length: number };
  readonly exact: boolean;
  /** No plan of this kind that keeps as many rules is shorter than this, in meters. */
  readonly leastLength: number;
}
