// What can be wrong with YAML as such, whatever it says. Reported while a file is parsed; every complaint of the parser
// comes out under one of these codes and in our words.

import type { Entries } from '../entry.ts';
import { yamlLimits } from './yaml/limits.ts';
import { yamlSlips } from './yaml/slips.ts';

export const yamlEntries = {
  ...yamlSlips,
  ...yamlLimits,
} as const satisfies Entries;
