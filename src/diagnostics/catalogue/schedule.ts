// What cannot be scheduled as written: pins nobody can meet, slots that don't hold, peaks that clash.
// Reported by the scheduler; each says what was wanted, what was found and which lines made it so.

import type { Entries } from '../entry.ts';
import { counted } from '../../util/counted.ts';

export const scheduleEntries = {
  'schedule/pin-too-high': {
    severity: 'error',
    summary: 'a pin of more contacts than is safe by then',
    explanation:
      'A pin fixes a number and the rest is planned round it, but it lifts no rule. By the week of this pin the athlete cannot be used to that much, or the days, the slots or a limit do not hold it. Pin less, pin a later week, or waive the rule with a reason.',
    bad: 'pins: [{ athletes: [mira], week: 2027-01-11, contacts-a-week: 300, because: camp }]',
    good: 'pins: [{ athletes: [mira], week: 2027-01-11, contacts-a-week: 120, because: camp }]',
    message: ({ athlete, week, wanted, most, rule, others, each }: PinTooHigh) =>
      `${wanted} contacts are pinned for ${athlete} in the week of ${week}, and ${most} are the most by then (${rule})${standingAgainst(others, each)}`,
    help: pinHelp,
  },
  'schedule/pin-idle': {
    severity: 'warning',
    summary: 'a pin that changes nothing',
    explanation:
      'The season is the same without this pin: what it asks for is planned anyway, or there is nothing in its days that it could act on. Take it out, or look whether its dates, names and athletes are those that were meant.',
    bad: 'pins: [{ week: 2027-03-15, leave-out: [drop-jump-45], because: no boxes }]    # nobody does it that week',
    good: 'pins: [{ week: 2027-03-15, leave-out: [hurdle-hop], because: no hurdles }]',
    message: () => 'the season is the same without this pin',
    help: () => 'take it out, or check its dates, names and athletes',
  },
  'schedule/line-idle': {
    severity: 'warning',
    summary: 'lines for every session, or a programme in use, that change nothing',
    explanation:
      'The season is the same without this item: none of its lines stands in a session, because its dates, names and athletes meet none, a gate or the kit of every place bars them, or another programme has the week already. Take it out, or look whether it says what was meant.',
    bad: 'always: [{ part: trunk, from: 2027-03-15, until: 2027-03-15, lines: [{ lift: plank, sets: 2, reps: 30 }], because: backs }]    # nobody trains that monday',
    good: 'always: [{ part: trunk, minutes: 8, lines: [{ lift: plank, sets: 2, reps: 30 }], because: backs }]',
    message: ({ section }: { section: 'always' | 'use' }) =>
      `the season is the same without this item of \`${section}:\``,
    help: () => 'take it out, or check its dates, names and athletes',
  },
  'schedule/pin-over-return': {
    severity: 'warning',
    summary: 'a pinned kind of week on the way back',
    explanation:
      'After time away the weeks climb a ladder, and a pin lifts no rule, so the week stays a step of the ladder. Whoever is responsible for the way back may waive return-ramp for these weeks.',
    bad: 'pins: [{ week: 2027-02-08, kind: load, because: camp }]    # the week after three weeks away',
    good: 'pins: [{ week: 2027-02-22, kind: load, because: camp }]    # behind the ladder',
    message: ({ athlete, week, kind }: { athlete: string; week: string; kind: string }) =>
      `the week of ${week} is pinned as ${kind}, and ${athlete} is still on the way back in it`,
  },
  'schedule/pin-over-foundation': {
    severity: 'warning',
    summary: 'a pinned phase for a child',
    explanation:
      'Who is under 14 on the first day of the season is in foundation throughout: one slow rise, no drills of the high tier. A phase that is pinned for everybody or for a squad would put a child into strength or power with the grown ones, so it stands for the others alone.',
    bad: 'pins: [{ from: 2027-03-01, until: 2027-03-28, phase: power, because: gym block }]    # the squad has a child of 12',
    good: 'pins: [{ squads: [seniors], from: 2027-03-01, until: 2027-03-28, phase: power, because: gym block }]',
    message: ({ athlete, week, phase }: { athlete: string; week: string; phase: string }) =>
      `${phase} is pinned from the week of ${week} on, and ${athlete} is a child and stays in foundation`,
    help: () => 'narrow the pin with `squads:` or `athletes:`',
  },
  'schedule/return-in-taper': {
    severity: 'warning',
    summary: 'a way back that is not finished when the taper would begin',
    explanation:
      'Weeks behind time away climb a ladder. Where it reaches into the weeks before a peak there is nothing to taper from, so the ladder goes on and the taper is left out.',
    bad: 'away: [{ from: 2027-03-22, until: 2027-04-11, because: ill, trained: none }]    # the peak is on 24 April',
    good: 'competitions: [{ name: County cup final, date: 2027-04-24, prepare: through }]   # or leave it, and read the warning',
    message: ({ athlete, week, peak }: { athlete: string; week: string; peak: string }) =>
      `${athlete} is still on the way back in the week of ${week}, so there is no taper for ${peak}`,
  },
  'schedule/pinned-day-barred': {
    severity: 'error',
    summary: 'a pinned day on which no jump session can stand',
    explanation:
      'A pin with `on:` says on which days the jump sessions of a week stand. On this day the athlete has no slot for jumps, or a rule keeps it free: the days before a competition, the day after one, a test, a rest. Name another day, open a slot, or waive the rule with a reason. A pin of many weeks that is held in others is only warned of.',
    bad: 'pins: [{ athletes: [mira], week: 2027-03-01, on: friday, because: late shift }]    # no slot on friday',
    good: 'pins: [{ athletes: [mira], week: 2027-03-01, on: thursday, because: late shift }]',
    message: ({ athlete, day, date, why, weeks, others, each }: PinnedDay & { readonly why: string }) =>
      `${day} ${date} is pinned for the jumps of ${athlete}, and no jump session can stand there: ${barredWords(why)}${standingAgainst(others, each)}${inMoreWeeks(weeks)}`,
    help: dayHelp,
  },
  'schedule/pinned-day-not-held': {
    severity: 'error',
    summary: 'a pinned day that is left without a session',
    explanation:
      'The jump sessions of an athlete stand some days apart, across the turn of a week as well. Where pinned days are closer than that not all of them can be held; nor where a programme written by hand has set the days of the week. Pin days further apart, or waive session-spacing with a reason.',
    bad: 'pins: [{ athletes: [mira], week: 2027-03-01, on: wednesday, because: late shift }]     # a programme has sessions on tuesday and thursday',
    good: 'pins: [{ athletes: [mira], week: 2027-03-01, on: thursday, because: late shift }]',
    message: ({
      athlete,
      day,
      date,
      apart,
      written,
      weeks,
      others,
      each,
    }: PinnedDay & { readonly apart: number; readonly written: boolean }) =>
      `${day} ${date} is pinned for the jumps of ${athlete}, and holds none: ${
        written
          ? 'a programme sets the days of that week'
          : `it is less than ${String(apart)} days from another session`
      }${standingAgainst(others, each)}${inMoreWeeks(weeks)}`,
    help: dayHelp,
  },
  'schedule/programme-day-without-slot': {
    severity: 'warning',
    summary: 'a session written by hand on a day without a slot',
    explanation:
      'A programme names weekdays, and its sessions stand in the slots of those days. On this day the athlete has no slot, so the session is left out and its contacts are not counted.',
    bad: 'wednesday: [{ drill: hurdle-hop, sets: 4, reps: 5 }]     # slots on tuesday and thursday only',
    good: 'thursday: [{ drill: hurdle-hop, sets: 4, reps: 5 }]',
    message: ({ athlete, programme, date, day }: { athlete: string; programme: string; date: string; day: string }) =>
      `${programme} has a session on ${day} ${date}, and ${athlete} has no slot that day`,
    help: () => 'move the session to a day with a slot, or add a slot',
  },
  'schedule/programme-day-closed': {
    severity: 'notice',
    summary: 'a session written by hand on a day that is closed to the athlete',
    explanation:
      'A place that is closed, an absence, a competition, a rest or a limit stands against what a programme has for that day. The session is left out, nothing takes its place, and its contacts are not counted. If it is to be done, move it to an open day; the weeks behind it may have been written with it in mind.',
    bad: 'closures: [{ from: 2027-03-04, until: 2027-03-04, because: hall let }]    # a programme has a session on thursday 4 March',
    good: 'closures: [{ from: 2027-03-05, until: 2027-03-05, because: hall let }]',
    message: ({
      athlete,
      programme,
      days,
      why,
    }: {
      athlete: string;
      programme: string;
      days: readonly string[];
      why: string;
    }) =>
      `${programme} has ${days.length === 1 ? 'a session' : `${String(days.length)} sessions`} ${onDays(days)} that ${athlete} won't have: ${barredWords(why)}`,
    help: () => 'move it to an open day if it is to be done',
  },
  'schedule/sessions-not-held': {
    severity: 'error',
    summary: 'a week whose days do not hold its jump sessions',
    explanation:
      'The contacts of this week are shared among more sessions than its days can hold: sessions written by hand, a primer or pins in the weeks beside it leave too few days far enough apart. What can be held is; the sums of the week do not agree until a day moves or session-spacing is waived with a reason.',
    bad: 'monday: [{ drill: pogo, sets: 4, reps: 10 }]     # and the week before has its only slot on sunday',
    good: 'tuesday: [{ drill: pogo, sets: 4, reps: 10 }]',
    message: ({
      athlete,
      week,
      wanted,
      held,
      apart,
    }: {
      athlete: string;
      week: string;
      wanted: number;
      held: number;
      apart: number;
    }) =>
      `the week of ${week} has ${String(wanted)} jump sessions for ${athlete}, and its days hold ${String(held)}, ${String(apart)} days apart`,
  },
  'schedule/pain-stop': {
    severity: 'warning',
    summary: 'jumps are stopped by pain',
    explanation:
      'Pain the next morning over what the rule pain-hold allows stops the jumps of that athlete, from the next day until a later morning on the record hurts less. Nobody is taken for well because time went by. Record how the next mornings are; whether the way back may begin is for those who may judge it.',
    bad: '2027-01-21,mira,session,80,,,7,',
    good: '2027-01-21,mira,session,80,,,3,',
    message: ({ athlete, pain, on, week, better }: PainStop) =>
      better === ''
        ? `pain of ${pain} on ${on} stops the jumps of ${athlete} from the week of ${week} on`
        : `pain of ${pain} on ${on} stops the jumps of ${athlete} in the week of ${week}; the morning after ${better} was better, so that they come back with a later week`,
    help: ({ better }: PainStop) =>
      better === ''
        ? 'record a later morning that hurts less, once whoever treats the athlete allows jumping'
        : 'whether the way back may begin is for those who may judge it',
  },
  'schedule/record-missing': {
    severity: 'warning',
    summary: 'weeks of which nothing is recorded',
    explanation:
      'A week that is over and has no session in the record is not taken for done: it counts as the lower of what was planned and what was done in the last recorded week. After two of them in a row the next week does not rise either. Record the sessions; one that was left out has 0 contacts, one that was done as written needs no number.',
    bad: '2027-01-05,mira,session,80,,,,\n2027-01-26,mira,session,85,,,,',
    good: '2027-01-05,mira,session,80,,,,\n2027-01-12,mira,session,80,,,,\n2027-01-19,mira,session,0,,,,ill\n2027-01-26,mira,session,85,,,,',
    message: ({ athlete, weeks }: { athlete: string; weeks: readonly string[] }) =>
      `nothing is recorded of what ${athlete} did in the weeks of ${weeks.join(' and ')}, so the volume is held`,
    help: () => 'record what was done: a row for each session, with 0 contacts for one that was left out',
  },
  'schedule/record-leap': {
    severity: 'warning',
    summary: 'a week on record far above what is usual',
    explanation:
      'What was done moves what an athlete is used to, up to what the week was planned at and no further: nobody is planned more for having done more. This is over the severe rise of the rule weekly-rise, and often such a number is a slip of a finger, 600 for 60. Look at the row, which is the largest of its week, and mend it if it is wrong. If the week was done like that, leave the row. A waiver of weekly-rise for that week says why, and it is not told any more; what counts stays the same.',
    bad: '2027-01-05,mira,session,800,,,,\n2027-01-12,mira,session,80,,,,',
    good: '2027-01-05,mira,session,80,,,,\n2027-01-12,mira,session,80,,,,',
    message: ({ athlete, week, contacts, usual, counts }: RecordLeap) =>
      `${contacts} contacts are on record for ${athlete} in the week of ${week}, where ${usual} were usual: too far above to count in full, so the weeks behind it are planned from ${counts}`,
    label: ({ contacts, here }: RecordLeap) => leapLabel(contacts, here),
    help: ({ id, week, until, counts }: RecordLeap) =>
      `mend the row if its number is a slip; if it was really done, leave it; { rule: weekly-rise, athletes: [${id}], from: ${week}, until: ${until}, because: "say why" } under \`waivers:\` says so, and you hear no more of it; ${counts} is what counts either way`,
  },
  'schedule/week-over-plan': {
    severity: 'notice',
    summary: 'more done in the week under way than written',
    explanation:
      'The record has more contacts for the days of this week so far than their sheets. What is left of the week is cut by as much, down to none, so that the whole of it stays at what it was planned at; what was done less is not made up for. Less than 5 contacts over is no difference, as nobody counts that exactly. Sessions written by hand stay as they are. It is a warning where what is done so far is already too far above the usual to count in full. Look at the row, and mend it if its number is a slip. When the week is over it counts for no more than it was planned at.',
    bad: '2027-01-05,mira,session,160,,,,',
    good: '2027-01-05,mira,session,60,,,,',
    message: ({ athlete, week, until, done, written, planned, ...rest }: WeekOverPlan) =>
      `${done} contacts are on record for ${athlete} in the week of ${week} up to ${until}, where ${written === planned ? `${planned} are` : `${written} of its ${planned} are`} planned: ${leftWords(rest)}`,
    label: ({ done, here }: WeekOverPlan) => leapLabel(done, here),
    help: ({ byHand, left }: WeekOverPlan) =>
      byHand && left > 0
        ? 'mend the row if its number is a slip; else write less for the days that are left'
        : 'mend the row if its number is a slip; if it was really done, leave it',
  },
  'schedule/near-done': {
    severity: 'warning',
    summary: 'a session too near to one that was done on another day',
    explanation:
      'The record has jumps for a day of this week without a sheet, and the next session stands nearer to it than session-spacing allows. The days of the week were chosen without knowing of it, and whether the hall is free on another day only you know, so the session stays. Move it or leave its jumps out: a pin with on: names other days for the week. A waiver of session-spacing makes this silent.',
    bad: '2027-01-06,mira,session,60,,,,',
    good: '2027-01-05,mira,session,60,,,,',
    message: ({ athlete, next, done, days, apart }: NearDone) =>
      `${athlete} has jumps on ${next}, ${counted(days, 'day')} after those done on ${done}, where sessions stand at least ${counted(apart, 'day')} apart`,
    label: () => 'done on a day without a sheet',
    help: () => 'move the session or leave its jumps out; mend the row if its date is a slip',
  },
} as const satisfies Entries;

