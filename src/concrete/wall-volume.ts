/**
 * Walls: straight, around a rectangle with the corners counted once, or round; plain, tapered or in
 * insulated forms; less openings, plus pilasters.
 *
 * A wall is its plan area times its height. One that tapers, on its inside where it goes around, has
 * plan areas that change as a square of the height at most, so the prismoidal formula is exact. An
 * opening takes out its area times the thickness at its middle. A wall whose top falls along it, a wing
 * wall, has half of both heights. In insulated forms the core is what the two panels leave, and the webs take
 * up a share of it: what is left is `1 − share`.
 *
 * Source: geometry.
 */
import * as faults from '../quantity/faults';
import type { Quantity } from '../quantity/quantity';
import { type Calculation, define, refuse } from '../reckoning/calculation';
import * as cautions from '../reckoning/cautions';
import { type Limit, withinLimit } from '../reckoning/limits';
import type { Pad } from '../reckoning/pad';
import { CLOSED_FORM } from '../reckoning/source';
import { total } from '../reckoning/whole';
import { say } from '../reckoning/words';
import { ANCHORS, anchorsOf } from './plate-anchors';
import { TWO } from './solids';
import { checkThickness, grossOf, type Place, WHOLE } from './wall-body';
import { door, type Wall, type WallParsed, type WallVolumeInput } from './wall-input';
import { type Deducted, openingsOf, pilastersOf } from './wall-openings';

/** Figures of {@link wallVolume}. */
export interface WallVolumeFigures {
  /** Concrete in place. */
  readonly volume: Quantity<'volume'>;
  /** Of each entry, in order. */
  readonly volumes: readonly Quantity<'volume'>[];
  /** Before openings, webs and pilasters. */
  readonly grossVolume: Quantity<'volume'>;
  /** Plan area at the foot, without pilasters. */
  readonly planArea: Quantity<'area'>;
  /** Both faces as seen square to them, less openings, with the sides of pilasters; no ends of walls. */
  readonly formedArea: Quantity<'area'>;
  /** Anchor bolts of the plate on top, where it is asked for. */
  readonly anchors?: Quantity<'count'>;
  /** How far apart these stand at most. */
  readonly anchorsApart?: Quantity<'length'>;
  /** How far from each end of a piece of the plate the last one stands at most. */
  readonly anchorsFromEnd?: Quantity<'length'>;
}

type Length = Quantity<'length'>;
type Area = Quantity<'area'>;
type Volume = Quantity<'volume'>;

type Ratio = Quantity<'ratio'>;

interface Body {
  readonly volume: Volume;
  readonly gross: Volume;
  readonly plan: Area;
  readonly formed: Area;
}

/** What the openings leave, or a refusal where they take everything. */
function netOf(gross: Volume, out: Deducted, { name, path }: Place, pad: Pad): Volume {
  if (!out.volume) return gross;
  const left = gross.minus(out.volume);
  if (left.sign() <= 0) refuse(`${path}.openings`, faults.doesNotFit('the openings together', 'the wall'));
  return pad.step(say`${{ name }}, less openings`, 'N = V − O', { V: gross, O: out.volume }, left);
}

function lessWebs(net: Volume, s: Ratio | undefined, { name, path }: Place, pad: Pad): Volume {
  if (!s) return net;
  if (!s.lessThan(WHOLE())) return refuse(`${path}.webShare`, faults.doesNotFit('webShare', '100%'));
  return pad.step(say`${{ name }}, less webs`, 'C = N × (1 − s)', { N: net, s }, net.times(WHOLE().minus(s)));
}

/** A wall in insulated forms without their panels: what is poured. */
function coreOf(wall: Wall, { name, path }: Place, pad: Pad): Wall {
  const { thickness: o, topThickness: top, foam: f } = wall;
  if (!f) return wall;
  const both = f.times(TWO());
  if (!both.lessThan(o) || (top && !both.lessThan(top))) {
    refuse(`${path}.foam`, faults.doesNotFit('foam on both sides', 'thickness'));
  }
  const thickness = pad.step(
    say`${{ name }}, thickness of the core`,
    't = o − 2 × f',
    { o, f },
    o.minus(both),
  );
  const core = { ...wall, thickness, topThickness: top?.minus(both) };
  const within = (what: string, L: Length): Length =>
    pad.step(say`${{ name }}, ${{ what }} of the core`, 'l = L − 2 × f', { L, f }, L.minus(both));
  if (core.kind === 'loop') {
    const outerLength = within('outside length', core.outerLength);
    return { ...core, outerLength, outerWidth: within('outside width', core.outerWidth) };
  }
  return core.kind === 'ring'
    ? { ...core, outerDiameter: within('outside diameter', core.outerDiameter) }
    : core;
}

