// Random YAML for property tests: heaps of pieces, and sound texts with a few pieces put in, left out or changed.

import fc from 'fast-check';

const pieces = [
  'a',
  'b',
  'c: ',
  'd: ',
  'k: v',
  ': ',
  ':',
  '- ',
  '-',
  '\n',
  '\n  ',
  '\n    ',
  '\n ',
  '[',
  ']',
  '{',
  '}',
  ', ',
  ',',
  '"',
  "'",
  '"x"',
  "'y'",
  '#',
  ' #c',
  '&a ',
  '*a',
  '!t ',
  '? ',
  '|',
  '>',
  '|2',
  '>-',
  '\n\n',
  '\t',
  ' ',
  '  ',
  '---',
  '...',
  '\n---\n',
  '%YAML 1.1\n',
  '\\',
  '\\n',
  '<<: ',
  'no',
  '1',
  '1.5e3',
  '~',
  '0x1f',
  '@',
  '`',
  '%',
  '\r\n',
  'é',
  '🏐',
  'a-b',
  '2027-01-04',
  'x:y',
  '-x',
  '?x',
  '""',
  '"a\n b"',
  'w w',
  '\u00A0',
  '\r',
  '\uFEFF',
  '\u0007',
  "''",
  '\\"',
];

const soundTexts = [
  'a: 1\nb:\n  c: d\n  e:\n  - f\n  - g: h\n    i: j\n',
  'slots:\n  - { day: tuesday, at: "18:00", minutes: 75, place: hall }\n  - { day: sat, use: [a, b] }\n',
  'x: |\n  foo\n   bar\n\n  baz\ny: >-\n  a\n  b\n\n  c\nz: 1\n',
  "a: &x [1, 2]\nb: *x\nc: \"q\\u00e9 \n  r\"\nd: 'it''s'\n",
  '- a\n-\n  - b\n  - - c\n    - d\n- e: f\n  g:\n   - h\n',
];

const piece = fc.constantFrom(...pieces);

const heap = fc.array(piece, { maxLength: 16 }).map((parts) => parts.join(''));

interface Edit {
  readonly at: number;
  readonly remove: number;
  readonly insert: string;
}

const edited = (text: string, edits: readonly Edit[]): string =>
  edits.reduce((before, { at, remove, insert }) => {
    const place = at % (before.length + 1);
    return before.slice(0, place) + insert + before.slice(place + remove);
  }, text);

const edit = fc.record({ at: fc.nat(200), remove: fc.nat(3), insert: fc.oneof(piece, fc.constant('')) });

const mutated = fc
  .tuple(fc.constantFrom(...soundTexts), fc.array(edit, { minLength: 1, maxLength: 4 }))
  .map(([text, edits]) => edited(text, edits));

export const anyYaml: fc.Arbitrary<string> = fc.oneof(heap, mutated, fc.string({ unit: 'binary' }));
