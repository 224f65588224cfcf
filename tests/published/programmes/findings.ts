// What the audit says about the published programmes, as a page: FINDINGS.md beside this file.

import type { BuiltAthlete } from '../../../src/build/types.ts';
import type { Diagnostic } from '../../../src/diagnostics/types.ts';
import { NOT_WRITTEN, PRINTED } from './printed.ts';
import type { Printed } from './printed.ts';
import { counted } from '../../../src/util/counted.ts';

export interface Audited {
  readonly printed: Printed;
  readonly built: BuiltAthlete;
  /** Contacts or repetitions of each week, counted from the compiled lines. */
  readonly weeks: readonly number[];
}

const number = new Intl.NumberFormat('en-GB');

const sum = (weeks: readonly number[]): number => weeks.reduce((total, week) => total + week, 0);

/** The findings that say something about the programme, and not about what stands in for its drills. */
export const findingsOf = ({ printed, built }: Audited): readonly Diagnostic[] =>
  built.diagnostics.filter(({ rule }) => printed.rules.some((one) => one === rule));

const weekOf = ({ built }: Audited, { week }: Diagnostic): number =>
  built.weeks.find(({ starts }) => starts === week)?.week ?? 0;

/** `2, 4–6`. */
function ranges(weeks: readonly number[]): string {
  const found: { from: number; to: number }[] = [];
  for (const week of [...new Set(weeks)].toSorted((a, b) => a - b)) {
    const last = found.at(-1);
    if (last?.to === week - 1) last.to = week;
    else found.push({ from: week, to: week });
  }
  return found.map(({ from, to }) => (from === to ? `${from}` : `${from}–${to}`)).join(', ');
}

/** `week 1`, `weeks 2–6`; a notice is told once, with how many more weeks have it. */
function weekWords(audited: Audited, same: readonly Diagnostic[]): string {
  const weeks = [...new Set(same.map((one) => weekOf(audited, one)))];
  const further = Math.max(...same.map(({ params }) => Number(params['furtherWeeks'] ?? 0)));
  const more = further === 0 ? '' : ` and ${further} more`;
  return `week${weeks.length === 1 ? '' : 's'} ${ranges(weeks)}${more}`;
}

function row(audited: Audited): string {
  const { printed, built, weeks } = audited;
  const findings = findingsOf(audited);
  const rules = [...new Set(findings.map(({ rule, severity }) => `${rule} ${severity}`))].map((told) => {
    const same = findings.filter(({ rule, severity }) => `${rule} ${severity}` === told);
    const [rule = '', severity = ''] = told.split(' ');
    return `\`${rule}\`, ${severity}, ${weekWords(audited, same)}`;
  });
  const cells = [
    `[${printed.name}](${printed.name}/season.yaml)`,
    `${number.format(printed.total)} ${printed.unit} (${printed.mark})`,
    number.format(sum(weeks)),
    rules.length === 0 ? 'nothing' : rules.join('; '),
    built.blocked.size === 0 ? 'none' : ranges([...built.blocked]),
  ];
  return `| ${cells.join(' | ')} |`;
}

function words(audited: Audited): readonly string[] {
  const { printed } = audited;
  const told = new Map<string, string>();
  for (const { rule = '', severity, message } of findingsOf(audited)) {
    const key = `${rule} ${severity}`;
    if (!told.has(key)) told.set(key, `- ${severity} \`${rule}\`: ${message}`);
  }
  return [
    `### ${printed.name}`,
    '',
    `${printed.source} (${printed.mark}): ${counted(audited.weeks.length, 'week')}.${printed.remark === undefined ? '' : ` ${printed.remark[0]?.toUpperCase() ?? ''}${printed.remark.slice(1)}.`}`,
    '',
    ...(told.size === 0 ? ['- nothing'] : told.values()),
    '',
  ];
}

export function findingsPage(all: readonly Audited[]): string {
  return [
    '# Published programmes, counted and audited',
    '',
    `${PRINTED.length} programmes from trials and reviews, each written by hand in a season of its own and compiled like every other plan`,
    'is. The sums are counted from the compiled lines and equal the printed ones. What the audit says is what a coach would',
    'read who asked a squad for the programme as it stands. It judges by rules for planning a season, which a trial is not.',
    '',
    'Each athlete is written as used to the first week. The level is the lowest whose ceiling holds the largest session, or',
    'advanced; for drop jumps it is advanced, and cleared. No easy week is printed, so none is planned. Where the drills',
    'are stand-ins only rules of how much and when are listed. Marks: P published and read, M from memory.',
    '',
    '| programme | printed | counted | the audit says | weeks kept back |',
    '|---|---|---|---|---|',
    ...all.map(row),
    '',
    '## Not written',
    '',
    'Of these only sessions a week, weeks and the total are printed, and the total doesn’t share out evenly. How it was',
    'shared is not known, so there is no programme to write.',
    '',
    '| trial | sessions a week | weeks | total |',
    '|---|---|---|---|',
    ...NOT_WRITTEN.map(
      ([who, sessions, weeks, total]) => `| ${who} | ${sessions} | ${weeks} | ${number.format(total)} |`,
    ),
    '',
    '## In words',
    '',
    'The first finding of each kind.',
    '',
    ...all.flatMap(words),
  ].join('\n');
}
