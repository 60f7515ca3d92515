/** A caller without types gets a clear `InputError` from every function of `report/`, whatever stands in an argument. */
import { describe, expect, it } from 'vitest';
import { barCutting, estimateCheck, jobBid, rebarLayout, reckonJob, slopeOf } from '../../src/index';
import { InputError } from '../../src/quantity/input-error';
import * as report from '../../src/report/index';

const outline = { shape: 'rectangle', length: '4 m', width: '3 m' } as const;
const slope = slopeOf({ slope: '1:12', over: '10 ft' });
const job = reckonJob({ version: 1, elements: [{ name: 'pad', outline, thickness: '100 mm', slab: true }] });
const bid = jobBid({ lines: [{ kind: 'subcontract', name: 'walk', amount: '10 USD' }] });
const bars = rebarLayout({ outline, mats: [{ layer: 'bottom', bar: '12 mm', spacing: '300 mm' }] }).figures;
const cutting = barCutting({ pieces: [{ length: '3 ft', count: 4 }], stock: [{ length: '20 ft' }] }).figures;
const check = estimateCheck(slopeOf, { slope: '1:12', over: '10 ft' }, { fall: '9 in' });
const parts = [{ name: 'Ramp', results: [slope] }];

/** Every function with arguments that it takes. */
const SOUND: Readonly<Record<string, readonly unknown[]>> = {
  barOrderCsv: [bars, {}],
  barOrderMarkdown: [bars, {}],
  barScheduleCsv: [bars, {}],
  barScheduleMarkdown: [bars, {}],
  checkHtml: ['Check', check, {}],
  checkMarkdown: ['Check', check, {}],
  checkSheet: [check, {}],
  cuttingCsv: [cutting, {}],
  cuttingMarkdown: [cutting, {}],
  jobHtml: ['Yard', job, 'crew', {}],
  jobParts: [job, {}],
  markdownSheet: ['Yard', parts, {}],
  purchaseCsv: [job, {}],
  purchaseRows: [job, {}],
  quantityText: [slope.figures.fall, {}],
  quoteCsv: [{ bid, job }, {}],
  quoteHtml: ['Yard', { bid, job }, {}],
  quoteMarkdown: ['Yard', { bid, job }, {}],
  quoteText: ['Yard', { bid, job }, {}],
  stepText: [slope.working[0], {}],
  textSheet: ['Yard', parts, {}],
  valueText: [slope.figures.fall, {}],
  wordsText: [slope.working[0], {}],
  worksheet: [slope, {}],
};

const BAD: readonly unknown[] = [
  undefined,
  null,
  [],
  [undefined],
  [null],
  [{ name: 'Ramp' }],
  [{ name: 'Ramp', results: [undefined] }],
  [{ results: [slope] }],
  {},
  { takeoff: {} },
  { takeoff: { figures: {} }, parts: [] },
  { bid: undefined },
  'words',
  7,
  () => slope,
  Symbol.iterator,
];

describe('report/ in plain JavaScript', () => {
  it('names every function here', () => {
    const functions = Object.entries(report).filter(([, one]) => typeof one === 'function');
    expect(functions.map(([name]) => name).sort()).toEqual(Object.keys(SOUND).sort());
  });

  it.each(Object.keys(SOUND))('%s throws nothing but InputError, with a path and a sentence', (name) => {
    const call = (args: readonly unknown[]): unknown =>
      (report as unknown as Record<string, (...a: readonly unknown[]) => unknown>)[name]?.(...args);
    const sound = SOUND[name] ?? [];
    expect(call(sound)).toBeDefined();
    let refused = 0;
    sound.forEach((_, i) => {
      for (const bad of BAD) {
        try {
          call(sound.map((one, k) => (k === i ? bad : one)));
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
          expect((error as InputError).message.length).toBeGreaterThan(20);
          refused += 1;
        }
      }
    });
    // What a view leaves out is usual, and so is an empty list of parts; most of the rest is refused.
    expect(refused).toBeGreaterThan(BAD.length / 2);
  });
});
