// `footfall jump [trials]`: one test worked out, from a CSV of trials or from what is typed. Trials that were measured in
// different ways are kept apart, and said.

import { readTrials } from '../../language/read-trials.ts';
import { hasErrors } from '../../diagnostics/collector.ts';
import { PLAUSIBLE_MASS } from '../../language/shapes/athletes.ts';
import { testRowOf } from '../../language/shapes/record.ts';
import { groupTrials, isPlausibleTime, measured, withTimes } from '../../record/trials.ts';
import type { Trial, TrialGroup } from '../../record/trials.ts';
import { renderJumps } from '../../render/terminal/jump.ts';
import { jumpTable, reportJumps } from '../../report/jump-report.ts';
import type { JumpPage } from '../../report/jump-report.ts';
import { DONE } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import { failureStatus } from '../open-plan.ts';
import type { Amount } from '../option-values.ts';
import { canvasOf } from '../canvas.ts';
import { tableOrLines } from '../table-or-lines.ts';
import type { JumpRequest } from '../requests.ts';
import { refuse } from '../session.ts';
import type { Session } from '../session.ts';
import { tellFindings } from '../tell-findings.ts';
import { GRAMS_A_KILO } from '../../util/units.ts';

/** Status 0; 1 where the file of trials has errors; 2 where what was typed doesn't go together. */
export async function jump(request: JumpRequest, session: Session): Promise<ExitStatus> {
  if (!isPlausibleMass(request)) return await refuse(session, `--mass is ${PLAUSIBLE_MASS.words}`);
  if (request.trials !== undefined) return await jumpFile(request.trials, request, session);
  const problem = problemOf(request);
  if (problem !== undefined) return await refuse(session, problem);
  return await print(request, typedTrials(request), session);
}

async function jumpFile(path: string, request: JumpRequest, session: Session): Promise<ExitStatus> {
  const typed = TYPED.find((name) => request[name] !== undefined);
  if (typed !== undefined)
    return await refuse(session, `--${OPTIONS[typed]} is for a test that is typed, not for a file`);
  const read = readTrials(path, session.files);
  if (hasErrors(read.diagnostics)) {
    await tellFindings(read.diagnostics, { files: read.value.files, folder: '.' }, session);
    return failureStatus(read.diagnostics);
  }
  if (read.value.rows.length === 0) await session.err.write(`footfall: ${path} holds no trials\n`);
  const trials = withTimes(read.value.rows.map(testRowOf));
  if (request.mass !== undefined && new Set(trials.map(({ athlete }) => athlete)).size > 1)
    return await refuse(session, '--mass is of one athlete, and the file has several');
  return await print(request, trials, session);
}

const OPTIONS = {
  countermovement: 'countermovement',
  squat: 'squat',
  drop: 'drop',
  contact: 'contact',
  takeOff: 'take-off',
  force: 'force',
  isometric: 'isometric',
  before: 'before',
  method: 'method',
  arms: 'arms',
} as const satisfies Partial<Record<keyof JumpRequest, string>>;

const TYPED = Object.keys(OPTIONS) as readonly (keyof typeof OPTIONS)[];

function problemOf(request: JumpRequest): string | undefined {
  const { countermovement = [], squat = [], drop = [], contact, takeOff, force, isometric } = request;
  const heights = [...countermovement, ...squat, ...drop];
  if (heights.length === 0 && force === undefined)
    return 'name a file of trials, or a test: --countermovement, --squat, --drop or --force';
  if (contact !== undefined && contact.length !== drop.length)
    return '--contact needs one time for each trial of --drop';
  if (takeOff !== undefined && takeOff.length !== countermovement.length)
    return '--take-off needs one time for each trial of --countermovement';
  if ((force === undefined) !== (isometric === undefined)) return '--force and --isometric go together';
  const times = heights.filter(isTime).length;
  if (times > 0 && times < heights.length)
    return 'a time in the air and a height are two methods: give all trials in one of them';
  return timesProblem(request) ?? beforeProblem(request);
}

/** As of the athletes of a plan. */
const isPlausibleMass = ({ mass }: JumpRequest): boolean =>
  mass === undefined || (PLAUSIBLE_MASS.from <= mass * GRAMS_A_KILO && mass * GRAMS_A_KILO <= PLAUSIBLE_MASS.to);

