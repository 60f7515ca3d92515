/** How a plan is to be drawn: the one set of options that every plan takes. */
import * as faults from '../quantity/faults';
import type { Fault } from '../quantity/input-error';
import type { System } from '../quantity/units';
import { readInput } from '../reckoning/calculation';
import { choice, type Field, fields, maybe, reading } from '../reckoning/fields';
import { plainCopy } from '../reckoning/plain';
import { localized } from '../report/show';
import type { Language, View } from '../report/view';
import { neatText } from './text-size';

/** Colors of a plan in your own: names, or `#` and figures. */
export interface OwnColors {
  /** Lines and text. */
  readonly ink: string;
  /** The ground; by default none, so that what lies behind shows through. */
  readonly paper?: string;
}

/**
 * `light`: black on white. `dark`: light on near black. `transparent`: no ground, and lines and text in the color of
 * the text around the plan, black where it stands by itself.
 */
export type PlanColors = 'light' | 'dark' | 'transparent' | OwnColors;

/** How a plan is to be drawn. */
export interface PlanOptions extends Pick<View, 'system' | 'locale' | 'language'> {
  /** Heading, also read out to those who do not see the plan; by default what kind of plan it is. */
  readonly title?: string;
  /** How wide the plan is meant to be shown, in pixels, from 120 to 4000; by default 390, a phone held upright. */
  readonly width?: number;
  /** Height of the text in pixels at that width, from 6 to 96; by default 12. No text on the plan is smaller. */
  readonly textSize?: number;
  /** Ground and ink; by default `light`. */
  readonly colors?: PlanColors;
  /**
   * What the ids in the plan begin with: a letter, then letters, figures, `-` and `_`. By default made from what is
   * drawn, so that plans that differ share none.
   */
  readonly id?: string;
}

/** Options that have been read. */
export interface PlanStyle extends Pick<View, 'locale' | 'language'> {
  readonly system: System | undefined;
  readonly title: string | undefined;
  readonly width: number;
  readonly size: number;
  readonly ink: string;
  readonly paper: string | undefined;
  readonly id: string | undefined;
}

const SYSTEMS = ['customary', 'metric'] as const;
const COLORS: Readonly<Record<string, { readonly ink: string; readonly paper?: string }>> = {
  light: { ink: '#000', paper: '#fff' },
  dark: { ink: '#eee', paper: '#111' },
  transparent: { ink: 'currentColor' },
};
const TITLE = 200;
const WIDTH = { usual: 390, least: 120, most: 4000 };
const TEXT = { usual: 12, least: 6, most: 96 };

function number(what: string, least: number, most: number): Field<number> {
  const read = (x: unknown): number | Fault =>
    typeof x === 'number' && x >= least && x <= most
      ? x
      : faults.wrongType(what, `a number from ${least} to ${most}`);
  return reading(read, () => ({ title: what, type: 'number', minimum: least, maximum: most }));
}

function matching(what: string, form: RegExp, wanted: string): Field<string> {
  const read = (x: unknown): string | Fault =>
    typeof x === 'string' && form.test(x) ? x : faults.wrongType(what, wanted);
  return reading(read, () => ({ title: what, type: 'string', pattern: form.source }));
}

const title = (): Field<string> =>
  reading<string>(
    (x) => (typeof x === 'string' ? neatText(x, TITLE) : faults.wrongType('title', 'text')),
    () => ({ type: 'string' }),
  );

const locale = (): Field<string> =>
  reading<string>(
    (x) => (typeof x === 'string' ? x : faults.wrongType('locale', 'a language tag, for example "de-DE"')),
    () => ({ type: 'string' }),
  );

function language(): Field<Language> {
  const read = (x: unknown): Language | Fault =>
    typeof x === 'object' && x !== null && Object.values(x).every((text) => typeof text === 'string')
      ? (x as Language)
      : faults.wrongType('language', 'an object from English sentences to texts');
  return reading(read, () => ({ type: 'object', additionalProperties: { type: 'string' } }));
}

const COLOR = /^(?:[a-z]{1,30}|#[0-9a-f]{3,8})$/i;

const color = (what: string): Field<string> =>
  matching(what, COLOR, 'a color by its name or as "#" and figures');

function colors(): Field<PlanColors> {
  const named = choice('colors', ['light', 'dark', 'transparent']);
  const own = fields({ ink: color('ink'), paper: maybe(color('paper')) });
  return {
    read: (x, report) =>
      typeof x === 'object' && x !== null
        ? (own.read(x, report) as OwnColors | undefined)
        : named.read(x, report),
    json: () => ({ anyOf: [named.json({}), own.json({})] }),
  };
}

const optionFields = () =>
  fields({
    system: maybe(choice('system', SYSTEMS)),
    locale: maybe(locale()),
    language: maybe(language()),
    title: maybe(title()),
    width: maybe(number('width', WIDTH.least, WIDTH.most)),
    textSize: maybe(number('textSize', TEXT.least, TEXT.most)),
    colors: maybe(colors()),
    id: maybe(matching('id', /^[a-z][\w-]{0,60}$/i, 'a letter, then letters, figures, "-" and "_"')),
  });

/**
 * Options as they were given, checked.
 *
 * @throws {InputError} `wrong-type`, `unknown-choice`, `unknown-key`
 */
export function readPlanOptions(options: PlanOptions | null | undefined): PlanStyle {
  const read = readInput(optionFields(), plainCopy(options ?? {}));
  // An unknown language tag is refused here, before anything is drawn.
  localized('1', { ...(read.locale ? { locale: read.locale } : {}) });
  const { ink, paper } =
    typeof read.colors === 'object' ? read.colors : (COLORS[read.colors ?? 'light'] as OwnColors);
  return {
    system: read.system,
    ...(read.locale ? { locale: read.locale } : {}),
    ...(read.language ? { language: read.language } : {}),
    title: read.title || undefined,
    width: read.width ?? WIDTH.usual,
    size: read.textSize ?? TEXT.usual,
    ink,
    paper,
    id: read.id,
  };
}
