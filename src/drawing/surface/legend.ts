/** What each sign on the plan of a surface means: of those that it has, and no more. */
import type { Site } from '../../grade/terrain';
import { say } from '../../reckoning/words';
import { arrowPath } from '../arrow';
import { hatch } from '../hatch';
import { lineSample, type Sample } from '../legend';
import type { PagePoint } from '../room';
import type { Sheet } from '../sheet';
import type { Attributes } from '../svg';
import { UNITS } from './contours';
import { HEAD } from './falls';
import { cross } from './stakes';
import { STROKES } from './strokes';

const sampled =
  (make: (at: PagePoint, size: number) => Attributes): Sample =>
  (x, y, width) => [['path', make({ x, y }, width)]];

const swatch = (x: number, y: number, width: number): PagePoint[] => [
  { x: x - width / 2, y: y - 6 },
  { x: x + width / 2, y: y - 6 },
  { x: x + width / 2, y: y + 6 },
  { x: x - width / 2, y: y + 6 },
];

const hatched = (turns: readonly number[], apart: number, dash?: number): Sample =>
  sampled(({ x, y }, width) => ({
    d: turns.map((turn) => hatch([swatch(x, y, width)], { turn, apart, ...(dash ? { dash } : {}) })).join(''),
    ...STROKES.hatch,
  }));

/** What the drawing shows, so that the legend explains that and no more. */
interface Shown {
  readonly step: string;
  readonly falls: boolean;
  readonly ponds: boolean;
  readonly back: boolean;
  readonly stakes: boolean;
  readonly spots: boolean;
}

function explainLines(sheet: Sheet, site: Site): void {
  const kinds = new Set<string>(site.lines.map(({ kind }) => kind));
  const line = (shown: boolean, text: string, attributes: Attributes): void =>
    sheet.explain(shown && { text: sheet.text(text), sample: lineSample(attributes) });
  line(kinds.has('building') || kinds.has('threshold'), 'building, to stay dry', STROKES.building);
  line(kinds.has('curb'), 'curb', STROKES.curb);
  line(kinds.has('drain'), 'drain; a point drain is a ring', STROKES.drain);
  const open = kinds.has('driveway') || kinds.has('walk') || kinds.has('lawn');
  line(open, 'open edge', STROKES.open);
}

export function explain(sheet: Sheet, site: Site, { step, ...has }: Shown): void {
  const unit = UNITS[sheet.system];
  const arrow = sampled(({ x, y }, width) => ({
    d: arrowPath({ x, y }, { x: 1, y: 0 }, width / 2, HEAD * sheet.size),
    ...STROKES.arrow,
  }));
  sheet.explain(
    {
      text: sheet.text(say`contour, every ${{ step: [step] }}; each fifth heavy`),
      sample: lineSample(STROKES.heavy),
    },
    has.falls && { text: sheet.text('way that water runs, and its slope'), sample: arrow },
    has.stakes && {
      text: sheet.text('stake, with its mark'),
      sample: sampled((at) => ({ d: cross(at), stroke: 'ink', 'stroke-width': 1.1 })),
    },
    has.spots && {
      text: sheet.text(say`spot, with its elevation in ${{ unit: [unit] }}`),
      sample: (x, y) => [['circle', { cx: x, cy: y, r: 1.8, fill: 'ink' }]],
    },
    has.ponds && { text: sheet.text('water stands here'), sample: hatched([0], 4, 6) },
    has.back && { text: sheet.text('runs to the building'), sample: hatched([45, -45], 5) },
  );
  explainLines(sheet, site);
}
