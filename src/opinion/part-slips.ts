/** Slips of whole parts of an input: one left out, one taken twice, a notch or an opening forgotten, another choice. */
import { pathText } from '../reckoning/calculation';
import { isRecord } from '../reckoning/record';
import { say } from '../reckoning/words';
import { LEFT_OUT, type Path, type Places, valueAt } from './input-places';
import type { Edit, Slip, SlipCode } from './slip';

/** Longer lists are a table: that one row is left out of it is not tried for each. */
const FEW = 24;

const listName = (path: Path): string => String(path.filter((part) => typeof part === 'string').at(-1) ?? '');

const edit = (path: Path, value: unknown): readonly Edit[] => [{ on: 'input', path, value }];

/** An element or a line that has a name is what a sum is made of: it is forgotten more easily than one of its sizes. */
const NAMED_LEFT_OUT = 10;

function leftOut(path: Path, isShare: boolean, named = false): Slip {
  const opening = /opening|hole|deduct/i.test(listName(path));
  const code: SlipCode = isShare ? 'allowance-missed' : opening ? 'opening-left-out' : 'part-left-out';
  const at = pathText(path);
  const part = named ? NAMED_LEFT_OUT : 8;
  const weight = { 'allowance-missed': 22, 'opening-left-out': 15, 'part-left-out': part }[code];
  return {
    code,
    weight,
    says: () => say`${{ place: at }} was left out`,
    edits: edit(path, LEFT_OUT),
    input: at,
  };
}

/** What has a name is a line or an element of a job: it is counted twice more easily than one of its sizes is doubled. */
const NAMED_TWICE = 9;

const isNamed = (item: unknown): item is { readonly name: string } =>
  isRecord(item) && typeof item['name'] === 'string';

/** The same once more: no two of a list may have one name. */
const renamed = (item: unknown): unknown => (isNamed(item) ? { ...item, name: `${item.name} ′` } : item);

/** How common it is to count a kind in that is not meant: tax on labor. */
const COUNTED_IN = 6;

/** Kinds of a list, with another beside them: tax on material and labor for tax on material. */
function* kindSlips(input: unknown, choices: Places['choices']): Generator<Slip> {
  for (const { path, all } of choices) {
    const list = valueAt(input, path.slice(0, -1));
    if (path.at(-1) !== 0 || !Array.isArray(list)) continue;
    const at = pathText(path.slice(0, -1));
    for (const kind of all)
      if (!list.includes(kind))
        yield {
          code: 'other-choice',
          weight: COUNTED_IN,
          says: () => say`${{ place: at }} does not say ${{ kind }}, and that was counted in`,
          edits: edit(path.slice(0, -1), [...list, kind]),
          input: at,
        };
  }
}

function* itemSlips(input: unknown, path: Path): Generator<Slip> {
  const list = valueAt(input, path.slice(0, -1));
  if (!Array.isArray(list) || list.length > FEW) return;
  const i = Number(path.at(-1));
  if (list.length > 1) yield leftOut(path, false, isNamed(list[i]));
  const at = pathText(path);
  yield {
    code: 'part-twice',
    weight: isNamed(list[i]) ? NAMED_TWICE : 6,
    says: () => say`${{ place: at }} was taken twice`,
    edits: edit(path.slice(0, -1), [...list.slice(0, i + 1), renamed(list[i]), ...list.slice(i + 1)]),
    input: at,
  };
}

interface Shape {
  readonly [name: string]: unknown;
}

/** Simpler shapes that another is taken for. */
const SIMPLER: Readonly<Record<string, (own: Shape) => readonly (readonly [SlipCode, number, Shape])[]>> = {
  L: ({ length, width }) => [['notch-left-out', 22, { shape: 'rectangle', length, width }]],
  U: ({ length, width }) => [['notch-left-out', 22, { shape: 'rectangle', length, width }]],
  ring: ({ outerDiameter, innerDiameter }) => [
    ['opening-left-out', 15, { shape: 'circle', diameter: outerDiameter }],
    ['outer-for-inner', 6, { shape: 'circle', diameter: innerDiameter }],
  ],
};

function* shapeSlips({ path, value }: Places['objects'][number]): Generator<Slip> {
  const simpler = SIMPLER[String(value['shape'])];
  const at = pathText(path);
  for (const [code, weight, shape] of simpler?.(value) ?? [])
    yield {
      code,
      weight,
      says: () => say`${{ place: at }} was taken as a whole ${{ shape: String(shape['shape']) }}`,
      edits: edit(path, shape),
      input: at,
    };
}

/** Of a long list, as sizes of bars are, the one beside it is taken most often. */
function weightOf(all: readonly string[], chosen: string, other: string): number {
  const steps = Math.abs(all.indexOf(chosen) - all.indexOf(other));
  return all.length > FEW_CHOICES && steps === 1 ? 3 : 4 / Math.max(1, (all.length - 1) / 3);
}

const FEW_CHOICES = 6;

/** Every slip of a part of an input. */
export function partSlips(input: unknown, { optional, items, objects, choices, leaves }: Places): Slip[] {
  const shares = new Set(leaves.filter(({ dimension }) => dimension === 'ratio').map(({ at }) => at));
  return [
    ...items.flatMap((path) => [...itemSlips(input, path)]),
    ...optional.map((path) => leftOut(path, shares.has(pathText(path)))),
    ...objects.flatMap((one) => [...shapeSlips(one)]),
    ...kindSlips(input, choices),
    ...choices.flatMap(({ path, at, chosen, all }) =>
      all.flatMap((other): Slip[] =>
        other === chosen
          ? []
          : [
              {
                code: 'other-choice',
                weight: weightOf(all, chosen, other),
                says: () => say`${{ place: at }} is ${{ is: chosen }}, and ${{ taken: other }} was taken`,
                edits: edit(path, other),
                input: at,
              },
            ],
      ),
    ),
  ];
}
