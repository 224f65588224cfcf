// Where the sport of an athlete is told: in the chain behind a week, with who says so; in an edit of the plan; in the
// columns of a board.

import { expect, test } from 'vitest';
import { compilePlan } from '../../../src/compile.ts';
import { diffPlans } from '../../../src/diff/edits.ts';
import { createDocument } from '../../../src/report/build-document.ts';
import { editNotes } from '../../../src/report/edit-words.ts';
import { createGroupMarks } from '../../../src/report/group-marks.ts';
import { EVERYTHING } from '../../../src/report/selection.ts';
import { reportWhy } from '../../../src/report/why.ts';
import { athleteOf, planOf } from '../plan/loaded.ts';

const club = (season: string, ann = '', squad = ''): string => `footfall: 1
season: { title: Jumps, ${season}starts: 2027-01-04, ends: 2027-03-28 }
places: { track: { surface: grass, kit: { hurdles: 6 } } }
slots: [{ day: tuesday, minutes: 60, place: track }, { day: friday, minutes: 60, place: track }]
competitions: [{ name: Meeting, date: 2027-03-20, prepare: peak }]
squads: { jumps: { level: beginner, now: { contacts-a-session: 60, sessions-a-week: 2 }${squad} } }
athletes:
  ann: { squad: jumps${ann} }
  bea: { squad: jumps }
  cy: { squad: jumps, group: blue }
`;

function mixOf(text: string, id: string): unknown {
  const plan = planOf(text);
  const built = compilePlan(plan).athlete(athleteOf(plan, id));
  const [first] = built.weeks;
  if (first === undefined) throw new Error('no week');
  const told = reportWhy(plan, built, first, first.starts).chain.find(({ about }) => about === 'mix');
  return told === undefined ? undefined : [told.words, told.places, told.mark];
}

test.each([
  [
    club('', ', sport: high-jump'),
    "65 % vertical, 35 % horizontal, 0 % lateral: high jump, the athlete's own sport",
    ['season.yaml:8'],
  ],
  [
    club('', '', ', sport: high-jump'),
    "65 % vertical, 35 % horizontal, 0 % lateral: high jump, the athlete's own sport",
    ['season.yaml:6'],
  ],
  [
    club('sport: handball, '),
    "45 % vertical, 30 % horizontal, 25 % lateral: handball, the season's sport",
    ['season.yaml:2'],
  ],
  [club(''), '50 % vertical, 30 % horizontal, 20 % lateral: as strength asks for', []],
  [
    club('sport: handball, ', ', sport: general'),
    '50 % vertical, 30 % horizontal, 20 % lateral: as strength asks for',
    ['season.yaml:8'],
  ],
])('why tells where the jumps of a week go and who says so', (text, words, places) => {
  expect(mixOf(text, 'ann')).toEqual([words, places, 'C']);
});

const edits = (before: string, after: string): readonly string[] =>
  editNotes(diffPlans(planOf(before), planOf(after)), 'metric').map(({ words }) => words);

test('an edit of a sport is told in its words', () => {
  const long = club('', ', sport: long-jump');
  expect(edits(club(''), long)).toEqual(['athlete ann: sport none → long-jump']);
  expect(edits(long, club('', ', sport: high-jump'))).toEqual(['athlete ann: sport long-jump → high-jump']);
  expect(edits(long, club('sport: handball, ', ', sport: long-jump'))).toEqual([
    'the season: sport general → handball',
  ]);
  expect(edits(club('', '', ', sport: long-jump'), club('', '', ', sport: high-jump'))).toEqual([
    'athletes ann, bea, cy: sport long-jump → high-jump',
  ]);
});

test('a squad of several sports stands in columns of its own, and groups of the plan as they are', () => {
  const names = (text: string): readonly unknown[] => {
    const plan = planOf(text);
    const marks = createGroupMarks(plan);
    return plan.athletes.map((athlete) => marks.of(athlete)?.name);
  };
  expect(names(club('', ', sport: high-jump'))).toEqual(['jumps, high jump', 'jumps, general', 'blue']);
  expect(names(club('sport: high-jump, ', ', sport: high-jump'))).toEqual(['jumps', 'jumps', 'blue']);
  expect(names(club('', ', sport: high-jump').replaceAll('squad: jumps', 'level: beginner'))).toEqual([
    'High jump',
    'General',
    'blue',
  ]);
});

test('the build as data says which sport counts, and where it is written', () => {
  const build = compilePlan(planOf(club('sport: handball, ', ', sport: high-jump')));
  const document = createDocument(build, EVERYTHING);
  const sports = [...build.athletes].map((built) => document.athlete(built)['sport']);
  expect(sports).toMatchObject([
    { id: 'high-jump', origin: { kind: 'written', place: { line: 8 } } },
    { id: 'handball', origin: { kind: 'written', place: { line: 2 } } },
    { id: 'handball', origin: { kind: 'written', place: { line: 2 } } },
  ]);
});
