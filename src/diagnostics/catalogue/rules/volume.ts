// Findings of the rules of how much: contacts of a session and a week, how they rise, fall and come back.
// Joined by ../rules.ts.

import type { Entries } from '../../entry.ts';
import type { At, On } from './words.ts';
import { counted } from '../../../util/counted.ts';
import { kiloWords } from '../../../util/quantities.ts';
import type { Units } from '../../../util/quantities.ts';

const contacts = (count: number): string => counted(count, 'contact', 'contacts');

export const volumeFindings = {
  'rule/session-ceiling': {
    severity: 'error',
    summary: 'a session over the ceiling of its level',
    explanation:
      'Each level has a number of contacts that no session goes over, and a lower one in season. Lines written by hand and pinned weeks count like the rest. Plan less, spread the week over more sessions, or waive the rule with a reason.',
    bad: '{ drill: hurdle-hop, sets: 12, reps: 8 }',
    good: '{ drill: hurdle-hop, sets: 4, reps: 5 }',
    message: ({
      athlete,
      date,
      found,
      most,
      level,
      season,
    }: On & { found: number; most: number; level: string; season: boolean }) =>
      `${athlete}: ${contacts(found)} in the session of ${date}, and ${most} are the most for ${level} athletes${season ? ' in season' : ''}`,
    help: ({ most }: { most: number }) => `plan ${most} or fewer, or spread them over more sessions`,
  },
  'rule/weekly-rise': {
    severity: 'warning',
    summary: 'a week that rises too fast',
    explanation:
      'A loading week goes no more than a small step over what the athlete is used to. A bigger step may be waived with a reason; one far over it keeps the week from being written.',
    bad: '{ drill: pogo, sets: 4, reps: 10 }     # in each session',
    good: '{ drill: pogo, sets: 1, reps: 10 }',
    message: ({ athlete, week, found, most, adapted }: At & { found: number; most: number; adapted: number }) =>
      `${athlete}, week of ${week}: ${contacts(found)}, and ${most} are the most for somebody used to ${adapted} a week`,
    help: ({ most }: { most: number }) => `plan ${most} or fewer, or reach the number over more weeks`,
  },
  'rule/session-rise': {
    severity: 'warning',
    summary: 'a session far bigger than the usual one',
    explanation:
      'A single session stays near the sessions an athlete is used to, even where the week as a whole is within its rise; in easy weeks it stays under them. Spread the week over more days.',
    bad: '{ drill: pogo, sets: 5, reps: 9 }',
    good: '{ drill: pogo, sets: 2, reps: 9 }',
    message: ({ athlete, date, found, most, usual }: On & { found: number; most: number; usual: number }) =>
      `${athlete}: ${contacts(found)} in the session of ${date}, and ${most} are the most where ${usual} are usual`,
    help: ({ most }: { most: number }) => `plan ${most} or fewer that day`,
  },
  'rule/all-jumps-rise': {
    severity: 'warning',
    summary: 'all jumping together rises too fast',
    explanation:
      'Practice, matches and tests load the same tendons as sessions do. In a week in which they rise clearly, planned contacts stay where they were; and all jumping of a week stays near what is usual, which is what the athlete is used to and the mean of the practice, matches and tests of the weeks before. Planned contacts are cut for it down to half; it is a notice where that is done and other jumps alone are within it.',
    bad: 'practice: [{ day: monday, jumps: 60 }, { day: wednesday, jumps: 160, from: 2027-02-15 }]',
    good: 'practice: [{ day: monday, jumps: 60 }, { day: wednesday, jumps: 20, from: 2027-02-15 }]',
    message: ({ athlete, week, held, found, most, before, after }: At & JumpsOfWeek) =>
      held
        ? `${athlete}, week of ${week}: practice, matches and tests rise from ${before} to ${after} jumps, and ${contacts(found)} are planned where ${most} are the most`
        : `${athlete}, week of ${week}: ${counted(found, 'jump', 'jumps')} of every kind, and ${most} are the most where ${before} are usual`,
    help: ({ held, most, ...week }: JumpsOfWeek) =>
      held ? `plan ${most} contacts or fewer, or let practice rise more slowly` : fewerJumps({ most, ...week }),
  },
  'rule/budget': {
    severity: 'warning',
    summary: "all jumping of a week over the coach's own number",
    explanation:
      'The plan sets a most for all jumping of a week, and sessions, practice, matches and tests together go over it. For an athlete with a limit or on the way back this keeps the week from being written.',
    bad: 'rules: { budget: [{ jumps-a-week: 100, squads: [juniors], because: two are growing fast }] }',
    good: 'rules: { budget: [{ jumps-a-week: 260, squads: [juniors], because: two are growing fast }] }',
    message: ({ athlete, week, found, most, planned }: At & { found: number; most: number; planned: number }) =>
      `${athlete}, week of ${week}: ${counted(found, 'jump', 'jumps')} of every kind, ${planned} of them planned, and the plan allows ${most}`,
    help: () => 'plan fewer contacts, cut jumps out of practice, or raise the number',
  },
  'rule/deload-rhythm': {
    severity: 'notice',
    summary: 'easy weeks too far apart or too close together',
    explanation:
      'Loading weeks come in short runs, with an easy week behind each and enough loading between two easy ones. Pins of the kind of a week, and weeks that close, can break the rhythm.',
    bad: 'pins: [{ from: 2027-02-01, until: 2027-02-28, kind: load, because: four hard weeks }]',
    good: 'pins: [{ week: 2027-02-15, kind: deload, because: exam week }]',
    message: ({ athlete, week, soon, found, wanted }: At & { soon: boolean; found: number; wanted: number }) =>
      soon
        ? `${athlete}, week of ${week}: an easy week after ${counted(found, 'loading week', 'loading weeks')}, and ${wanted} are wanted between two easy ones`
        : `${athlete}: the week of ${week} is loading week ${found} in a row, and ${wanted} are the most`,
    help: ({ soon }: { soon: boolean }) => (soon ? 'let the easy week come later' : 'make this an easy week'),
  },
  'rule/deload-depth': {
    severity: 'warning',
    summary: 'an easy week that is not easy',
    explanation:
      'An easy week stays well under what the athlete is used to, and under each loading week of the run before it, or it rests nobody.',
    bad: 'tuesday: [{ drill: pogo, sets: 6, reps: 10 }]\nthursday: [{ drill: pogo, sets: 6, reps: 10 }]     # in an easy week',
    good: 'tuesday: [{ drill: pogo, sets: 4, reps: 10 }]\nthursday: [{ drill: pogo, sets: 4, reps: 10 }]',
    message: ({ athlete, week, run, found, most }: At & { run: boolean; found: number; most: number }) =>
      run
        ? `${athlete}: the easy week of ${week} has ${contacts(found)}, and a loading week before it has no more than ${most}`
        : `${athlete}: the easy week of ${week} has ${contacts(found)}, and ${most} are the most`,
    help: ({ run, most }: { run: boolean; most: number }) =>
      run ? `plan fewer than ${most}` : `plan ${most} or fewer`,
  },
  'rule/taper-cut': {
    severity: 'warning',
    summary: 'a taper that cuts too little, too much or the wrong thing',
    explanation:
      'Before a peak the volume falls by about half while the kind of jumping stays: fewer sets of the same tiers. Half a taper leaves tired legs, and easier drills lose the edge. The last sessions before the event are hardly larger than those of the taper week before: by a quarter at most, rounded up to five contacts, which is what the shares of a week and of a session make of it (common practice, no source). `session-over: 0 %` keeps them no larger.',
    bad: 'monday: [{ drill: hurdle-hop, sets: 10, reps: 8 }]\nwednesday: [{ drill: hurdle-hop, sets: 10, reps: 8 }]     # in the week of a peak',
    good: 'monday: [{ drill: hurdle-hop, sets: 10, reps: 5 }, { drill: high-hurdle-hop, sets: 2, reps: 5 }]\nwednesday: [{ drill: hurdle-hop, sets: 10, reps: 5 }, { drill: high-hurdle-hop, sets: 2, reps: 5 }]',
    message: ({ athlete, week, breach, found, wanted, adapted, before = 0 }: TaperCut) => {
      const taper = `${athlete}: the taper week of ${week}`;
      if (breach === 'tier')
        return `${taper} has nothing above the ${found} tier, and the weeks before it had ${wanted}`;
      if (breach === 'session') {
        return `${taper} has a session of ${found} contacts, and at most ${wanted} are wanted behind a taper week whose largest had ${before}`;
      }
      return `${taper} has ${found} contacts, and ${breach === 'little' ? 'at most' : 'at least'} ${wanted} are wanted for somebody used to ${adapted} a week`;
    },
    help: ({ breach }: TaperCut) => TAPER_HELP[breach],
  },
  'rule/last-week': {
    severity: 'warning',
    summary: 'the week of a peak without any jumping',
    explanation:
      'The last week before a peak is easy and never empty: a session, or a short primer where nothing else fits, keeps the legs awake.',
    bad: 'tuesday: [{ lift: dumbbell-row, sets: 2, reps: 6 }]     # and no other session in the week of a peak',
    good: 'tuesday: [{ drill: pogo, sets: 2, reps: 10 }]',
    message: ({ athlete, competition, date }: On & { competition: string }) =>
      `${athlete} has neither a session nor a primer in the week of ${competition} on ${date}, though a day is open`,
    help: () => 'leave one day of that week open at least a day before',
  },
  'rule/return-ramp': {
    severity: 'error',
    summary: 'coming back faster than the ladder allows',
    explanation:
      'After two weeks away or more the volume starts again at half of what it was and climbs by steps; a longer absence has a longer ladder. Whoever decides otherwise is named in the waiver.',
    bad: 'tuesday: [{ drill: pogo, sets: 8, reps: 10 }]\nthursday: [{ drill: pogo, sets: 8, reps: 10 }]     # the first week back',
    good: 'tuesday: [{ drill: pogo, sets: 3, reps: 10 }]\nthursday: [{ drill: pogo, sets: 3, reps: 10 }]',
    message: ({
      athlete,
      week,
      found,
      most,
      step,
      steps,
      weeksAway,
    }: At & {
      found: number;
      most: number;
      step: number;
      steps: number;
      weeksAway: number;
    }) =>
      `${athlete}, week of ${week}: ${contacts(found)}, and ${most} are the most in week ${step} of ${steps} back from ${counted(weeksAway, 'week', 'weeks')} away`,
    help: ({ most }: { most: number }) => `plan ${most} or fewer`,
  },
  'rule/returning-stage': {
    severity: 'error',
    summary: 'something above the stage that has been signed',
    explanation:
      'An athlete on the way back from surgery or a long lay-off does the drills, lifts and contacts of the stage that is signed, and nothing above it. The next stage is opened by whoever signs it.',
    bad: 'tuesday: [{ drill: hurdle-hop, sets: 4, reps: 5 }]     # in stage 1 of 4',
    good: 'tuesday: [{ drill: snap-down, sets: 4, reps: 5 }]',
    message: ({
      athlete,
      date,
      stage,
      exercise,
      found,
      most,
    }: On & { stage: number; exercise: string; found: number; most: number }) => {
      if (stage === 0)
        return `${athlete}: ${exercise || contacts(found)} on ${date}, and no stage of the return is signed by then`;
      return exercise === ''
        ? `${athlete}: ${contacts(found)} in the session of ${date}, and ${most} are the most in stage ${stage}, the one that is open`
        : `${athlete}: ${exercise} on ${date} belongs to stage ${found}, and stage ${stage} is open`;
    },
    help: () => 'choose what the stage allows, or have the next stage signed',
  },
  'audit/adapted-volume': {
    severity: 'warning',
    summary: 'a usual volume that the weeks do not add up to',
    explanation:
      'The contacts an athlete is used to follow from the weeks before. Worked out a second time they came to another number than the one in the tables, so read the rises of this athlete with care. Please report it: it is a mistake of footfall, not of the plan.',
    bad: '# nothing in a plan makes this',
    good: '# nothing in a plan makes this',
    message: ({ athlete, week, found, wanted }: At & { found: number; wanted: number }) =>
      `${athlete}, week of ${week}: the tables say used to ${found} contacts a week, and the weeks add up to ${wanted}`,
  },
  'audit/waiver-unused': {
    severity: 'warning',
    summary: 'a waiver that frees nothing',
    explanation:
      'A waiver is kept for what needs it. This one covers no week in which its rule would have been broken, so it only hides the next one. Delete it, or give it the dates and athletes it is meant for.',
    bad: 'waivers: [{ rule: session-spacing, week: 2027-03-08, because: camp }]     # the camp is the week before',
    good: 'waivers: [{ rule: session-spacing, week: 2027-03-01, because: camp }]',
    message: ({ rule, from, until }: { rule: string; from: string; until: string }) =>
      `this waiver of ${rule} from ${from} until ${until} frees nothing`,
    label: () => 'nothing here needs it',
    help: () => 'delete it, or correct its dates or athletes',
  },
  'audit/maximum-unused': {
    severity: 'notice',
    summary: 'a maximum that no lift of the season goes by',
    explanation:
      'A maximum says the kilos of its own lift, and of the lifts of which the library says that it serves for them; never of others. No session of the season has one of these, so that it changes nothing, and what is lifted in its place may go by reps in reserve. Take it out, or look whether it was meant for another lift.',
    bad: 'pull-up: { max: 90 kg, on: 2026-12-10 }',
    good: 'back-squat: { max: 90 kg, on: 2026-12-10 }',
    message: ({ athlete, lift, lifts }: { athlete: string; lift: string; lifts: readonly string[] }) =>
      `${athlete}: ${lifts.length === 0 ? `no lift goes by a maximum of ${lift}` : `no session of the season has a lift that goes by the maximum of ${lift}`}`,
    label: () => 'it changes nothing',
    help: ({ lifts }: { lifts: readonly string[] }) =>
      lifts.length === 0
        ? 'take it out, or look whether it was meant for another lift'
        : `take it out, or look whether it was meant for another lift: by this one go ${lifts.join(', ')}`,
  },
  'audit/maximum-too-far': {
    severity: 'notice',
    summary: 'a maximum that serves the lift behind and not this one',
    explanation:
      'A lift goes by its own maximum or by that of the lift which its `max-of:` names, and by no other: of shares one behind the other nobody has seen the kilos, and loads are never carried over between squat depths. Here neither is known, so that the lift goes by reps in reserve, or by the share that is written without kilos. What a limit bars is another matter: who may do no back squat does no kind of it either, through however many steps.',
    bad: 'chain-squat: { name: Chain squat, pattern: squat, max-of: back-squat }\npin-squat: { name: Pin squat, pattern: squat, max-of: chain-squat }',
    good: 'chain-squat: { name: Chain squat, pattern: squat, max-of: back-squat }\npin-squat: { name: Pin squat, pattern: squat, max-of: back-squat, max-share: 80 % }',
    message: ({ athlete, lift, of, behind }: MaximumTooFar) =>
      `${athlete}: ${lift} goes by the maximum of ${of}, which is not known; that of ${behind} does not serve it`,
    label: () => 'it serves what names it, and nothing further',
    help: ({ lift, of, behind }: MaximumTooFar) =>
      `write the maximum of ${of} under \`lifts:\`, or give ${lift} \`max-of: ${behind}\` with a \`max-share:\``,
  },
  'audit/plates-too-coarse': {
    severity: 'notice',
    summary: 'kilos far under the share that was asked for',
    explanation:
      'Kilos are rounded down to what the bars and plates of the place make. Here that is far under the share of the maximum that the phase asks for, by more than 5 points of it and more than 2.5 kg (common practice, no source), so that the sheet says the share that the kilos are. Where the kit is written as it is, that is what there is. Else write the smallest plate and the bars that are really there.',
    bad: 'kit: { racks: 4, bars: [20 kg], smallest-plate: 25 kg }',
    good: 'kit: { racks: 4, bars: [20 kg], smallest-plate: 1.25 kg }',
    message: ({ athlete, lift, place, date, days, asked, wanted, kilos, units }: PlatesTooCoarse) =>
      `${athlete}: the kit of ${place} makes ${kiloWords(kilos, units)} of ${lift} on ${date}, where ${asked} % are ${kiloWords(wanted, units)}${days > 1 ? `, and is as far under on ${counted(days - 1, 'further day', 'further days')}` : ''}`,
    help: () => 'look whether `smallest-plate:` and `bars:` are those that are there',
  },
  'audit/kilos-of-no-maximum': {
    severity: 'notice',
    summary: 'kilos by hand for a lift without a maximum',
    explanation:
      'Kilos that are written stand as they are. Where no maximum of the lift is known, nothing says how heavy they are for this athlete: what share of it they are, whether the reps can be done with them, how they rise. The line counts as heavy as its reps can be, by the load chart (S). Of somebody known to be young it is an error of youth-load.',
    bad: '{ lift: romanian-deadlift, sets: 2, reps: 6, load: 60 kg }    # and no maximum of it under lifts:',
    good: '{ lift: romanian-deadlift, sets: 2, reps: 6, reserve: 3 }',
    message: ({ athlete, lift, kilos, date, days, units }: KilosOfNoMaximum) =>
      `${athlete}: ${kiloWords(kilos, units)} are written for ${lift} on ${date}${days > 1 ? ` and ${counted(days - 1, 'further day', 'further days')}` : ''}, and no maximum is known that says how heavy they are`,
    help: ({ lift }: KilosOfNoMaximum) =>
      `write the maximum of ${lift} under \`lifts:\`, or leave the load out, and it goes by reps in reserve`,
  },
} as const satisfies Entries;

