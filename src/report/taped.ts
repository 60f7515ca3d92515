/**
 * Metric lengths as a crew takes them off a tape: what is cut in whole millimeters, so that nothing comes out short, and
 * what is set out in whole centimeters.
 */
import { constant, length } from '../quantity/make';
import { nearest } from '../quantity/nearest';
import { type Quantity, unitShown } from '../quantity/quantity';
import { type View, viewed } from './show';

type Length = Quantity<'length'>;

/** What is told of lengths within a figure, on the sheet of a crew. */
interface TapedView extends View {
  readonly detail?: 'full' | 'crew';
  readonly taped?: 'cut' | 'set-out' | undefined;
}

const TAPED: Readonly<Record<string, TapedView['taped']>> = {
  bars: 'cut',
  construction: 'set-out',
  contraction: 'set-out',
  cuts: 'cut',
  edges: 'set-out',
  isolation: 'set-out',
  joints: 'set-out',
  laid: 'cut',
  pieces: 'cut',
  plan: 'cut',
  seams: 'set-out',
  stock: undefined,
};

const MILLIMETER = constant(() => length('1 mm'));
const CENTIMETER = constant(() => length('10 mm'));
const INCH = constant(() => length('1 in'));

const isMetric = (q: Quantity): boolean => unitShown(q).system === 'metric';

/** A view with how the lengths of a figure are told on the sheet of a crew. */
export function tapedView(name: string, view: TapedView): View {
  if (view.detail !== 'crew' || !Object.hasOwn(TAPED, name)) return view;
  const seen: TapedView = { ...view, taped: TAPED[name] };
  return seen;
}

/** A quantity as a crew takes it off a tape, where it is a metric length of a figure that is told so. */
export function taped(given: Quantity, view: TapedView): Quantity {
  if (view.taped === undefined || given.dimension !== 'length') return given;
  const q = viewed(given, view) as Length;
  if (!isMetric(q)) return given;
  if (view.taped === 'cut') return q.upTo(MILLIMETER()).in('mm');
  return unitShown(q).id === 'm' ? nearest(q, CENTIMETER()) : q;
}

/** What is bought by length: up to whole centimeters or inches. */
export function boughtLength(given: Quantity, view: View): Quantity {
  if (given.dimension !== 'length') return given;
  const q = viewed(given, view) as Length;
  return q.upTo(isMetric(q) ? CENTIMETER() : INCH());
}
