// Where in the plan something stands, for people: `season.yaml:58`. Made once for a build; files are looked up by path.

import { lineIndexOf, placeOf } from '../source/source-file.ts';
import type { Place, SourceFile, Span } from '../source/types.ts';
import type { BoundBy, BuiltWeek } from '../build/types.ts';

export interface Places {
  /** `season.yaml:58`. Throws for a span of a file the plan doesn't have. */
  readonly words: (span: Span) => string;
  /** File, line and column, both from 1. Throws likewise. */
  readonly at: (span: Span) => Pick<Place, 'file' | 'line' | 'column'>;
}

/** Places in these files; a span of another file is a bug and throws. */
export function createPlaces(files: readonly SourceFile[]): Places {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const file = ({ file: path }: Span): SourceFile => {
    const found = byPath.get(path);
    if (found === undefined) throw new Error(`a place in ${path}, which is no file of the plan`);
    return found;
  };
  return {
    words: (span) => `${span.file}:${lineIndexOf(file(span), span.start) + 1}`,
    at: (span) => {
      const { line, column } = placeOf(file(span), span);
      return { file: span.file, line, column };
    },
  };
}

/** The lines of the plan behind a week's contacts: those of the reasons that name what held them. */
export function boundSpans(week: Pick<BuiltWeek, 'boundBy' | 'reasons'>): readonly Span[] {
  const by: BoundBy = week.boundBy;
  return week.reasons.flatMap((reason) => (reason.about === 'contacts' && reason.by === by ? reason.spans : []));
}
