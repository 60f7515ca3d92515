/** Plans of slabs of every kind, their drawings and their limits do not depend on how the slab was drawn. */
import { describe, expect, it } from 'vitest';
import { jointPlan } from '../../src/drawing/joint-plan';
import { type JointLayoutInput, jointLayout } from '../../src/index';
import { runs } from '../support/effort';
import { slabOf } from '../support/joints/slabs';
import { between, stream, type Xy } from '../support/joints/yards';

type Move = (p: Xy) => Xy;
type Input = Pick<JointLayoutInput, 'outline' | 'openings' | 'columns'>;
type Spot = { readonly x: string; readonly y: string };

const MOVES: readonly (readonly [string, Move])[] = [
  ['at state-plane coordinates', ([x, y]) => [x + 2_000_000, y + 500_000]],
  ['turned by a quarter', ([x, y]) => [-y, x]],
  ['turned by a half', ([x, y]) => [-x, -y]],
  ['mirrored', ([x, y]) => [-x, y]],
  ['mirrored along its diagonal', ([x, y]) => [y, x]],
];

const feet = (text: string): number => Number(text.replace(' ft', ''));
const ft = (n: number): string => `${Number(n.toFixed(6))} ft`;

function movedSpot<P extends Spot>(p: P, move: Move): P {
  const [x, y] = move([feet(p.x), feet(p.y)]);
  return { ...p, x: ft(x), y: ft(y) };
}

/** The input moved; rectangles as polygons. `undefined` for shapes that are placed by themselves. */
function moved({ outline, openings, ...rest }: Input, move: Move): Input | undefined {
  if (outline.shape !== 'polygon' && outline.shape !== 'curved') return undefined;
  const points = (outline.points as unknown as Spot[]).map((p) => movedSpot(p, move));
  const cut = (openings ?? []).map((o) => {
    const opening = o as unknown as {
      shape: string;
      at: Spot;
      points: Spot[];
      length: string;
      width: string;
    };
    if (opening.shape === 'circle') return { ...opening, at: movedSpot(opening.at, move) };
    const [x, y] = opening.at ? [feet(opening.at.x), feet(opening.at.y)] : [0, 0];
    const [l, w] = opening.at ? [feet(opening.length), feet(opening.width)] : [0, 0];
    const ring = opening.points ?? [
      { x: ft(x), y: ft(y) },
      { x: ft(x + l), y: ft(y) },
      { x: ft(x + l), y: ft(y + w) },
      { x: ft(x), y: ft(y + w) },
    ];
    return { shape: 'polygon', points: ring.map((p) => movedSpot(p, move)) };
  });
  return { ...rest, outline: { ...outline, points }, openings: cut } as unknown as Input;
}

const told = (slab: Input, spacing: number): string => {
  const { figures } = jointLayout({ ...slab, thickness: '4 in', spacing: `${spacing} ft` });
  const areas = figures.panels.map((p) => p.area.toNumber('ft2').toFixed(3)).sort();
  const ways = figures.givesWay.map((w) => w.rule).sort();
  const kind = [figures.pattern, figures.search.kind];
  return [figures.contraction.toNumber('ft').toFixed(3), ...kind, areas, ways].join(' ');
};

const still: Move = (p) => p;

describe('the plan of any slab', () => {
  it('stays the same when the slab is moved, turned or mirrored, for 24 random slabs of twelve kinds', () => {
    const next = stream(77);
    let tried = 0;
    for (let i = 0; i < runs(24); i += 1) {
      const { input, kind } = slabOf(next, i);
      const spacing = between(next, 6, 13);
      const plain = moved(input, still);
      if (!plain) continue;
      const expected = told(plain, spacing);
      const k = i % MOVES.length;
      const [name, move] = MOVES[k] as readonly [string, Move];
      tried += 1;
      const what = `${kind} ${name} ${JSON.stringify(plain)}`;
      expect(told(moved(plain, move) as Input, spacing), what).toBe(expected);
    }
    expect(tried).toBeGreaterThan(0);
  });

  it('is drawn alike wherever the slab lies, for 24 random slabs of twelve kinds', () => {
    const next = stream(78);
    for (let i = 0; i < runs(24); i += 1) {
      const plain = moved(slabOf(next, i).input, still);
      if (!plain) continue;
      const drawn = (slab: Input): string => jointPlan({ ...slab, thickness: '4 in', spacing: '9 ft' });
      const away = drawn(moved(plain, ([x, y]) => [x + 2_000_000.25, y - 500_000.5]) as Input);
      expect(away, JSON.stringify(plain)).toBe(drawn(plain));
    }
  });
});
