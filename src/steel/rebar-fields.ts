/** The door of `rebar-layout` over an outline: the input as it is read, and its schema. */

import { outline } from '../outline/outline';
import { openings, type Region } from '../outline/region';
import type { Quantity } from '../quantity/quantity';
import { choice, type Field, fields, list, maybe, quantity, whole, yesOrNo } from '../reckoning/fields';
import { PLAN_LENGTH, SLAB_THICKNESS } from '../reckoning/ordinary';
import { all, anyOf, given, notBoth, oneOf } from '../reckoning/together';
import { barField } from './bar-field';
import type { AnyBarSize } from './bars';
import { CAST_AGAINST, type CastAgainst, EXPOSURES, type Exposure } from './cover';
import {
  CORNER_BAR,
  CUT_TO,
  DOWEL,
  DOWEL_SPACING,
  END_DISTANCE,
  LAP,
  MAT_SPACING,
  SHORTEST,
  STARTER_LEG,
  STOCK_LENGTH,
  SUPPORTS_APART,
  TIE,
  TIE_WIRE,
  TURN,
} from './mat-ordinary';
import { COVER } from './ordinary';
import type { MatLayer } from './rebar-types';

type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

/** A mat, read. */
export interface ParsedMat {
  readonly layer: MatLayer;
  readonly bar: AnyBarSize;
  readonly barAcross: AnyBarSize | undefined;
  readonly spacing: Length | undefined;
  readonly lines: Count | undefined;
  readonly spacingAcross: Length | undefined;
  readonly linesAcross: Count | undefined;
  readonly angle: Quantity<'angle'> | undefined;
  readonly angleAcross: Quantity<'angle'> | undefined;
  readonly faceCover: Length | undefined;
}

/** Dowels along a side, read. */
export interface ParsedDowels {
  readonly side: Count;
  readonly bar: AnyBarSize;
  readonly spacing: Length;
  readonly length: Length;
  readonly endDistance: Length | undefined;
}

/** Steps, read. */
export interface ParsedSteps {
  readonly risers: Count;
  readonly width: Length;
  readonly bar: AnyBarSize;
  readonly treadBars: Count | undefined;
  readonly starterSpacing: Length | undefined;
  readonly starterLeg: Length | undefined;
}

/** The input, read. */
export interface ParsedRegion extends Region {
  readonly mats: readonly ParsedMat[];
  readonly cover: Length | undefined;
  readonly stockLength: Length | undefined;
  readonly lap: Length | undefined;
  readonly edgeBars: boolean | undefined;
  readonly cornerBars: Count | undefined;
  readonly cornerBarLength: Length | undefined;
  readonly cutTo: Length | undefined;
  readonly shortest: Length | undefined;
  readonly thickness: Length | undefined;
  readonly exposure: Exposure | undefined;
  readonly edges: CastAgainst | undefined;
  readonly dowels: readonly ParsedDowels[] | undefined;
  readonly steps: ParsedSteps | undefined;
  readonly supports: Length | undefined;
  readonly wirePerTie: Length | undefined;
  readonly wireWeight: Quantity<'mass-per-length'> | undefined;
}

/** Lines that run one way, at most. */
export const LINE_LIMIT = 100_000;
const MAT_LIMIT = 2;
const DOWEL_RUNS = 100;
const STEP_LIMIT = 1000;

/** The schema of the input. */
export const regionInput = (): Field<ParsedRegion> =>
  fields({
    outline: outline(),
    openings: maybe(openings()),
    mats: list(
      fields(
        {
          layer: choice('layer', ['bottom', 'top'] as const),
          bar: barField('bar'),
          barAcross: maybe(barField('barAcross')),
          spacing: maybe(quantity('length', 'spacing', 'positive', MAT_SPACING)),
          lines: maybe(whole('lines', 1, LINE_LIMIT)),
          spacingAcross: maybe(quantity('length', 'spacingAcross', 'positive', MAT_SPACING)),
          linesAcross: maybe(whole('linesAcross', 1, LINE_LIMIT)),
          angle: maybe(quantity('angle', 'angle', 'any', TURN)),
          angleAcross: maybe(quantity('angle', 'angleAcross', 'any', TURN)),
          faceCover: maybe(quantity('length', 'faceCover', 'positive', COVER)),
        },
        all(
          oneOf(['spacing'], ['lines']),
          notBoth('spacingAcross', 'linesAcross'),
          anyOf(given('spacing'), given('spacingAcross'), given('linesAcross')),
        ),
      ),
      1,
      MAT_LIMIT,
    ),
    cover: maybe(quantity('length', 'cover', 'not-negative', COVER)),
    stockLength: maybe(quantity('length', 'stockLength', 'positive', STOCK_LENGTH)),
    lap: maybe(quantity('length', 'lap', 'positive', LAP)),
    edgeBars: maybe(yesOrNo('edgeBars')),
    cornerBars: maybe(whole('cornerBars', 0, 10)),
    cornerBarLength: maybe(quantity('length', 'cornerBarLength', 'positive', CORNER_BAR)),
    cutTo: maybe(quantity('length', 'cutTo', 'positive', CUT_TO)),
    shortest: maybe(quantity('length', 'shortest', 'not-negative', SHORTEST)),
    thickness: maybe(quantity('length', 'thickness', 'positive', SLAB_THICKNESS)),
    exposure: maybe(choice('exposure', EXPOSURES)),
    edges: maybe(choice('edges', CAST_AGAINST)),
    dowels: maybe(
      list(
        fields({
          side: whole('side', 1, LINE_LIMIT),
          bar: barField('bar'),
          spacing: quantity('length', 'spacing', 'positive', DOWEL_SPACING),
          length: quantity('length', 'length', 'positive', DOWEL),
          endDistance: maybe(quantity('length', 'endDistance', 'not-negative', END_DISTANCE)),
        }),
        0,
        DOWEL_RUNS,
      ),
    ),
    steps: maybe(
      fields({
        risers: whole('risers', 1, STEP_LIMIT),
        width: quantity('length', 'width', 'positive', PLAN_LENGTH),
        bar: barField('bar'),
        treadBars: maybe(whole('treadBars', 0, 20)),
        starterSpacing: maybe(quantity('length', 'starterSpacing', 'positive', DOWEL_SPACING)),
        starterLeg: maybe(quantity('length', 'starterLeg', 'positive', STARTER_LEG)),
      }),
    ),
    supports: maybe(quantity('length', 'supports', 'positive', SUPPORTS_APART)),
    wirePerTie: maybe(quantity('length', 'wirePerTie', 'positive', TIE)),
    wireWeight: maybe(quantity('mass-per-length', 'wireWeight', 'positive', TIE_WIRE)),
  });
