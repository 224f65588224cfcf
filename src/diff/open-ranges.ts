// Items of a plan that reach to an end of its season, written so or for want of a word. In a season with other ends they
// reach to those, and say the same.

import type { DayRange, Season } from '../plan/types.ts';
import { plainOf } from './plain.ts';

type Ends = Pick<Season, 'starts' | 'ends'>;

/** What a value means, with the ends of the season in the place of their days. */
export function openText(value: unknown, season: Ends): string {
  return JSON.stringify(plainOf(value), (key: string, member: unknown) => {
    if (key !== 'range' || !isRange(member)) return member;
    return { from: member.from === season.starts ? 'start' : member.from, until: endText(member, season) };
  });
}

const endText = ({ until }: DayRange, { ends }: Ends): number | string => (until === ends ? 'end' : until);

const isRange = (value: unknown): value is DayRange =>
  typeof value === 'object' && value !== null && 'from' in value && 'until' in value;

/** The item of one season in another: where it reached to an end of the one it reaches to that of the other. */
export function inSeason<T extends { readonly range: DayRange }>(item: T, was: Ends, is: Ends): T {
  const { from, until } = item.range;
  const range = {
    from: from === was.starts ? is.starts : from,
    until: until === was.ends ? is.ends : until,
  };
  return range.from === from && range.until === until ? item : { ...item, range };
}