type TaperCut = At & {
  readonly breach: 'little' | 'much' | 'tier' | 'session';
  readonly found: number | string;
  readonly wanted: number | string;
  readonly adapted: number;
  /** Contacts of the largest session of the taper week before, where that is what it is about. */
  readonly before?: number;
};

const TAPER_HELP: Readonly<Record<TaperCut['breach'], string>> = {
  little: 'take sets off',
  much: 'keep a few sets more',
  tier: 'keep the drills and take sets off',
  session: 'take sets off the larger session',
};

type MaximumTooFar = {
  readonly athlete: string;
  readonly lift: string;
  /** The lift whose maximum it goes by. */
  readonly of: string;
  /** The lift behind that one, whose maximum is known. */
  readonly behind: string;
};

type PlatesTooCoarse = {
  readonly athlete: string;
  readonly lift: string;
  readonly place: string;
  /** The first day. */
  readonly date: string;
  /** On so many days in all. */
  readonly days: number;
  /** Per cent, and what that is in kilos. */
  readonly asked: number;
  readonly wanted: number;
  readonly kilos: number;
  readonly units: Units;
};

type KilosOfNoMaximum = {
  readonly athlete: string;
  readonly lift: string;
  readonly kilos: number;
  readonly units: Units;
  /** The first day. */
  readonly date: string;
  /** On so many days in all. */
  readonly days: number;
};

/** All in jumps; the last three are absent where planned contacts are held. */
type JumpsOfWeek = {
  readonly held: boolean;
  readonly found: number;
  readonly most: number;
  readonly before: number;
  readonly after: number;
  readonly events?: number;
  readonly practice?: number;
  readonly planned?: number;
};

/** What can be fewer: what is over may be more than all planned contacts, and matches are what they are. */
function fewerJumps({
  found,
  most,
  events = 0,
  practice = 0,
  planned = 0,
}: Omit<JumpsOfWeek, 'held' | 'before' | 'after'>): string {
  const ways = [
    ...(practice === 0 ? [] : [events === 0 ? 'let practice rise more slowly' : 'cut jumps out of practice that week']),
    ...(planned < found - most ? [] : ['plan fewer contacts beside it']),
  ];
  const matches = events === 0 ? '' : `${events} of the jumps are those of matches and tests: `;
  return `${matches}${ways.length === 0 ? 'let others play a part of it' : ways.join(', or ')}`;
}
