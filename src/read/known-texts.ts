// Files of a plan that are read again and again, as with every save under `--watch`: what was made of one is given again
// while its text is the same. Called by the commands that watch.

import type { Staged } from '../diagnostics/types.ts';
import { parseYaml } from './parse-yaml.ts';
import type { ParsedYaml } from './parse-yaml.ts';
import type { SourceFile } from '../source/types.ts';

/** What makes located nodes of a file. */
export type Parse = (file: SourceFile) => Staged<ParsedYaml>;

interface Known {
  readonly text: string;
  readonly parsed: Staged<ParsedYaml>;
}

/** As `parseYaml`; of each path the last text is remembered. */
export function rememberingParse(): Parse {
  const known = new Map<string, Known>();
  return (file) => {
    const last = known.get(file.path);
    if (last?.text === file.text) return last.parsed;
    const parsed = parseYaml(file);
    known.set(file.path, { text: file.text, parsed });
    return parsed;
  };
}
