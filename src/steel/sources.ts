/** Works that the rules of steel rest on, besides those that others share. */
import type { Source } from '../reckoning/source';

export const METRIC_ROUND: Source = {
  kind: 'closed-form',
  title: 'Round bars and wires by their diameter, steel at 7850 kg/m3',
  fromMemory: false,
};

export const DIAMETER_STYLES: Source = {
  kind: 'published',
  title: 'DIN 488-4, welded fabric: spacing and diameter of the wires in millimeters',
  publisher: 'Deutsches Institut für Normung',
  locator: 'designation of welded fabric',
  fromMemory: true,
};

export const FABRIC_NAMES: Source = {
  kind: 'published',
  title: 'BS 4483, DIN 488-4 and AS/NZS 4671, welded fabric: names, spacing and size of the wires',
  publisher: 'British Standards Institution; Deutsches Institut für Normung; Standards Australia',
  locator: 'fabrics A98 to A393 and B196 to B1131; Q188A to R524A; SL52 to RL1218',
  fromMemory: true,
};

export const MASONRY_LAP: Source = {
  kind: 'published',
  title: 'Building code on masonry, lap splices: 0.002 × d × fs, as commonly quoted',
  publisher: 'International Code Council',
  locator: '2107.2.1: 0.002 times the diameter times the stress, not less than 40 diameters or 12 in',
  fromMemory: true,
};

export const IRC_LAPS: Source = {
  kind: 'published',
  title:
    'International Residential Code, lap splice and tension development lengths, as shown by a public code library',
  publisher: 'International Code Council',
  edition: '2018 family',
  locator: 'table R608.5.4(1): 40 diameters at 40,000 psi, 60 diameters at 60,000 psi',
  fromMemory: false,
};

export const IRC_ALTERNATE: Source = {
  kind: 'published',
  title:
    'International Residential Code, maximum spacing for alternate bar size and grade, as shown by a public code library',
  publisher: 'International Code Council',
  edition: '2018 family',
  locator: 'table R608.5.4(2), R404.1.2(9) in earlier editions: as much steel times its yield strength',
  fromMemory: false,
};

export const PLACING_TOLERANCE: Source = {
  kind: 'published',
  title: 'General principles for bar placing, part 1',
  publisher: 'Concrete Construction magazine',
  locator: 'tolerance of 1/4 in on the position of bars',
  fromMemory: false,
};

export const SPACING_24_IN: Source = {
  kind: 'published',
  title: 'Sidewalks and drive approaches',
  publisher: 'City of Richardson, Texas',
  edition: '23 November 2011',
  locator: 'items 1 to 4',
  fromMemory: false,
};

export const TIE_BARS: Source = {
  kind: 'published',
  title: 'TM 5-822-5 / UFC 3-250-01FA, Pavement Design for Roads, Streets, Walks, and Open Storage Areas',
  publisher: 'US Departments of the Army and Air Force',
  edition: 'June 1992',
  locator: 'chapter 16, 16-1 e and f: tie bars 30 in long and 30 in apart',
  fromMemory: false,
};

export const TIE_BAR_SIZE: Source = {
  kind: 'published',
  title: 'Codified Ordinances of Coshocton, street paving specification',
  publisher: 'City of Coshocton, Ohio',
  edition: '1993 Code',
  locator: '96.29 (g): tie bars of 1/2 in deformed, 30 in long, 30 in apart',
  fromMemory: false,
};

export const TIE_AND_DOWEL: Source = {
  kind: 'published',
  title: 'Concrete Paving Workshop, dowel and tie bars',
  publisher: 'Nebraska Concrete Paving Association; Nebraska Department of Roads',
  edition: 'January 2014',
  locator: 'slides 3 to 6: dowels are smooth and slide, ties are deformed and hold',
  fromMemory: false,
};

export const TIE_OR_FLOAT: Source = {
  kind: 'published',
  title: 'Tie slab to wall? (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator: 'whole item: float the slab or tie it; bars epoxied into walls restrain it and it cracks',
  fromMemory: false,
};

export const TIE_STEEL: Source = {
  kind: 'published',
  title: 'Transportation Engineering I, lecture 29, rigid pavement design',
  publisher: 'Indian Institute of Technology Bombay; NPTEL',
  locator: 'tie bars: steel = width × thickness × weight × friction ÷ stress',
  fromMemory: false,
};

export const FROST_APRON: Source = {
  kind: 'common-practice',
  title: 'Notes of contractors on aprons tied to garage floors',
  fromMemory: false,
};

export const CRSI_BARS: Source = {
  kind: 'published',
  title: 'Manual of Standard Practice',
  publisher: 'Concrete Reinforcing Steel Institute',
  edition: '27th ed., 2001',
  locator: 'inside front cover, table of inch-pound bars',
  fromMemory: false,
};

export const ACI_318_COVER: Source = {
  kind: 'published',
  title: 'Cover for Rebars (answer quoting ACI 318-71)',
  publisher: 'Concrete Construction magazine; American Concrete Institute',
  edition: 'ACI 318-71',
  locator: 'table of minimum cover',
  fromMemory: false,
};

export const VCC_LAP: Source = {
  kind: 'published',
  title: 'Virginia Construction Code, masonry, lap splices',
  publisher: 'Commonwealth of Virginia; International Code Council',
  edition: '2021',
  locator: '2107.2.1: 40 bar diameters, at least 12 in',
  fromMemory: false,
};

