/** What the things that a job takes are called where they are bought. */
import type { TakeItem } from '../reckoning/takes';

/** By their names in the data; every one of them is here, so that a list of prices knows them all. */
export const ITEM_NAMES: Readonly<Record<TakeItem, string>> = {
  'anchor-bolt': 'anchor bolt',
  'backer-rod': 'backer rod',
  'bagged-mix': 'bagged mix',
  bar: 'reinforcing bars',
  'bar-support': 'chairs or blocks',
  base: 'gravel',
  blanket: 'blankets against frost',
  board: 'board',
  brace: 'brace',
  color: 'color',
  concrete: 'concrete in place',
  dowel: 'dowels',
  'dowel-basket': 'dowel basket',
  epoxy: 'epoxy',
  fibers: 'fibers',
  fill: 'fill',
  'foam-board': 'foam board',
  'form-tube': 'form tube',
  geotextile: 'geotextile',
  'haul-away': 'earth to haul away',
  'isolation-board': 'isolation board',
  'joint-strip': 'joint strip',
  liquid: 'liquid',
  mesh: 'mesh',
  nail: 'nail',
  other: 'other',
  powder: 'powder',
  'ready-mix': 'ready-mixed concrete',
  'release-oil': 'release oil',
  'saw-cut': 'joints to saw',
  sealant: 'sealant',
  'seam-tape': 'seam tape',
  seed: 'seed',
  sheet: 'sheet',
  stake: 'stake',
  straw: 'straw',
  tie: 'bar ties',
  'tie-bar': 'tie bars',
  topsoil: 'topsoil',
  'vapor-retarder': 'vapor retarder',
};

/** On the purchase list and bought by nobody: work that is done. */
export const WORK: ReadonlySet<TakeItem> = /*#__PURE__*/ new Set<TakeItem>(['haul-away', 'saw-cut']);

/** Every kind of thing that a job takes. */
export const ITEMS = /*#__PURE__*/ Object.keys(ITEM_NAMES) as readonly TakeItem[];
