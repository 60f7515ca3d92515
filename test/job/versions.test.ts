/** Versions of the job document: what is read, what is refused, and how one becomes the next. */
import { describe, expect, it } from 'vitest';
import { jobTakeoff, migrateJob } from '../../src/job/index';
import {
  migratedBy,
  newestOf,
  ofAnyVersion,
  VERSIONS,
  type VersionStep,
  type Versions,
  versionsRead,
} from '../../src/job/versions';
import { InputError } from '../../src/quantity/input-error';
import { fields, parse, whole } from '../../src/reckoning/fields';

const pad = {
  name: 'pad',
  outline: { shape: 'rectangle', length: '12 ft', width: '8 ft' },
  thickness: '4 in',
  slab: true,
};

/** Forms that were never written: `pads`, then `slabs`, then `elements` with a name each. */
const MADE_UP: Versions = {
  newest: 3,
  steps: new Map<number, VersionStep>([
    [1, ({ pads, ...rest }) => ({ ...rest, slabs: pads })],
    [2, ({ slabs, ...rest }) => ({ ...rest, elements: (slabs as string[]).map((name) => ({ name })) })],
  ]),
};

const toldOf = (document: unknown, versions: Versions): string => {
  try {
    migratedBy(document, versions);
    return 'read';
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.issues.map(({ code, path, sentence }) => `${code} ${path}: ${sentence}`).join();
  }
};

describe('a document of an earlier version', () => {
  it('goes through every step to the newest, from wherever it begins', () => {
    const newest = { version: 3, name: 'yard', elements: [{ name: 'a' }, { name: 'b' }] };
    expect(migratedBy({ version: 1, name: 'yard', pads: ['a', 'b'] }, MADE_UP)).toStrictEqual(newest);
    expect(migratedBy({ version: 2, name: 'yard', slabs: ['a', 'b'] }, MADE_UP)).toStrictEqual(newest);
    expect(migratedBy(newest, MADE_UP)).toStrictEqual(newest);
  });

  it('is left as it was', () => {
    const old = Object.freeze({ version: 1, pads: Object.freeze(['a']) });
    expect(migratedBy(old, MADE_UP)).not.toBe(old);
    expect(old).toEqual({ version: 1, pads: ['a'] });
  });

  it('is read at the door as the newest, which alone the field knows', () => {
    const field = ofAnyVersion(fields({ version: whole('version', 2, 2), count: whole('count', 1, 9) }), {
      newest: 2,
      steps: new Map<number, VersionStep>([
        [1, ({ pads, ...rest }) => ({ ...rest, count: (pads as unknown[]).length })],
      ]),
    });
    const { value, faults } = parse(field, { version: 1, pads: ['a', 'b'] });
    expect([value.count.toString(), faults]).toEqual(['2 each', []]);
    expect(parse(field, { version: 1, pads: [] }).faults.map(({ path }) => path)).toEqual([['count']]);
  });
});

describe('a version that is not read', () => {
  it('is told with those that are', () => {
    expect(versionsRead(MADE_UP)).toEqual([1, 2, 3]);
    expect(toldOf({ version: 4 }, MADE_UP)).toBe(
      'unknown-version version: version 4 of the job document is newer than this library, which reads: 1, 2, 3; take a newer one',
    );
    expect(toldOf({ version: 0 }, MADE_UP)).toContain('unknown-version version: version 0');
    expect(toldOf({ version: '2' }, MADE_UP)).toContain('version must be a whole number');
    expect(toldOf({}, MADE_UP)).toBe('missing version: version is missing; write it, for example 3');
    expect(toldOf(['a'], MADE_UP)).toContain('wrong-type');
    expect(toldOf(undefined, MADE_UP)).toContain('wrong-type');
  });

  it('is one from which no step leads on', () => {
    const gap: Versions = { newest: 3, steps: new Map<number, VersionStep>([[1, (document) => document]]) };
    expect(versionsRead(gap)).toEqual([3]);
    expect(newestOf({ version: 1 }, gap)).toHaveProperty('fault.code', 'unknown-version');
  });
});

describe('the job document', () => {
  it('has had one version', () => {
    expect(versionsRead(VERSIONS)).toEqual([1]);
    expect(migrateJob({ version: 1, elements: [pad] })).toStrictEqual({ version: 1, elements: [pad] });
    expect(() => migrateJob({ version: 2, elements: [pad] })).toThrow(
      'newer than this library, which reads: 1;',
    );
  });

  it('of a version that is not known is refused for that alone', () => {
    const attempt = jobTakeoff.attempt({ version: 2, elements: [{ ...pad, oddly: 1 }] } as never);
    expect(attempt.ok ? [] : attempt.error.issues.map(({ code, path }) => [code, path])).toEqual([
      ['unknown-version', 'version'],
    ]);
  });

  it('says so of what cannot be read at all', () => {
    const trap = new Proxy(
      {},
      {
        ownKeys: () => {
          throw new Error('no');
        },
      },
    );
    expect(() => migrateJob(trap)).toThrow(InputError);
  });
});
