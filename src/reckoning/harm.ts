/**
 * Which cautions come first where not all are read: by how grave they are, and of equally grave ones by what is harmed,
 * people first, then concrete that is placed today and cannot be placed again, then the work, and last what costs money
 * or is good to know of a figure. Common practice.
 */
import type { CautionCode } from './caution-code';
import type { Caution, Severity } from './parts';

const PEOPLE: readonly CautionCode[] = [
  'bare-stakes',
  'bent-boards-spring',
  'carbon-monoxide',
  'cold-concrete-presses',
  'cold-stress',
  'early-backfill',
  'engineer-releases',
  'engineered-excavation',
  'forms-need-design',
  'full-head',
  'guard',
  'handrail',
  'heat-stress',
  'heavy-lift',
  'impalement',
  'lift-too-high',
  'lifting-bags',
  'over-form-pressure',
  'ramp-handrails',
  'scalding-water',
  'slope-by-soil',
  'tie-off',
  'trench-depth',
  'trench-exit',
  'unbraced-forms',
  'wall-forms',
  'water-in-cut',
];

const POUR: readonly CautionCode[] = [
  'after-bull-float',
  'air-unsaid',
  'beyond-blankets',
  'bleed-water',
  'cold-concrete',
  'cold-joint',
  'cold-joint-risk',
  'cold-night',
  'crusts-over',
  'dew-on-concrete',
  'drying-near-limit',
  'drying-past-help',
  'fast-drying',
  'few-finishers',
  'finish-in-the-dark',
  'finish-on-bleed-water',
  'finish-too-late',
  'flash-set',
  'frost-in-ground',
  'froze-young',
  'frozen-ground',
  'hot-concrete',
  'late-to-set',
  'little-air',
  'much-air',
  'no-air',
  'no-water-when-old',
  'outdoor-trowel',
  'past-time-limit',
  'placing-waits',
  'rain-on-fresh-concrete',
  'ready-while-placing',
  'saw-at-night',
  'saw-too-slow',
  'set-rule-stretched',
  'sets-in-the-truck',
  'soft-in-frost',
  'too-cold-to-place',
  'too-few-blankets',
  'too-hot-to-place',
  'too-old',
  'trucks-queue',
  'troweled-air',
  'wash-at-night',
  'water-over-limit',
  'water-will-break-limit',
];

const FIGURES: readonly CautionCode[] = [
  'below-minimum-load',
  'elements-overlap',
  'end-areas-differ',
  'fill-needs-shrink',
  'just-over-increment',
  'just-over-load',
  'just-over-spacing',
  'large-allowance',
  'mix-in-order',
  'no-allowance',
  'not-proved-best',
  'odd-load',
  'over-other-caps',
  'reinforced-slab',
  'slump-out-of-table',
  'small-allowance',
  'small-last-load',
  'small-load',
  'thickness-out-of-table',
  'unusual',
];

const GRAVE: readonly Severity[] = ['stop', 'warning', 'note'];

type Ranked = Pick<Caution, 'code' | 'severity'>;

/** The lower, the earlier it is read. */
function rank({ code, severity }: Ranked): number {
  const of = [PEOPLE, POUR].findIndex((codes) => codes.includes(code));
  const harmed = of >= 0 ? of : FIGURES.includes(code) ? 3 : 2;
  return GRAVE.indexOf(severity) * 4 + harmed;
}

/** Sorted, those that are alike in the order in which they came. */
export const gravestFirst = <T extends Ranked>(cautions: readonly T[]): T[] =>
  [...cautions].sort((a, b) => rank(a) - rank(b));
