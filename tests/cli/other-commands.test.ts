import { readFileSync } from 'node:fs';
import { describe, expect, test, vi } from 'vitest';
import { VERSION } from '../../src/cli/version.ts';
import { codes } from '../../src/diagnostics/catalogue.ts';
import { RULES } from '../../src/library/rules.ts';
import { CAUTIONS } from '../../src/report/cautions.ts';
import { footfall, HANDBALL, rowsOf } from './footfall.ts';

// A season takes its time to compile, and a busy machine takes longer.
vi.setConfig({ testTimeout: 120_000 });

test('the version is that of the package', async () => {
  const { version }: { version: string } = JSON.parse(readFileSync('package.json', 'utf8'));
  expect(VERSION).toBe(version);
  expect((await footfall(['--version'])).out).toBe(`${version}\n`);
});

test.each([['--help'], ['build', '--help'], ['done', '--help'], ['diff', '--help'], ['jump', '--help']])(
  'help fits a narrow terminal, but for commands to type: %s %s',
  async (...args) => {
    const { out } = await footfall(args, { COLUMNS: '72' });
    const wide = out.split('\n').filter((line) => line.length > 72 && !/^ {2}footfall /u.test(line));
    expect(wide).toEqual([]);
    const words = (text: string): string => text.replaceAll(/\s+/gu, ' ');
    expect(words(out)).toBe(words((await footfall(args)).out));
  },
);

test('help says the cautions', async () => {
  const { out } = await footfall(['--help']);
  for (const caution of CAUTIONS) expect(out).toContain(caution);
});

describe('rules', () => {
  test('lists every rule with its mark', async () => {
    const { out } = await footfall(['rules']);
    for (const { id, mark } of RULES) {
      const line = out.split('\n').find((one) => one.startsWith(`${id} `));
      expect(line, id).toBeDefined();
      if (mark !== null) expect(line).toMatch(new RegExp(` ${mark}( |$)`));
    }
  });

  test('of one has its sources', async () => {
    const { out } = await footfall(['rules', 'drop-mass']);
    expect(out).toContain('100 kg');
    expect(out.replaceAll(/\s+/g, ' ')).toContain('NSCA position statement 1993');
  });

  test('with a plan says what it changes and waives', async () => {
    const { out } = await footfall(['rules', '--plan', HANDBALL], { COLUMNS: '160' });
    expect(out).toMatch(/weekly-rise: most 8 %; juniors; .* \(season\.yaml:\d+\)/);
    expect(out).toContain('session-spacing: waived; seniors');
    expect((await footfall(['rules'])).out).not.toContain('What the plan changes');
  });

  test('as CSV has a row for each number, and for what the plan sets', async () => {
    const { out } = await footfall(['rules', 'weekly-rise', '--plan', HANDBALL, '--format', 'csv']);
    expect(rowsOf(out).map((row) => row.slice(5, 9).join())).toEqual([
      'default,most,10,percent',
      'default,contacts,10,contacts',
      'default,severe,30,percent',
      'plan,most,8,percent',
    ]);
  });
});

describe('library', () => {
  const drills = async (...args: readonly string[]): Promise<readonly string[]> => {
    const { out, status } = await footfall(['library', '--format', 'csv', ...args]);
    expect(status).toBe(0);
    return rowsOf(out).map(([, id = '']) => id);
  };

  test('filters by kind, tier, direction, family and kit', async () => {
    const all = await drills();
    const high = await drills('--tier', 'high');
    const lateral = await drills('--tier', 'high', '--direction', 'lateral');
    expect(all.length).toBeGreaterThan(high.length);
    expect(high.length).toBeGreaterThan(lateral.length);
    expect(lateral).toContain('long-lateral-bound');
    expect(await drills('--family', 'rebound')).toContain('hurdle-hop');
    expect(await drills('--kit', 'none')).not.toContain('hurdle-hop');
    expect(await drills('--kit', 'hurdles')).toContain('hurdle-hop');
    expect(await drills('--kind', 'lift')).toContain('back-squat');
    expect(await drills('--kind', 'lift')).not.toContain('hurdle-hop');
  });

  test("has a plan's own drills", async () => {
    expect(await drills('--family', 'handball-landing', '--plan', HANDBALL)).toEqual(['throw-landing']);
  });

  test('says who may do a drill, who not and why', async () => {
    const { out } = await footfall(['library', 'depth-landing-30', '--plan', HANDBALL]);
    expect(out.replaceAll(/\s+/g, ' ')).toMatch(/not: [^:]*Lin A\.[^:]*: the coach hasn't cleared it/);
    expect(out).toContain('stop: ');
  });

  test('judges for one athlete, on a day', async () => {
    const verdict = async (on: string): Promise<string> =>
      (
        await footfall(['library', '--family', 'skater', '--plan', HANDBALL, '--athlete', 'tuva', '--on', on], {
          COLUMNS: '160',
        })
      ).out;
    expect(await verdict('2027-01-04')).toMatch(
      /skater-stick .*no: the athlete's limit bars it, squad\/seniors\.yaml:\d+/,
    );
    expect(await verdict('2027-02-15')).toMatch(/skater-stick .*yes/);
  });
});

describe('check', () => {
  test('as JSON counts what the text counts', async () => {
    const { out } = await footfall(['check', HANDBALL, '--format', 'json']);
    const document: { diagnostics: unknown[]; warnings: number; notices: number; errors: number } = JSON.parse(out);
    expect(document.diagnostics.length).toBe(document.errors + document.warnings + document.notices);
    const text = await footfall(['check', HANDBALL]);
    expect(text.out.trimEnd().split('\n').at(-1)).toContain(`${document.warnings} warning`);
  });

  test('as SARIF is a log of one run', async () => {
    const { out } = await footfall(['check', HANDBALL, '--format', 'sarif']);
    const log: { version: string; runs: { results: unknown[] }[] } = JSON.parse(out);
    expect(log.version).toBe('2.1.0');
    expect(log.runs.length).toBe(1);
    expect(log.runs[0]?.results.length).toBeGreaterThan(0);
  });

  test('quietly shows errors only', async () => {
    expect((await footfall(['check', HANDBALL, '--quiet'])).out).toBe('');
  });

  test('explains a code with a wrong and a right example', async () => {
    const { out } = await footfall(['check', '--explain', 'plan/end-before-start']);
    expect(out).toContain('wrong\n');
    expect(out).toContain('right\n');
    expect(codes.length).toBeGreaterThan(10);
  });
});
