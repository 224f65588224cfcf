// What is wrong with dates and with what stands on them: the season, slots, competitions, tests, the record. Joined by
// ../plan.ts.

import type { Entries } from '../../entry.ts';

export const calendarEntries = {
  'plan/no-season': {
    severity: 'error',
    summary: 'a plan without a season',
    explanation: 'A plan needs a title and a first day; everything else is counted from them.',
    bad: 'footfall: 1\nathletes: { mira: { mass: 68 kg } }',
    good: 'footfall: 1\nseason: { title: Spring, starts: 2027-01-04, ends: 2027-05-02 }',
    message: () => 'no file of this plan has a `season:`',
    help: () => 'write `season:` with a title and the day it starts',
  },
  'plan/no-end': {
    severity: 'error',
    summary: 'a season without an end',
    explanation: 'A season ends on the day written, or with the week of its last competition. This one has neither.',
    bad: 'season: { title: Spring, starts: 2027-01-04 }',
    good: 'season: { title: Spring, starts: 2027-01-04, ends: 2027-05-02 }',
    message: () => 'the season has no end: neither `ends` nor a competition after its start',
    help: () => 'write `ends:`, or the competition it leads to',
  },
  'plan/season-too-long': {
    severity: 'error',
    summary: 'a season of more than two years',
    explanation: 'A season has up to 104 weeks. Mostly a year is mistyped.',
    bad: 'season: { title: Spring, starts: 2027-01-04, ends: 2072-05-02 }',
    good: 'season: { title: Spring, starts: 2027-01-04, ends: 2027-05-02 }',
    message: ({ weeks, most, starts, ends }: { weeks: number; most: number; starts: string; ends: string }) =>
      `from ${starts} to ${ends} are ${String(weeks)} weeks, and ${String(most)} are the most`,
  },
  'plan/time-zone': {
    severity: 'error',
    summary: 'a time zone in another form',
    explanation: 'Time zones are written by area and city, as calendars know them.',
    bad: 'time-zone: CET',
    good: 'time-zone: Europe/Oslo',
    message: ({ found }: { found: string }) => `"${found}" is not a time zone in the form Europe/Oslo`,
  },
  'plan/in-season-overlap': {
    severity: 'error',
    summary: 'two stretches in season that overlap',
    explanation: 'Each day is in season once. Join the two, or end one before the other.',
    bad: 'in-season: [{ from: 2027-02-20, until: 2027-04-10 }, { from: 2027-04-01, until: 2027-05-01 }]',
    good: 'in-season: [{ from: 2027-02-20, until: 2027-05-01 }]',
    message: () => 'this stretch in season begins before the one before it ends',
  },
  'plan/end-before-start': {
    severity: 'error',
    summary: 'an end before its start',
    explanation: 'Both days belong to the range, and the end is the later of the two or the same day.',
    bad: 'away: [{ from: 2027-03-28, until: 2027-03-22, because: exams }]',
    good: 'away: [{ from: 2027-03-22, until: 2027-03-28, because: exams }]',
    message: ({ start, from, end, until }: { start: string; from: string; end: string; until: string }) =>
      `\`${end}\` is ${until}, before \`${start}\` ${from}`,
    help: () => 'swap the two dates, or look at the year and the month',
  },
  'plan/two-times': {
    severity: 'error',
    summary: 'two ways to say when',
    explanation:
      'An item says when by `week:`, by `date:` or by `from:` and `until:`. Two of them could contradict each other.',
    bad: 'pins: [{ week: 2027-03-01, from: 2027-03-02, kind: deload, because: exams }]',
    good: 'pins: [{ week: 2027-03-01, kind: deload, because: exams }]',
    message: ({ ways }: { ways: string }) => `this says when in two ways: ${ways}`,
    help: () => 'keep one of them',
  },
  'plan/outside-season': {
    severity: 'warning',
    summary: 'an item outside of the season',
    explanation:
      'The days of this item lie before the first or after the last day of the season, so that it does nothing.',
    bad: 'tests: [{ date: 2026-03-09, what: [back-squat] }]',
    good: 'tests: [{ date: 2027-03-09, what: [back-squat] }]',
    message: ({ starts, ends }: { starts: string; ends: string }) =>
      `this lies outside of the season, ${starts} to ${ends}, and does nothing`,
    help: () => 'look at the year, or delete it: what went before the season is told by `now`',
  },
  'plan/competition-outside': {
    severity: 'error',
    summary: 'a competition outside of the season',
    explanation:
      'Every competition lies within the season, as it shapes the weeks before it. Move the season, or correct the date.',
    bad: 'season: { title: Spring, starts: 2027-01-04, ends: 2027-05-02 }\ncompetitions: [{ name: Cup, date: 2027-05-08, prepare: peak }]',
    good: 'season: { title: Spring, starts: 2027-01-04, ends: 2027-05-09 }\ncompetitions: [{ name: Cup, date: 2027-05-08, prepare: peak }]',
    message: ({ name, date, starts, ends }: { name: string; date: string; starts: string; ends: string }) =>
      `${name}, ${date}, is outside of the season, ${starts} to ${ends}`,
  },
  'plan/no-slots': {
    severity: 'error',
    summary: 'a plan without slots',
    explanation: 'There is no time to train in. Slots say on which day, for how long and where.',
    bad: 'slots: []',
    good: 'slots: [{ day: tuesday, minutes: 75, place: hall }]',
    message: () => 'this plan has no slots, so that nobody can train',
  },
  'plan/slot-twice': {
    severity: 'error',
    summary: 'a slot twice',
    explanation:
      'Two slots are the same: one day of the week, one time, one place, or one name. Delete one, or say how they differ.',
    bad: 'slots:\n  - { day: tuesday, minutes: 75, place: hall }\n  - { day: tuesday, minutes: 75, place: hall }',
    good: 'slots:\n  - { day: tuesday, minutes: 75, place: hall }',
    message: ({ day }: { day: string }) => `this slot on ${day} is there already`,
    label: () => 'again here',
  },
  'plan/slots-unnamed': {
    severity: 'error',
    summary: 'two slots on one day without names',
    explanation: 'Sheets, pins and calendars tell two slots of one day apart by their names.',
    bad: 'slots:\n  - { day: thursday, at: "07:30", minutes: 45, place: hall }\n  - { day: thursday, at: "18:00", minutes: 75, place: hall }',
    good: 'slots:\n  - { day: thursday, name: morning, at: "07:30", minutes: 45, place: hall }\n  - { day: thursday, name: evening, at: "18:00", minutes: 75, place: hall }',
    message: ({ day }: { day: string }) => `there are two slots on ${day}, and not both have a name`,
    help: () => 'add `name:` to both, such as morning and evening',
  },
  'plan/two-peaks': {
    severity: 'error',
    summary: 'two peaks on one day for one athlete',
    explanation: 'Nobody can be at two events on one day, and only one of them can be what the season aims at.',
    bad: 'competitions:\n  - { name: Cup final, date: 2027-04-24, prepare: peak }\n  - { name: Nationals, date: 2027-04-24, prepare: peak }',
    good: 'competitions:\n  - { name: Cup final, date: 2027-04-24, prepare: peak, squads: [seniors] }\n  - { name: Nationals, date: 2027-04-24, prepare: peak, squads: [juniors] }',
    message: ({ name, other, athlete, date }: { name: string; other: string; athlete: string; date: string }) =>
      `${name} and ${other} are both peaks on ${date}, and ${athlete} is in both`,
    help: () => 'narrow one with `squads:` or `athletes:`, or prepare it with freshen or through',
  },
  'plan/test-contacts': {
    severity: 'error',
    summary: 'a test without its contacts',
    explanation: 'Jumps of a test count like all others. A test of lifts alone has none and needs none written.',
    bad: 'tests: [{ date: 2027-03-09, what: [countermovement-jump] }]',
    good: 'tests: [{ date: 2027-03-09, what: [countermovement-jump], contacts: 12 }]',
    message: () => 'this test has jumps in it, and does not say how many contacts they take',
    help: () => 'add `contacts:`, warm-up jumps included',
  },
  'plan/no-smallest-plate': {
    severity: 'error',
    summary: 'bars without plates',
    explanation: 'Loads on a bar are made of plates, so that the lightest pair decides which loads there are.',
    bad: 'kit: { racks: 2, bars: [20 kg] }',
    good: 'kit: { racks: 2, bars: [20 kg], smallest-plate: 1.25 kg }',
    message: () => 'there are bars here, and no `smallest-plate` to load them with',
    help: () => 'add the lightest plate there is a pair of, as in smallest-plate: 1.25 kg',
  },
  'plan/record-in-future': {
    severity: 'error',
    summary: 'a record of a day to come',
    explanation: 'The record says what was done. Mostly a year or month is mistyped.',
    bad: '2072-01-05,mira,session,80,70,6,1,',
    good: '2027-01-05,mira,session,80,70,6,1,',
    message: ({ date, today }: { date: string; today: string }) => `${date} is still to come: today is ${today}`,
  },
  'plan/row-twice': {
    severity: 'warning',
    summary: 'a row of a record that is there twice',
    explanation:
      'A file that was pasted or merged twice would raise what an athlete is used to, so a row that says the same as another counts once. Sessions and practice may be there as often as the day has slots or practice.',
    bad: '2027-01-05,mira,session,80,70,6,1,\n2027-01-05,mira,session,80,70,6,1,',
    good: '2027-01-05,mira,session,80,70,6,1,\n2027-01-05,mira,session,40,30,5,1,in the evening',
    message: ({ athlete, date }: { athlete: string; date: string }) =>
      `this row of ${athlete} on ${date} is there already, and counts once`,
    help: () => 'delete it, or write in its note what tells it apart',
  },
  'plan/rows-before-season': {
    severity: 'notice',
    summary: 'rows of the record from before the season',
    explanation:
      'What was done before the season doesn’t count for what somebody is used to, as the season is built up from `now`; pain counts all the same. In January a row easily bears last year’s number, and then its week counts as not recorded.',
    bad: '2026-01-05,mira,session,80,70,6,1,',
    good: '2027-01-05,mira,session,80,70,6,1,',
    message: ({ date, rows, starts }: { date: string; rows: number; starts: string }) =>
      rows === 1
        ? `this row is of ${date}, and the season starts on ${starts}: it doesn't count for what somebody is used to`
        : `${String(rows)} rows, the first of ${date}, are from before the season, which starts on ${starts}: they don't count for what somebody is used to`,
    help: () => 'look at the year',
  },
  'plan/sessions-over-slots': {
    severity: 'warning',
    summary: 'more sessions on record than the day has slots',
    explanation:
      'A session that was typed in anew, with the right number, often stands beside the wrong one, and both would raise what an athlete is used to. Of sessions with contacts, and with the same note or none, as many count as the day has slots: those with the fewest contacts, with the worst pain of all of them, since the weeks behind are built on what counts. In the week under way what is left is cut as if those with the most had been done, until the slip is mended.',
    bad: '2027-01-05,mira,session,80,70,6,1,\n2027-01-05,mira,session,60,70,6,1,',
    good: '2027-01-05,mira,session,80,70,6,1,\n2027-01-05,mira,session,60,70,6,1,in the evening',
    message: ({ athlete, date, sessions, room }: { athlete: string; date: string; sessions: number; room: number }) =>
      `${athlete} has ${String(sessions)} sessions on ${date}, where there is room for ${String(room)}: this one doesn't count`,
    help: () => 'delete the one that is wrong, or write in its note what tells it apart',
  },
  'plan/unit-of-test': {
    severity: 'error',
    summary: 'a test in a unit that measures something else',
    explanation:
      'Kilos and pounds are units of lifts and of a pull against a bar that doesn’t move; jumps have heights and times, sprints times and speeds. Such a row mostly stands on the wrong line or has another column’s unit.',
    bad: '2027-01-05,mira,squat-jump,1,33,kg,mat,no,',
    good: '2027-01-05,mira,squat-jump,1,33,cm,mat,no,',
    message: ({ test, unit }: { test: string; unit: string }) => `${test} isn't measured in ${unit}`,
  },
  'plan/no-such-jump': {
    severity: 'warning',
    summary: 'a jump that nobody jumps',
    explanation:
      'A jump of more than 120 cm or less than 2 cm, or a time in the air that would take one, is left out of every mean. Mostly it has the unit of another file.',
    bad: '2027-01-05,mira,squat-jump,1,33,m,mat,no,',
    good: '2027-01-05,mira,squat-jump,1,33,cm,mat,no,',
    message: ({ test, value, unit }: { test: string; value: number; unit: string }) =>
      `no ${test} is ${value} ${unit}: the row is left out of what is worked out`,
    help: () => 'look at the unit, and at the decimal point',
  },
} as const satisfies Entries;
