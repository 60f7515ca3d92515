/** Times of day in sentences and tables are told by the clock of the view: as asked, of the locale, or of the units. */
import { describe, expect, it } from 'vitest';
import { sawWindow } from '../../src/index';
import { textSheet } from '../../src/report/index';

/** Cuts that fall into the night. */
const night = (system: 'customary' | 'metric') =>
  sawWindow({ saw: 'conventional', weather: 'cold', placedAt: '3 pm' }, { system });

const sheetOf = (system: 'customary' | 'metric', view: object = {}): string =>
  textSheet('Job', [{ name: 'Saw', results: [night(system)] }], view);

describe('times of day', () => {
  it('go with the units', () => {
    expect(sheetOf('customary')).toMatch(/due between \d{1,2}:\d\d [AP]M(, next day)? and/);
    expect(sheetOf('customary')).toContain('7:00 AM to 6:00 PM');
    expect(sheetOf('metric')).toMatch(/due between \d{1,2}:\d\d(, next day)? and/);
    expect(sheetOf('metric')).not.toMatch(/ [AP]M/);
  });

  it('go with the locale, and with what is asked before all', () => {
    expect(sheetOf('customary', { locale: 'de-DE' })).not.toMatch(/ [AP]M/);
    expect(sheetOf('metric', { locale: 'en-US' })).toMatch(/\d [AP]M/);
    expect(sheetOf('metric', { locale: 'en-US', hours: 24 })).not.toMatch(/ [AP]M/);
  });
});
