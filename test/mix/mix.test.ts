/** Mixes and tickets: what must hold for any of them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deliveryTicket, type MixUse, mixRequirements, ratio, type Weathering } from '../../src/index';
import { runs } from '../support/effort';

const USES: MixUse[] = [
  'driveway',
  'walk',
  'patio',
  'steps',
  'garage-floor',
  'interior-slab',
  'footing',
  'wall',
];
const WEATHERING: Weathering[] = ['negligible', 'moderate', 'severe'];
const SIZES = ['3/8 in', '1/2 in', '3/4 in', '1 in', '1-1/2 in', '10 mm', '14 mm', '20 mm', '25 mm', '40 mm'];

const exposures = fc.record({
  use: fc.constantFrom(...USES),
  weathering: fc.constantFrom(...WEATHERING),
  deicers: fc.boolean(),
  sulfate: fc.constantFrom('none' as const, 'moderate' as const, 'severe' as const, 'very-severe' as const),
  reinforced: fc.boolean(),
  lowPermeability: fc.boolean(),
  aggregateSize: fc.constantFrom(...SIZES),
});

describe('what the concrete has to be', () => {
  it('is as strict as every rule that applies, and is one of them', () => {
    fc.assert(
      fc.property(exposures, (input) => {
        const { ask, bySource } = mixRequirements(input).figures;
        const rules = bySource.filter(({ applies }) => applies);
        expect(rules.some(({ strength }) => strength?.equals(ask.strength))).toBe(true);
        for (const { strength, waterCement } of rules) {
          expect(strength?.greaterThan(ask.strength) ?? false).toBe(false);
          if (waterCement) expect(ask.waterCement?.greaterThan(waterCement)).toBe(false);
        }
      }),
      { numRuns: runs(300) },
    );
  });

  it('asks no less where salt comes, where winters are worse, or where steel carries loads', () => {
    fc.assert(
      fc.property(exposures, (input) => {
        const mild = mixRequirements({
          ...input,
          deicers: false,
          weathering: 'negligible',
          reinforced: false,
        }).figures.ask;
        const { ask } = mixRequirements(input).figures;
        expect(ask.strength.lessThan(mild.strength)).toBe(false);
      }),
      { numRuns: runs(200) },
    );
  });

  it('takes a mix that is just what was asked', () => {
    fc.assert(
      fc.property(exposures, (input) => {
        const { ask } = mixRequirements(input).figures;
        const offered = {
          strength: ask.strength,
          slump: ask.slump,
          airContent: ask.airContent?.target ?? ask.airContent?.minimum ?? '1.5%',
          ...(ask.waterCement ? { waterCement: ask.waterCement } : {}),
        };
        const again = mixRequirements({ ...input, offered });
        expect(again.figures.offerFits).toBe(true);
        expect(again.cautions.filter(({ code }) => code !== 'sulfate-cement')).toEqual([]);
      }),
      { numRuns: runs(200) },
    );
  });

  it('stops flatwork without air wherever it freezes, and nowhere else', () => {
    fc.assert(
      fc.property(exposures, (input) => {
        const { cautions } = mixRequirements({
          ...input,
          offered: { strength: '6000 psi', airContent: '1.5%' },
        });
        const flat = !['interior-slab', 'footing', 'wall'].includes(input.use);
        const salted = input.use === 'wall' && input.deicers;
        const freezes = input.weathering !== 'negligible';
        const stops = cautions.filter(({ severity }) => severity === 'stop').map(({ code }) => code);
        expect(stops).toEqual(freezes && (flat || salted) ? ['no-air'] : []);
      }),
      { numRuns: runs(200) },
    );
  });

  it('has no inch in a metric job and no millimeter in a customary one', () => {
    const metric = JSON.stringify(
      mixRequirements({ use: 'walk', weathering: 'severe', aggregateSize: '20 mm' }),
    );
    expect(metric).not.toMatch(/"unit":"(in|psi|ft)"/);
    const customary = JSON.stringify(
      mixRequirements({ use: 'walk', weathering: 'severe', aggregateSize: '3/4 in' }),
    );
    expect(customary).not.toMatch(/"unit":"(mm|MPa)"/);
  });
});

const tickets = fc.record({
  cement: fc.integer({ min: 3000, max: 7000 }),
  gallons: fc.integer({ min: 100, max: 300 }),
  stone: fc.integer({ min: 5000, max: 20000 }),
  moisture: fc.integer({ min: 0, max: 80 }),
  absorption: fc.integer({ min: 0, max: 30 }),
  left: fc.integer({ min: 1, max: 8 }),
});

describe('a delivery ticket', () => {
  it('leaves just the water that brings it to its limit', () => {
    fc.assert(
      fc.property(tickets, ({ cement, gallons, stone, moisture, absorption, left }) => {
        const ticket = {
          volume: '8 yd3',
          ordered: { waterCement: '0.50' },
          cement: `${cement} lb`,
          water: `${gallons} gal`,
          aggregates: [
            { mass: `${stone} lb`, moisture: `${moisture / 10}%`, absorption: `${absorption / 10}%` },
          ],
          left: `${left} yd3`,
          waterToAdd: '0 gal',
        };
        const { waterLeft } = deliveryTicket(ticket).figures;
        if (!waterLeft) throw new Error('no water left');
        if (waterLeft.sign() === 0) return;
        const full = deliveryTicket({ ...ticket, waterToAdd: waterLeft }).figures;
        const off = full.waterCementAfter?.minus(ratio('0.50:1')).abs();
        expect(off?.lessThan(ratio('0.000000000001:1'))).toBe(true);
      }),
      { numRuns: runs(200) },
    );
  });

  it('counts the water by mass, whoever reckons it', () => {
    fc.assert(
      fc.property(tickets, ({ cement, gallons, stone, moisture, absorption, left }) => {
        const { figures } = deliveryTicket({
          volume: '8 yd3',
          ordered: {},
          cement: `${cement} lb`,
          water: `${gallons} gal`,
          aggregates: [
            { mass: `${stone} lb`, moisture: `${moisture / 10}%`, absorption: `${absorption / 10}%` },
          ],
          addedTo: `${left} yd3`,
          waterAdded: '5 gal',
        });
        // In pounds and binary numbers: 1 gal of water is 8.345404 lb.
        const dry = stone / (1 + moisture / 1000);
        const water = gallons * 8.345404452 + (dry * (moisture - absorption)) / 1000;
        const share = left / 8;
        const wanted = (water * share + 5 * 8.345404452) / (cement * share);
        expect(figures.waterCement?.toNumber(':1')).toBeCloseTo(wanted, 8);
      }),
      { numRuns: runs(200) },
    );
  });
});
