// Files put together, items read, and the places of their values.

import { describe, expect, test } from 'vitest';
import { at, placeOf } from '../../../src/language/authored.ts';
import type { Authored } from '../../../src/language/authored.ts';
import { decode } from '../../../src/language/decode.ts';
import { parseYaml } from '../../../src/read/parse-yaml.ts';
import { sourceFile } from '../../../src/source/source-file.ts';
import type { Span } from '../../../src/source/types.ts';
import type { Diagnostic } from '../../../src/diagnostics/types.ts';

interface Decoded {
  readonly authored: Authored;
  readonly diagnostics: readonly Diagnostic[];
  readonly textAt: (span: Span | undefined) => string;
}

function decoded(...texts: readonly string[]): Decoded {
  const files = texts.map((text, index) =>
    sourceFile(index === 0 ? 'season.yaml' : `more-${String(index)}.yaml`, text),
  );
  const documents = files.map((file) => ({ file, root: parseYaml(file).value.root }));
  const { value, diagnostics } = decode({ files, documents });
  const textAt = (span: Span | undefined): string =>
    files.find(({ path }) => path === span?.file)?.text.slice(span?.start, span?.end) ?? '';
  return { authored: value, diagnostics, textAt };
}

/** Code and marked text of each problem. */
function marks({ diagnostics, textAt }: Decoded): readonly (readonly [string, string])[] {
  return diagnostics.map(({ code, span }) => [code, textAt(span)]);
}

const HEAD = 'footfall: 1\nseason: { title: Spring, starts: 2027-01-04 }\n';

describe('the files of a plan', () => {
  test('have their lists appended and their groups put together', () => {
    const { authored, diagnostics } = decoded(
      'footfall: 1\nseason: { title: Spring }\nslots: [{ day: mon, minutes: 60, place: hall }]\nathletes: { mira: {} }\n',
      'season: { starts: 2027-01-04 }\nslots: [{ day: tue, minutes: 60, place: hall }]\nathletes: { jon: {} }\n',
    );
    expect(diagnostics).toEqual([]);
    expect(authored.season?.value).toMatchObject({ title: 'Spring' });
    expect(authored.season?.kind).toBe('whole');
    expect(authored.slots.map(({ value }) => value.day)).toEqual([0, 1]);
    expect([...authored.athletes.keys()]).toEqual(['mira', 'jon']);
  });

  test('name both places of a key that two of them have', () => {
    const both = decoded(`${HEAD}athletes: { mira: { mass: 68 kg } }\n`, 'athletes: { mira: { mass: 70 kg } }\n');
    const [problem] = both.diagnostics;
    expect(problem).toMatchObject({ code: 'language/duplicate-key', span: { file: 'more-1.yaml' } });
    expect(problem?.related.map(({ span }) => [span.file, both.textAt(span)])).toEqual([['season.yaml', 'mira']]);
    expect(both.authored.athletes.get('mira')?.value.mass).toBe(68_000);
  });

  test('may leave a section empty, and a squad to its defaults', () => {
    const { authored, diagnostics } = decoded(`${HEAD}pins:\nathletes:\nsquads:\n  seniors:\n`);
    expect(diagnostics).toEqual([]);
    expect(authored.squads.get('seniors')?.kind).toBe('whole');
  });

  test('need their version in the entry file only, and each may say it', () => {
    expect(decoded(HEAD, 'footfall: 1\n').diagnostics).toEqual([]);
    expect(marks(decoded('season: { title: Spring, starts: 2027-01-04 }\n', 'footfall: 1\n'))).toEqual([
      ['language/version-missing', 'season'],
    ]);
  });
});

test('every value has its place', () => {
  const { authored, textAt } = decoded(
    `${HEAD}athletes:\n  mira:\n    mass: 68 kg\n    limits:\n      - { until: 2027-02-01, avoid: [drops, lateral], because: left knee }\n`,
  );
  const mira = authored.athletes.get('mira');
  if (mira === undefined) throw new Error('no mira');
  expect(textAt(mira.span)).toBe('mira');
  expect(textAt(placeOf(mira, 'mass'))).toBe('68 kg');
  expect(textAt(placeOf(mira, 'limits', 0, 'avoid', 1))).toBe('lateral');
  expect(textAt(placeOf(mira, 'limits', 0))).toBe('until');
  expect(textAt(placeOf(mira, 'goal'))).toBe('mira');
  expect(at(mira, 'limits', 0, 'avoid', 1).path).toBe('athletes.mira.limits[0].avoid[1]');
});

describe('one mistake is one problem', () => {
  const athlete = (fields: string): Decoded => decoded(`${HEAD}athletes: { mira: { ${fields} } }\n`);

  test('where a key that is needed is misspelt', () => {
    expect(marks(athlete('away: [{ form: 2027-03-01, until: 2027-03-07 }]'))).toEqual([
      ['language/unknown-key', 'form'],
    ]);
    expect(marks(athlete('now: { contacts: 80, sessions-a-week: 2 }'))).toEqual([
      ['language/contacts-of-what', 'contacts'],
    ]);
  });

  test('where a word stands for a group', () => {
    expect(marks(athlete('now: 80'))).toEqual([['language/wrong-kind', '80']]);
    expect(marks(athlete('limits: drops'))).toEqual([['language/wrong-kind', 'drops']]);
    expect(marks(athlete('lifts: strong'))).toEqual([['language/wrong-kind', 'strong']]);
    expect(marks(decoded(`${HEAD}pins: [camp]\n`))).toEqual([['language/wrong-kind', 'camp']]);
  });

  test('where a line is indented too little', () => {
    const outside = decoded(`${HEAD}athletes:\n  mira:\n  mass: 68 kg\n`);
    expect(marks(outside)).toEqual([['language/misplaced-key', 'mass']]);
    expect(outside.authored.athletes.get('mira')?.kind).toBe('broken');
    expect(outside.authored.athletes.has('mass')).toBe(false);
  });
});

test('a broken item keeps what can be read', () => {
  const { authored } = decoded(`${HEAD}athletes: { mira: { mass: 68, squad: seniors, born: 2003 } }\n`);
  const mira = authored.athletes.get('mira');
  expect(mira?.kind).toBe('broken');
  expect(mira?.value).toMatchObject({ squad: 'seniors' });
  expect(mira?.value.mass).toBeUndefined();
});

test('odd keys are keys like others', () => {
  for (const key of ['__proto__', 'constructor', 'toString', 'hasOwnProperty']) {
    const codes = marks(decoded(`${HEAD}athletes: { mira: { ${key}: 1 } }\n${key}: 1\n`)).map(([code]) => code);
    expect(codes).toEqual(['language/unknown-key', 'language/unknown-key']);
    const lifts = decoded(`${HEAD}athletes: { mira: { lifts: { ${key}: { max: 60 kg } } } }\n`);
    expect(Object.keys(lifts.authored.athletes.get('mira')?.value.lifts ?? {})).toHaveLength(1);
  }
});
