// A roster in CSV as the athletes of a plan, the same as written in YAML.

import { describe, expect, it } from 'vitest';
import { parseYaml } from '../../../src/read/parse-yaml.ts';
import { rosterRoot } from '../../../src/read/read-roster.ts';
import { sourceFile, textOf } from '../../../src/source/source-file.ts';
import { allNodes, plainValue } from './plain-value.ts';

const rosterOf = (text: string): ReturnType<typeof rosterRoot> => rosterRoot(sourceFile('roster.csv', text));

describe('a roster', () => {
  it('says what the same athletes in YAML say', () => {
    const csv = [
      'id,name,squad,born,mass,cleared,now.contacts-a-session,now.sessions-a-week,lifts.back-squat.max,lifts.back-squat.on',
      'mira,Mira K.,seniors,2003-06,68 kg,drops single-leg-high,80,2,92.5 kg,2026-12-12',
      'jon,"Bauer, Jon",juniors,2009,,drops;lateral,,,,',
      '',
    ].join('\r\n');
    const yaml = `
athletes:
  mira:
    name: Mira K.
    squad: seniors
    born: 2003-06
    mass: 68 kg
    cleared: [drops, single-leg-high]
    now: { contacts-a-session: 80, sessions-a-week: 2 }
    lifts: { back-squat: { max: 92.5 kg, on: 2026-12-12 } }
  jon:
    name: Bauer, Jon
    squad: juniors
    born: 2009
    cleared: [drops, lateral]
`;
    const { value, diagnostics } = rosterOf(csv);
    expect(diagnostics).toEqual([]);
    expect(value && plainValue(value)).toEqual(plainValue(parseYaml(sourceFile('squad.yaml', yaml)).value.root));
  });

  it('knows the place of every key and value', () => {
    const text = 'id,now.contacts-a-session,"cleared"\nmira,80," drops  lateral"\n';
    const file = sourceFile('roster.csv', text);
    const { value } = rosterRoot(file);
    const athlete = value?.entries[0]?.value.kind === 'map' ? value.entries[0].value.entries[0] : undefined;
    expect(athlete && textOf(file, athlete.keySpan)).toBe('mira');
    const fields = athlete?.value.kind === 'map' ? athlete.value.entries : [];
    expect(fields.map(({ keySpan }) => textOf(file, keySpan))).toEqual(['now', 'cleared']);
    const [now, cleared] = fields;
    expect(now?.value.kind === 'map' && textOf(file, now.value.entries[0]?.keySpan ?? now.keySpan)).toBe(
      'contacts-a-session',
    );
    expect(cleared && Array.from(allNodes(cleared.value), ({ span }) => textOf(file, span))).toEqual([
      '" drops  lateral"',
      'drops',
      'lateral',
    ]);
  });

  it('of ten thousand athletes is read', () => {
    const rows = Array.from(
      { length: 10_000 },
      (_, index) => `a${String(index)},Athlete ${String(index)},seniors,68 kg,80\n`,
    );
    const { value, diagnostics } = rosterOf(`id,name,squad,mass,now.contacts-a-session\n${rows.join('')}`);
    expect(diagnostics).toEqual([]);
    expect(value?.entries[0]?.value.kind === 'map' && value.entries[0].value.entries).toHaveLength(10_000);
  });

  it.each([
    ['name\nMira\n', ['csv/missing-column']],
    ['id,a,a\nmira,1,2\n', ['csv/duplicate-column']],
    ['id,id\nmira,jon\n', ['csv/duplicate-column']],
    ['id,a,a.b\nmira,1,2\n', ['csv/column-clash']],
    ['id,a.b,a\nmira,1,2\n', ['csv/column-clash']],
    ['id,a..b\nmira,1\n', ['csv/unnamed-column']],
    ['id,a\nmira,1\nmira,2\n', ['csv/duplicate-id']],
    ['id,a\n,1\n', ['csv/missing-cell']],
    ['id,mass\nmira,68,5 kg\n', ['csv/decimal-comma']],
    ['id,mass\nmira,"68,5"\n', ['csv/decimal-comma']],
    ['id,name\nmira,"68,5"\n', []],
    ['id,a\nmira,1,2,3\n', ['csv/cell-count']],
    ['id;a\nmira;1\n', ['csv/separator']],
    ['id\tmass\nmira\t1\n', ['csv/separator']],
    ['\n', ['source/empty']],
  ])('%j is reported as %j', (text, codes) => {
    const { value, diagnostics } = rosterOf(text);
    expect(diagnostics.map(({ code }) => code)).toEqual(codes);
    expect(value === undefined).toBe(codes.length > 0);
  });
});
