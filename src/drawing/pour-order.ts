/**
 * The order in which elements of a job are poured: what rests on another after it, otherwise as its days say, and then as
 * the document has them.
 */
import type { Element } from '../job/document';
import type { ReckonedJob } from '../job/job-takeoff';

/** Numbers from 1 by the names of elements; those without concrete have none, nor has one that is poured alone. */
export function pourOrder({ takeoff }: ReckonedJob, elements: readonly Element[]): Map<string, number> {
  const poured = new Set(takeoff.figures.elements.flatMap(({ name, concrete }) => (concrete ? [name] : [])));
  const order = new Map<string, number>();
  if (poured.size < 2) return order;
  const told = (takeoff.figures.days ?? []).flatMap(({ elements: names }) => names);
  const onDay = ({ name }: Element): number => (told.includes(name) ? told.indexOf(name) : told.length);
  let left = elements.filter(({ name }) => poured.has(name)).sort((a, b) => onDay(a) - onDay(b));
  while (left.length > 0) {
    const waits = ({ standsOn }: Element): boolean =>
      standsOn !== undefined && poured.has(standsOn) && !order.has(standsOn);
    // Two that stand on each other are poured as they come.
    const next = left.find((element) => !waits(element)) ?? left[0];
    if (next) order.set(next.name, order.size + 1);
    left = left.filter((element) => element !== next);
  }
  return order;
}