type NearDone = {
  readonly athlete: string;
  /** Dates of the session to come and of what was done. */
  readonly next: string;
  readonly done: string;
  /** Between the two, and what the rule wants. */
  readonly days: number;
  readonly apart: number;
};

type WeekOverPlan = {
  readonly athlete: string;
  readonly week: string;
  /** The last day that is over. */
  readonly until: string;
  /** Contacts on the record up to then. */
  readonly done: number;
  /** Contacts on the sheets up to then. */
  readonly written: number;
  /** Contacts of the whole week. */
  readonly planned: number;
  /** Contacts of the sessions to come, as they were planned and as they stand. */
  readonly before: number;
  readonly left: number;
  /** Sessions that a programme writes. */
  readonly byHand: boolean;
  /** Of the row; empty: it was done as written. */
  readonly here: number | '';
};

function leftWords({ before, left, byHand }: Pick<WeekOverPlan, 'before' | 'left' | 'byHand'>): string {
  if (before === 0) return 'no jumps are left in the week';
  if (byHand) return `the ${String(left)} that are left are written by hand, and stay`;
  return left === 0
    ? `the ${String(before)} that were left of the week are left out`
    : `${String(left)} of the ${String(before)} that were left of the week stay`;
}

type PainStop = {
  readonly athlete: string;
  readonly pain: number;
  readonly on: string;
  readonly week: string;
  /** Of the last morning on the record, where it is better; empty where none is. */
  readonly better: string;
};

