/** What a surface is held to: the least and the most that it must fall, near a building, beyond, and along valleys. */

import { constant, slope } from '../quantity/make';
import { type Paired, paired } from '../quantity/paired';
import { canonicalValue, type Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import type { Pad } from '../reckoning/pad';
import { COMMON_PRACTICE, PCA_DRAINAGE, type Source } from '../reckoning/source';
import { type Saying, say } from '../reckoning/words';
import { type GradeUse, isGround, limitOf } from './limits';
import { GIVEN, GRADING_STANDARDS, GUTTER_LEAST, IRC_DRAINAGE } from './sources';
import { surveyOf } from './spots';

import { type ParsedSurface, ZONE } from './surface-input';
import { type Site, siteOf } from './terrain';
import { type FoundValley, valleysOf } from './valleys';

type Length = Quantity<'length'>;
type Slope = Quantity<'slope'>;

const NEAR = /*#__PURE__*/ paired('length', '1/2 in', '12 mm');

const SHALLOW = /*#__PURE__*/ paired('length', '1/8 in', '3 mm');

const BEYOND = constant(() => slope('1%'));

const GUTTER = constant(() => slope('0.3%'));

const GRASS_VALLEY = constant(() => slope('0.5%'));

const SWALE = constant(() => slope('2%'));

/** The limits that this surface is held to, and where each comes from. */
export interface Held {
  readonly minimum: Slope;
  readonly beyond: Slope;
  readonly valley: Slope;
  /** What a valley must fall that keeps water from a building near by. */
  readonly swale: Slope;
  readonly maximum: Slope | undefined;
  readonly zone: Length;
  readonly near: Length;
  readonly pondDepth: Length;
  readonly use: GradeUse;
  readonly sources: Readonly<
    Record<'minimum' | 'beyond' | 'valley' | 'swale' | 'maximum' | 'pondDepth', Source>
  >;
}

/** Every valley of a surface, with the least fall that it is held to. */
export function valleysHeld(site: Site, held: Held): FoundValley[] {
  const limits = {
    least: perMeter(held.valley),
    swale: perMeter(held.swale),
    zone: held.zone.toNumber('m'),
  };
  return valleysOf(site, limits, held.pondDepth.toNumber('m'));
}

function assumed(
  pad: Pad,
  name: string,
  given: Slope | undefined,
  value: Slope,
  because: Saying,
  source: Source,
): Slope {
  if (given) return given;
  pad.assume({ name, value, because, override: say`Give ${{ name }}`, source });
  return value;
}

/** A length as given, or the one that each unit system has its own of, told as assumed. */
export function assumedLength(
  pad: Pad,
  name: string,
  given: Length | undefined,
  value: Paired<'length'>,
  because: Saying,
  source = COMMON_PRACTICE,
): Length {
  if (given) return given;
  pad.assume({ name, value, because, override: say`Give ${{ name }}`, source });
  return value.as(pad.system);
}

/** The least that drains, where a use has a published most only. */
function leastOf(
  use: GradeUse,
  system: System,
): {
  readonly least: Slope;
  readonly because: Saying;
  readonly source: Source;
} {
  const { least, because, source } = limitOf(use, system);
  if (least) return { least, because, source };
  return { least: BEYOND(), because: 'the least for outdoor slabs', source: PCA_DRAINAGE };
}

const valleyOf = (use: GradeUse): Slope => (isGround(use) ? GRASS_VALLEY() : GUTTER());

const valleySource = (use: GradeUse): Source => (isGround(use) ? GRADING_STANDARDS : GUTTER_LEAST);

function assumedValley(use: GradeUse, pad: Pad): Slope {
  const least = valleyOf(use);
  pad.assume({
    name: 'minimumValley',
    ...(isGround(use)
      ? {
          value: say`${{ least }}, and ${{ swale: SWALE() }} by a building`,
          because:
            'the least along a grassed swale; the code asks for more where it keeps water off a building',
        }
      : { value: least, because: 'the least along a paved gutter' }),
    override: 'Give minimumValley',
    source: valleySource(use),
  });
  return least;
}

function heldTo(input: ParsedSurface, pad: Pad): Held {
  const use = input.use ?? 'paved-by-building';
  const limit = limitOf(use);
  const least = leastOf(use, pad.system);
  const minimum = assumed(pad, 'minimum', input.minimum, least.least, least.because, least.source);
  const beyond = assumed(
    pad,
    'minimumBeyond',
    input.minimumBeyond,
    minimum.lessThan(BEYOND()) ? minimum : BEYOND(),
    'the least for outdoor slabs',
    PCA_DRAINAGE,
  );
  const valley = input.minimumValley ?? assumedValley(use, pad);
  return {
    use,
    minimum,
    beyond,
    valley,
    swale: input.minimumValley ?? (isGround(use) ? SWALE() : valley),
    maximum: input.maximum ?? limit.most,
    zone: assumedLength(
      pad,
      'zone',
      input.zone,
      ZONE,
      say`the code asks for the fall within ${{ zone: ZONE }}`,
      IRC_DRAINAGE,
    ),
    near: assumedLength(pad, 'nearLine', input.nearLine, NEAR, 'spots are seldom placed nearer than that'),
    pondDepth: assumedLength(
      pad,
      'pondDepth',
      input.pondDepth,
      SHALLOW,
      'water that shallow dries off by itself',
    ),
    sources: {
      minimum: input.minimum ? GIVEN : least.source,
      beyond: input.minimumBeyond ? GIVEN : PCA_DRAINAGE,
      valley: input.minimumValley ? GIVEN : valleySource(use),
      swale: input.minimumValley ? GIVEN : IRC_DRAINAGE,
      maximum: input.maximum ? GIVEN : (limit.mostSource ?? limit.source),
      pondDepth: input.pondDepth ? GIVEN : COMMON_PRACTICE,
    },
  };
}

export const perMeter = (s: Slope): number => s.toNumber('mm/m') / 1000;

/** Build the site of a surface and what it is held to. */
export function readSite(input: ParsedSurface, pad: Pad): { readonly site: Site; readonly held: Held } {
  const survey = surveyOf(input, pad.system);
  const held = heldTo(input, pad);
  const near = canonicalValue(held.near).toNumber();
  return { held, site: siteOf(survey, { lines: input.lines ?? [], outline: input.outline, near }) };
}
