// What is wrong with athletes and squads: levels, ages, maxima, limits, stages, the weeks before the season. Joined by
// ../plan.ts.

import type { Entries } from '../../entry.ts';
import { counted } from '../../../util/counted.ts';
import { heightWords, kiloWords } from '../../../util/quantities.ts';
import type { Units } from '../../../util/quantities.ts';

export const peopleEntries = {
  'plan/no-athletes': {
    severity: 'error',
    summary: 'a plan without athletes',
    explanation: 'There is nobody to plan for. Athletes stand under `athletes:` or in a roster.',
    bad: 'athletes: {}',
    good: 'athletes: { mira: { level: intermediate } }',
    message: () => 'this plan has no athletes',
  },
  'plan/name-twice': {
    severity: 'warning',
    summary: 'two athletes with one name',
    explanation:
      'Whoever reads a board or picks up a card goes by the name. Sheets tell the two apart by a number behind it, which is their place in the plan. Often it is one person who was written down twice.',
    bad: 'athletes: { mira: { name: Mira K. }, mira-k: { name: Mira K. } }',
    good: 'athletes: { mira: { name: Mira K. }, mira-k: { name: Mira Karlsen } }',
    message: ({ id, other, name }: { id: string; other: string; name: string }) =>
      `${id} has the name of ${other}: ${name}`,
    help: () => 'write what tells them apart, or delete one of them',
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
  'plan/maxima-of-squad': {
    severity: 'warning',
    summary: 'maxima that a squad gives its athletes',
    explanation:
      'What somebody lifts is one person’s. A maximum under a squad is taken for everybody in it who has none, with kilos for each and the height of drops; nobody under 16 gets kilos by it, but reps with some in reserve.',
    bad: 'squads: { seniors: { lifts: { back-squat: { max: 92.5 kg } } } }\nathletes: { mira: { squad: seniors } }',
    good: 'squads: { seniors: { level: intermediate } }\nathletes: { mira: { squad: seniors, lifts: { back-squat: { max: 92.5 kg } } } }',
    message: ({ squad, grown, young }: { squad: string; grown: string; young: string }) => {
      const out = young === '' ? '' : `not for ${young}, under 16`;
      const taken = grown === '' ? '' : `it is taken for ${grown}`;
      return `a maximum is one person's, and this is that of ${squad}: ${[taken, out].filter((one) => one !== '').join('; ')}`;
    },
    help: () => 'write what each of them lifts, as far as it is known',
  },
  'plan/max-after-season': {
    severity: 'warning',
    summary: 'a maximum of after the season',
    explanation:
      'A maximum that is lifted after the season can’t be behind its kilos, so the date is a slip, mostly of the year. It would never grow old, and time away would never lower it. The maximum counts as one without a date.',
    bad: 'back-squat: { max: 92.5 kg, on: 2036-12-12 }',
    good: 'back-squat: { max: 92.5 kg, on: 2026-12-12 }',
    message: ({ lift, on, ends }: { lift: string; on: string; ends: string }) =>
      `the maximum of ${lift} is dated ${on}, and the season ends on ${ends}`,
    help: () => 'write the day it was lifted',
  },
  'plan/impossible-max': {
    severity: 'error',
    summary: 'a maximum nobody lifts',
    explanation:
      'All kilos of the season are shares of the maximum, and the height of drops hangs on it. Over 600 kg, or five times the body mass, mostly the decimal point is missing or the unit is another; machines may have up to 1000 kg.',
    bad: 'mass: 68 kg\nlifts: { back-squat: { max: 925 kg } }',
    good: 'mass: 68 kg\nlifts: { back-squat: { max: 92.5 kg } }',
    message: ({ athlete, lift, kilos, most, units }: ImpossibleMax) =>
      `${athlete}: ${kiloWords(kilos, units)} is no maximum of ${lift}: ${kiloWords(most, units)} are the most that is taken for one`,
    help: () => 'correct the maximum, its unit or the body mass',
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
  'plan/now-over-ceiling': {
    severity: 'warning',
    summary: 'a `now` over the ceiling of the level',
    explanation:
      'The whole season is built up from what the last weeks really were. Sessions larger than the level is ever given are mostly a slip of a digit, or those of somebody at a higher level.',
    bad: 'level: beginner\nnow: { contacts-a-session: 600, sessions-a-week: 2 }',
    good: 'level: beginner\nnow: { contacts-a-session: 60, sessions-a-week: 2 }',
    message: ({ athlete, level, found, most }: { athlete: string; level: string; found: number; most: number }) =>
      `${athlete} did ${String(found)} contacts a session by \`now\`, and ${String(most)} are the most at the level of ${level}`,
    help: () => 'look at the number, or at the level',
  },
  'plan/level-left-out': {
    severity: 'notice',
    summary: 'a level that is not written',
    explanation: 'Without a level an athlete is planned for as a beginner, which is the most cautious.',
    bad: 'athletes: { mira: { mass: 68 kg } }',
    good: 'athletes: { mira: { mass: 68 kg, level: beginner } }',
    message: ({ athletes }: { athletes: string }) => `no level is written for ${athletes}: planned for as a beginner`,
  },
  'plan/born-left-out': {
    severity: 'notice',
    summary: 'a birth that is not written',
    explanation:
      'The rules that protect children need an age: the ceiling of a session, drops, loads, a free day. Without one nobody is barred from anything for being young. On pages that others may read the name is then short, as it is under 16.',
    bad: 'athletes: { mira: { level: intermediate } }',
    good: 'athletes: { mira: { level: intermediate, born: 2003 } }',
    message: ({ athletes }: { athletes: string }) =>
      `no birth is written for ${athletes}: planned for as adults, with a short name on pages that others may read`,
    help: () => 'write `born:`, the year at least',
  },
  'plan/returning-competes': {
    severity: 'notice',
    summary: 'somebody on the way back who is counted into competitions',
    explanation:
      'Before the last stage of a return is signed nobody is back in full. The competition counts all the same: its jumps are among those of the week, the days around it are kept free, and it stands on the card. Where the athlete is not to take part, name those who do.',
    bad: 'athletes: { mira: { squad: seniors, returning: { stage: 2, of: 4, since: 2027-01-04, signed: physio } } }',
    good: 'competitions: [{ name: League round, date: 2027-03-27, prepare: through, jumps: 0, squads: [seniors] }]\nathletes: { mira: { squad: juniors, returning: { stage: 2, of: 4, since: 2027-01-04, signed: physio } } }',
    message: ({ athlete, stage, of, competition, date, more }: ReturningCompetes) =>
      `${athlete} ${stage === 0 ? 'has no stage of the return signed' : `stands at stage ${stage} of ${of} of the return`} on ${date}, and is counted into ${competition}${more === 0 ? '' : ` and ${counted(more, 'further competition', 'further competitions')}`}`,
    help: () => 'name who takes part with `squads:` or `athletes:` of the competition, or leave it if that is meant',
  },
  'plan/no-first-drop': {
    severity: 'notice',
    summary: 'a clearance for drops without a box to begin on',
    explanation:
      'Drops begin on a low box. Where an athlete trains there is none of about that height, so that no drops are planned although they are cleared. Get a lower box and write it; only who may begin on the lowest box that is there is cleared for its drop by name.',
    bad: 'athletes: { mira: { cleared: [drops] } }    # the hall has boxes of 30 and 45 cm',
    good: 'athletes: { mira: { cleared: [drops, drop-jump-30] } }',
    message: ({ athletes, cm, units }: { athletes: string; cm: number; units: Units }) =>
      `cleared for drops, but no box of about ${heightWords(cm, units)} to begin on where they train: none are planned for ${athletes}`,
    help: () =>
      'get a lower box; only for who may begin higher clear that drop by its name, as in `cleared: [drops, drop-jump-30]`',
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
} as const satisfies Entries;

type ImpossibleMax = {
  readonly athlete: string;
  readonly lift: string;
  readonly kilos: number;
  readonly most: number;
  readonly units: Units;
};

type ReturningCompetes = {
  readonly athlete: string;
  readonly stage: number;
  readonly of: number;
  /** The first, and how many follow. */
  readonly competition: string;
  readonly date: string;
  readonly more: number;
};
