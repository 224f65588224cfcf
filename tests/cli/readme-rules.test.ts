// The rule table of the README is the library's. FOOTFALL_UPDATE=1 writes it anew.

import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { RULES } from '../../src/library/rules.ts';
import type { RuleRow } from '../../src/library/rules.ts';

const README = 'README.md';
const TABLE = /(?<=^\| rule \| finding \| mark \| holds \|\n\|---\|---\|---\|---\|\n)(?:\|.*\|\n)+/mu;

const row = ({ id, severity, waivable, mark, holds }: RuleRow): string =>
  `| \`${id}\` | ${severity}${waivable ? '' : ', never waived'} | ${mark ?? ''} | ${holds} |\n`;

const table = RULES.map(row).join('');

if (process.env['FOOTFALL_UPDATE'] === '1') {
  writeFileSync(
    README,
    readFileSync(README, 'utf8').replace(TABLE, () => table),
  );
}

test('the README lists every rule as the library has it', () => {
  expect(TABLE.exec(readFileSync(README, 'utf8'))?.[0]).toBe(table);
});
