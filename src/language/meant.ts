// Which key was meant by one that a group doesn't have: one spelt nearly so, or what coaches also call it. Called where
// unknown keys are told; what stands under such a key is read as if it were the one meant.

import { nearest } from '../util/did-you-mean.ts';

/** Other words for keys; of several keys the first that the group has. */
const ALSO_CALLED: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    from: ['since', 'starts', 'date'],
    to: ['until'],
    till: ['until'],
    end: ['ends', 'until'],
    start: ['starts', 'from'],
    begins: ['starts', 'from'],
    weight: ['mass'],
    'body-weight': ['mass'],
    bodyweight: ['mass'],
    birthday: ['born'],
    birthdate: ['born'],
    'date-of-birth': ['born'],
    dob: ['born'],
    gender: ['sex'],
    mins: ['minutes'],
    min: ['minutes'],
    duration: ['minutes'],
    time: ['at'],
    location: ['place'],
    venue: ['place'],
    weekday: ['day'],
    reason: ['because'],
    why: ['because'],
    team: ['squad', 'squads'],
    player: ['athletes'],
    '1rm': ['max'],
    by: ['signed', 'decided'],
    'signed-by': ['signed'],
    'decided-by': ['decided'],
    comment: ['note'],
    importance: ['prepare'],
    priority: ['prepare'],
    name: ['title'],
    title: ['name'],
    sessions: ['slots'],
    training: ['slots'],
    trainings: ['slots'],
    times: ['slots'],
    matches: ['competitions'],
    games: ['competitions'],
    events: ['competitions'],
    holidays: ['closures'],
    breaks: ['closures'],
    closings: ['closures'],
    closed: ['closures'],
    vacations: ['closures'],
    players: ['athletes'],
    people: ['athletes'],
    members: ['athletes'],
    fixtures: ['competitions'],
    tournaments: ['competitions'],
    races: ['competitions'],
    halls: ['places'],
    gyms: ['places'],
    facilities: ['places'],
    exceptions: ['waivers'],
    roster: ['athletes'],
    teams: ['squads'],
    venues: ['places'],
    locations: ['places'],
    programs: ['programmes'],
  }),
);

/** The key meant, if one of those that are known comes near. */
export function meantKey(key: string, known: readonly string[]): string | undefined {
  return nearest(key, known) ?? alsoCalled(key, known) ?? begunBy(key, known);
}

function alsoCalled(key: string, known: readonly string[]): string | undefined {
  return ALSO_CALLED.get(key.toLowerCase().replaceAll(/[_\s]/gu, '-'))?.find((one) => known.includes(one));
}

/** The one key that begins with the word, as `sessions-a-week` for `sessions`. */
function begunBy(key: string, known: readonly string[]): string | undefined {
  const begun = known.filter((one) => one.startsWith(`${key}-`));
  return begun.length === 1 ? begun[0] : undefined;
}

const DAYS_AWAY = 'write it below the athlete, as in `away: { from: 2027-02-15, until: 2027-02-21, because: exams }`';

/** What to write instead of a key that has no place in a plan. */
export const INSTEAD: ReadonlyMap<string, string> = new Map([
  ['age', 'write the year, the month or the day of birth instead, as in `born: 2003-06`'],
  ['height', 'no rule needs the height: delete the line'],
  ['absences', DAYS_AWAY],
  ['absent', DAYS_AWAY],
  ['injuries', DAYS_AWAY],
  ['injured', DAYS_AWAY],
  ['budget', 'it is a rule: write `rules: { budget: [{ jumps-a-week: 250, because: knees }] }`'],
]);

/** What to do about a key that has its place in a plan, and another one here. */
export const ELSEWHERE: ReadonlyMap<string, string> = new Map([
  ['sport', 'the sport stands below `season`, another one of a squad or an athlete below `squads` or `athletes`'],
]);
