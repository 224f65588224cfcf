// One athlete's weeks with the reason for every number, and the list of sessions, on a terminal. On a narrow window the
// reason goes below its week and the lesser columns go.

import { dateWords, dayWords, timeWords } from '../../report/calendar-words.ts';
import type { AthletePage, SessionEntry, WeekEntry } from '../../report/athlete-page.ts';
import { LEFT_OUT } from '../../report/week-words.ts';
import type { Canvas } from './canvas.ts';
import { hanging, layOut } from './layout.ts';
import type { LayoutColumn } from './layout.ts';
import { counted } from '../../util/counted.ts';

/** Below this width the reason has no room beside the numbers. */
const ROOM_FOR_REASONS = 84;
const INSET = '      ';

/** The lines of the page, no wider than the canvas unless a word is. */
export function renderAthlete(page: AthletePage, canvas: Canvas): readonly string[] {
  return [...renderWeeks(page, canvas), ...(page.sessions.length === 0 ? [] : ['', ...renderSessions(page, canvas)])];
}

/** Who it is, and the weeks. */
export function renderWeeks(page: AthletePage, { palette, width }: Canvas): readonly string[] {
  const beside = width >= ROOM_FOR_REASONS;
  const lines = layOut(page.weeks, weekColumns(beside, palette.quiet), width, palette.quiet);
  const [header = '', ...rows] = lines;
  const weeks = beside ? rows : rows.flatMap((row, index) => [row, ...reasonBelow(page.weeks[index], width)]);
  return [palette.strong(page.name), ...aboutLines(page, width), header, ...weeks, ...blockedLines(page, width)];
}

function reasonBelow(week: WeekEntry | undefined, width: number): readonly string[] {
  return week === undefined ? [] : hanging(INSET, week.why, width);
}

function aboutLines({ squad, sport, level, usedTo, goal }: AthletePage, width: number): readonly string[] {
  const facts = [
    ...(squad === undefined ? [] : [squad]),
    ...(sport === undefined ? [] : [sport]),
    level,
    `used to ${usedTo.contactsASession} contacts a session, ${counted(usedTo.sessionsAWeek, 'session')} a week`,
    ...(goal === undefined ? [] : [`goal ${goal} a session`]),
  ];
  return hanging('', facts.join(' · '), width);
}

function blockedLines({ blocked }: AthletePage, width: number): readonly string[] {
  if (blocked.length === 0) return [];
  const weeks = blocked.length === 1 ? `Week ${blocked[0]} is` : `Weeks ${blocked.join(', ')} are`;
  return hanging('', `${weeks} ${LEFT_OUT} (footfall check).`, width);
}

type Paint = (text: string) => string;

function number(title: string, of: (week: WeekEntry) => number, spare?: number): LayoutColumn<WeekEntry> {
  return { title, align: 'right', text: (week) => String(of(week)), ...(spare !== undefined && { spare }) };
}

function word(title: string, text: (week: WeekEntry) => string, spare?: number): LayoutColumn<WeekEntry> {
  return { title, align: 'left', text, ...(spare !== undefined && { spare }) };
}

function weekColumns(beside: boolean, quiet: Paint): readonly LayoutColumn<WeekEntry>[] {
  return [
    number('week', ({ week }) => week),
    word('from', ({ starts }) => dateWords(starts)),
    word('phase', ({ phase }) => phase),
    word('kind', ({ kindWords }) => kindWords, 1),
    word('jump+lift', ({ sessions, liftSessions }) => `${sessions} + ${liftSessions}`, 2),
    number('contacts', ({ contacts }) => contacts),
    { ...number('most', ({ mostContacts }) => mostContacts, 3), paint: quiet },
    { ...number('other', ({ otherJumps }) => otherJumps, 4), paint: quiet },
    ...(beside ? [{ ...word('why', ({ why }) => why), wrapAt: 20 }] : []),
  ];
}

/** The sessions, one a line. */
export function renderSessions({ sessions }: AthletePage, { palette, width }: Canvas): readonly string[] {
  const columns: readonly LayoutColumn<SessionEntry>[] = [
    { title: 'session', align: 'left', text: ({ day }) => dayWords(day) },
    { title: 'at', align: 'left', text: ({ at }) => (at === undefined ? '' : timeWords(at)), spare: 2 },
    { title: 'place', align: 'left', text: ({ place }) => place, spare: 3 },
    { title: 'min', align: 'right', text: ({ minutes }) => String(minutes), spare: 4 },
    { title: 'contacts', align: 'right', text: ({ contacts }) => (contacts === 0 ? '' : String(contacts)) },
    { title: 'what', align: 'left', text: whatWords, wrapAt: 24 },
  ];
  return layOut(sessions, columns, width, palette.quiet);
}

function whatWords({ jumps, lifts, kind }: SessionEntry): string {
  const parts = [...(jumps.length === 0 ? [] : [jumps.join(', ')]), ...(lifts.length === 0 ? [] : [lifts.join(', ')])];
  return `${kind === 'primer' ? 'primer: ' : ''}${parts.join(' / ')}`;
}
