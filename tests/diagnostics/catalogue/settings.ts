// What each example of the catalogue needs around it that it doesn't show, by code.

import type { Setting } from './example-plan.ts';
import { planSettings } from './plan-settings.ts';
import { readingSettings } from './reading-settings.ts';
import { ruleSettings } from './rule-settings.ts';
import { seasonSettings } from './season-settings.ts';

export const settings: Readonly<Record<string, Setting>> = {
  ...readingSettings,
  ...planSettings,
  ...seasonSettings,
  ...ruleSettings,
};
