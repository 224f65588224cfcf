// What is wrong with the coach's own decisions: changed rules, waivers, pins, sessions written by hand. Joined by
// ../plan.ts.

import type { Entries } from '../../entry.ts';

export const decisionsEntries = {
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
} as const satisfies Entries;
