// What is wrong with a value of a plan: its kind, its words, its unit, its size, its date. Joined by ../language.ts.

import type { Entries } from '../../entry.ts';

const fittingUnits = (units: string, example: string): string =>
  units.includes(' ')
    ? `the units that fit are ${units}, as in ${example}`
    : `the unit that fits is ${units}, as in ${example}`;

export const valueEntries = {
  'language/wrong-kind': {
    severity: 'error',
    summary: 'a list, a group or a single value in the place of another',
    explanation:
      'A value is one word or number, a list in `[ ]` or with `- ` before each item, or a group of keys. Each key wants one of them.',
    bad: 'slots: { day: tuesday, minutes: 75, place: hall }',
    good: 'slots:\n  - { day: tuesday, minutes: 75, place: hall }',
    message: ({ key, wanted, found }: { key: string; wanted: string; found: string }) =>
      `"${key}" wants ${wanted}, and this is ${found}`,
  },
  'language/empty-value': {
    severity: 'error',
    summary: 'a key without a value',
    explanation: 'There is nothing behind the colon. Write the value, or delete the line.',
    bad: 'mass:',
    good: 'mass: 68 kg',
    message: ({ wanted }: { wanted: string }) => `nothing is written here; wanted is ${wanted}`,
  },
  'language/no-word': {
    severity: 'error',
    summary: 'a yes, a no or a nothing where a word is meant',
    explanation:
      'Older readers of YAML take an unquoted yes, no, on, off, true, false or null for a switch or for nothing, and others for a word. In quotes everybody reads the same word.',
    bad: 'name: no',
    good: 'name: "No"',
    message: ({ found }: { found: string }) => `"${found}" without quotes is not a word to every reader of this file`,
    help: () => 'put it in quotes if that is the word, or write what is meant',
  },
  'language/too-long': {
    severity: 'error',
    summary: 'a text too long to print',
    explanation: 'Texts of a plan are printed on cards and boards. Mostly a quote is missing further up.',
    bad: 'because: exams until … and so on',
    good: 'because: exam week',
    message: ({ found, most }: { found: number; most: number }) =>
      `this text has ${String(found)} letters, and ${String(most)} are the most`,
  },
  'language/wrong-word': {
    severity: 'error',
    summary: 'a word that is none of the choice',
    explanation: 'This key takes one of a few words, in lower case.',
    bad: 'prepare: peek',
    good: 'prepare: peak',
    message: ({ found, wanted }: { found: string; wanted: string }) =>
      `"${found}" is none of the words that fit: ${wanted}`,
  },
  'language/bad-id': {
    severity: 'error',
    summary: 'an id that cannot be one',
    explanation:
      'Ids name files and columns, so they are short and plain: letters, digits and hyphens, beginning with a letter or digit. The name that is printed is written under `name:`.',
    bad: 'athletes:\n  "Mira K.": { mass: 68 kg }',
    good: 'athletes:\n  mira-k: { name: Mira K., mass: 68 kg }',
    message: ({ found }: { found: string }) =>
      `"${found}" cannot be an id: letters, digits and hyphens only, at most 64`,
  },
  'language/same-id': {
    severity: 'error',
    summary: 'two ids that differ in letter case alone',
    explanation: 'Each athlete has a page named after the id, and some systems do not tell the two apart.',
    bad: 'athletes:\n  mira: {}\n  Mira: {}',
    good: 'athletes:\n  mira: {}\n  mira-l: {}',
    message: ({ found, other }: { found: string; other: string }) =>
      `"${found}" and "${other}" differ in letter case alone`,
  },
  'language/not-a-quantity': {
    severity: 'error',
    summary: 'something that is no quantity',
    explanation: 'A quantity is a number, a space and a unit.',
    bad: 'mass: heavy',
    good: 'mass: 68 kg',
    message: ({ found, what, example }: { found: string; what: string; units: string; example: string }) =>
      `"${found}" is not ${what}: write it as in ${example}`,
  },
  'language/bare-number': {
    severity: 'error',
    summary: 'a number without its unit',
    explanation: 'Kilos or pounds, centimetres or inches: a plan may use either, so a number says which.',
    bad: 'mass: 68',
    good: 'mass: 68 kg',
    message: ({ found, what }: { found: string; what: string; units: string; example: string }) =>
      `${found} has no unit, and ${what} needs one`,
    help: ({ units, example }: { units: string; example: string }) => fittingUnits(units, example),
  },
  'language/wrong-unit': {
    severity: 'error',
    summary: 'a unit that does not fit',
    explanation: 'The unit measures something else, or is not one that plans know.',
    bad: 'mass: 176 cm',
    good: 'mass: 68 kg',
    message: ({
      found,
      unit,
      what,
      units,
    }: {
      found: string;
      unit: string;
      what: string;
      units: string;
      example: string;
    }) => `"${found}" is in ${unit}, and ${what} is wanted here, in ${units}`,
    help: ({ units, example }: { units: string; example: string }) => fittingUnits(units, example),
  },
  'language/unit-not-wanted': {
    severity: 'error',
    summary: 'a unit behind a plain number',
    explanation: 'The key says what is counted, so the number stands alone.',
    bad: 'minutes: 75 min',
    good: 'minutes: 75',
    message: ({ found, number }: { found: string; number: string }) =>
      `"${found}" has words behind its number, and the key says already what is counted: write ${number}`,
  },
  'language/decimal-comma': {
    severity: 'error',
    summary: 'a decimal comma',
    explanation: 'Numbers are written with a decimal point, as a comma separates items.',
    bad: 'mass: 68,5 kg',
    good: 'mass: 68.5 kg',
    message: ({ found, wanted }: { found: string; wanted: string }) =>
      `"${found}" has a decimal comma: write ${wanted}`,
  },
  'language/too-fine': {
    severity: 'error',
    summary: 'a quantity finer than it is kept',
    explanation: 'Quantities are kept in whole grams, centimetres and seconds, so that no sum depends on rounding.',
    bad: 'rest: 2.5 s',
    good: 'rest: 3 s',
    message: ({ found, whole }: { found: string; whole: string }) => `"${found}" does not come out in whole ${whole}`,
  },
  'language/not-positive': {
    severity: 'error',
    summary: 'a quantity of nothing or less',
    explanation: 'A mass, a height or a time is more than nothing. Leave the line out if it is not known.',
    bad: 'mass: 0 kg',
    good: 'mass: 68 kg',
    message: ({ found, what }: { found: string; what: string }) => `${what} is more than 0, and this is ${found}`,
    help: () => 'if it is not known, leave the line out',
  },
  'language/out-of-range': {
    severity: 'error',
    summary: 'a number nobody can mean',
    explanation: 'The number is far outside of what there is. Mostly a digit too many, or the wrong unit.',
    bad: 'mass: 680 kg',
    good: 'mass: 68 kg',
    message: ({ found, wanted }: { found: string; wanted: string }) =>
      `${found} is outside of what is possible: ${wanted}`,
  },
  'language/not-a-number': {
    severity: 'error',
    summary: 'something that is no number',
    explanation: 'This key counts something, so it takes a plain number in digits.',
    bad: 'jumps: many',
    good: 'jumps: 60',
    message: ({ found, wanted }: { found: string; wanted: string }) => `"${found}" is not ${wanted}`,
  },
  'language/not-a-set': {
    severity: 'error',
    summary: 'a lifted set in another form',
    explanation: 'A set that was done is a load, an x and the repetitions.',
    bad: 'did: 5 reps with 70 kg',
    good: 'did: 70 kg x 5',
    message: ({ found }: { found: string }) => `"${found}" is not a set: write it as in 70 kg x 5`,
  },
  'language/date-form': {
    severity: 'error',
    summary: 'a date in another form',
    explanation:
      'Dates are written year, month, day, as 2027-01-04, because 1/4 is January to some and April to others.',
    bad: 'starts: 4/1/2027',
    good: 'starts: 2027-01-04',
    message: ({ found }: { found: string }) => `"${found}" is not a date in the form 2027-01-04`,
  },
  'language/no-such-date': {
    severity: 'error',
    summary: 'a date that does not exist',
    explanation: 'The calendar has no such day.',
    bad: 'date: 2027-02-29',
    good: 'date: 2027-02-28',
    message: ({ found, why }: { found: string; why: string }) => `${found} does not exist: ${why}`,
  },
  'language/no-such-day': {
    severity: 'error',
    summary: 'a day of the week that is none',
    explanation: 'Days are monday to sunday, or mon to sun, in lower case.',
    bad: 'day: teusday',
    good: 'day: tuesday',
    message: ({ found }: { found: string }) => `"${found}" is no day of the week: monday to sunday, or mon to sun`,
  },
  'language/time-form': {
    severity: 'error',
    summary: 'a time of day in another form',
    explanation:
      'Times are hours and minutes of 24 hours with a colon, in quotes, as older readers of YAML take 18:00 for a number.',
    bad: 'at: 6 pm',
    good: 'at: "18:00"',
    message: ({ found }: { found: string }) => `"${found}" is not a time of day in the form "18:00"`,
  },
} as const satisfies Entries;
