// What `why` and `reach` say of a season with a record: weeks that are over, pain, weeks nobody wrote down. And that a pin
// is judged on what was done, not on what was once planned.

import { describe, expect, it } from 'vitest';
import type { BuiltAthlete } from '../../../src/build/types.ts';
import { compilePlan } from '../../../src/compile.ts';
import type { Plan } from '../../../src/plan/types.ts';
import { reportReach } from '../../../src/report/reach.ts';
import { reportWhy } from '../../../src/report/why.ts';
import type { Why } from '../../../src/report/why.ts';
import { riseNeeded } from '../../../src/schedule/reach.ts';
import { day } from '../date.ts';
import { planOf } from '../plan/loaded.ts';

const HEADER = 'date,athlete,kind,contacts,minutes,effort,pain,note';

function season(rows: readonly string[], more = ''): Plan {
  return planOf({
    'season.yaml': `footfall: 1
season: { title: Spring, starts: 2027-01-04 }
places: { hall: { kit: { boxes: [30 cm], hurdles: 6, racks: 2, bars: [20 kg], smallest-plate: 1.25 kg } } }
slots:
  - { day: tuesday, minutes: 75, place: hall }
  - { day: thursday, minutes: 75, place: hall }
competitions: [{ name: Cup final, date: 2027-04-24, prepare: peak }]
athletes: { mira: { level: intermediate, now: { contacts-a-session: 60, sessions-a-week: 2 } } }
record: { done: done.csv }
${more}`,
    'done.csv': `${[HEADER, ...rows].join('\n')}\n`,
  });
}

function builtOf(plan: Plan, asOf: string): BuiltAthlete {
  const [built] = [...compilePlan(plan, { asOf: day(asOf) }).athletes];
  if (built === undefined) throw new Error('nobody was built');
  return built;
}

function whyOf(plan: Plan, week: number, asOf: string): Why {
  const built = builtOf(plan, asOf);
  const found = built.weeks[week - 1];
  if (found === undefined) throw new Error(`there is no week ${week}`);
  return reportWhy(plan, built, found, found.starts);
}

const wordsOf = (why: Why): string =>
  [why.why, ...[...why.chain, ...why.bounds, ...why.advice].map(({ words }) => words)].join('\n');

const WEEK_1 = ['2027-01-05,mira,session,60,,,,', '2027-01-07,mira,session,60,,,,'];
const NO_WEEK_2 = ['2027-01-12,mira,session,0,,,,ill', '2027-01-14,mira,session,0,,,,ill'];

