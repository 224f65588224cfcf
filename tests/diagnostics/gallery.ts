// All that plans are told, on one page to read through: each code with what it is told like, out of a fixture. Made of
// the fixtures' expected.txt, so that it can't say anything else than they do.

import { catalogue, codes } from '../../src/diagnostics/catalogue.ts';
import type { Code } from '../../src/diagnostics/catalogue.ts';

/** One fixture's name and its expected.txt. */
export interface Told {
  readonly fixture: string;
  readonly text: string;
}

const AREAS: Readonly<Record<string, string>> = {
  source: 'Files as they are saved',
  files: 'The files of a plan',
  yaml: 'YAML',
  csv: 'CSV',
  language: 'What may stand in a plan',
  plan: 'What a plan says',
  schedule: 'What can be scheduled',
  lines: 'What sessions can be made of',
  rule: 'The rules',
  audit: 'The audit itself',
};

const HEAD = `# What plans are told

Every code of the catalogue, and what it is told like in one of the plans beside this page. Made by
\`FOOTFALL_UPDATE=1 npx vitest run --config tests/vitest.config.ts tests/diagnostics/fixtures\`; a test compares.
`;

/** The page. */
export function galleryText(told: readonly Told[]): string {
  const areas = Object.entries(AREAS).map(([area, title]) => {
    const own = codes.filter((code) => code.startsWith(`${area}/`));
    return `## ${title}\n\n${own.map((code) => entryText(code, told)).join('\n')}`;
  });
  return [HEAD, ...areas].join('\n');
}

function entryText(code: Code, told: readonly Told[]): string {
  const { severity, summary } = catalogue[code];
  const head = `### ${code}\n\n${sentence(summary)} (${severity})`;
  const [shown, ...others] = toldOf(code, told);
  if (shown === undefined) return `${head}: no plan beside this page has it, so its own test makes one.\n`;
  const more = others.length === 0 ? '' : `, as in ${others.map(({ fixture }) => linkTo(fixture)).join(', ')}`;
  return `${head}, from ${linkTo(shown.fixture)}${more}.\n\n\`\`\`text\n${shown.text}\n\`\`\`\n`;
}

const sentence = (summary: string): string => summary.slice(0, 1).toUpperCase() + summary.slice(1);

const linkTo = (fixture: string): string => `[${fixture}](${fixture}/expected.txt)`;

const MOST_LINKS = 4;

/** What the fixtures say of a code, the one of its name first, then those that are told least beside it. */
function toldOf(code: Code, told: readonly Told[]): readonly Told[] {
  const isOf = (block: string): boolean => block.split('\n', 1)[0]?.endsWith(`[${code}]`) === true;
  const found = told.flatMap(({ fixture, text }) => {
    const blocks = text.split('\n\n');
    const own = blocks.find(isOf);
    return own === undefined ? [] : [{ fixture, text: own, rank: fixture === code ? 0 : blocks.length }];
  });
  return found.toSorted((one, other) => one.rank - other.rank).slice(0, MOST_LINKS);
}
