// An example of the catalogue as a whole plan, in memory: the example in its place, the rest of what is needed around it.

import type { Code } from '../../../src/diagnostics/catalogue.ts';
import type { Day } from '../../../src/util/days.ts';
import type { Files } from '../../unit/read/memory-files.ts';
import { baseFiles, baseSections, planText } from './base-plan.ts';
import type { Sections } from './base-plan.ts';
import { homeOf, placed } from './homes.ts';
import type { HomeName } from './homes.ts';

/** What an example needs around it that it doesn't show. */
export interface Setting {
  /** Where the example stands, if its first key doesn't tell. */
  readonly home?: HomeName;
  /** Sections that the plan around it has, or, where empty, doesn't have. */
  readonly plan?: Sections;
  /** Further files. */
  readonly files?: Files;
  /** Further files of the wrong example only. */
  readonly wrongFiles?: Files;
  /** The day it is. */
  readonly today?: Day;
  /** What `…` in the example stands for. */
  readonly dots?: string;
  /** The bytes of the wrong example's entry file, where they are what it is about. */
  readonly bytes?: (text: string) => Uint8Array | string;
  /** The wrong example's entry file, where it is told in words or is all that the file holds. */
  readonly entry?: (example: string) => string;
  /** Codes that truly belong to the wrong example beside its own. */
  readonly also?: readonly Code[];
}

const ENTRY = '/plan/season.yaml';

/** The files of a plan with an example in it. */
export function examplePlan(example: string, setting: Setting): Files {
  const { text, files } = around(example, setting);
  return { ...files, [ENTRY]: text };
}

/** The same for a wrong example. */
export function wrongPlan(example: string, setting: Setting): Files {
  const { text, files } = around(example, setting);
  const entry = setting.entry?.(example) ?? text;
  return { ...files, ...setting.wrongFiles, [ENTRY]: setting.bytes?.(entry) ?? entry };
}

/** The text of the entry file, and the other files. */
function around(example: string, setting: Setting): { readonly text: string; readonly files: Files } {
  const whole = setting.dots === undefined ? example : example.replace('…', setting.dots);
  const { sections, needs, files } = placed(setting.home ?? homeOf(whole), whole);
  const text = planText({ ...baseSections, ...needs, ...setting.plan }, sections);
  return { text, files: { ...baseFiles, ...setting.files, ...files } };
}
