// Sport profiles: the directions a sport jumps in, and what one practice of it usually holds. A plan names one; the
// general profile leaves the phase's own directions. Every share is common practice (C): no direction has been shown to
// beat another for jump height (D8), so a profile is for breadth and for likeness to the sport.

import type { SportProfile } from './types.ts';

export const SPORTS: readonly SportProfile[] = [
  { id: 'general', name: 'General', mark: 'C', basis: ['D8'] },
  {
    id: 'volleyball',
    name: 'Volleyball',
    contest: 'match',
    directions: { vertical: 65, horizontal: 15, lateral: 20 },
    practiceJumps: 80,
    mark: 'C',
    basis: ['V11', 'V13'],
  },
  {
    id: 'beach-volleyball',
    name: 'Beach volleyball',
    contest: 'match',
    directions: { vertical: 70, horizontal: 15, lateral: 15 },
    practiceJumps: 80,
    mark: 'C',
    basis: [],
  },
  {
    id: 'basketball',
    name: 'Basketball',
    contest: 'match',
    directions: { vertical: 50, horizontal: 25, lateral: 25 },
    practiceJumps: 60,
    mark: 'C',
    basis: [],
  },
  {
    id: 'handball',
    name: 'Handball',
    contest: 'match',
    directions: { vertical: 45, horizontal: 30, lateral: 25 },
    practiceJumps: 50,
    mark: 'C',
    basis: [],
  },
  {
    id: 'netball',
    name: 'Netball',
    contest: 'match',
    directions: { vertical: 50, horizontal: 25, lateral: 25 },
    practiceJumps: 50,
    mark: 'C',
    basis: [],
  },
  {
    id: 'badminton',
    name: 'Badminton',
    contest: 'match',
    directions: { vertical: 40, horizontal: 30, lateral: 30 },
    practiceJumps: 50,
    mark: 'C',
    basis: [],
  },
  {
    id: 'football',
    name: 'Football',
    contest: 'match',
    directions: { vertical: 35, horizontal: 35, lateral: 30 },
    practiceJumps: 20,
    mark: 'C',
    basis: [],
  },
  {
    id: 'gymnastics',
    name: 'Gymnastics',
    directions: { vertical: 65, horizontal: 25, lateral: 10 },
    practiceJumps: 100,
    mark: 'C',
    basis: [],
  },
  {
    id: 'dance',
    name: 'Dance',
    directions: { vertical: 60, horizontal: 20, lateral: 20 },
    practiceJumps: 80,
    mark: 'C',
    basis: [],
  },
  {
    id: 'athletics',
    name: 'Athletics, general',
    directions: { vertical: 45, horizontal: 50, lateral: 5 },
    practiceJumps: 20,
    mark: 'C',
    basis: [],
  },
  {
    id: 'long-jump',
    name: 'Long jump',
    directions: { vertical: 30, horizontal: 70, lateral: 0 },
    practiceJumps: 20,
    mark: 'C',
    basis: [],
  },
  {
    id: 'triple-jump',
    name: 'Triple jump',
    directions: { vertical: 25, horizontal: 75, lateral: 0 },
    practiceJumps: 30,
    mark: 'C',
    basis: [],
  },
  {
    id: 'high-jump',
    name: 'High jump',
    directions: { vertical: 65, horizontal: 35, lateral: 0 },
    practiceJumps: 20,
    mark: 'C',
    basis: [],
  },
  {
    id: 'pole-vault',
    name: 'Pole vault',
    directions: { vertical: 45, horizontal: 55, lateral: 0 },
    practiceJumps: 20,
    mark: 'C',
    basis: [],
  },
];

const BY_ID: ReadonlyMap<string, SportProfile> = new Map(SPORTS.map((sport) => [sport.id, sport]));

/** What people compete in is called, one and several; what isn't played in matches has competitions. */
export function contestWords(sport: string): readonly [one: string, many: string] {
  return findSport(sport)?.contest === 'match' ? ['match', 'matches'] : ['competition', 'competitions'];
}

/** The profile of an id a person wrote, if there is one. */
export function findSport(id: string): SportProfile | undefined {
  return BY_ID.get(id);
}
