// Who has no birth written. Asked for once a plan has no errors, as it is no slip of the coach's.

import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { idsInWords } from './ids-in-words.ts';
import type { Plan } from './types.ts';

/** One notice for all of them: the rules that protect children don't hold for anybody without an age. */
export function bornLeftOut({ athletes }: Pick<Plan, 'athletes'>): readonly Diagnostic[] {
  const left = athletes.filter(({ born }) => born === undefined);
  const [first] = left;
  if (first === undefined) return [];
  const path = `athletes.${first.id}`;
  return [problem('plan/born-left-out', { span: first.span, path, params: { athletes: idsInWords(left) } })];
}
