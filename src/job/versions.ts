/**
 * Versions of the job document: which are read, and how one becomes the next.
 *
 * A new version is a new number here with the step that makes it of the one before. A document of an earlier version
 * goes through every step up to the newest, whoever reads it; one of a version that is not known is refused before
 * anything in it is read, since what it means is not known either.
 */
import { fault, missing, wrongType } from '../quantity/faults';
import { type Fault, fail } from '../quantity/input-error';
import { isQuantity } from '../quantity/quantity';
import { refuse } from '../reckoning/calculation';
import type { Field, JsonSchema } from '../reckoning/fields';
import { plainCopy } from '../reckoning/plain';
import { isRecord } from '../reckoning/record';
import { say } from '../reckoning/words';
import type { JobInput, Raw } from './document';

/** What makes a document of one version into one of the next: pure, on plain data. */
export type VersionStep = (document: Raw) => Raw;

/** Every version that is read, up to the newest. */
export interface Versions {
  /** The version that is written today. */
  readonly newest: number;
  /** By the version that a step begins with; each earlier version has one. */
  readonly steps: ReadonlyMap<number, VersionStep>;
}

/** Versions of the job document. There has been one. */
export const VERSIONS: Versions = { newest: 1, steps: /*#__PURE__*/ new Map() };

/** The versions that are read: those from which steps lead to the newest, and that. */
export function versionsRead({ newest, steps }: Versions): number[] {
  const read = [newest];
  for (let version = newest - 1; steps.has(version); version -= 1) read.unshift(version);
  return read;
}

const listed = (versions: Versions): string => versionsRead(versions).join(', ');

const notAVersion = (versions: Versions): Fault =>
  fault(
    'unknown-version',
    say`version must be a whole number; versions of the job document read here: ${{ versions: listed(versions) }}`,
  );

const unknownVersion = (version: number, versions: Versions): Fault =>
  version > versions.newest
    ? fault(
        'unknown-version',
        say`version ${{ version: String(version) }} of the job document is newer than this library, which reads: ${{ versions: listed(versions) }}; take a newer one`,
      )
    : fault(
        'unknown-version',
        say`version ${{ version: String(version) }} of the job document is not read; versions read here: ${{ versions: listed(versions) }}`,
      );

/** Why a version cannot be read, where it cannot. */
function versionFault(version: unknown, versions: Versions): Fault | undefined {
  if (version === undefined || version === null) return missing('version', String(versions.newest));
  if (typeof version !== 'number' || !Number.isInteger(version)) return notAVersion(versions);
  return versionsRead(versions).includes(version) ? undefined : unknownVersion(version, versions);
}

/** A document as its newest version has it, or why its version cannot be read. */
export type Migrated = { readonly document: Raw } | { readonly fault: Fault };

/** Take a document through every step from its version to the newest. */
export function newestOf(document: Raw, versions: Versions): Migrated {
  const fault = versionFault(document['version'], versions);
  if (fault) return { fault };
  let now = document;
  for (let version = document['version'] as number; version < versions.newest; version += 1) {
    now = { ...(versions.steps.get(version) as VersionStep)(now), version: version + 1 };
  }
  return { document: now };
}

/** A field that reads documents of every version: what it reads is always of the newest. */
export const ofAnyVersion = <T>(field: Field<T>, versions: Versions = VERSIONS): Field<T> => ({
  ...field,
  read: (input, report) => {
    if (!isRecord(input)) return field.read(input, report);
    const migrated = newestOf(input, versions);
    if ('document' in migrated) return field.read(migrated.document, report);
    report(migrated.fault, ['version']);
    return undefined;
  },
});

/** The newest version, which has been read already. */
export const versionField = ({ newest }: Versions = VERSIONS): Field<number> => ({
  read: () => newest,
  json: (): JsonSchema => ({ type: 'integer', minimum: newest, maximum: newest }),
});

/** Objects as everybody has them: what comes in is copied into ones without a prototype. */
export function ordinary(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordinary);
  if (typeof value !== 'object' || value === null || isQuantity(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, ordinary(inner)]));
}

/**
 * A job document of any version that is read as one of the newest, to be kept: whoever reckons a job reads all of
 * these versions anyhow. Nothing but the form is changed, and nothing else is looked at.
 *
 * @param document - a job document, as it comes from a file
 * @returns the same job as a document of the newest version; what was given stays as it is
 * @throws {InputError} `unknown-version` of a document that this library does not read, with the versions that it does;
 * `missing` without a version; `wrong-type` for what is no document
 * @example
 * ```ts
 * import { migrateJob } from 'flatwork-reckoner';
 *
 * migrateJob({ version: 1, elements: [{ name: 'pad', slab: true }] }).version; // 1
 * ```
 */
export function migrateJob(document: unknown): JobInput {
  return migratedBy(document, VERSIONS) as unknown as JobInput;
}

/** A document taken to the newest of these versions. */
export function migratedBy(document: unknown, versions: Versions): Raw {
  const plain = plainCopy(document);
  if (!isRecord(plain)) return fail(wrongType('it', 'a job document'));
  const migrated = newestOf(plain, versions);
  if ('fault' in migrated) return refuse('version', migrated.fault);
  return ordinary(migrated.document) as Raw;
}
