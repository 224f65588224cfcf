// `footfall rules [id]`: the rule table, or one rule with its sources; with a plan, what the plan changes. As text, CSV
// or JSON; evidence marks stand in all of them.

import { renderRule, renderRules } from '../../render/terminal/rules.ts';
import type { ReportedRule } from '../../report/rule-report.ts';
import { reportRules, rulesTable } from '../../report/rule-report.ts';
import { DONE } from '../exit-status.ts';
import type { ExitStatus } from '../exit-status.ts';
import { openPlan } from '../open-plan.ts';
import { canvasOf } from '../canvas.ts';
import { tableOrLines } from '../table-or-lines.ts';
import type { RulesRequest } from '../requests.ts';
import { unknown } from '../select.ts';
import { refuse } from '../session.ts';
import type { Session } from '../session.ts';

/** Status 0; 1 where the plan has errors; 2 where no rule has the id. */
export async function rules(request: RulesRequest, session: Session): Promise<ExitStatus> {
  const opened = request.plan === undefined ? undefined : await openPlan(request.plan, session);
  if (opened?.ok === false) return opened.status;
  const all = reportRules(opened?.build.plan);
  const { id } = request;
  const problem = id === undefined ? undefined : unknown([id], 'rule', new Set(all.map(({ rule }) => rule.id)));
  if (problem !== undefined) return await refuse(session, problem);
  const wanted = id === undefined ? all : all.filter(({ rule }) => rule.id === id);
  await session.out.writeAll(rendered(request, wanted, session));
  return DONE;
}

function rendered(
  { format, id }: RulesRequest,
  wanted: readonly ReportedRule[],
  { outTerminal }: Session,
): Iterable<string> {
  const canvas = canvasOf(outTerminal);
  return tableOrLines(
    format,
    () => rulesTable(wanted),
    () => (id === undefined ? renderRules(wanted, canvas) : wanted.flatMap((one) => renderRule(one, canvas))),
  );
}
