// The table of keys in the README is the schema's, which an editor offers. FOOTFALL_UPDATE=1 writes it anew.

import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const README = 'README.md';
const TABLE = /(?<=^\| key \| says \|\n\|---\|---\|\n)(?:\|.*\|\n)+/mu;

interface Schema {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
  readonly anyOf?: readonly Schema[];
  readonly items?: Schema;
  readonly enum?: readonly unknown[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: Schema | boolean;
  readonly required?: readonly string[];
  readonly description?: string;
}

const schema: Schema = JSON.parse(readFileSync('schemas/plan.schema.json', 'utf8'));

/** Rules have a command that lists them. */
const LISTED_ELSEWHERE: ReadonlySet<string> = new Set(['rules']);

/** A schema and what it may be instead. */
function forms(one: Schema): readonly Schema[] {
  const named = one.$ref === undefined ? undefined : schema.$defs?.[one.$ref.replace('#/$defs/', '')];
  return [one, ...(named === undefined ? [] : forms(named)), ...(one.anyOf ?? []).flatMap(forms)];
}

/** The keys below a key: its own, those of each item of a list, or those of each thing that is named. */
function keysBelow(one: Schema): Schema | undefined {
  for (const form of forms(one)) {
    if (form.properties !== undefined) return form;
    const inner = form.items ?? form.additionalProperties;
    const below = typeof inner === 'object' ? keysBelow(inner) : undefined;
    if (below !== undefined) return below;
  }
  return undefined;
}

/** The words that a value is one of, where it is one of words. */
function wordsOf(one: Schema): readonly string[] {
  const enums = forms(one).flatMap((form) => [
    ...(form.enum ?? []),
    ...(form.items === undefined ? [] : wordsOf(form.items)),
  ]);
  return [
    ...new Set(enums.filter((word): word is string => typeof word === 'string' && word !== 'yes' && word !== 'no')),
  ];
}

const MOST_WORDS = 20;

function says(one: Schema, isNeeded: boolean): string {
  const described = forms(one).find(({ description }) => description !== undefined)?.description ?? '';
  const words = wordsOf(one);
  const told = words.filter((word) => !described.includes(word));
  const list = told.length === 0 || words.length > MOST_WORDS ? '' : ` One of: ${words.join(', ')}.`;
  return `${described}${list}${isNeeded ? ' Needed.' : ''}`.replaceAll('|', '\\|');
}

/** A group whose keys were listed. */
interface Told {
  readonly path: string;
  readonly keys: readonly string[];
}

/** Groups of fewer keys are listed again where they come again. */
const FEWEST_KEPT = 4;

function rows(path: string, group: Schema, told: Told[], skipped: readonly string[] = []): readonly string[] {
  const keys = Object.keys(group.properties ?? {});
  if (path !== '') told.push({ path, keys });
  return Object.entries(group.properties ?? {}).flatMap(([key, one]) => {
    if (skipped.includes(key)) return [];
    const at = path === '' ? key : `${path}: ${key}`;
    const below = LISTED_ELSEWHERE.has(at) ? undefined : keysBelow(one);
    const names = Object.keys(below?.properties ?? {});
    const like = told.find(
      (other) => other.keys.length >= FEWEST_KEPT && other.keys.every((each) => names.includes(each)),
    );
    const row = `| \`${at}\` | ${says(one, group.required?.includes(key) === true)}${like === undefined ? '' : ` Keys as of \`${like.path}\`.`} |\n`;
    return below === undefined ? [row] : [row, ...rows(at, below, told, like?.keys)];
  });
}

const table = rows('', schema, []).join('');

if (process.env['FOOTFALL_UPDATE'] === '1') {
  writeFileSync(
    README,
    readFileSync(README, 'utf8').replace(TABLE, () => table),
  );
}

test('the README lists every key as the schema has it', () => {
  expect(TABLE.exec(readFileSync(README, 'utf8'))?.[0]).toBe(table);
});
