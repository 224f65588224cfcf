// A document as located nodes: what the YAML and CSV readers hand to the language, with no trace of the parser that
// made it. Scalars keep both the text as written and the value the YAML 1.2 core schema gives it.

import type { Span } from '../source/types.ts';
import type { SourceFile } from '../source/types.ts';

export type Node = ScalarNode | MapNode | SequenceNode;

export interface ScalarNode {
  readonly kind: 'scalar';
  readonly span: Span;
  /** The text as the coach wrote it, without quotes. */
  readonly text: string;
  readonly value: string | number | boolean | null;
  readonly quoted: boolean;
}

export interface MapEntry {
  readonly key: string;
  readonly keySpan: Span;
  readonly value: Node;
}

export interface MapNode {
  readonly kind: 'map';
  readonly span: Span;
  readonly entries: readonly MapEntry[];
}

export interface SequenceNode {
  readonly kind: 'sequence';
  readonly span: Span;
  readonly items: readonly Node[];
}

/** One file of a plan: `season.yaml`, an included YAML file, or a CSV roster turned into the same shape. */
export interface Document {
  readonly file: SourceFile;
  readonly root: Node;
}

/** All files of a plan, entry file first, then the included ones in order of path. */
export interface Documents {
  readonly files: readonly SourceFile[];
  readonly documents: readonly Document[];
  /** Rows of the record files, where the plan names some. */
  readonly record?: RecordRows;
  /** A file of the plan couldn't be read, so that what it defines isn't known. */
  readonly isIncomplete?: true;
  /** Mistakes in the documents, which may bring others with them. */
  readonly mistakes?: readonly Mistake[];
}

/** A mistake in a file that was read all the same. */
export interface Mistake {
  readonly span: Span;
  /** The group it is in. */
  readonly around: Span;
  /** Keys of that group may have been lost, not only a value. */
  readonly losesKeys: boolean;
  /** The key at the left edge that it is under. */
  readonly section: string;
}

/** Each row a map from column to scalar. */
export interface RecordRows {
  readonly done: readonly MapNode[];
  readonly tests: readonly MapNode[];
}