function bodyOf(wall: Wall, place: Place, least: Area | undefined, pad: Pad): Body {
  checkThickness(wall, place);
  const { gross, foot, faces } = grossOf(wall, place, pad);
  const out = openingsOf(wall, place, least, pad);
  const core = lessWebs(netOf(gross, out, place, pad), wall.webShare, place, pad);
  const { volumes, sides } = pilastersOf(wall, place, pad);
  const volume = total(`${place.name}, with pilasters`, 'V', [core, ...volumes], pad);
  const bare = out.area ? faces.minus(out.area.times(TWO())) : faces;
  const formed = sides.reduce((all, side) => all.plus(side), bare);
  const n = wall.count;
  if (!n) return { volume, gross, plan: foot, formed };
  const all = pad.step(
    say`${{ name: place.name }}, all alike`,
    'T = n × V',
    { n, V: volume },
    volume.times(n),
  );
  return { volume: all, gross: gross.times(n), plan: foot.times(n), formed: formed.times(n) };
}

/** Walls with more openings and pilasters than a street of houses has. */
const IN_WALLS: Limit = { of: 'the openings and pilasters of all walls', most: 1000 };

function reckon({ walls, deductFrom, anchors }: WallParsed, pad: Pad): WallVolumeFigures {
  const inWalls = walls.reduce((sum, w) => sum + (w.openings?.length ?? 0) + (w.pilasters?.length ?? 0), 0);
  withinLimit(IN_WALLS, inWalls, 'walls');
  const bodies = walls.map((wall, i) => {
    const place = { name: `wall ${i + 1}`, path: `walls[${i}]` };
    return bodyOf(coreOf(wall, place, pad), place, deductFrom, pad);
  });
  const volumes = bodies.map((b) => b.volume);
  pad.caution(cautions.alkali);
  return {
    volume: total('volume', 'V', volumes, pad),
    volumes,
    grossVolume: total(
      'gross volume',
      'G',
      bodies.map((b) => b.gross),
      pad,
    ),
    planArea: total(
      'plan area',
      'A',
      bodies.map((b) => b.plan),
      pad,
    ),
    formedArea: total(
      'faces to form',
      'F',
      bodies.map((b) => b.formed),
      pad,
    ),
    ...(anchors ? anchorsOf(anchors, walls, pad) : {}),
  };
}

/**
 * Concrete for walls, with openings and pilasters: straight, tapered, or in insulated forms.
 *
 * @param input - a list of walls, and from which size on openings are deducted
 * @returns volume in all and of each, gross volume, plan area, faces to form
 * @throws {InputError} `does-not-fit` where a part is larger than what holds it, and for a plate on a round wall; lengths that cannot be
 * read or are not greater than zero
 * @source geometry
 * @example
 * ```ts
 * import { wallVolume } from 'flatwork-reckoner';
 *
 * const { figures } = wallVolume({
 *   walls: [
 *     {
 *       kind: 'straight',
 *       length: '24 ft',
 *       height: '4 ft',
 *       thickness: '8 in',
 *       openings: [{ width: '3 ft', height: '2 ft' }],
 *     },
 *   ],
 * });
 * figures.volume.format('ft3'); // '60 ft3'
 * ```
 */
export const wallVolume: Calculation<WallVolumeInput, WallVolumeFigures> = /*#__PURE__*/ define({
  id: 'wall-volume',
  title: 'Wall volume',
  version: 1,
  sources: [CLOSED_FORM],
  limits: [IN_WALLS, ANCHORS],
  input: door,
  reckon,
  takes: (_figures, { anchors }) => [
    { item: 'concrete', from: 'volume' },
    { item: 'anchor-bolt', from: 'anchors', of: { diameter: anchors?.diameter, length: anchors?.length } },
  ],
});