type RecordLeap = {
  readonly athlete: string;
  readonly id: string;
  readonly week: string;
  /** Last day of the week. */
  readonly until: string;
  /** Of the whole week. */
  readonly contacts: number;
  /** Of the row; empty: it was done as written. */
  readonly here: number | '';
  /** A before it. */
  readonly usual: number;
  /** A behind it. */
  readonly counts: number;
};

type PinTooHigh = {
  readonly athlete: string;
  readonly week: string;
  readonly wanted: number;
  readonly most: number;
  /** What holds the week. */
  readonly rule: string;
  /** How many other lines can't hold together with the pin. */
  readonly others: number;
  /** Whether taking out any one of them is enough. */
  readonly each: boolean;
  /** Empty: in no week of the season. */
  readonly earliest: string;
  /** Per cent; 0: no rise alone does it. */
  readonly rise: number;
  /** Rules to waive; empty: waivers don't do it. */
  readonly waivers: string;
  /** The days of such waivers. */
  readonly from: string;
  readonly until: string;
};

type PinnedDay = {
  readonly athlete: string;
  readonly day: string;
  readonly date: string;
  readonly weeks: number;
  /** How many other lines can't hold together with the pin. */
  readonly others: number;
  /** Whether taking out any one of them is enough. */
  readonly each: boolean;
  /** Weekdays that could be named in its place; empty: none. */
  readonly instead: string;
  /** Rules of which a waiver would do; empty: none. */
  readonly waivers: string;
};

