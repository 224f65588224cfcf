// A short mark of what a plan means, printed on every sheet so that an old one is recognised. Places and comments don't
// count: two plans that say the same have the same mark. That `now` is a default counts, as the season hangs on it.

import { createHash } from 'node:crypto';
import type { Plan } from '../plan/types.ts';
import type { Day } from '../util/days.ts';

const LENGTH = 7;
/** Says where something is written, not what it says; or follows from what is said elsewhere, as the kinds of a lift. */
const SAYS_NOTHING: ReadonlySet<string> = new Set([
  'files',
  'span',
  'keySpan',
  'endsOrigin',
  'levelOrigin',
  'sportOrigin',
  'kinds',
]);
/** Says that besides: whoever wrote no last weeks counts as somebody new to jumping. */
const ORIGIN = 'origin';

/**
 * Seven hexadecimal characters. `asOf` is the day the season was planned on, where it was said; `near` what else may have
 * moved its sessions: the days of the sheets that are out.
 */
export function buildMark(plan: Plan, asOf?: Day, near?: object): string {
  const meaning = JSON.stringify(near === undefined ? plan : [plan, near], (key: string, value: unknown) => {
    if (SAYS_NOTHING.has(key)) return undefined;
    if (key === ORIGIN) return kindUnlessWritten(value);
    if (value instanceof Map) return [...value];
    return value instanceof Set ? [...value] : value;
  });
  return createHash('sha256')
    .update(asOf === undefined ? meaning : `${asOf} ${meaning}`)
    .digest('hex')
    .slice(0, LENGTH);
}

function kindUnlessWritten(origin: unknown): unknown {
  if (typeof origin !== 'object' || origin === null || !('kind' in origin)) return undefined;
  return origin.kind === 'written' ? undefined : origin.kind;
}
