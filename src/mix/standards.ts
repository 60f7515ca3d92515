/**
 * What each code or standard asks of a mix for its use and exposure: least strength, most water, air.
 *
 * They disagree, by country, by edition and by how far they look ahead: a residential code asks 3,500 psi of
 * steps where another asks 4,500. Each is shown; what no longer holds is shown too, and governs nothing.
 */
import { pressure, ratio } from '../quantity/make';
import type { Quantity } from '../quantity/quantity';
import type { System } from '../quantity/units';
import { NO_WORDS, say, type Words } from '../reckoning/words';
import { type Air, airBySize, airOfCsa, airOfUfgs } from './air';
import { type FrostClass, isExposed, type MixUse, type Sulfate, type Weathering } from './exposure';
import { nationalRules } from './national';
import { type Limits, type MixStandard, percentRange, type Row } from './rule-row';
import {
  ACI_318,
  ACI_332,
  CSA_A23,
  EN_206,
  IBC_NONSTRUCTURAL,
  IRC_STRENGTH,
  PCA_CLASSES,
  SCALING_ANSWER,
  UFGS_AIR,
} from './sources';

/** Every one, for fields. */
export const MIX_STANDARDS: readonly MixStandard[] = [
  'irc',
  'ibc',
  'aci-332',
  'aci-318',
  'csa-a23.1',
  'en-206',
  'bs-8500',
  'din-1045-2',
  'as-3600',
];

/** How the standards are spoken of. */
const NAMES: Record<MixStandard, string> = {
  irc: 'IRC R402.2',
  ibc: 'IBC 1904.2',
  'aci-332': 'ACI 332-20',
  'aci-318': 'ACI 318-19',
  'csa-a23.1': 'CSA A23.1',
  'en-206': 'EN 206',
  'bs-8500': 'BS 8500',
  'din-1045-2': 'DIN 1045-2',
  'as-3600': 'AS 3600',
};

/** A rule by its standard and its class. */
export const ruleName = ({ standard, rule }: MixBySource): Words =>
  standard ? say`${{ standard: NAMES[standard] }}, ${{ rule }}` : rule;

/** What one code, standard or text asks of the concrete. */
export interface MixBySource {
  /** The code or standard; left out for a text that is shown for comparison only. */
  readonly standard?: MixStandard;
  /** The class, the cell or the words that it goes by. */
  readonly rule: Words;
  /** Title of the source. */
  readonly source: string;
  /** Least strength at 28 days. */
  readonly strength?: Quantity<'pressure'>;
  /** How the standard writes that strength, where it has a way of its own. */
  readonly strengthClass?: string;
  /** Most water for the cement, by mass. */
  readonly waterCement?: Quantity<'ratio'>;
  /** Air in all to aim at. */
  readonly airTarget?: Quantity<'ratio'>;
  /** The least air. */
  readonly minimumAir?: Quantity<'ratio'>;
  /** The most air. */
  readonly maximumAir?: Quantity<'ratio'>;
  /** False where an earlier edition or a mere comparison is shown. */
  readonly applies: boolean;
}

/** What the rules are asked. */
export interface Asked {
  readonly use: MixUse;
  readonly weathering: Weathering;
  readonly frost: FrostClass;
  readonly sulfate: Sulfate;
  readonly tight: boolean;
  readonly reinforced: boolean;
  readonly stone: Quantity<'length'>;
  readonly system: System;
  /** The standard that is named, of which some speak only then. */
  readonly standard: string | undefined;
}

const cap = (w: string): Quantity<'ratio'> => ratio(`${w}:1`);

function strengthOf({ psi, mpa }: Limits, system: System): Quantity<'pressure'> | undefined {
  if (system === 'metric') return mpa === undefined ? undefined : pressure(`${mpa} MPa`);
  return psi === undefined ? undefined : pressure(`${psi} psi`);
}

const AIRLESS: FrostClass = 'F0';

function irc({ use, weathering, frost }: Asked): Row {
  const column = { negligible: 0, moderate: 1, severe: 2 }[weathering];
  const open = isExposed(use);
  const strengths = open ? [2500, 3000, 3500] : use === 'wall' ? [2500, 3000, 3000] : [2500, 2500, 2500];
  const place = open ? 'steps, porches and garage floors' : use === 'wall' ? 'exposed walls' : 'not exposed';
  return {
    standard: 'irc',
    rule: say`${{ place }}, ${{ weathering }} weathering`,
    source: IRC_STRENGTH,
    psi: strengths[column] as number,
    air: frost === AIRLESS ? undefined : percentRange('5%', '7%'),
  };
}

