// What pages must and must not say, read from the whole of a written build: escaped values, no names of rules for those
// who train, no reasons of health on any page that others see, first names only under 16, the build's mark and the
// cautions on every sheet, black and white alone.

import { describe, expect, test } from 'vitest';
import { RULE_IDS } from '../../../../src/library/rules/ids.ts';
import { stylesheet } from '../../../../src/render/html/styles.ts';
import { CAUTIONS } from '../../../../src/report/cautions.ts';
import { stressBuild } from '../../../printed/stress-build.ts';
import { exampleBuild, writtenFiles } from '../../../printed/written.ts';

const handball = exampleBuild('handball-spring');
const files = await writtenFiles(handball, 'a4');
const stress = await writtenFiles(stressBuild('metric'), 'letter');

const pagesOf = (all: ReadonlyMap<string, string>, pattern: RegExp): readonly (readonly [string, string])[] =>
  [...all].filter(([path]) => pattern.test(path));

const textOf = (html: string): string => html.replaceAll(/<style>[\s\S]*?<\/style>/gu, '').replaceAll(/<[^>]+>/gu, ' ');

test('a build has every artefact that is promised', () => {
  const ids = handball.plan.athletes.map(({ id }) => id);
  const wanted = [
    'plan.json',
    'weeks.csv',
    'sessions.csv',
    'lines.csv',
    'calendar.ics',
    'season.html',
    'physio.html',
    'index.html',
    ...ids.flatMap((id) => [`athletes/${id}.html`, `athletes/${id}.ics`]),
  ];
  expect(wanted.filter((path) => !files.has(path))).toEqual([]);
  const dates = new Set(pagesOf(files, /^sessions\//u).map(([path]) => path));
  const sessions = [...handball.athletes].flatMap((built) =>
    built.weeks.flatMap((week) => (built.blocked.has(week.week) ? [] : week.sessions.map(({ day }) => day))),
  );
  expect(dates.size).toBe(new Set(sessions).size);
});

describe('no page for those who train or pass by', () => {
  const open = pagesOf(files, /^(athletes|weeks|sessions)\/|^season\.html$|^calendar\.ics$/u);

  test('has a reason of health', () => {
    expect(files.get('physio.html')).toMatch(/left knee/u);
    for (const [path, text] of open)
      expect([path, /left knee|physio: |surgery/u.exec(text)?.[0]]).toEqual([path, undefined]);
  });

  test('has more than the first name of somebody under 16', () => {
    expect(files.get('index.html')).toMatch(/Saga W\./u);
    for (const [path, text] of open) expect([path, text.includes('Saga W.')]).toEqual([path, false]);
    expect(files.get('weeks/2027-01-25.html')).toMatch(/>Saga</u);
  });

  test('has the name of a rule, the wall chart aside', () => {
    const ids = RULE_IDS.filter((id) => id.includes('-'));
    for (const [path, text] of open.filter(([one]) => one !== 'season.html')) {
      expect([path, ids.filter((id) => textOf(text).includes(id))]).toEqual([path, []]);
    }
  });
});

test('every card, board and chart has the mark of its build and all cautions', () => {
  for (const [path, text] of pagesOf(files, /\.html$/u)) {
    const said = textOf(text);
    expect([path, said.includes(handball.mark)]).toEqual([path, true]);
    expect([path, CAUTIONS.filter((caution) => !said.includes(caution))]).toEqual([path, []]);
  }
});

test('what is in a name is never markup, and comes back as it is', () => {
  for (const [path, text] of pagesOf(stress, /\.html$/u)) {
    expect([path, /<b>Bo|<hard>/u.test(text)]).toEqual([path, false]);
  }
  expect(stress.get('athletes/athlete-08.html')).toContain('&lt;b>Bo &amp; &quot;Co&quot;&lt;/b>');
  expect(stress.get('athletes/athlete-04.html')).toMatch(/<bdi dir="auto">ليلى عبد الرحمن<\/bdi>/u);
});

test('a board names each athlete of the session once to tick, on one rack at most for each lift', () => {
  const board = stress.get('sessions/2027-01-04.html') ?? '';
  const roll = board.slice(board.indexOf('Tick: in'));
  expect(roll.match(/scope="row"/gu)?.length).toBe(40);
  const racks = board.slice(board.indexOf('rack 1'), board.indexOf('bar 1'));
  expect(racks.match(/<bdi/gu)?.length).toBe(40);
});

test.each(['cards', 'board', 'season', 'list'] as const)('the %s pages are black, white and grey', (kind) => {
  const colours = stylesheet('a4', kind).match(/#[0-9a-f]{3,8}\b|rgb|hsl|(?<=color: )[a-z]+/giu) ?? [];
  expect(colours.length).toBeGreaterThan(0);
  for (const colour of colours) expect(colour).toMatch(/^#([0-9a-f])\1\1$/u);
});

test('text is black on white or on a light grey, which grey-scale printers keep apart', () => {
  for (const [path, text] of pagesOf(files, /\.html$/u)) {
    const fills = new Set(text.match(/fill="#[0-9a-f]+"/gu) ?? []);
    for (const fill of fills)
      expect([path, ['fill="#ddd"', 'fill="#fff"', 'fill="#000"'].includes(fill)]).toEqual([path, true]);
    expect([path, /(?<!-)color: #(?!000)/u.test(text)]).toEqual([path, false]);
  }
});
