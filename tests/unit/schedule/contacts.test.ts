import { describe, expect, it } from 'vitest';
import { athlete, peak, plan } from './make-plan.ts';
import { stages } from './stages.ts';

const FOUR_MONTHS = { starts: '2027-01-04', ends: '2027-04-25' };

describe('four months to a peak', () => {
  const season = plan(FOUR_MONTHS, { competitions: [peak('2027-04-24')] });

  it('brings a beginner used to 50 contacts a session to 80', () => {
    const { contacts } = stages(season, athlete('beginner', 50));
    expect(contacts.map((week) => week.contacts)).toEqual([
      110, 110, 115, 65, 125, 135, 140, 80, 150, 160, 160, 95, 160, 160, 95, 60,
    ]);
  });

  it('brings an advanced athlete used to 100 contacts a session to 120, three times a week', () => {
    const { contacts } = stages(season, athlete('advanced', 100));
    expect(contacts.map((week) => week.contacts)).toEqual([
      170, 170, 180, 105, 195, 210, 230, 135, 250, 275, 300, 180, 330, 360, 215, 90,
    ]);
  });
});
