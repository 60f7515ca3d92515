/** A metric job never meets a customary unit, and the reverse: in sheets, plans, refusals, questions and plans asked for. */
import { describe, expect, it } from 'vitest';
import { type AnyCalculation, calculations as catalog } from '../../src/catalog/all';
import * as drawing from '../../src/drawing/index';
import { InputError } from '../../src/index';
import { markdownSheet, valueText, wordsText, worksheet } from '../../src/report/index';
import { runs } from '../support/effort';
import { goodInputs } from '../support/inputs';
import { inOtherSystem, placesOf, type Result, systemOfInput } from '../support/promises';
import { measured, typed } from '../support/relations/inputs';
import { strayUnits } from '../support/stray-units';

type System = 'customary' | 'metric';

/** What stays in its own units by design: texts that belong to a name, each with its reason. */
const BY_NAME: Readonly<Record<string, RegExp>> = {
  // Short, long and metric tons show where they were asked for by these names.
  'base-tonnage': /\btons\b.*(?:longton|tonne)|\| tons \|/,
  'base-tonnage view': /\btons\b.*(?:longton|tonne)/,
  // Rules as the sources have them, told in the units of the job and not in those of who reads the sheet later.
  'joint-spacing view': /./,
  'grade-correction view': /below the sill|blocked by|Stop placing/,
  // Bars and tables go by the names of the job.
  'dowel-layout view': /\bbar\b/,
  'steel-minimum view': /\bbar\b|spacing|^\s*\d+ mm +[\d./-]+ in$/,
};

/** Names of bars and of people, as they were typed: they are no measures. */
const NAMES = /"(?:bar|barAcross|style|name|title)":"[^"]*"/g;

const typedIn = (input: unknown): string => JSON.stringify(input).replaceAll('\\"', '"');
const namesIn = (input: unknown): string => (JSON.stringify(input).match(NAMES) ?? []).join(' ');

/** Lines with a unit of the other family that was not typed. */
function stray(id: string, text: string, system: System, known: string): string[] {
  const [body = ''] = text.split(/\nSources\n|\n\| source \| work/);
  const lines = body.split('\n').flatMap((line) => {
    const found = strayUnits(line, system).filter((unit) => !known.includes(unit));
    return found.length > 0 && !BY_NAME[id]?.test(line) ? [`${id} in ${system}: ${line.trim()}`] : [];
  });
  return lines.slice(0, 2);
}

type Plan = (input: never, options?: drawing.PlanOptions) => string;

const PLANS: Readonly<Record<string, readonly Plan[]>> = {
  'slab-volume': [drawing.outlinePlan],
  'joint-layout': [drawing.jointPlan],
  'rebar-layout': [drawing.matPlan, drawing.matSection],
  'mesh-layout': [drawing.meshPlan],
  'drainage-check': [drawing.surfacePlan],
  'probed-volume': [drawing.thicknessPlan],
};

const other = (system: System): System => (system === 'metric' ? 'customary' : 'metric');

/** The words on a plan; nothing where the input is none for it. */
function wordsOn(plan: Plan, input: unknown, options: drawing.PlanOptions = {}): string {
  try {
    return plan(input as never, options).replace(/<[^>]*>/g, '\n');
  } catch (error) {
    if (error instanceof InputError) return '';
    throw error;
  }
}

/** Sheets and plans of a job in its own units, and in the others where these are asked for. */
function shown(entry: AnyCalculation, input: unknown, system: System): string[] {
  const { id } = entry;
  const attempt = entry.attempt(input);
  if (!attempt.ok) return stray(id, attempt.error.message, system, typedIn(input));
  const { result } = attempt;
  const [known, names] = [typedIn(input), namesIn(input)];
  const asked = entry.attempt(input, { system: other(system) });
  const plans = PLANS[id] ?? [];
  return [
    ...stray(id, worksheet(result, { input }), system, known),
    ...stray(id, markdownSheet('Job', [{ name: 'Part', results: [result] }]), system, names),
    ...(asked.ok ? stray(id, worksheet(asked.result), other(system), names) : []),
    ...stray(`${id} view`, worksheet(result, { system: other(system) }), other(system), names),
    ...plans.flatMap((plan) => stray(id, wordsOn(plan, input), system, known)),
    ...plans.flatMap((plan) =>
      stray(id, wordsOn(plan, input, { system: other(system) }), other(system), names),
    ),
  ];
}

/** What may stand where a value should: nothing readable, no unit, another sort of thing, too little and too much. */
const SPOILT: readonly unknown[] = ['?', 4, '', null, {}, [], '5 kelvin', '3 USD', '2 deg', 1e9];

const FACTORS = [-1, 0, 1000, 0.001, 30, 0.1];

/** So many values are tried in each place: others in the next. */
const TRIED = runs(3);

/** Some of the values by turns, and some that are out of the ordinary. */
function spoiltValues(value: unknown, name: string, turn: number): unknown[] {
  const q = measured(value, name.replace(/\.\*/g, '').replace(/^.*\./, ''));
  const moved = q ? FACTORS.map((f) => typed(String(Number((Number(q.value) * f).toFixed(9))), q.unit)) : [];
  const all = [...SPOILT, ...moved];
  return Array.from({ length: TRIED }, (_, i) => all[(turn * TRIED + i) % all.length]);
}

/** Cautions, and what is assumed. */
function adviceOf({ cautions, assumed }: Result): string {
  const said = assumed.flatMap(({ value, because, override }) => [
    valueText(value),
    wordsText(because),
    wordsText(override),
  ]);
  return [...cautions.map((caution) => wordsText(caution)), ...said].join('\n');
}

/** What is said of a job in one system of which one value at a time is spoilt. */
function told(entry: AnyCalculation, inputs: readonly unknown[], system: System): string[] {
  return [...placesOf(inputs)].flatMap(([name, place], i) =>
    spoiltValues(place.value, name, i).flatMap((value) => {
      const input = place.with(value);
      const attempt = systemOfInput(input) === system ? entry.attempt(input) : undefined;
      if (!attempt) return [];
      const text = attempt.ok ? adviceOf(attempt.result) : attempt.error.message;
      return stray(entry.id, text, system, typedIn(input));
    }),
  );
}

/** So many inputs of a calculation are tried. */
const SHOWN = 3;

describe.each(catalog.map((entry) => [entry.id, entry] as const))('%s', (id, entry) => {
  const good = goodInputs.get(id) ?? [];
  const some = good.filter((_, i) => i % Math.ceil(good.length / runs(SHOWN)) === 0);
  const jobs = [...some, ...some.map(inOtherSystem)].flatMap((input) => {
    const system = systemOfInput(input);
    return system ? [{ input, system }] : [];
  });

  it('shows a job in its own units on sheets and plans, or in those that are asked for', () => {
    expect(jobs.flatMap(({ input, system }) => shown(entry, input, system))).toEqual([]);
  });

  it.each(['customary', 'metric'] as const)('refuses and asks about %s jobs in their own units', (system) => {
    const own = jobs.filter((job) => job.system === system).map(({ input }) => input);
    expect(told(entry, own, system)).toEqual([]);
  });
});
