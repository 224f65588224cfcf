// What a build writes is read back as it was: the same sheets and the same days; and what is no build is told so.

import { expect, test } from 'vitest';
import { compileAt } from '../../../src/cli/open-plan.ts';
import { sideOf } from '../../../src/diff/side.ts';
import { readBuilt } from '../../../src/diff/read-built.ts';
import { fileSystem } from '../../../src/host/files.ts';
import { footfall } from '../../cli/footfall.ts';

const LATE = 30_000;

const written = async (name: string): Promise<string> =>
  (await footfall(['build', `examples/${name}`, '--format', 'json'])).out;

test.each(['four-weeks', 'handball-spring', 'jumpers-two-peaks', 'youth-group', 'harbour-diary'])(
  '%s is read as it was built',
  { timeout: 120_000 },
  async (name) => {
    const { build } = compileAt(`examples/${name}`, { files: fileSystem, today: LATE });
    const read = readBuilt(await written(name));
    if (build === undefined || !read.ok) throw new Error('the example is not built, or not read');
    const side = sideOf(build);
    const naming = ({ id, name: called, squad }: (typeof side.athletes)[number]): object => ({
      id,
      name: called,
      ...(squad !== undefined && { squad }),
    });
    expect(read.value.units).toBe(side.units);
    expect(read.value.athletes).toEqual(side.athletes.map(naming));
    expect(read.value.sheets).toEqual(
      [...side.sheets].map(({ athlete, weeks }) => ({ athlete: naming(athlete), weeks })),
    );
    for (const { athlete, weeks, blocked } of build.athletes) {
      const sessions = weeks.filter(({ week }) => !blocked.has(week)).flatMap((week) => week.sessions);
      const days = read.value.days.get(athlete.id) ?? new Map();
      expect([...days.keys()]).toEqual([...new Set(sessions.map(({ day }) => day))]);
      for (const [day, { jumps, lifts }] of days) {
        const there = sessions.filter((session) => session.day === day);
        expect([jumps, lifts]).toEqual([there.some((one) => one.jumps), there.some((one) => one.lifts)]);
      }
    }
  },
);

const DAMAGES: ReadonlyArray<readonly [string, (text: string) => string, readonly string[]]> = [
  ['an empty file', () => '', ['this is no JSON: Unexpected end of JSON input']],
  ['half a file', (text) => text.slice(0, text.indexOf('"season"')), ['this is no JSON: line 5, column 1']],
  ['a list', () => '[]', ['this is no build: its format is not "footfall build"']],
  ['another document of ours', (text) => text.replace('footfall build', 'footfall diff'), ['this is no build']],
  ['another version', (text) => text.replace('"version":1', '"version":2'), ['another version']],
  [
    'several slips at once',
    (text) =>
      text
        .replace('"date":"2027-05-04"', '"date":"2027-05-34"')
        .replace('"contacts":75', '"contacts":"75"')
        .replace('"units":"imperial"', '"units":"old"')
        .replace('"lifts":true', '"lift":true'),
    [
      'season.units is "old", and should be metric or imperial',
      'athletes[0].weeks[0].sessions[0].date is "2027-05-34", and should be a date like 2027-03-01',
      'athletes[0].weeks[0].sessions[0].contacts is "75", and should be a whole number of 0 or more',
      'athletes[0].weeks[0].sessions[0].lifts is missing, and should be true or false',
    ],
  ],
  [
    'athletes that are none',
    (text) => text.replace(/"athletes":[^]*\n"findings"/u, '"athletes":{"pia":1},"findings"'),
    ['athletes is a group of keys, and should be a list'],
  ],
];

test.each(DAMAGES)('%s is refused', async (_, damage, says) => {
  const read = readBuilt(damage(await written('four-weeks')));
  if (read.ok) throw new Error('it was read');
  expect(read.problems).toHaveLength(says.length);
  says.forEach((words, index) => {
    expect(read.problems[index]).toContain(words);
  });
});

test('a document that is wrong everywhere is told by its first twenty slips', async () => {
  const text = (await written('four-weeks')).replaceAll('"sets":', '"set":');
  const read = readBuilt(text);
  expect(read.ok ? [] : read.problems).toHaveLength(20);
});