describe('why', () => {
  it('tells a week that is over by its record, and no bounds of it', () => {
    const why = whyOf(season(WEEK_1), 1, '2027-01-11');
    expect(why.why).toBe('as it was done');
    expect(why.bounds).toEqual([]);
    expect(why.advice.map(({ words }) => words)).toEqual([
      'the week is over, and its contacts are those on the record: put the rows right if they are wrong',
    ]);
    expect(why.advice[0]?.places).toEqual(['done.csv:2']);
  });

  it('says of a week without jumps that none were done, not that no day was free', () => {
    const words = wordsOf(whyOf(season([...WEEK_1, ...NO_WEEK_2]), 2, '2027-01-18'));
    expect(words).toContain('no jumps: none were done');
    expect(words).not.toContain('no day is free');
  });

  it('tells the path that the phases took, whatever fell out', () => {
    const path = (rows: readonly string[], asOf: string): string | undefined =>
      whyOf(season(rows), 3, asOf).chain.find(({ about }) => about === 'phase')?.words;
    expect(path([...WEEK_1, ...NO_WEEK_2], '2027-01-18')).toBe(path([], '2027-01-04'));
  });

  it('says of a week nobody wrote down what it counts for', () => {
    const words = wordsOf(whyOf(season(WEEK_1), 2, '2027-01-18'));
    expect(words).toContain('nothing is recorded of it, so it counts for no more than the last one that was');
  });

  it('tells pain that holds, with its number and its row', () => {
    const why = whyOf(season([...WEEK_1.slice(0, 1), '2027-01-10,mira,session,60,,,5,']), 2, '2027-01-11');
    const held = why.bounds.find(({ by }) => by === 'pain-hold');
    expect(held).toMatchObject({ most: 120, held: true, places: ['done.csv:3'], rule: 'pain-hold', mark: 'C' });
    expect(held?.words).toBe('no rise after pain the next morning, so no more than the usual 120');
  });

  it('tells pain that stops, and offers no number to jump at', () => {
    const why = whyOf(season([...WEEK_1, '2027-01-10,mira,session,0,,,7,']), 4, '2027-01-11');
    expect(why.contacts).toBe(0);
    expect(why.why).toBe('no jumps after strong pain');
    expect(why.advice.flatMap(({ adds }) => adds)).toEqual([]);
    expect(wordsOf(why)).toContain('a later morning on the record with less pain lets the jumps begin again');
  });

  it('tells a week under way by what is done of it, and offers no more', () => {
    const why = whyOf(season(['2027-01-05,mira,session,85,,,,']), 1, '2027-01-06');
    const rows = { places: ['done.csv:2'] };
    expect(why.why).toBe('the week was to have 130, and 85 are on record already');
    const held = why.bounds.find(({ by }) => by === 'record');
    expect(held).toMatchObject({ most: 110, held: true, ...rows });
    expect(held?.words).toContain('85 contacts are done of a week of 130, where 65 were written by now');
    expect(why.advice).toMatchObject([{ adds: [], ...rows }]);
    expect(why.sessions[1]?.reasons.at(-1)).toMatchObject({
      words: 'cut, as 85 contacts of the 130 of the week are on record already',
      ...rows,
    });
  });

  it('tells the rise that is held while nothing is recorded', () => {
    const why = whyOf(season(WEEK_1), 5, '2027-02-01');
    const held = why.bounds.find(({ by }) => by === 'record');
    expect(held?.held).toBe(true);
    expect(held?.words).toContain('no rise while nothing is recorded');
  });

  it('has words for every week of all of these', () => {
    for (const rows of [[], WEEK_1, [...WEEK_1, ...NO_WEEK_2], [...WEEK_1, '2027-01-10,mira,session,0,,,7,']]) {
      for (let week = 1; week <= 16; week += 1)
        expect(wordsOf(whyOf(season(rows), week, '2027-02-01'))).not.toMatch(/undefined|NaN/u);
    }
  });
});

describe('reach', () => {
  it('looks ahead only', () => {
    const plan = season(WEEK_1);
    const told = reportReach(plan, builtOf(plan, '2027-01-11'), 120, () => undefined);
    expect(told.earliest?.week).toBe(2);
  });

  it('asks for more of a rise from less that was done', () => {
    const planned = season([]);
    const ill = season([...WEEK_1, ...NO_WEEK_2]);
    const riseOf = (plan: Plan, asOf: string): number | undefined => {
      const { athlete } = builtOf(plan, asOf);
      return riseNeeded({ plan, athlete, asOf: day(asOf) }, 240, 4);
    };
    expect(riseOf(planned, '2027-01-04')).toBeDefined();
    expect(riseOf(ill, '2027-01-18') ?? Infinity).toBeGreaterThan(riseOf(planned, '2027-01-04') ?? Infinity);
  });
});

describe('a pin after weeks that fell out', () => {
  const pin = 'pins: [{ athletes: [mira], week: 2027-02-01, contacts-a-week: 145, because: camp }]\n';
  const conflicts = (plan: Plan, asOf: string) =>
    builtOf(plan, asOf).diagnostics.filter(({ code }) => code === 'schedule/pin-too-high');

  it('is met where all was done', () => {
    expect(conflicts(season([], pin), '2027-01-04')).toEqual([]);
  });

  it('is too high by what was done, and stands in the week that is told as the earliest, and no week before', () => {
    const rows = [...WEEK_1, ...NO_WEEK_2];
    const [conflict] = conflicts(season(rows, pin), '2027-01-18');
    expect(conflict?.params).toMatchObject({ wanted: 145, others: 0, earliest: '2027-02-15' });
    const isMetOn = (week: string): boolean =>
      conflicts(season(rows, pin.replace('2027-02-01', week)), '2027-01-18').length === 0;
    expect(['2027-02-08', '2027-02-15'].map(isMetOn)).toEqual([false, true]);
  });
});