export const WRI_STYLES: Source = {
  kind: 'published',
  title: 'New welded wire fabric numbering system explained',
  publisher: 'Concrete Construction magazine; Wire Reinforcement Institute',
  edition: 'October 1975',
  locator: 'page 454, table I',
  fromMemory: false,
};

export const PEARSON_MESH: Source = {
  kind: 'published',
  title: 'Estimating in Building Construction',
  publisher: 'Pearson',
  edition: '7th ed.',
  locator: 'chapter 10, page 102',
  fromMemory: false,
};

export const A615_SOFT_METRIC: Source = {
  kind: 'published',
  title: 'ASTM A615/A615M table 1, as reproduced on the standards page of a mill',
  publisher: 'ASTM; reproduced by a mill',
  locator: 'table 1, nominal masses and dimensions; table 2, grades 40 and 60',
  fromMemory: false,
};

export const A615_HARD_METRIC: Source = {
  kind: 'published',
  title: 'ASTM A615/A615M-95c, as reproduced: dimensions and mass',
  publisher: 'ASTM',
  edition: '1995',
  locator: 'section A',
  fromMemory: false,
};

export const ACI_439_WIRE: Source = {
  kind: 'published',
  title: 'ACI 439.5R-18, welded wire reinforcement',
  publisher: 'American Concrete Institute',
  edition: '2018',
  locator: '1.3, W and D designations',
  fromMemory: false,
};

export const ACI_318_DEVELOPMENT: Source = {
  kind: 'published',
  title: 'ACI 318-19 chapter 25, as given in lecture notes on development length and splices',
  publisher: 'American Concrete Institute; lecture notes on reinforced concrete',
  edition: '2019',
  locator: '25.4.2 and the class A and B splices',
  fromMemory: false,
};

export const EUROCODE_LAPS: Source = {
  kind: 'published',
  title:
    'ICE Manual of Structural Design: Buildings, recommended minimum lap and anchorage lengths to EN 1992-1-1',
  publisher: 'Institution of Civil Engineers',
  locator: 'table 17.12 and its notes; the equations of EN 1992-1-1, 8.4 and 8.7, from memory',
  fromMemory: false,
};

export const CSA_LAPS: Source = {
  kind: 'published',
  title: 'CSA A23.3, tension development length and splices',
  publisher: 'CSA Group',
  locator: '12.2.3, of which an engineer’s page gives a table for slabs, and 12.15',
  fromMemory: true,
};

export const AS_3600_LAPS: Source = {
  kind: 'published',
  title: 'AS 3600, basic development length in tension, as quoted in a design table',
  publisher: 'Standards Australia',
  locator:
    '13.1.2.2: 25,000 d ÷ ((132 − d) √f′c) at 500 MPa, at least 29 k1 d; the lap factor of 13.2.2 from memory',
  fromMemory: false,
};

export const ACI_318_RATIO: Source = {
  kind: 'published',
  title: 'Shrinkage and temperature reinforcement, on ACI 318-02 section 7.12',
  publisher: 'Concrete International, American Concrete Institute',
  edition: '2002',
  locator: 'checklist',
  fromMemory: false,
};

export const CRSI_DRAG: Source = {
  kind: 'published',
  title: 'Reinforcing Steel in Slabs-on-Grade, Engineering Data Report No. 37',
  publisher: 'Concrete Reinforcing Steel Institute',
  locator: 'subgrade drag formula; friction factor 1.5, working stress two thirds of yield',
  fromMemory: false,
};

export const DOWEL_FLOORS: Source = {
  kind: 'published',
  title: 'Joint movement and spalling from lift truck traffic (question and answer)',
  publisher: 'Concrete Construction magazine',
  locator: 'table of dowels for slabs of 5 in to 10 in',
  fromMemory: false,
};

export const DOWEL_PAVEMENTS: Source = {
  kind: 'published',
  title: 'UFC 3-260-02, Pavement Design for Airfields',
  publisher: 'US Army, Navy and Air Force',
  edition: '30 June 2001',
  locator: 'table 12-8',
  fromMemory: false,
};

export const WIRE_SUPPORTS: Source = {
  kind: 'published',
  title: 'Choosing supports for welded wire reinforcement (question and answer)',
  publisher: 'Concrete Construction magazine, on the practice of the Wire Reinforcement Institute',
  locator: 'supports 2 ft to 6 ft apart; 2 in below the surface or in the upper third',
  fromMemory: false,
};

export const WSDOT_TIES: Source = {
  kind: 'published',
  title: 'Standard Specifications, amendment to 6-02.3(24)C',
  publisher: 'Washington State Department of Transportation',
  locator: 'every crossing at 1 ft or more apart, every other one below',
  fromMemory: false,
};

export const TIE_WIRE_COURSE: Source = {
  kind: 'published',
  title: 'Quantity Surveying, module 4, steel works part 1 (course notes)',
  publisher: 'a university course in the Philippines',
  locator: 'area method, problem 2: 0.30 m of No. 16 wire a tie, 53 m a kilogram',
  fromMemory: false,
};

export const STAGGER_RULE: Source = {
  kind: 'common-practice',
  title: 'EN 1992-1-1, laps of neighboring bars',
  publisher: 'European Committee for Standardization',
  edition: '2004',
  locator: '8.7.2: laps staggered by 1.3 lap lengths, center to center',
  fromMemory: true,
};

export const CLEAR_SPACING: Source = {
  kind: 'common-practice',
  title: 'ACI 318-19, least clear spacing of bars',
  publisher: 'American Concrete Institute',
  edition: '2019',
  locator: '25.2.1: 1 in, the bar, and four thirds of the aggregate',
  fromMemory: true,
};
