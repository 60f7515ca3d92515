/** A job as the parts of a sheet: its elements in order, then its days, each with its results, then what is of the whole job. */
import type { ReckonedJob } from '../job/job-takeoff';
import type { JobPart } from '../job/work';
import type { Quantity } from '../quantity/quantity';
import { say } from '../reckoning/words';
import { mustBeJob, mustBeView } from './must-be';
import type { Part, WithInput } from './sheet';
import { type View, wordsText, wordText } from './view';

/** A part with what it is of, where a job has several of its kind. */
const withInput = ({ input, mix, result }: JobPart): WithInput => ({
  input,
  result,
  ...(mix === undefined ? {} : { of: mix }),
});

/** Whoever reads the figures of one of several alike has to know how many times it is done. */
const withCount = (name: string, count: Quantity<'count'>, view: View): string =>
  count.toNumber('each') > 1 ? `${name} (${wordsText(say`${{ count }} alike, figures of one`, view)})` : name;

/**
 * The parts of a job as a sheet takes them: one for each element, in order, one for each day, then one for the whole job.
 *
 * @param job - the job, from `reckonJob`
 * @param view - the language of the heading that the whole job goes under
 * @throws {InputError} `not-a-result` for what is no job; `wrong-type`
 * @returns parts with their results and inputs, for `textSheet` and `markdownSheet`
 * @example
 * ```ts
 * import { reckonJob } from 'flatwork-reckoner';
 * import { jobParts, textSheet } from 'flatwork-reckoner/report';
 *
 * const outline = { shape: 'rectangle', length: '12 ft', width: '8 ft' } as const;
 * const job = reckonJob({ version: 1, elements: [{ name: 'Bin pad', outline, thickness: '4 in', slab: true }] });
 * textSheet('Rear yard', jobParts(job)).split('\n')[3]; // 'Bin pad'
 * ```
 */
export function jobParts(job: ReckonedJob, view: View = {}): Part[] {
  mustBeJob(job);
  mustBeView(view);
  const { takeoff, parts } = job;
  const of = (element: string | undefined): WithInput[] =>
    parts.filter((part) => part.element === element && part.day === undefined).map(withInput);
  const on = (day: string): WithInput[] => parts.filter((part) => part.day === day).map(withInput);
  const days = (takeoff.figures.days ?? []).map(({ name }) => ({ name, results: on(name) }));
  const whole: Part = {
    name: wordText('Whole job', view),
    results: [...of(undefined), { input: undefined, result: takeoff }],
  };
  const elements = takeoff.figures.elements.map(({ name, count }) => ({
    name: withCount(name, count, view),
    results: of(name),
  }));
  return [...elements, ...days, whole].filter(({ results }) => results.length > 0);
}
