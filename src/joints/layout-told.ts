/** A plan as it is told, in the family of units of the input: joints, panels, what gives way, how sure the search is. */

import { Decimal } from '../quantity/decimal';
import { angle, constant } from '../quantity/make';
import { type Quantity, quantityOf } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { wholeNumber } from '../reckoning/fields';
import type { Pad } from '../reckoning/pad';
import { lengthOf } from './layout/laid';
import type { Laid, LaidJoint } from './layout/plan';
import type { FixedType } from './layout/site';
import type { GivenWay, Panel, PlanJoint, SearchNote } from './layout-figures';
import type { Place } from './layout-input';
import type { Rules } from './panel-rules';

type Length = Quantity<'length'>;

const SHARPEST = constant(() => angle('60 deg'));

/** Writes figures in the family of units of the input. */
export class Writer {
  constructor(readonly system: System) {}

  length = (d: Decimal): Length => quantityOf('length', d, this.system);

  place = ({ x, y }: { x: Decimal; y: Decimal }): Place => ({ x: this.length(x), y: this.length(y) });

  joint = (joint: LaidJoint, number: number, depth: Length): PlanJoint => ({
    number: wholeNumber(number),
    type: joint.type,
    shape: joint.shape,
    from: this.place(joint.from),
    to: this.place(joint.to),
    ...(joint.center ? { center: this.place(joint.center) } : {}),
    ...(joint.along
      ? { alongEdge: { left: this.length(joint.along.left), right: this.length(joint.along.right) } }
      : {}),
    length: this.length(joint.length),
    depth,
  });

  panel = ({ at, along, across, widest, area }: Laid['panels'][number], number: number): Panel => {
    const [a, b] = [this.length(along), this.length(widest ?? across)];
    return {
      number: wholeNumber(number),
      at: this.place(at),
      along: a,
      across: this.length(across),
      area: quantityOf('area', area, this.system),
      ratio: a.lessThan(b) ? b.over(a) : a.over(b),
    };
  };
}

export function givenWay(laid: Laid, panels: readonly Panel[], rules: Rules, write: Writer): GivenWay[] {
  const list: GivenWay[] = laid.panels.flatMap(({ broken }, i) =>
    broken.map((rule): GivenWay => {
      const { number, along, across, ratio: actual } = panels[i] as Panel;
      const shorter = along.lessThan(across) ? along : across;
      if (rule === 'sharp corner') return { rule, panel: number, limit: SHARPEST() };
      return rule === 'sliver'
        ? { rule, panel: number, actual: shorter, limit: rules.leastSide }
        : { rule, panel: number, actual, limit: rules.longestRatio };
    }),
  );
  for (const at of laid.missed ?? []) list.push({ rule: 'corner not met', at: write.place(at) });
  for (const { index, at, corners } of laid.passedBy ?? []) {
    list.push({
      rule: 'opening passed by',
      opening: wholeNumber(index + 1),
      at: write.place(at),
      ...(corners > 0 ? { actual: wholeNumber(corners) } : {}),
    });
  }
  if (laid.tees > 0) list.push({ rule: 'joint ends at a joint', actual: wholeNumber(laid.tees) });
  if (laid.offModule > 0) list.push({ rule: 'module', actual: wholeNumber(laid.offModule) });
  return list;
}

export function searchNote(laid: Laid, write: Writer): SearchNote {
  const whole = lengthOf(laid);
  const bound = Decimal.min(whole, new Decimal(laid.leastLength.toFixed(4)));
  const least = laid.exact ? whole : bound;
  return {
    kind: laid.exact ? 'exact' : 'bounded',
    leastLength: write.length(least),
    gap: write.length(whole.minus(least)),
  };
}

export function totalOf(laid: Laid, type: FixedType): Decimal {
  return laid.joints.filter((j) => j.type === type).reduce((sum, j) => sum.plus(j.length), new Decimal(0));
}

/** Above this many joints their sum is not written out. */
const WRITTEN_OUT = 12;

export function workedTotal(laid: Laid, write: Writer, pad: Pad): Length {
  const total = write.length(totalOf(laid, 'contraction'));
  const cuts = laid.joints.filter((j) => j.type === 'contraction');
  if (cuts.length === 0 || cuts.length > WRITTEN_OUT) return total;
  const values = Object.fromEntries(cuts.map((j, i) => [`c${i + 1}`, write.length(j.length)]));
  return pad.step('contraction joints in all', `C = ${Object.keys(values).join(' + ')}`, values, total);
}
