// An integer program written down row by row and handed to the solver as text. Every variable is a whole number from 0
// to its most. The solver works in floating point, so whoever reads an answer has to reckon it again in whole numbers.

import loadHighs from 'highs';

/** A variable's name, or a variable times a whole number. */
export type Part = readonly [number, string];

export interface IntegerProgram {
  readonly rows: string[];
  readonly most: Map<string, number>;
}

type Solution = { readonly status: 'none' } | { readonly status: 'best'; readonly values: ReadonlyMap<string, number> };

export type Solve = (program: IntegerProgram, least: readonly Part[]) => Solution;

const TIGHT = {
  output_flag: false,
  mip_rel_gap: 0,
  mip_abs_gap: 0.5,
  mip_feasibility_tolerance: 1e-9,
  primal_feasibility_tolerance: 1e-9,
} as const;

export const emptyProgram = (): IntegerProgram => ({ rows: [], most: new Map() });

/** Two programs that begin alike. */
export const copied = ({ rows, most }: IntegerProgram): IntegerProgram => ({ rows: [...rows], most: new Map(most) });

/** Declares a variable and gives its name back. */
export function whole(program: IntegerProgram, name: string, most: number): string {
  program.most.set(name, most);
  return name;
}

export function atMost(program: IntegerProgram, parts: readonly Part[], constant: number): void {
  program.rows.push(` r${program.rows.length}: ${sum(parts)} <= ${constant}`);
}

export function atLeast(program: IntegerProgram, parts: readonly Part[], constant: number): void {
  program.rows.push(` r${program.rows.length}: ${sum(parts)} >= ${constant}`);
}

export function exactly(program: IntegerProgram, parts: readonly Part[], constant: number): void {
  program.rows.push(` r${program.rows.length}: ${sum(parts)} = ${constant}`);
}

function sum(parts: readonly Part[]): string {
  return parts.map(([times, name]) => `${times < 0 ? '-' : '+'} ${Math.abs(times)} ${name}`).join(' ');
}

function textOf({ rows, most }: IntegerProgram, least: readonly Part[]): string {
  const bounds = [...most].map(([name, value]) => ` 0 <= ${name} <= ${value}`);
  const objective = least.length === 0 ? '' : sum(least);
  return ['Minimize', ` aim: ${objective}`, 'Subject To', ...rows, 'Bounds', ...bounds, 'Generals']
    .concat([` ${[...most.keys()].join(' ')}`, 'End', ''])
    .join('\n');
}

/** The solver, ready. It throws where an answer is neither proven best nor proven impossible. */
export async function loadSolver(): Promise<Solve> {
  // Its types are written for CommonJS, where the function is one level further down than it is here.
  const highs = await (loadHighs as unknown as typeof loadHighs.default)();
  return (program, least) => {
    const answer = highs.solve(textOf(program, least), TIGHT);
    if (answer.Status === 'Infeasible') return { status: 'none' };
    if (answer.Status !== 'Optimal') throw new Error(`the solver ended with "${answer.Status}"`);
    const columns = Object.entries(answer.Columns);
    return { status: 'best', values: new Map(columns.map(([name, column]) => [name, rounded(name, column)])) };
  };
}

function rounded(name: string, column: object): number {
  if (!('Primal' in column) || typeof column.Primal !== 'number') throw new Error(`the solver left out ${name}`);
  const value = Math.round(column.Primal);
  if (Math.abs(column.Primal - value) > 1e-6) throw new Error(`${name} is no whole number: ${column.Primal}`);
  return value;
}