function dayHelp({ instead, waivers }: Pick<PinnedDay, 'instead' | 'waivers'>): string {
  const ways = [
    ...(instead === '' ? ['add a slot, or pin another week'] : [`name ${instead} instead`]),
    ...(waivers === '' ? [] : [`waive ${waivers} in that week`]),
  ];
  return ways.join(', or ');
}

function standingAgainst(others: number, each: boolean): string {
  if (others === 0) return '';
  if (others === 1)
    return `; it can't hold together with one other line of the plan${each ? ', and without that it could' : ''}`;
  return `; it can't hold together with ${others} other lines of the plan${each ? ', and without any one of them it could' : ''}`;
}

function leapLabel(contacts: number, here: number | ''): string {
  if (here === '') return 'done as it was written';
  return here === contacts ? `all ${String(contacts)} here` : `${String(here)} of them here`;
}

function pinHelp({ wanted, most, earliest, rise, waivers, from, until }: PinTooHigh): string {
  const when =
    earliest === ''
      ? `${String(wanted)} is out of reach in this season`
      : `${String(wanted)} is safe from the week of ${earliest} at the earliest`;
  const rising = rise === 0 ? '' : `; it would take a weekly rise of ${String(rise)} %`;
  const waiving = waivers === '' ? '' : `; with ${waivers} waived from ${from} until ${until} it could stand`;
  return `pin ${String(most)} or less: ${when}${rising}${waiving}`;
}

const BARRED_WORDS: Readonly<Record<string, string>> = {
  'no-slot': 'there is no slot that day',
  closed: 'the place is closed',
  away: 'the athlete is away',
  'out-of-season': 'it lies outside the season',
  competition: 'there is a competition',
  'event-gap': 'a competition is too near',
  'after-peak': 'the peak of the season has passed',
  'after-event': 'it is the day after a competition',
  test: 'there is a test',
  'rest-pin': 'it is pinned as a rest',
  'lifts-only': 'its slots are for lifts only',
  congested: 'match days crowd together',
  limit: 'a limit stops the jumps of that week',
};

const MOST_DAYS_NAMED = 3;

/** `on tuesday 2027-03-16 and thursday 2027-03-18`; of many the first and the last. */
function onDays(days: readonly string[]): string {
  if (days.length <= MOST_DAYS_NAMED) return `on ${days.join(' and ')}`;
  return `between ${days[0] ?? ''} and ${days.at(-1) ?? ''}`;
}

function barredWords(why: string): string {
  return BARRED_WORDS[why] ?? why;
}

function inMoreWeeks(weeks: number): string {
  return weeks > 1 ? ` (and so in ${String(weeks - 1)} more weeks)` : '';
}
