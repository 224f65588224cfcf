// What a well-formed plan can get wrong: names that stand for nothing, dates out of order, values nobody can have.
// Reported while names are bound and defaults filled.

import type { Entries } from '../entry.ts';

export const planEntries = {
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
    help: () => 'look at the year, or delete it',
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
  'plan/unknown-name': {
    severity: 'error',
    summary: 'a name that stands for nothing',
    explanation:
      'Squads, athletes, places, exercises, rules and programmes are named by their ids: those the plan defines, or those of the library (`footfall library`).',
    bad: 'athletes: { mira: { squad: seniros } }',
    good: 'athletes: { mira: { squad: seniors } }',
    message: ({ name, kind }: { name: string; kind: string }) => `no ${kind} is called "${name}"`,
  },
  'plan/for-nobody': {
    severity: 'error',
    summary: 'an item for nobody',
    explanation: 'An empty list of squads or athletes would leave nobody. Leave the key out to mean everybody.',
    bad: 'practice: [{ day: monday, jumps: 60, squads: [] }]',
    good: 'practice: [{ day: monday, jumps: 60 }]',
    message: () => 'this list is empty, so that the item is for nobody',
    help: () => 'name somebody, or delete the key to mean everybody',
  },
  'plan/no-athletes': {
    severity: 'error',
    summary: 'a plan without athletes',
    explanation: 'There is nobody to plan for. Athletes stand under `athletes:` or in a roster.',
    bad: 'athletes: {}',
    good: 'athletes: { mira: { level: intermediate } }',
    message: () => 'this plan has no athletes',
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
  'plan/no-level': {
    severity: 'error',
    summary: 'an empty list of levels',
    explanation: 'A dated level has at least one step. Leave `level:` out to mean beginner.',
    bad: 'level: []',
    good: 'level: [{ is: beginner }, { is: intermediate, from: 2027-03-01 }]',
    message: () => 'this list of levels is empty',
  },
  'plan/levels-undated': {
    severity: 'error',
    summary: 'two levels from one day',
    explanation: 'Each level after the first has a date of its own: the day it was signed off.',
    bad: 'level: [{ is: beginner }, { is: intermediate }]',
    good: 'level: [{ is: beginner }, { is: intermediate, from: 2027-03-01 }]',
    message: ({ level, other }: { level: string; other: string }) => `${level} and ${other} begin on the same day`,
    help: () => 'add `from:` with the day of the sign-off',
  },
  'plan/level-steps-down': {
    severity: 'error',
    summary: 'a level that steps down',
    explanation:
      'A level is what an athlete has learned, so that it only goes up. Somebody who can do less for a while has a limit, or comes back by stages.',
    bad: 'level: [{ is: advanced }, { is: intermediate, from: 2027-03-01 }]',
    good: 'level: advanced\nlimits: [{ from: 2027-03-01, avoid: [drops], because: long break }]',
    message: ({ level, before }: { level: string; before: string }) =>
      `the level steps down from ${before} to ${level}`,
    help: () => 'write a limit with a reason instead, or correct the first level',
  },
  'plan/max-or-did': {
    severity: 'error',
    summary: 'a lift with both a maximum and a set, or neither',
    explanation: 'A maximum is lifted (`max:`) or estimated from a hard set (`did:`). One of them is written.',
    bad: 'back-squat: { max: 92.5 kg, did: 80 kg x 5 }',
    good: 'back-squat: { max: 92.5 kg }',
    message: ({ lift }: { lift: string }) => `${lift} needs either \`max\` or \`did\``,
  },
  'plan/too-many-reps': {
    severity: 'error',
    summary: 'a set too long to estimate a maximum from',
    explanation: 'The equations for the one-repetition maximum hold for sets of up to ten repetitions.',
    bad: 'romanian-deadlift: { did: 50 kg x 15 }',
    good: 'romanian-deadlift: { did: 70 kg x 5 }',
    message: ({ reps, most }: { reps: number; most: number }) =>
      `a maximum can't be estimated from ${String(reps)} repetitions: ${String(most)} are the most`,
  },
  'plan/limit-of-nothing': {
    severity: 'error',
    summary: 'a limit that limits nothing',
    explanation: 'A limit says what to avoid, or how many contacts a session or a week may have.',
    bad: 'limits: [{ until: 2027-02-01, because: left knee }]',
    good: 'limits: [{ until: 2027-02-01, avoid: [drops], because: left knee }]',
    message: () => 'this limit has neither `avoid` nor contacts, so that it limits nothing',
  },
  'plan/stage-over': {
    severity: 'error',
    summary: 'a stage beyond the last',
    explanation: 'Stages are counted from 1 to `of`.',
    bad: 'returning: { stage: 5, of: 4, since: 2027-01-10, signed: physio }',
    good: 'returning: { stage: 4, of: 4, since: 2027-01-10, signed: physio }',
    message: ({ stage, of }: { stage: number; of: number }) =>
      `stage ${String(stage)} is beyond the last, ${String(of)}`,
  },
  'plan/stages-clash': {
    severity: 'error',
    summary: 'stages of a return that clash',
    explanation: 'Each stage has a day of its own on which it was signed off, and all count to the same last stage.',
    bad: 'returning: [{ stage: 2, of: 4, since: 2027-01-10, signed: physio }, { stage: 3, of: 4, since: 2027-01-10, signed: physio }]',
    good: 'returning: [{ stage: 2, of: 4, since: 2027-01-10, signed: physio }, { stage: 3, of: 4, since: 2027-02-01, signed: physio }]',
    message: ({ stage, other }: { stage: number; other: number }) =>
      `stages ${String(other)} and ${String(stage)} have the same day, or count to different last stages`,
  },
  'plan/too-young': {
    severity: 'error',
    summary: 'an athlete under 8',
    explanation:
      'No season of planned jumps is made for a child under 8. A year or month of birth is read as its last day, so that a child who is older needs the date.',
    bad: 'athletes: { bo: { born: 2020 } }',
    good: 'athletes: { bo: { born: 2016-05-30 } }',
    message: ({ athlete, age, least, on }: { athlete: string; age: number; least: number; on: string }) =>
      `${athlete} is ${String(age)} on ${on}, and nothing is planned for a child under ${String(least)}`,
    help: () => 'correct the birth, or write it to the day if the child is older',
  },
  'plan/impossible-age': {
    severity: 'error',
    summary: 'an age nobody has',
    explanation:
      'The birth lies after the start of the season or more than a century before it. Mostly a digit is wrong.',
    bad: 'athletes: { mira: { born: 2203-06 } }',
    good: 'athletes: { mira: { born: 2003-06 } }',
    message: ({ athlete, age, on }: { athlete: string; age: number; on: string }) =>
      age < 0 ? `${athlete} is not born yet on ${on}` : `${athlete} would be ${String(age)} on ${on}`,
  },
  'plan/now-needed': {
    severity: 'error',
    summary: 'an athlete with a limit or a return and no `now`',
    explanation:
      'Somebody who is hurt or comes back starts from what was really done in the last weeks. What is usual for the level is no guide to it.',
    bad: 'athletes: { mira: { limits: [{ until: 2027-02-01, avoid: [drops], because: left knee }] } }',
    good: 'athletes:\n  mira:\n    now: { contacts-a-session: 40, sessions-a-week: 2 }\n    limits: [{ until: 2027-02-01, avoid: [drops], because: left knee }]',
    message: ({ athlete }: { athlete: string }) => `${athlete} has a limit or comes back, and has no \`now\``,
    help: () => 'write `now: { contacts-a-session: …, sessions-a-week: … }` as the last weeks really were',
  },
  'plan/level-left-out': {
    severity: 'notice',
    summary: 'a level that is not written',
    explanation: 'Without a level an athlete is planned for as a beginner, which is the most cautious.',
    bad: 'athletes: { mira: { mass: 68 kg } }',
    good: 'athletes: { mira: { mass: 68 kg, level: beginner } }',
    message: ({ athletes }: { athletes: string }) => `no level is written for ${athletes}: planned for as a beginner`,
  },
  'plan/now-left-out': {
    severity: 'notice',
    summary: 'last weeks that are not written',
    explanation:
      'The rise of a season starts from what was done before it. Where `now` is left out a cautious number for the level is taken (common practice, no source).',
    bad: 'athletes: { mira: { level: intermediate } }',
    good: 'athletes: { mira: { level: intermediate, now: { contacts-a-session: 80, sessions-a-week: 2 } } }',
    message: ({
      athletes,
      level,
      contacts,
      sessions,
    }: {
      athletes: string;
      level: string;
      contacts: number;
      sessions: number;
    }) =>
      `no last weeks (\`now\`) are written for ${athletes}: starting from ${String(contacts)} contacts a session, ${String(sessions)} sessions a week, as usual for ${level}`,
  },
  'plan/rule-unchanged': {
    severity: 'error',
    summary: 'a rule with nothing changed',
    explanation: 'Below a rule stands at least one of its parameters; `footfall rules` prints them.',
    bad: 'rules: { weekly-rise: [{ squads: [juniors], because: two back from injury }] }',
    good: 'rules: { weekly-rise: [{ most: 8 %, squads: [juniors], because: two back from injury }] }',
    message: ({ rule, parameters }: { rule: string; parameters: string }) =>
      parameters === ''
        ? `${rule} has no parameters to change`
        : `nothing of ${rule} is changed here: its parameters are ${parameters}`,
  },
  'plan/rule-loosened': {
    severity: 'error',
    summary: 'a rule loosened that may only be tightened',
    explanation:
      'Some rules protect children and people who are hurt. A plan may make them stricter, and never looser.',
    bad: 'rules: { drop-age: { under: 12 years, because: they are strong } }',
    good: 'rules: { drop-age: { under: 15 years, because: late growers } }',
    message: ({
      rule,
      parameter,
      value,
      usual,
      unit,
      stricter,
      why,
    }: {
      rule: string;
      parameter: string;
      value: number;
      usual: number;
      unit: string;
      stricter: string;
      why: string;
    }) =>
      `\`${parameter}\` ${String(value)} makes ${rule} looser than its ${String(usual)} ${unit}, and only a ${stricter} number is allowed. ${why}`,
  },
  'plan/not-waivable': {
    severity: 'error',
    summary: 'a waiver of a rule that cannot be waived',
    explanation: 'Some rules protect children and people who are hurt, and no reason puts them aside.',
    bad: 'waivers: [{ rule: drop-age, week: 2027-03-01, because: they are strong }]',
    good: 'waivers: []',
    message: ({ rule, why }: { rule: string; why: string }) => `${rule} can't be waived. ${why}`,
  },
  'plan/waiver-undated': {
    severity: 'error',
    summary: 'a waiver without its days',
    explanation: 'A rule is waived for a stretch that ends, so that nobody forgets it.',
    bad: 'waivers: [{ rule: session-spacing, because: camp }]',
    good: 'waivers: [{ rule: session-spacing, week: 2027-03-01, because: camp }]',
    message: () => 'this waiver does not say from when until when',
    help: () => 'write `week:`, or `from:` and `until:`',
  },
  'plan/waiver-undecided': {
    severity: 'error',
    summary: 'a waiver that does not say who decided',
    explanation:
      'This rule protects somebody who was hurt or away, so that the record names who decided to put it aside.',
    bad: 'waivers: [{ rule: return-ramp, week: 2027-03-01, because: trained abroad }]',
    good: 'waivers: [{ rule: return-ramp, week: 2027-03-01, because: trained abroad, decided: team physio }]',
    message: ({ rule }: { rule: string }) => `a waiver of ${rule} names who decided`,
    help: () => 'add `decided:` and who it was',
  },
  'plan/pin-of-nothing': {
    severity: 'error',
    summary: 'a pin that pins nothing',
    explanation:
      'A pin has at least one of contacts-a-week, phase, rest, kind, swap, leave-out, keep, add, sets, load and on.',
    bad: 'pins: [{ athletes: [mira], week: 2027-03-01, because: camp week }]',
    good: 'pins: [{ athletes: [mira], week: 2027-03-01, contacts-a-week: 150, because: camp week }]',
    message: () => 'this pin says when and why, and not what',
  },
  'plan/pin-undated': {
    severity: 'error',
    summary: 'a pin without its days',
    explanation:
      'A number, a phase, a kind of week, a rest or a choice of days belongs to a week or a stretch of days.',
    bad: 'pins: [{ athletes: [mira], contacts-a-week: 150, because: camp week }]',
    good: 'pins: [{ athletes: [mira], week: 2027-03-01, contacts-a-week: 150, because: camp week }]',
    message: ({ key }: { key: string }) => `\`${key}\` needs the days it is for`,
    help: () => 'write `week:`, `date:`, or `from:` and `until:`',
  },
  'plan/pin-rounded': {
    severity: 'notice',
    summary: 'a pinned number that is rounded',
    explanation:
      'Contacts are planned in steps of 5, as sets come in whole repetitions. A pin in between is rounded down.',
    bad: 'contacts-a-week: 148',
    good: 'contacts-a-week: 145',
    message: ({ found, rounded, step }: { found: number; rounded: number; step: number }) =>
      `${String(found)} contacts are planned as ${String(rounded)}: contacts go in steps of ${String(step)}`,
  },
  'plan/part-without-lines': {
    severity: 'error',
    summary: 'a part without lines',
    explanation: '`part:` says where the lines of `add:` go.',
    bad: 'pins: [{ part: trunk, rest: true, date: 2027-03-18, because: travel }]',
    good: 'pins: [{ part: trunk, add: [{ lift: plank, sets: 2, reps: 30 }], date: 2027-03-18, because: travel }]',
    message: () => '`part` stands here without `add`',
  },
  'plan/drill-or-lift': {
    severity: 'error',
    summary: 'a line with both a drill and a lift, or neither',
    explanation: 'A line is one exercise: a drill or a lift. Two that belong together are a line with its `pair:`.',
    bad: '{ drill: pogo, lift: back-squat, sets: 3, reps: 5 }',
    good: '{ lift: back-squat, sets: 3, reps: 5, pair: { drill: pogo, reps: 5 } }',
    message: () => 'a line needs either `drill` or `lift`',
  },
  'plan/not-of-exercise': {
    severity: 'error',
    summary: 'a value this kind of exercise does not have',
    explanation: 'Percentages, loads and reserve belong to lifts, heights dropped from to drills.',
    bad: '{ drill: pogo, sets: 3, reps: 5, percent: 80 % }',
    good: '{ lift: back-squat, sets: 3, reps: 5, percent: 80 % }',
    message: ({ key, kind }: { key: string; kind: string }) => `${kind} has no \`${key}\``,
  },
  'plan/two-loads': {
    severity: 'error',
    summary: 'a percentage and a load in one line',
    explanation: 'A load is written in kilos or as a percentage of the maximum. Both could contradict each other.',
    bad: '{ lift: back-squat, sets: 3, reps: 5, percent: 80 %, load: 70 kg }',
    good: '{ lift: back-squat, sets: 3, reps: 5, percent: 80 % }',
    message: () => '`percent` and `load` stand in one line',
    help: () => 'keep one of them',
  },
  'plan/programme-week-twice': {
    severity: 'error',
    summary: 'a week of a programme twice',
    explanation: 'Each week of a programme stands once.',
    bad: 'pairs-block: [{ week: 1 }, { week: 1 }]',
    good: 'pairs-block: [{ week: 1 }, { week: 2 }]',
    message: ({ week }: { week: number }) => `week ${String(week)} is there already`,
  },
  'plan/programme-day-twice': {
    severity: 'error',
    summary: 'a day of a programme twice',
    explanation: 'Each day of a week stands once, by its full name or its short one.',
    bad: '{ week: 1, tue: [], tuesday: [] }',
    good: '{ week: 1, tuesday: [] }',
    message: ({ day }: { day: string }) => `"${day}" is there already under its other name`,
  },
  'plan/id-clash': {
    severity: 'error',
    summary: 'a drill and a lift of one id',
    explanation: 'Lines, pins and limits name exercises by id alone, so that a drill and a lift can’t share one.',
    bad: 'drills: { back-squat: { … } }',
    good: 'drills: { squat-hop: { … } }',
    message: ({ id, kind }: { id: string; kind: string }) => `"${id}" is the id of ${kind} already`,
  },
  'plan/contacts-or-metres': {
    severity: 'error',
    summary: 'a drill with both contacts and metres, or neither',
    explanation: 'A drill counts its contacts by the repetition, or by the metre where it is given as distance.',
    bad: 'speed-bound: { contacts-per-rep: 1, metres-per-contact: 1.8 }',
    good: 'speed-bound: { metres-per-contact: 1.8 }',
    message: () => 'a drill needs either `contacts-per-rep` or `metres-per-contact`',
  },
  'plan/shares-sum': {
    severity: 'error',
    summary: 'shares that do not add up to 100',
    explanation: 'The directions of a drill are per cents of one whole.',
    bad: 'direction: { horizontal: 70, vertical: 20 }',
    good: 'direction: { horizontal: 70, vertical: 30 }',
    message: ({ sum }: { sum: number }) => `these shares add up to ${String(sum)}, not to 100`,
  },
  'plan/depths-differ': {
    severity: 'error',
    summary: 'a maximum of another squat depth',
    explanation:
      'A half squat is far heavier than a full one, and no factor turns one into the other: loads are never carried over between depths.',
    bad: 'half-squat: { name: Half squat, pattern: squat, depth: half, max-of: back-squat }',
    good: 'half-squat: { name: Half squat, pattern: squat, depth: half, max-of: half-squat }',
    message: ({ lift, depth, other, otherDepth }: { lift: string; depth: string; other: string; otherDepth: string }) =>
      `${lift} is ${depth} and ${other} ${otherDepth}: no load is carried over between depths`,
  },
  'plan/more': {
    severity: 'error',
    summary: 'the same in many more places',
    explanation:
      'Of one kind of mistake in one file a hundred are shown. As a rule it is one slip that repeats itself: mend the first ones, and check again.',
    bad: 'a roster of a thousand athletes whose masses have no unit',
    good: 'id,mass\nmira,68 kg',
    message: ({ code, count }: { code: string; count: number }) =>
      `there ${count === 1 ? 'is one more' : `are ${String(count)} more`} of ${code} in this file`,
    help: () => 'mend the first ones and check again',
  },
  'plan/record-in-future': {
    severity: 'error',
    summary: 'a record of a day to come',
    explanation: 'The record says what was done. Mostly a year or month is mistyped.',
    bad: '2072-01-05,mira,session,80,70,6,1,',
    good: '2027-01-05,mira,session,80,70,6,1,',
    message: ({ date, today }: { date: string; today: string }) => `${date} is still to come: today is ${today}`,
  },
} as const satisfies Entries;
