// What a reading holds, for tests: its value, or the diagnostic it is refused with.

import type { Reading } from '../../../src/language/reading.ts';

const nowhere = { span: { file: 'season.yaml', start: 0, end: 0 }, path: '' };

export function valueOf<T>(reading: Reading<T>): T {
  if ('value' in reading) return reading.value;
  throw new Error(`refused: ${reading.refused(nowhere).message}`);
}

export function codeOf(reading: Reading<unknown>): string {
  return 'value' in reading ? 'no problem' : reading.refused(nowhere).code;
}

export function messageOf(reading: Reading<unknown>, part: 'message' | 'help' = 'message'): string {
  return 'value' in reading ? 'no problem' : (reading.refused(nowhere)[part] ?? 'nothing');
}
