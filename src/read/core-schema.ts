// What a text without quotes stands for: the scalars of the YAML 1.2 core schema. Used for YAML and for the cells of a
// CSV file, so that both read alike. `no`, `yes`, `on` and dates stay texts, and a directive in a file changes nothing.
// Source: YAML 1.2.2, section 10.3.2, https://yaml.org/spec/1.2.2/#1032-tag-resolution

const DECIMAL = /^[-+]?(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:[eE][-+]?[0-9]+)?$/u;
const OCTAL = /^0o[0-7]+$/u;
const HEXADECIMAL = /^0x[0-9a-fA-F]+$/u;
const INFINITE = /^([-+]?)\.(?:inf|Inf|INF)$/u;

const WORDS: ReadonlyMap<string, boolean | null | number> = new Map<string, boolean | null | number>([
  ...['', '~', 'null', 'Null', 'NULL'].map((word) => [word, null] as const),
  ...['true', 'True', 'TRUE'].map((word) => [word, true] as const),
  ...['false', 'False', 'FALSE'].map((word) => [word, false] as const),
  ...['.nan', '.NaN', '.NAN'].map((word) => [word, Number.NaN] as const),
]);

/** The value of a plain scalar. */
export function coreValue(text: string): string | number | boolean | null {
  const word = WORDS.get(text);
  if (word !== undefined) return word;
  if (!/^[-+.0-9]/u.test(text)) return text;
  if (DECIMAL.test(text)) return Number(text);
  if (OCTAL.test(text)) return Number.parseInt(text.slice(2), 8);
  if (HEXADECIMAL.test(text)) return Number.parseInt(text.slice(2), 16);
  const sign = INFINITE.exec(text)?.[1];
  if (sign === undefined) return text;
  return sign === '-' ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
}
