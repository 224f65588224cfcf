// Where in the plan something stands, for people: `season.yaml:58`. Made once for a build; files are looked up by path.

import { lineIndexOf } from '../source/source-file.ts';
import type { SourceFile, Span } from '../source/types.ts';
import type { BoundBy, BuiltWeek } from '../build/types.ts';

export interface Places {
  /** `season.yaml:58`. Throws for a span of a file the plan doesn't have. */
  readonly words: (span: Span) => string;
  readonly file: (span: Span) => SourceFile;
}

export function createPlaces(files: readonly SourceFile[]): Places {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const file = ({ file: path }: Span): SourceFile => {
    const found = byPath.get(path);
    if (found === undefined) throw new Error(`a place in ${path}, which is no file of the plan`);
    return found;
  };
  return { file, words: (span) => `${span.file}:${lineIndexOf(file(span), span.start) + 1}` };
}

/** The lines of the plan behind a week's contacts: those of the reasons that name what held them. */
export function boundSpans(week: Pick<BuiltWeek, 'boundBy' | 'reasons'>): readonly Span[] {
  const by: BoundBy = week.boundBy;
  return week.reasons.flatMap((reason) => (reason.by === by ? reason.spans : []));
}
