/** Tables of bars are in the units of the job, or in those that are asked for. */
import { describe, expect, it } from 'vitest';
import { barCutting, rebarLayout } from '../../src/index';
import { barOrderCsv, barScheduleCsv, barScheduleMarkdown, cuttingMarkdown } from '../../src/report/index';

const metric = rebarLayout({ length: '6 m', width: '4 m', bar: '12 mm', spacing: '250 mm' }).figures;
const customary = rebarLayout({ length: '20 ft', width: '12 ft', bar: '#4', spacing: '12 in' }).figures;

describe('tables of bars', () => {
  it('are in meters and kilograms for a metric job', () => {
    expect(barOrderCsv(metric).split('\r\n')[0]).toBe(
      'bar,bars to buy,stock length (m),length as cut (m),weight as cut (kg)',
    );
    expect(barScheduleCsv(metric)).not.toMatch(/\b(ft|in|lb)\b/);
    const cut = barCutting({ pieces: [{ length: '2.4 m', count: 7 }], stock: [{ length: '6 m' }] }).figures;
    expect(cuttingMarkdown(cut)).not.toMatch(/\b(ft|in|lb)\b/);
  });

  it('are in feet and pounds for a customary one, or as asked', () => {
    expect(barOrderCsv(customary).split('\r\n')[0]).toContain('weight as cut (lb)');
    expect(barScheduleMarkdown(customary)).toContain(' ft');
    expect(barScheduleMarkdown(customary, { length: 'm' })).not.toContain(' ft');
    expect(barScheduleMarkdown(customary, { length: 'm' })).toContain(' lb');
  });
});
