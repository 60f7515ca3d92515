/** A whole job of 20 elements against its calculations alone, and one edit of it. */
import { readFileSync } from 'node:fs';
import { calculations } from '../../src/catalog/all';
import { type JobInput, reckonJob } from '../../src/index';
import type { Case } from './case';

const yard = JSON.parse(readFileSync(new URL('../demo/rear-yard.json', import.meta.url), 'utf8')) as JobInput;

const TIMES = [0, 1, 2, 3, 4];

/** Each element five times, each time a little thicker, so that no two are alike. */
const job: JobInput = {
  ...yard,
  days: (yard.days ?? []).map((day) => ({
    ...day,
    elements: day.elements.flatMap((name) => TIMES.map((k) => `${name} ${k}`)),
  })),
  elements: TIMES.flatMap((k) =>
    yard.elements.map(({ at: _, standsOn, ...element }) => ({
      ...element,
      name: `${element.name} ${k}`,
      ...(standsOn === undefined ? {} : { standsOn: `${standsOn} ${k}` }),
      ...(typeof element.thickness === 'string' ? { thickness: `${6 + k / 4} in` } : {}),
    })),
  ),
};

const whole = reckonJob(job);
const alone = whole.parts.map(({ id, input }) => ({
  input,
  calculation: calculations.find((each) => each.id === id),
}));
const edited: JobInput = {
  ...job,
  elements: job.elements.map((element, i) => (i === 3 ? { ...element, thickness: '5.25 in' } : element)),
};

export const cases: readonly Case[] = [
  { name: 'job of 20 elements', run: () => reckonJob(job) },
  {
    name: 'its calculations alone',
    run: () => {
      for (const { calculation, input } of alone) calculation?.attempt(input);
    },
  },
  { name: 'one thickness edited', run: () => reckonJob(edited, { from: whole }) },
];

export const ratios = [
  ['job of 20 elements', 'its calculations alone', 'a whole job over its calculations'],
  ['one thickness edited', 'job of 20 elements', 'an edit over the whole job'],
] as const;
