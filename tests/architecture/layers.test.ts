// Who may import whom: the source keeps the rules of layers.mjs, and each rule is seen to catch a violation planted for it.

import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { cruise } from 'dependency-cruiser';
import type { ICruiseOptions, ICruiseResult } from 'dependency-cruiser';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import layers, { OWNED_PACKAGES, ROOMS } from './layers.mjs';

type Tree = Readonly<Record<string, string>>;

const forbidden = layers.forbidden ?? [];

async function examine(baseDir: string): Promise<ICruiseResult> {
  const options = { ...layers.options, validate: true, ruleSet: { forbidden }, baseDir } as ICruiseOptions;
  const { output } = await cruise(['src'], options);
  if (typeof output === 'string') throw new Error('wanted the result, not its text');
  return output;
}

/** `rule: from → to` of every violation. */
function violations({ summary }: ICruiseResult): readonly string[] {
  return summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`);
}

function filesBelow(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => join(entry.parentPath, entry.name));
}

describe('the source', () => {
  test('keeps every rule, and every file and import of it was looked at', async () => {
    const result = await examine(process.cwd());
    const seen = result.modules.map(({ source }) => source).filter((source) => source.startsWith('src/'));
    expect(seen.toSorted()).toEqual(filesBelow('src').toSorted());
    expect(result.summary.totalDependenciesCruised).toBeGreaterThan(seen.length / 2);
    expect(violations(result)).toEqual([]);
  });

  test('has a known room for every folder', () => {
    const folders = readdirSync('src', { withFileTypes: true }).filter((entry) => entry.isDirectory());
    const known = new Set(ROOMS.map(({ room }) => room));
    expect(folders.map(({ name }) => name).filter((name) => !known.has(name))).toEqual([]);
  });
});

describe('a planted violation is found:', () => {
  let folder = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'layers-'));
  });
  afterEach(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  async function violationsIn(tree: Tree): Promise<readonly string[]> {
    for (const [path, text] of Object.entries(tree)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    return violations(await examine(folder));
  }

  const one = 'export const one = 1;\n';

  /** For each rule a tree that breaks it once, and the edge it must be caught at. */
  const planted: Readonly<Record<string, { readonly tree: Tree; readonly edge: string }>> = {
    'audit-and-schedule-share-nothing': {
      tree: {
        'src/audit/weekly-rise.ts': "import type { One } from '../schedule/contacts.ts';\nexport type Two = One;\n",
        'src/schedule/contacts.ts': 'export type One = 1;\n',
      },
      edge: 'src/audit/weekly-rise.ts → src/schedule/contacts.ts',
    },
    'renderers-share-nothing': {
      tree: { 'src/render/csv/table.ts': "export { one } from '../html/page.ts';\n", 'src/render/html/page.ts': one },
      edge: 'src/render/csv/table.ts → src/render/html/page.ts',
    },
    'pipeline-knows-stages-only': {
      tree: { 'src/compile.ts': "import './host/files.ts';\n", 'src/host/files.ts': one },
      edge: 'src/compile.ts → src/host/files.ts',
    },
    'commands-are-not-imported': {
      tree: { 'src/compile.ts': "export const late = () => import('./cli/main.ts');\n", 'src/cli/main.ts': one },
      edge: 'src/compile.ts → src/cli/main.ts',
    },
    'host-alone-touches-the-machine': {
      tree: { 'src/cli/main.ts': "import { readFileSync } from 'node:fs';\nreadFileSync('x');\n" },
      edge: 'src/cli/main.ts → fs',
    },
    'packages-are-known': {
      tree: { 'src/plan/dates.ts': "import * as dates from 'some-dates';\nexport const x = dates;\n" },
      edge: 'src/plan/dates.ts → some-dates',
    },
    'source-knows-no-tests': {
      tree: { 'src/plan/dates.ts': "import '../../tests/unit/plan/dates.ts';\n", 'tests/unit/plan/dates.ts': one },
      edge: 'src/plan/dates.ts → tests/unit/plan/dates.ts',
    },
    'no-cycles': {
      tree: {
        'src/plan/a.ts': "import type { B } from './b.ts';\nexport type A = B;\n",
        'src/plan/b.ts': "import type { A } from './a.ts';\nexport type B = A;\n",
      },
      edge: 'src/plan/a.ts → src/plan/b.ts',
    },
    ...Object.fromEntries(
      ROOMS.filter(({ room }) => room !== 'cli').map(({ room }) => [
        `${room}-imports-only-what-comes-before`,
        {
          tree: {
            [`src/${room}/file.ts`]: "import * as cli from '../cli/main.ts';\nexport const x = cli;\n",
            'src/cli/main.ts': one,
          },
          edge: `src/${room}/file.ts → src/cli/main.ts`,
        },
      ]),
    ),
    ...Object.fromEntries(
      OWNED_PACKAGES.map(({ name }) => [
        `${name}-has-one-owner`,
        {
          tree: { 'src/plan/file.ts': `import * as it from '${name}';\nexport const x = it;\n` },
          edge: `src/plan/file.ts → ${name}`,
        },
      ]),
    ),
  };

  test.each(forbidden.map((rule) => ({ name: rule.name ?? '' })))('$name', async ({ name }) => {
    const example = planted[name];
    if (example === undefined) throw new Error(`no violation is planted for ${name}`);
    expect(await violationsIn(example.tree)).toContain(`${name}: ${example.edge}`);
  });

  test.each([
    ['schedule', 'report'],
    ['schedule', 'audit'],
    ['audit', 'report'],
    ['plan', 'schedule'],
    ['read', 'plan'],
    ['render/csv', 'build'],
    ['report', 'schedule'],
    ['host', 'render'],
  ])('src/%s imports src/%s', async (from, to) => {
    const up = '../'.repeat(from.split('/').length);
    const tree = { [`src/${from}/a.ts`]: `import '${up}${to}/b.ts';\n`, [`src/${to}/b.ts`]: one };
    expect(await violationsIn(tree)).not.toEqual([]);
  });

  test('and a tree that keeps the rules has none', async () => {
    const tree = {
      'src/read/yaml.ts': "import { parseDocument } from 'yaml';\nexport const parse = parseDocument;\n",
      'src/host/files.ts': "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;\n",
      'src/schedule/contacts.ts': "import { one } from '../library/rules.ts';\nexport const two = one + one;\n",
      'src/library/rules.ts': one,
      'src/render/palette.ts': "import chalk from 'chalk';\nexport const strong = chalk.bold;\n",
      'src/render/terminal/table.ts': "import { strong } from '../palette.ts';\nexport const x = strong('x');\n",
      'src/report/mark.ts': "import { createHash } from 'node:crypto';\nexport const mark = createHash('sha256');\n",
    };
    expect(await violationsIn(tree)).toEqual([]);
  });
});

test('every rule says what to do instead', () => {
  for (const rule of forbidden) expect(rule.comment?.length ?? 0, rule.name).toBeGreaterThan(20);
});
