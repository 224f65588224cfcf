// The rule table, and one rule whole, on a terminal. Called by `footfall rules`.

import { dateWithYear } from '../../report/calendar-words.ts';
import { amountWords, markLegend, numbersWords } from '../../report/rule-report.ts';
import type { ReportedChange, ReportedRule } from '../../report/rule-report.ts';
import type { Canvas } from './canvas.ts';
import { hanging, layOut } from './layout.ts';
import type { LayoutColumn } from './layout.ts';

const INSET = '  ';

/** Every rule a line, then what the plan changes. */
export function renderRules(rules: readonly ReportedRule[], canvas: Canvas): readonly string[] {
  const { palette, width } = canvas;
  const columns: readonly LayoutColumn<ReportedRule>[] = [
    { title: 'rule', align: 'left', text: ({ rule }) => rule.id },
    { title: 'finding', align: 'left', text: ({ rule }) => rule.severity },
    { title: 'waivable', align: 'left', text: ({ rule }) => (rule.waivable ? 'yes' : 'no'), spare: 1 },
    { title: 'mark', align: 'left', text: ({ rule }) => rule.mark ?? '' },
    { title: 'basis', align: 'left', text: ({ rule }) => rule.basis.join(' '), spare: 2 },
    { title: 'numbers', align: 'left', text: ({ rule }) => numbersWords(rule), wrapAt: 24 },
  ];
  return [
    ...layOut(rules, columns, width, palette.quiet),
    '',
    ...hanging('', `${markLegend()}.`, width).map((line) => palette.quiet(line)),
    ...hanging('', 'One rule with its sources: footfall rules ID', width).map((line) => palette.quiet(line)),
    ...planLines(rules, canvas),
  ];
}

function planLines(rules: readonly ReportedRule[], { palette, width }: Canvas): readonly string[] {
  const changed = rules.filter(({ changes }) => changes.length > 0);
  if (changed.length === 0) return [];
  const lines = changed.flatMap(({ rule, changes }) =>
    changes.flatMap((change) => changeLines(rule.id, change, width)),
  );
  return ['', palette.strong('What the plan changes'), ...lines];
}

function changeLines(
  rule: string,
  { what, who, range, because, place }: ReportedChange,
  width: number,
): readonly string[] {
  const when = `${dateWithYear(range.from)} to ${dateWithYear(range.until)}`;
  return hanging(`${INSET}${rule}: `, `${what}; ${who}; ${when}; ${because} (${place})`, width);
}

/** One rule: what it says, its numbers, what it rests on, what the plan does to it. */
export function renderRule(
  { rule, sources, markWords, changes }: ReportedRule,
  { palette, width }: Canvas,
): readonly string[] {
  const findings = `A break is ${rule.severity === 'error' ? 'an' : 'a'} ${rule.severity}${rule.graver === undefined ? '' : `; ${rule.graver}`}.`;
  return [
    palette.strong(rule.id),
    ...hanging('', rule.holds, width),
    ...hanging('', `${findings} ${waiverWords(rule)}`, width),
    ...rule.parameters.flatMap(({ name, value, unit, says, stricter }) =>
      hanging(
        `${INSET}${name} `,
        `${value === undefined ? 'not set' : amountWords(value, unit)}: ${says} (stricter when ${stricter})`,
        width,
        palette.accent,
      ),
    ),
    ...(markWords === undefined ? [] : hanging('', `Mark ${rule.mark}: ${markWords}.`, width)),
    ...sources.flatMap(({ id, fact, mark, source }) => hanging(`${INSET}${id} `, `${fact} (${mark}) ${source}`, width)),
    ...changes.flatMap((change) => changeLines('plan', change, width)),
  ];
}

function waiverWords({ waivable, whoDecided, refusal }: ReportedRule['rule']): string {
  if (!waivable) return `It can't be waived. ${refusal ?? ''}`.trim();
  return whoDecided === true ? 'It can be waived, naming who decided.' : 'It can be waived.';
}
