// What can be wrong with a file before a word of it is read: its bytes, its size, characters that can't be seen.
// Reported while a file is loaded.

import type { Entries } from '../entry.ts';

export const sourceEntries = {
  'source/binary': {
    severity: 'error',
    summary: 'a file that is not text',
    explanation:
      'A plan is plain text: YAML, or CSV for rosters and records. This file holds bytes no text has, as pictures, spreadsheets and archives do. Save a spreadsheet as CSV (UTF-8) and name that file.',
    bad: 'roster: squad/roster.csv     # a spreadsheet under the name of a CSV file',
    good: 'roster: squad/roster.csv     # saved from it as CSV (UTF-8)',
    message: ({ found }: { found: string }) => `this is not a text file: ${found}`,
    help: () => 'name a text file; a spreadsheet is saved as CSV (UTF-8) first',
  },
  'source/not-utf8': {
    severity: 'error',
    summary: 'text in another encoding than UTF-8',
    explanation:
      'Files are read as UTF-8, so that names come out the same on every machine. This one was saved in another encoding, mostly Latin-1 or Windows-1252 from an older spreadsheet. Save it again as UTF-8.',
    bad: 'name: Zo\\xE9 M.        # one byte for the letter, as Latin-1 has it',
    good: 'name: Zoé M.           # saved as UTF-8',
    message: ({ byte, guess }: { byte: string; guess: string }) =>
      `this file is not UTF-8: the byte ${byte} here is no character of it${guess}`,
    label: () => 'the first byte that does not fit',
    help: () => 'save the file again with the encoding UTF-8',
  },
  'source/utf16': {
    severity: 'error',
    summary: 'text saved as UTF-16',
    explanation:
      'Files are read as UTF-8. This one begins with the mark of UTF-16, which some editors and spreadsheets call "Unicode". Save it again as UTF-8.',
    bad: 'title: Spring     # saved as "Unicode", which is UTF-16',
    good: 'title: Spring     # saved as UTF-8',
    message: () => 'this file is saved as UTF-16, and a plan is UTF-8',
    help: () => 'save the file again with the encoding UTF-8',
  },
  'source/too-large': {
    severity: 'error',
    summary: 'a file larger than any plan',
    explanation:
      'A season of ten thousand athletes takes a few megabytes. A file far larger is the wrong file, or one that grew by mistake, and is not read at all. A large squad is kept shorter as a roster in CSV.',
    bad: 'files: [backup.yaml]     # 50 MB',
    good: 'roster: squad/roster.csv',
    message: ({ size, most }: { size: string; most: string }) => `this file has ${size}, and at most ${most} are read`,
    help: () => 'check that this is the file you mean; split it, or keep a large squad as a roster in CSV',
  },
  'source/empty': {
    severity: 'error',
    summary: 'a file with nothing in it',
    explanation:
      'The entry file of a plan says at least which language it is written in, when the season starts and who trains. An empty file, or one of comments only, is most often one that was not saved.',
    bad: '# season to come',
    good: 'footfall: 1\nseason: { title: Spring, starts: 2027-01-04 }',
    message: ({ what }: { what: string }) => `this file is empty: ${what}`,
  },
  'source/control-character': {
    severity: 'error',
    summary: 'a control character in the text',
    explanation:
      'Control characters other than line ends and tabs can be seen in no editor and have no place in a plan. They come from copying out of a terminal or a damaged file. Delete them.',
    bad: 'title: Spring\\x07 season',
    good: 'title: Spring season',
    message: ({ character }: { character: string }) => `there is an invisible control character ${character} here`,
    label: () => 'here, though it cannot be seen',
    help: () => 'delete it, or type the line anew',
  },
  'source/no-break-space': {
    severity: 'error',
    summary: 'a no-break space where a space is meant',
    explanation:
      'A no-break space looks like a space and is another character, so `68 kg` with one is not a mass and a key indented with one is not indented. Word processors, web pages and some keyboards put it in. Inside quotes it is kept as written.',
    bad: 'mass: 68\\u00A0kg',
    good: 'mass: 68 kg',
    message: ({ name, character }: { name: string; character: string }) =>
      `this looks like a space and is a ${name} (${character})`,
    label: () => 'not a plain space',
    help: () => 'type a plain space instead; if it belongs to a text, put the text in quotes',
  },
  'source/invisible-character': {
    severity: 'error',
    summary: 'a character that cannot be seen',
    explanation:
      'Zero-width spaces and marks of the writing direction cannot be seen, make two equal-looking names different, and can show a line otherwise than it is read. Delete them. Inside quotes they are kept as written.',
    bad: 'squad: seniors\\u200B',
    good: 'squad: seniors',
    message: ({ name, character }: { name: string; character: string }) =>
      `there is an invisible ${name} (${character}) here`,
    label: () => 'here, though it cannot be seen',
    help: () => 'delete it, or type the line anew; if it belongs to a text, put the text in quotes',
  },
  'source/lone-carriage-return': {
    severity: 'error',
    summary: 'lines that end with a carriage return alone',
    explanation:
      'Lines end with a line feed, or with a carriage return and a line feed. A carriage return alone ended lines on machines of long ago; editors and git today show such lines as one, so that what is seen is not what is read.',
    bad: 'season:\\r  title: Spring\\r  starts: 2027-01-04\\r',
    good: 'season:\n  title: Spring\n  starts: 2027-01-04',
    message: ({ count }: { count: number }) =>
      count === 1
        ? 'a line ends here with a carriage return alone'
        : `${String(count)} lines end with a carriage return alone, the first one here`,
    label: () => 'the line ends here',
    help: () => 'save the file with the line ends of Unix (LF) or Windows (CRLF)',
  },
} as const satisfies Entries;
