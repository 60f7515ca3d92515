/** Where the rules of steps come from, beyond what all calculations share. */
import type { Source } from '../reckoning/source';

export {
  CC_STEPS,
  CLOSED_FORM,
  COMMON_PRACTICE,
  IRC_STAIRS,
  MCGRAW_STEPS,
  PCA_DRAINAGE,
} from '../reckoning/source';

export const IRC_HANDRAILS: Source = {
  kind: 'published',
  title: 'International Residential Code, 2024 numbering, as quoted in a public source file',
  publisher: 'International Code Council',
  edition: '2024',
  locator: 'R318.7.8',
  fromMemory: false,
};

export const PUBLIC_HANDRAILS: Source = {
  kind: 'common-practice',
  title: 'International Building Code 1011.11, ADA and ABA 504.6 and 505, as commonly quoted',
  fromMemory: true,
};

export const IRC_GUARDS: Source = {
  kind: 'published',
  title: 'International Residential Code R312.1, guards, as posted by Jefferson County, Colorado',
  publisher: 'International Code Council; Jefferson County, Colorado',
  edition: '2018',
  locator: 'R312.1.1 to R312.1.3',
  fromMemory: false,
};

export const PUBLIC_GUARDS: Source = {
  kind: 'common-practice',
  title: 'International Building Code 1015, as commonly quoted',
  fromMemory: true,
};

export const IRC_FLIGHTS: Source = {
  kind: 'common-practice',
  title:
    'International Residential Code, as commonly quoted: 147 in for years (R311.7.3), 151 in by R318.7.3 of 2024',
  fromMemory: true,
};

export const PUBLIC_FLIGHTS: Source = {
  kind: 'common-practice',
  title: 'International Building Code 1011.8, as commonly quoted',
  fromMemory: true,
};

export const ADA_THRESHOLDS: Source = {
  kind: 'common-practice',
  title: '2010 ADA Standards 404.2.5, as commonly quoted',
  fromMemory: true,
};

export const EN5156_STAIRS: Source = {
  kind: 'published',
  title: 'Subcourse EN5156, stairway calculations',
  publisher: 'US Army Engineer School',
  locator: 'stairway calculations, rules 1 to 3',
  fromMemory: false,
};

export const CC_STEP_TOLERANCE: Source = {
  kind: 'published',
  title: 'Troubleshooting stair treads and slopes (question and answer, citing IBC, IRC and NFPA 101)',
  publisher: 'Concrete Construction magazine',
  locator: 'answer, riser heights',
  fromMemory: false,
};

export const ABA_STAIRS: Source = {
  kind: 'published',
  title: 'ABA Accessibility Standards, 504 Stairways',
  publisher: 'US Access Board; US Department of Defense',
  locator: '504.2 and 504.3',
  fromMemory: false,
};

export const BOCA_STAIRS: Source = {
  kind: 'published',
  title: 'BOCA Basic Building Code, as quoted in an answer on stair tolerances',
  publisher: 'Building Officials and Code Administrators; quoted by Concrete Construction magazine',
  edition: '1981',
  locator: 'risers and treads',
  fromMemory: false,
};

export const IRC_DOORS: Source = {
  kind: 'common-practice',
  title: 'International Residential Code R311.3, as commonly quoted',
  fromMemory: true,
};

export const ADA_RAMP_RUNS: Source = {
  kind: 'published',
  title: '2010 ADA Standards for Accessible Design',
  publisher: 'US Department of Justice',
  edition: '2010',
  locator: '405 ramps',
  fromMemory: true,
};

export const ADK_STAIRS: Source = {
  kind: 'published',
  title: 'Approved Document K; treads outdoors as Approved Document M has them',
  publisher: 'HM Government',
  edition: '2013',
  locator: 'table 1.1',
  fromMemory: true,
};

export const DIN_STAIRS: Source = {
  kind: 'published',
  title: 'DIN 18065, Stairs in buildings',
  publisher: 'DIN',
  edition: '2015',
  locator: 'table 1',
  fromMemory: true,
};

export const NCC_STAIRS: Source = {
  kind: 'published',
  title: 'National Construction Code, Housing Provisions',
  publisher: 'Australian Building Codes Board',
  edition: '2022',
  locator: '11.2 and 11.3',
  fromMemory: true,
};

export const NBC: Source = {
  kind: 'published',
  title: 'National Building Code of Canada',
  publisher: 'National Research Council of Canada',
  edition: '2015',
  locator: '3.8.3 and 9.8',
  fromMemory: true,
};

export const ADM_RAMPS: Source = {
  kind: 'published',
  title: 'Approved Document M, Access to and use of buildings',
  publisher: 'HM Government',
  edition: '2004',
  locator: 'table 1 and 1.26',
  fromMemory: true,
};

export const IRC_RAMPS: Source = {
  kind: 'common-practice',
  title: 'International Residential Code R311.8, as commonly quoted',
  fromMemory: true,
};

export const DIN_RAMPS: Source = {
  kind: 'published',
  title: 'DIN 18040-1, Construction of accessible buildings',
  publisher: 'DIN',
  edition: '2010',
  locator: '4.3.8 ramps',
  fromMemory: true,
};

export const AS_RAMPS: Source = {
  kind: 'published',
  title: 'AS 1428.1, Design for access and mobility',
  publisher: 'Standards Australia',
  edition: '2009',
  locator: 'clause 10',
  fromMemory: true,
};
