// What is wrong with the keys of a plan: unknown, at the wrong level, twice, or missing. Joined by ../language.ts.

import type { Entries } from '../../entry.ts';

export const keyEntries = {
  'language/not-a-plan': {
    severity: 'error',
    summary: 'a file that holds no keys',
    explanation:
      'A plan file is a group of keys at its left edge, such as `season:` and `athletes:`. This one is a list, or a single text.',
    bad: '- season\n- athletes',
    good: 'season:\n  title: Spring\n  starts: 2027-01-04',
    message: ({ found }: { found: string }) => `a plan file is a group of keys, and this one is ${found}`,
  },
  'language/version-missing': {
    severity: 'error',
    summary: 'an entry file without its version',
    explanation:
      'The entry file of a plan says which version of the language it is written in, so that a later footfall reads it as it was meant.',
    bad: 'season: { title: Spring, starts: 2027-01-04 }',
    good: 'footfall: 1\nseason: { title: Spring, starts: 2027-01-04 }',
    message: () => 'this file does not say which version of the plan language it is written in',
    help: () => 'write `footfall: 1` as the first line',
  },
  'language/version-unknown': {
    severity: 'error',
    summary: 'a version of the language this footfall does not know',
    explanation: 'This footfall reads version 1 of the plan language. A higher one needs a newer footfall.',
    bad: 'footfall: 2',
    good: 'footfall: 1',
    message: ({ found, known }: { found: number; known: number }) =>
      `this plan is written in version ${String(found)} of the language, and this footfall reads version ${String(known)}`,
  },
  'language/unknown-key': {
    severity: 'error',
    summary: 'a key nobody knows',
    explanation:
      'Every key of a plan has a meaning, and one without is refused, because a slip in a key would otherwise leave a limit or a date out without a word.',
    bad: 'athletes:\n  mira:\n    mas: 68 kg',
    good: 'athletes:\n  mira:\n    mass: 68 kg',
    message: ({ key, where }: { key: string; where: string }) => `there is no key "${key}" ${where}`,
  },
  'language/misplaced-key': {
    severity: 'error',
    summary: 'a key at the wrong level',
    explanation:
      'The key is known, and belongs somewhere else. Mostly the line is indented too far or not far enough, so that it belongs to another group than meant.',
    bad: 'athletes:\n  mira:\n  mass: 68 kg',
    good: 'athletes:\n  mira:\n    mass: 68 kg',
    message: ({ key, where, belongs }: { key: string; where: string; belongs: string }) =>
      `there is no key "${key}" ${where}: it belongs ${belongs}`,
    help: () => 'look at the indentation: a key belongs to the line above it that is indented less',
  },
  'language/unknown-rule': {
    severity: 'error',
    summary: 'a rule nobody knows',
    explanation: 'Below `rules:` stand the ids of rules, as `footfall rules` prints them.',
    bad: 'rules:\n  weekly-raise: [{ most: 8 %, because: two back from injury }]',
    good: 'rules:\n  weekly-rise: [{ most: 8 %, because: two back from injury }]',
    message: ({ found }: { found: string }) => `there is no rule "${found}"`,
    help: () => '`footfall rules` lists them',
  },
  'language/contacts-of-what': {
    severity: 'error',
    summary: 'contacts that do not say of what',
    explanation:
      'Ranges of foot contacts are printed in books per session and per week, and the two differ by a factor of two to four. So contacts always say of what: a session or a week.',
    bad: 'now: { contacts: 80, sessions-a-week: 2 }',
    good: 'now: { contacts-a-session: 80, sessions-a-week: 2 }',
    message: ({ where }: { where: string }) => `"contacts" ${where} does not say of what: a session or a week`,
    help: () => 'write contacts-a-session or contacts-a-week',
  },
  'language/duplicate-key': {
    severity: 'error',
    summary: 'a key in two files',
    explanation:
      'The files of a plan are put together key by key. The same key in two of them would leave one value out, and nobody could say which the coach meant.',
    bad: 'athletes: { mira: { squad: seniors } }     # here, and again in squad/juniors.yaml',
    good: 'athletes: { mira: { squad: seniors } }     # here only',
    message: ({ key, first }: { key: string; first: string }) => `"${key}" is in ${first} already`,
    label: () => 'again here',
    help: () => 'delete one of the two, or merge them',
  },
  'language/missing-key': {
    severity: 'error',
    summary: 'a key that is needed and not there',
    explanation: 'Some keys have no default that would be right for everybody, so they are written down.',
    bad: 'competitions:\n  - { name: County cup final, prepare: peak }',
    good: 'competitions:\n  - { name: County cup final, date: 2027-04-24, prepare: peak }',
    message: ({ key, where }: { key: string; where: string }) => `"${key}" is missing ${where}`,
  },
  'language/because-missing': {
    severity: 'error',
    summary: 'a reason that is missing',
    explanation:
      'Where a coach overrules the tool, or bars something, the reason is written beside it. It is printed where it acts, and is there next year when nobody remembers.',
    bad: 'pins:\n  - { athletes: [mira], date: 2027-03-18, rest: true }',
    good: 'pins:\n  - { athletes: [mira], date: 2027-03-18, rest: true, because: travel }',
    message: ({ where }: { where: string }) => `the reason is missing ${where}`,
    help: () => 'add `because:` and a few words',
  },
} as const satisfies Entries;
