// The season: its days, its weeks, its sport. Resolved first, as every other item is held against its days. Called by
// resolve.ts. Without `ends` it ends with the week of the last competition, which is why competitions are looked at here.

import { at, entriesOf } from '../language/authored.ts';
import type { Authored, Item } from '../language/authored.ts';
import type { GroupFields } from '../language/sections.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { problem } from '../diagnostics/problem.ts';
import { findSport } from '../library/sports.ts';
import type { SportProfile } from '../library/types.ts';
import { DAYS_A_WEEK, isoDate, startOfWeek } from '../util/days.ts';
import type { Day, Weekday } from '../util/days.ts';
import { resolveSport } from './resolve-sport.ts';
import { reportEndBeforeStart } from './ranges.ts';
import type { DayRange, Origin, Season } from './types.ts';
import type { Units } from '../util/quantities.ts';

/** Longer seasons are two plans. */
const MOST_WEEKS = 104;
const MONDAY: Weekday = 0;

type SeasonItem = Item<GroupFields<'season'>>;
type Report = (diagnostic: Diagnostic) => void;

/** What the rest of a plan is held against: as much of it as could be read. */
export interface SeasonFrame {
  readonly season?: Season;
  /** First to last day. */
  readonly range?: DayRange;
  readonly weekStarts: Weekday;
  readonly units: Units;
}

/**
 * The season, or of one with mistakes as much as other items are held against: days where they are sound, Monday where
 * nothing else is known.
 */
export function resolveSeason(authored: Authored, report: Report): SeasonFrame {
  const item = authored.season;
  if (item === undefined) {
    if (!authored.misshapen.has('season')) report(problem('plan/no-season', { span: authored.start }));
    return { weekStarts: MONDAY, units: 'metric' };
  }
  const sport = seasonSport(item, report);
  const inSeason = inSeasonOf(item, report);
  const timeZone = timeZoneOf(item, report);
  const weekStarts = item.value['week-starts'] ?? MONDAY;
  const end = endOf(authored, item, weekStarts, report);
  const units = item.value.units ?? 'metric';
  const frame = { weekStarts, units };
  if (item.value.starts === undefined || end === undefined) return frame;
  const range = { from: item.value.starts, until: end.day };
  if (!isReasonable(item, range, weekStarts, report)) return frame;
  if (item.kind === 'broken') return { ...frame, range };
  const season: Season = {
    title: item.value.title,
    sport: sport.id,
    sportOrigin: sportOriginOf(item),
    starts: range.from,
    ends: range.until,
    endsOrigin: end.origin,
    weekStarts,
    units,
    ...(timeZone !== undefined && { timeZone }),
    inSeason,
    ...(sport.directions !== undefined && { directions: sport.directions }),
    span: item.span,
  };
  return { ...frame, range, season };
}

function getGeneral(): SportProfile {
  const general = findSport('general');
  if (general === undefined) throw new Error('the library has no general profile');
  return general;
}

function seasonSport(item: SeasonItem, report: Report): SportProfile {
  const name = item.value.sport;
  const sport = name === undefined ? undefined : resolveSport(report, name, at(item, 'sport'));
  return sport ?? getGeneral();
}

const sportOriginOf = (item: SeasonItem): Origin =>
  item.value.sport === undefined
    ? { kind: 'default', basis: 'no sport is written' }
    : { kind: 'written', span: at(item, 'sport').span };

const TIME_ZONE = /^(?:UTC|[A-Z][A-Za-z_]+(?:\/[A-Z][A-Za-z0-9_+-]+){1,2})$/;

function timeZoneOf(item: SeasonItem, report: Report): string | undefined {
  const name = item.value['time-zone'];
  if (name === undefined || TIME_ZONE.test(name)) return name;
  report(problem('plan/time-zone', { ...at(item, 'time-zone'), params: { found: name } }));
  return undefined;
}

interface End {
  readonly day: Day;
  readonly origin: Origin;
}

function endOf(authored: Authored, item: SeasonItem, weekStarts: Weekday, report: Report): End | undefined {
  const { starts, ends } = item.value;
  // An end that couldn't be read has been told.
  if (starts === undefined || (ends === undefined && entriesOf(item).some(({ key }) => key === 'ends')))
    return undefined;
  if (ends !== undefined) {
    if (ends >= starts) return { day: ends, origin: { kind: 'written', span: at(item, 'ends').span } };
    reportEndBeforeStart({ report }, item, { start: 'starts', end: 'ends' }, { from: starts, until: ends });
    return undefined;
  }
  const last = authored.competitions.reduce<Day | undefined>((latest, { value }) => {
    const day = value.until ?? value.date;
    return day !== undefined && (latest === undefined || day > latest) ? day : latest;
  }, undefined);
  if (last === undefined || last < starts) {
    if (last !== undefined || authored.competitions.length === 0)
      report(problem('plan/no-end', { span: item.span, path: item.path }));
    return undefined;
  }
  const day = startOfWeek(last, weekStarts) + DAYS_A_WEEK - 1;
  return { day, origin: { kind: 'default', basis: 'the week of the last competition' } };
}

function isReasonable(item: SeasonItem, { from, until }: DayRange, weekStarts: Weekday, report: Report): boolean {
  const weeks = (startOfWeek(until, weekStarts) - startOfWeek(from, weekStarts)) / DAYS_A_WEEK + 1;
  if (weeks <= MOST_WEEKS) return true;
  const key = item.value.ends === undefined ? 'starts' : 'ends';
  const params = { weeks, most: MOST_WEEKS, starts: isoDate(from), ends: isoDate(until) };
  report(problem('plan/season-too-long', { ...at(item, key), params }));
  return false;
}

function inSeasonOf(item: SeasonItem, report: Report): Season['inSeason'] {
  const written = (item.value['in-season'] ?? []).map((range, index) => ({
    ...range,
    span: at(item, 'in-season', index).span,
    index,
  }));
  const ordered = written.filter((range) => {
    if (range.from <= range.until) return true;
    const params = { start: 'from', from: isoDate(range.from), end: 'until', until: isoDate(range.until) };
    report(problem('plan/end-before-start', { ...at(item, 'in-season', range.index, 'until'), params }));
    return false;
  });
  ordered.sort((a, b) => a.from - b.from || a.until - b.until);
  for (const [index, range] of ordered.entries()) {
    const before = ordered[index - 1];
    if (before === undefined || before.until < range.from) continue;
    const related = [{ span: before.span, message: 'this one runs into it' }];
    report(problem('plan/in-season-overlap', { ...at(item, 'in-season', range.index), related }));
  }
  return ordered.map(({ from, until, span }) => ({ from, until, span }));
}
