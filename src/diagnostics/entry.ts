// The shape of one catalogue entry, and the types that let `problem()` check a code's parameters. An area file under
// catalogue/ exports an object of entries; the parameters of a code are those its `message` asks for, so they are
// written down once.

export type Severity = 'error' | 'warning' | 'notice';

/** What a message may be told. */
export type Param = string | number | boolean | readonly string[];

/** `area/what-is-wrong`. */
export type CodeShape = `${string}/${string}`;

export interface Entry {
  readonly severity: Severity;
  /** What this code stands for, in a few words without anything from a plan: a heading. */
  readonly summary: string;
  /** Why it is wrong and what a coach does about it: one to four sentences. */
  readonly explanation: string;
  /** A few lines of a plan (or a CSV file, or a command) that are reported with this code. */
  readonly bad: string;
  /** The same lines as they should be. */
  readonly good: string;
  /** The words of one report: the value found and the value wanted. Ends with no full stop if it is one sentence. */
  readonly message: (params: never) => string;
  /** A few words under the marked span, if the report gives none. */
  readonly label?: (params: never) => string;
  /** What would be right, if the report gives none. */
  readonly help?: (params: never) => string;
}

export type Entries = Readonly<Record<CodeShape, Entry>>;

type MessageArguments<E extends Entry> = Parameters<E['message']>;

/** The parameters an entry's message asks for; an empty object where it asks for none. */
export type ParamsOf<E extends Entry> =
  MessageArguments<E> extends []
    ? Readonly<Record<string, never>>
    : MessageArguments<E>[0] & Readonly<Record<string, Param>>;

/** `params` may be left out only where the message asks for none. */
export type ParamsField<E extends Entry> =
  MessageArguments<E> extends [] ? { readonly params?: ParamsOf<E> } : { readonly params: MessageArguments<E>[0] };
