/** Which parts of a job take a thing, so that a price by it waits for these alone. */
import type { TakeItem } from '../reckoning/takes';
import type { DayPart } from './day-inputs';
import type { ElementPart, JOB_PARTS } from './part-inputs';

type ItemPart = ElementPart | keyof typeof JOB_PARTS | DayPart;

/** Parts that are poured. */
export const CONCRETE = ['slab', 'steps', 'footings', 'walls', 'piers', 'curb', 'probed'] as const;

/** By the names of things in the data; those of the job as a whole are in what they turn the takes of elements into. */
export const ITEM_PARTS: Readonly<Record<TakeItem, readonly ItemPart[]>> = {
  'anchor-bolt': ['walls'],
  'backer-rod': ['joints', 'finish'],
  'bagged-mix': [...CONCRETE, 'bags'],
  bar: ['bars', 'cutting'],
  'bar-support': ['bars', 'mesh'],
  base: ['base'],
  blanket: ['limits'],
  board: ['forms'],
  brace: ['forms'],
  color: ['finish'],
  concrete: CONCRETE,
  dowel: ['dowels', 'joints'],
  'dowel-basket': ['dowels'],
  epoxy: ['dowels'],
  fibers: ['fibers'],
  fill: ['excavation', 'backfill'],
  'foam-board': [],
  'form-tube': ['piers'],
  geotextile: ['base'],
  'haul-away': ['excavation'],
  'isolation-board': ['joints'],
  'joint-strip': ['joints'],
  liquid: ['finish'],
  mesh: ['mesh'],
  nail: ['forms'],
  other: [],
  powder: ['finish'],
  'ready-mix': [...CONCRETE, 'order'],
  'release-oil': ['forms'],
  'saw-cut': ['joints'],
  sealant: ['joints', 'finish'],
  'seam-tape': ['retarder'],
  seed: ['backfill'],
  sheet: ['forms'],
  stake: ['forms'],
  straw: ['backfill'],
  tie: ['bars'],
  'tie-bar': ['dowels'],
  topsoil: ['backfill'],
  'vapor-retarder': ['retarder'],
};