function timesProblem({ contact = [], takeOff = [] }: JumpRequest): string | undefined {
  for (const [name, times] of [
    ['contact', contact],
    ['take-off', takeOff],
  ] as const) {
    const wrong = times.find((time) => !isPlausibleTime(secondsOf(time)));
    if (wrong !== undefined) return `--${name} can't be ${wordsOf(wrong)}: is the unit right?`;
  }
  return undefined;
}

/** One height from before is of one test. */
function beforeProblem({ countermovement, squat, drop, before }: JumpRequest): string | undefined {
  if (before === undefined) return undefined;
  const tests = [countermovement, squat, drop].filter((one) => one !== undefined).length;
  if (tests === 0) return '--before needs a jump to compare';
  if (tests > 1) return '--before is of one test: give the others by themselves';
  if (isTime(before)) return '--before is a height';
  return heightOf(before) === undefined ? `no jump is ${wordsOf(before)}: is the unit of --before right?` : undefined;
}

/** In metres; undefined where nobody jumps so. */
const heightOf = (amount: Amount): number | undefined => measured({ test: 'squat-jump', ...amount })?.value;

const secondsOf = ({ value, unit }: Amount): number => (unit === 'ms' ? value / 1000 : value);

const wordsOf = ({ value, unit }: Amount): string => `${value} ${unit}`;

const isTime = ({ unit }: Amount): boolean => unit === 's' || unit === 'ms';

function typedTrials(request: JumpRequest): readonly Trial[] {
  const { countermovement, squat, drop, contact, takeOff, force, isometric, method, arms } = request;
  const way = { ...(method !== undefined && { method }), ...(arms !== undefined && { arms }) };
  const trials = (test: string, amounts: readonly Amount[] = []): readonly Trial[] =>
    amounts.map((amount) => ({ test, ...amount, ...way }));
  return [
    ...withTypedTimes(trials('countermovement-jump', countermovement), 'takeOffSeconds', takeOff),
    ...trials('squat-jump', squat),
    ...withTypedTimes(trials('drop-jump', drop), 'contactSeconds', contact),
    ...trials('countermovement-jump', force),
    ...trials('isometric-pull', isometric),
  ];
}

function withTypedTimes(
  trials: readonly Trial[],
  name: 'takeOffSeconds' | 'contactSeconds',
  times: readonly Amount[] = [],
): readonly Trial[] {
  return trials.map((trial, index) => {
    const time = times[index];
    return time === undefined ? trial : { ...trial, [name]: secondsOf(time) };
  });
}

async function print(request: JumpRequest, trials: readonly Trial[], session: Session): Promise<ExitStatus> {
  const unread = trials.filter((trial) => measured(trial) === undefined);
  if (request.trials === undefined && unread[0] !== undefined) {
    const { value, unit, test } = unread[0];
    return await refuse(session, `no ${test} is ${String(value)} ${unit}: is the unit right?`);
  }
  const groups = groupTrials(trials);
  await session.err.write(notes(groups, unread));
  const { mass, before } = request;
  const earlier = before === undefined ? undefined : heightOf(before);
  const facts = {
    ...(mass !== undefined && { mass }),
    ...(earlier !== undefined && { before: earlier }),
  };
  await session.out.writeAll(rendered(request, reportJumps(groups, facts), session));
  return DONE;
}

/** What was left out, and what was kept apart. */
function notes(groups: readonly TrialGroup[], unread: readonly Trial[]): string {
  const lines: string[] = [];
  if (unread.length > 0) {
    const names = [...new Set(unread.map(({ test, unit }) => `${test} in ${unit}`))].join(', ');
    lines.push(
      `footfall: ${unread.length} of the trials left out, as they are no jumps or no jump is like that: ${names}\n`,
    );
  }
  const ways = new Map<string, Set<string>>();
  for (const { athlete, test, method = 'an unnamed method', arms, measure } of groups) {
    if (measure !== 'height') continue;
    const key = [athlete, test].filter((part) => part !== undefined).join(': ');
    const way = `${method}${arms === undefined ? '' : arms ? ' with arms' : ' without arms'}`;
    ways.set(key, (ways.get(key) ?? new Set()).add(way));
  }
  for (const [key, of] of ways)
    if (of.size > 1)
      lines.push(`footfall: ${key} was measured in ${of.size} ways, which are not compared: ${[...of].join(', ')}\n`);
  return lines.join('');
}

function rendered({ format }: JumpRequest, pages: readonly JumpPage[], { outTerminal }: Session): Iterable<string> {
  return tableOrLines(
    format,
    () => jumpTable(pages),
    () => renderJumps(pages, canvasOf(outTerminal)),
  );
}
