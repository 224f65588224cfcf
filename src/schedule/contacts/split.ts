// A week's contacts shared among its sessions, in steps of 5, larger first. Called by ../contacts.ts; the sizes add up
// to the week exactly.

import { VOLUME } from '../../library/volume.ts';

/**
 * Sizes of the sessions, larger first, in steps. The fewest sessions that keep each at or under `mostASession`, then
 * more, up to `possible`, while each keeps the least that is worth a session: half the ceiling where that is less, but
 * nothing smaller than the smallest session.
 */
export function splitWeek(
  contacts: number,
  mostASession: number,
  ceiling: number,
  possible: number,
): readonly number[] {
  if (contacts === 0 || possible === 0) return [];
  const half = Math.max(Math.floor(ceiling / 2), VOLUME.smallestSession);
  const worthwhile = Math.min(VOLUME.leastSession, half);
  let count = Math.min(possible, Math.max(1, Math.ceil(contacts / mostASession)));
  while (count < possible && smallest(contacts, count + 1) >= worthwhile) count += 1;
  return shares(contacts, count);
}

function smallest(contacts: number, count: number): number {
  return Math.floor(contacts / VOLUME.step / count) * VOLUME.step;
}

function shares(contacts: number, count: number): readonly number[] {
  const steps = contacts / VOLUME.step;
  const least = Math.floor(steps / count);
  const larger = steps % count;
  return Array.from({ length: count }, (_, index) => (least + (index < larger ? 1 : 0)) * VOLUME.step);
}
