// The list of diagnostics as a list: every entry whole, every code well formed and given by some stage.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalogue, codes, findEntry } from '../../../src/diagnostics/catalogue.ts';
import type { Entry } from '../../../src/diagnostics/entry.ts';

const entries: readonly (readonly [string, Entry])[] = codes.map((code) => [code, catalogue[code]]);

const sourceFiles = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? sourceFiles(path) : [path];
  });

describe('the catalogue', () => {
  it.each(entries)('%s is whole', (code, entry) => {
    expect(code).toMatch(/^[a-z0-9]+\/[a-z0-9]+(?:-[a-z0-9]+)*$/u);
    expect(['error', 'warning', 'notice']).toContain(entry.severity);
    expect(entry.summary.length).toBeGreaterThan(4);
    expect(entry.summary).not.toMatch(/[.!]$/u);
    expect(entry.explanation.length).toBeGreaterThan(25);
    expect(entry.explanation).toMatch(/[.!?)]$/u);
    expect(entry.bad).not.toBe('');
    expect(entry.good).not.toBe('');
    // What can only be a fault of footfall itself has a remark for an example.
    expect(entry.bad !== entry.good || entry.bad.startsWith('# ')).toBe(true);
  });

  it('has each code in one file only', () => {
    const keys = sourceFiles('src/diagnostics/catalogue').flatMap((path) =>
      Array.from(readFileSync(path, 'utf8').matchAll(/^ {2}'([a-z0-9]+\/[a-z0-9-]+)': \{/gmu), ([, key]) => key),
    );
    expect(keys).toHaveLength(new Set(keys).size);
    expect(keys.length).toBeGreaterThan(60);
  });

  it('has no code of files, sources, YAML or CSV that nobody reports', () => {
    const reporting = sourceFiles('src')
      .filter((path) => !path.includes('catalogue'))
      .map((path) => readFileSync(path, 'utf8'))
      .join('\n');
    const silent = codes.filter(
      (code) => /^(?:source|files|yaml|csv)\//u.test(code) && !reporting.includes(`'${code}'`),
    );
    expect(silent).toEqual([]);
  });

  it('finds entries, and only those', () => {
    expect(findEntry('yaml/tab-indent')).toBe(catalogue['yaml/tab-indent']);
    expect(findEntry('yaml/none')).toBeUndefined();
    expect(findEntry('constructor')).toBeUndefined();
  });
});