const IBC: Record<FrostClass, number> = { F0: 2500, F1: 3000, F2: 3500, F3: 3500 };

const ACI: Record<FrostClass, Limits> = {
  F0: { psi: 2500, mpa: 17 },
  F1: { psi: 3500, mpa: 24, w: '0.55' },
  F2: { psi: 4500, mpa: 31, w: '0.45' },
  F3: { psi: 4500, mpa: 31, w: '0.45' },
};
const ACI_F3_REINFORCED: Limits = { psi: 5000, mpa: 35, w: '0.40' };

const ACI_SULFATE: Record<Exclude<Sulfate, 'none'>, Limits & { readonly name: string }> = {
  moderate: { name: 'S1', psi: 4000, mpa: 28, w: '0.50' },
  severe: { name: 'S2', psi: 4500, mpa: 31, w: '0.45' },
  'very-severe': { name: 'S3', psi: 4500, mpa: 31, w: '0.45' },
};

function aci(asked: Asked, air: Air | undefined): Row[] {
  const { frost, sulfate, tight, reinforced } = asked;
  const base = { standard: 'aci-318' as const, source: ACI_318 };
  const limits = frost === 'F3' && reinforced ? ACI_F3_REINFORCED : ACI[frost];
  const steel = frost === 'F3' ? (reinforced ? say`, reinforced` : say`, plain`) : NO_WORDS;
  const rows: Row[] = [{ ...base, rule: say`class ${{ name: frost }}${steel}`, ...limits, air }];
  if (sulfate !== 'none') {
    const { name, ...of } = ACI_SULFATE[sulfate];
    rows.push({ ...base, rule: say`class ${{ name }}`, ...of });
  }
  if (tight)
    rows.push({
      ...base,
      rule: say`class ${{ name: 'W2' }}, low permeability`,
      psi: 4000,
      mpa: 28,
      w: '0.50',
    });
  return rows;
}

const CSA: Partial<Record<FrostClass, Limits & { readonly name: string }>> = {
  F1: { name: 'F-2', mpa: 25, w: '0.55' },
  F2: { name: 'F-1', mpa: 30, w: '0.50' },
  F3: { name: 'C-2', mpa: 32, w: '0.45' },
};
const CSA_REINFORCED = { name: 'C-1', mpa: 35, w: '0.40' };
const CSA_SULFATE: Record<Exclude<Sulfate, 'none'>, Limits & { readonly name: string }> = {
  moderate: { name: 'S-3', mpa: 30, w: '0.50' },
  severe: { name: 'S-2', mpa: 32, w: '0.45' },
  'very-severe': { name: 'S-1', mpa: 35, w: '0.40' },
};

function csa({ frost, sulfate, reinforced, stone }: Asked): Row[] {
  const base = { standard: 'csa-a23.1' as const, source: CSA_A23 };
  const rows: Row[] = [];
  const frosty = frost === 'F3' && reinforced ? CSA_REINFORCED : CSA[frost];
  if (frosty) {
    const { name, ...of } = frosty;
    rows.push({ ...base, rule: say`class ${{ name }}`, ...of, air: airOfCsa(stone, frost !== 'F1') });
  }
  if (sulfate !== 'none') {
    const { name, ...of } = CSA_SULFATE[sulfate];
    rows.push({ ...base, rule: say`class ${{ name }}`, ...of });
  }
  return rows;
}

const EN: Record<FrostClass, Limits & { readonly name: string }> = {
  F0: { name: 'XC1', mpa: 20, cube: 25, w: '0.65' },
  F1: { name: 'XF1', mpa: 30, cube: 37, w: '0.55' },
  F2: { name: 'XF3', mpa: 30, cube: 37, w: '0.50' },
  F3: { name: 'XF4', mpa: 30, cube: 37, w: '0.45' },
};
const EN_WET_GROUND = { name: 'XC2', mpa: 25, cube: 30, w: '0.60' };
const EN_SULFATE: Record<Exclude<Sulfate, 'none'>, Limits & { readonly name: string }> = {
  moderate: { name: 'XA1', mpa: 30, cube: 37, w: '0.55' },
  severe: { name: 'XA2', mpa: 30, cube: 37, w: '0.50' },
  'very-severe': { name: 'XA3', mpa: 35, cube: 45, w: '0.45' },
};

function en({ use, frost, sulfate }: Asked): Row[] {
  const base = { standard: 'en-206' as const, source: EN_206 };
  const { name, ...of } = frost === AIRLESS && use === 'footing' ? EN_WET_GROUND : EN[frost];
  const air = frost === 'F2' || frost === 'F3' ? percentRange('4%', '8%') : undefined;
  const rows: Row[] = [{ ...base, rule: say`class ${{ name }}`, ...of, air }];
  if (sulfate !== 'none') {
    const { name: class_, ...limits } = EN_SULFATE[sulfate];
    rows.push({ ...base, rule: say`class ${{ name: class_ }}`, ...limits });
  }
  return rows;
}

/** Shown beside: an edition that was replaced, or a text that is no code. */
function beside({ frost, stone }: Asked): Row[] {
  if (frost === AIRLESS) return [];
  const rows: Row[] = [
    {
      rule: say`class ${{ name: frost }}, earlier edition`,
      source: PCA_CLASSES,
      psi: 4500,
      mpa: 31,
      w: '0.45',
      old: true,
    },
  ];
  if (frost === 'F3') {
    rows.push(
      { rule: say`class ${{ name: 'RF3' }}, edition of 2014`, source: ACI_332, psi: 4000, old: true },
      {
        rule: say`flatwork with deicers, about 1980`,
        source: SCALING_ANSWER,
        psi: 3500,
        mpa: 24,
        w: '0.50',
        old: true,
      },
    );
  }
  if (frost !== 'F1') {
    rows.push({ rule: say`what freezes wet`, source: UFGS_AIR, air: airOfUfgs(stone), old: true });
  }
  return rows;
}

function customary(asked: Asked, air: Air | undefined): Row[] {
  const { frost, use } = asked;
  const rows: Row[] = [irc(asked)];
  if (isExposed(use)) {
    rows.push({
      standard: 'ibc',
      rule: say`not structural, class ${{ name: frost }}`,
      source: IBC_NONSTRUCTURAL,
      psi: IBC[frost],
      air,
    });
  }
  if (frost === 'F3') {
    rows.push({
      standard: 'aci-332',
      rule: say`class ${{ name: 'RF3' }}`,
      source: ACI_332,
      psi: 4500,
      w: '0.45',
      air,
    });
  }
  return [...rows, ...aci(asked, air), ...beside(asked)];
}

function airFor({ frost, stone, system }: Asked): Air | undefined {
  if (frost === AIRLESS) return undefined;
  const strength = strengthOf(ACI[frost], system) as Quantity<'pressure'>;
  return airBySize(stone, frost !== 'F1', strength);
}

/** As a standard writes a strength: a class of two numbers, or the name of a grade. */
const writtenStrength = ({ cube, mpa, grade }: Limits): string | undefined =>
  cube ? `C${mpa}/${cube}` : grade;

/** What each source asks, in the units of the job. */
export function rulesFor(asked: Asked): MixBySource[] {
  const air = airFor(asked);
  const rows =
    asked.system === 'metric'
      ? [
          ...en(asked),
          ...csa(asked),
          ...aci(asked, air),
          ...nationalRules(asked.standard, asked),
          ...beside(asked),
        ]
      : customary(asked, air);
  return rows
    .map((row): MixBySource => {
      const strength = strengthOf(row, asked.system);
      const written = writtenStrength(row);
      return {
        ...(row.standard ? { standard: row.standard } : {}),
        rule: row.rule,
        source: row.source.title,
        ...(strength ? { strength } : {}),
        ...(written ? { strengthClass: written } : {}),
        ...(row.w ? { waterCement: cap(row.w) } : {}),
        ...(row.air?.target ? { airTarget: row.air.target } : {}),
        ...(row.air ? { minimumAir: row.air.minimum } : {}),
        ...(row.air?.maximum ? { maximumAir: row.air.maximum } : {}),
        applies: !row.old,
      };
    })
    .filter(({ strength, minimumAir, waterCement }) => strength ?? minimumAir ?? waterCement);
}
