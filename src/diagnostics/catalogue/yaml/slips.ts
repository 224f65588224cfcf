// Slips of the pen in YAML: a quote, a bracket, a comma, a colon or a dash that is missing or too much, a line too far left
// or right. Joined by ../yaml.ts.

import type { Entries } from '../../entry.ts';

export const yamlSlips = {
  'yaml/tab-indent': {
    severity: 'error',
    summary: 'a tab for indentation',
    explanation:
      'In YAML a line belongs to the one above by the number of spaces before it. Tabs are not allowed there, because nobody can say how many spaces a tab is.',
    bad: 'season:\n	title: Spring\n	starts: 2027-01-04',
    good: 'season:\n  title: Spring\n  starts: 2027-01-04',
    message: ({ lines }: { lines: number }) =>
      lines === 1
        ? 'this line is indented with a tab'
        : `${String(lines)} lines are indented with tabs, the first one here`,
    label: () => 'a tab',
    help: () => 'indent with spaces, two for each level; most editors can turn tabs into spaces',
  },
  'yaml/unclosed-quote': {
    severity: 'error',
    summary: 'a quote that is never closed',
    explanation:
      'A text that begins with a quote runs to the next quote of the same kind, over line ends too. Here there is none. A quote mark inside a text needs the other kind of quotes around it.',
    bad: 'title: "Spring season',
    good: 'title: "Spring season"',
    message: ({ quote }: { quote: string }) => `the quote ${quote} that begins this text is never closed`,
    label: () => 'opened here',
    help: ({ quote }: { quote: string }) => `close the text with ${quote}`,
  },
  'yaml/quote-inside': {
    severity: 'error',
    summary: 'a quote inside a text in the same quotes',
    explanation:
      'A text in quotes ends at the next quote of the same kind, so an apostrophe ends one in single quotes. Put a text with an apostrophe in double quotes, and one with double quotes in single ones.',
    bad: "because: 'coach's day off'",
    good: 'because: "coach\'s day off"',
    message: ({ quote }: { quote: string }) => `this ${quote} ends the text, and more of it stands right behind`,
    label: () => 'the text ends here',
    help: ({ quote }: { quote: string }) =>
      quote === '"'
        ? "put the whole text in single quotes, with '' for an apostrophe"
        : 'put the whole text in double quotes',
  },
  'yaml/unclosed-bracket': {
    severity: 'error',
    summary: 'a bracket that is never closed',
    explanation: 'Every `[` needs its `]` and every `{` its `}`, indented further than the line that opens it.',
    bad: 'files: [squad/*.yaml, drills.yaml',
    good: 'files: [squad/*.yaml, drills.yaml]',
    message: ({ open, close }: { open: string; close: string }) => `this ${open} is never closed with ${close}`,
    label: () => 'opened here',
  },
  'yaml/stray-bracket': {
    severity: 'error',
    summary: 'a closing bracket nothing opened',
    explanation: 'A `]` or `}` closes a bracket that was opened before. Here none is open. In a text it needs quotes.',
    bad: 'files: [squad/*.yaml]]',
    good: 'files: [squad/*.yaml]',
    message: ({ found }: { found: string }) => `there is a ${found} here, and nothing that it closes`,
    help: () => 'delete it, or put the text it belongs to in quotes',
  },
  'yaml/missing-comma': {
    severity: 'error',
    summary: 'items in brackets without a comma between them',
    explanation: 'Between `[` and `]`, or `{` and `}`, items are separated by commas.',
    bad: 'slots:\n  - { day: tuesday minutes: 75, place: hall }',
    good: 'slots:\n  - { day: tuesday, minutes: 75, place: hall }',
    message: () => 'a comma is missing before this item',
    label: () => 'this item',
  },
  'yaml/extra-comma': {
    severity: 'error',
    summary: 'a comma with nothing before it',
    explanation: 'Two commas in a row, or one right after an opening bracket, leave an empty item.',
    bad: 'files: [squad/*.yaml, , drills.yaml]',
    good: 'files: [squad/*.yaml, drills.yaml]',
    message: () => 'there is a comma here with no item before it',
    help: () => 'delete the comma, or write the item that belongs before it',
  },
  'yaml/missing-colon': {
    severity: 'error',
    summary: 'a key without its colon',
    explanation:
      'Among lines of `key: value`, each line needs a key, a colon and a space. A line without them is mostly a forgotten colon, or the rest of a text that needs quotes.',
    bad: 'season:\n  title: Spring\n  starts 2027-01-04',
    good: 'season:\n  title: Spring\n  starts: 2027-01-04',
    message: () => 'a key and a colon are wanted here',
    help: () => 'write `key: value`, with a space behind the colon',
  },
  'yaml/missing-space': {
    severity: 'error',
    summary: 'a colon without a space behind it',
    explanation:
      'Only a colon with a space behind it ends a key, so that times and addresses need no quotes. Without the space the whole line is one text.',
    bad: 'season:\n  title:Spring\n  starts: 2027-01-04',
    good: 'season:\n  title: Spring\n  starts: 2027-01-04',
    message: ({ key }: { key: string }) => `a space is missing behind the colon of "${key}"`,
    help: () => 'write `key: value`, with a space behind the colon',
  },
  'yaml/decimal-comma': {
    severity: 'error',
    summary: 'a decimal comma inside brackets',
    explanation:
      'Inside `{ }` and `[ ]` a comma begins a new entry, so that `68,5 kg` is 68 and then something else. Numbers are written with a decimal point.',
    bad: 'mira: { mass: 68,5 kg }',
    good: 'mira: { mass: 68.5 kg }',
    message: ({ found, wanted }: { found: string; wanted: string }) =>
      `"${found}" has a decimal comma, and inside brackets a comma begins a new entry: write ${wanted}`,
  },
  'yaml/dash-without-space': {
    severity: 'error',
    summary: 'a dash without a space behind it',
    explanation: 'Each item of a list begins with a dash and a space. Without the space the dash is part of a word.',
    bad: 'slots:\n  -{ day: tuesday, minutes: 75, place: hall }',
    good: 'slots:\n  - { day: tuesday, minutes: 75, place: hall }',
    message: () => 'a space is missing behind this dash',
    help: () => 'write `- ` before each item of a list',
  },
  'yaml/missing-dash': {
    severity: 'error',
    summary: 'an item of a list without its dash',
    explanation:
      'Each item of a list begins with a dash and a space. Without it the item is read as part of the one above, or as nothing at all.',
    bad: 'slots:\n  - { day: tuesday, minutes: 75, place: hall }\n  { day: thursday, minutes: 75, place: hall }',
    good: 'slots:\n  - { day: tuesday, minutes: 75, place: hall }\n  - { day: thursday, minutes: 75, place: hall }',
    message: () => 'a dash is missing before this item',
    help: () => 'write `- ` before each item of a list',
  },
  'yaml/outdented': {
    severity: 'error',
    summary: 'a line that stands left of its group',
    explanation:
      'What belongs to a key stands below it, each line with the same number of spaces before it. This line stands left of the lines it belongs with, in the column of the key above.',
    bad: 'season:\ntitle: Spring\n  starts: 2027-01-04',
    good: 'season:\n  title: Spring\n  starts: 2027-01-04',
    message: () => 'this line stands left of the lines below it that it belongs with',
    help: () => 'give it as many spaces as those lines',
  },
  'yaml/key-under-value': {
    severity: 'error',
    summary: 'a key indented under a line that has a value',
    explanation:
      'A key has either a value on its line or a group indented under it. Here the line above has its value already. Give this line the indentation of the one above, or move that value.',
    bad: 'mira:\n  squad: seniors\n    mass: 68 kg',
    good: 'mira:\n  squad: seniors\n  mass: 68 kg',
    message: () => 'this key is indented under a line that already has a value',
    help: () => 'give it as many spaces as the key above, or delete the value there',
  },
  'yaml/colon-in-text': {
    severity: 'error',
    summary: 'a colon inside a text without quotes',
    explanation:
      'A colon and a space turn what stands before them into a key, and a line can have only one key. A text with a colon in it needs quotes.',
    bad: 'because: physio: left knee',
    good: 'because: "physio: left knee"',
    message: () => 'there are two keys on this line',
    label: () => 'the second colon makes this a key',
    help: () => 'if the colon belongs to the text, put the text in double quotes; otherwise start a new line',
  },
  'yaml/indent': {
    severity: 'error',
    summary: 'a line indented to no level',
    explanation:
      'Lines of one group begin in the same column, and what belongs to a line is indented further than it. This line fits neither.',
    bad: 'season:\n    title: Spring\n  starts: 2027-01-04',
    good: 'season:\n  title: Spring\n  starts: 2027-01-04',
    message: () => 'this line is indented to no level of the lines above',
    help: () => 'give it as many spaces as the lines it belongs with',
  },
  'yaml/mixed-list': {
    severity: 'error',
    summary: 'a list item among keys, or a key among list items',
    explanation:
      'A group is either a list, every item with `- ` before it, or keys with values. One group can’t be both.',
    bad: 'slots:\n  - { day: tuesday, minutes: 75, place: hall }\n  day: thursday',
    good: 'slots:\n  - { day: tuesday, minutes: 75, place: hall }\n  - { day: thursday, minutes: 75, place: hall }',
    message: () => 'list items and keys are mixed in one group here',
    help: () => 'begin every item of a list with `- `, and every key of a group without it',
  },
  'yaml/item-in-text': {
    severity: 'error',
    summary: 'a list item that is read as part of a text',
    explanation:
      'A line indented further than a text continues the text, even if it begins with a dash. Items of one list have their dashes in the same column; a text with dashes in it needs quotes.',
    bad: 'files:\n  - drills.yaml\n    - squad/seniors.yaml',
    good: 'files:\n  - drills.yaml\n  - squad/seniors.yaml',
    message: () => 'this line is indented under a text, and its dash is read as part of that text',
    help: () => 'put the dash in the column of the other items, or the whole text in quotes',
  },
  'yaml/list-on-key-line': {
    severity: 'error',
    summary: 'a list begun on the line of its key',
    explanation: 'A list with `- ` begins on the line below its key. On the same line it is written in brackets.',
    bad: 'files: - drills.yaml',
    good: 'files: [drills.yaml]',
    message: () => 'a list cannot begin on the line of its key',
    help: () => 'start the list on the next line, or write it in [ ]',
  },
  'yaml/block-in-brackets': {
    severity: 'error',
    summary: 'an indented list or text inside brackets',
    explanation:
      'Inside `[ ]` and `{ }` lists and texts are written in brackets and quotes too, not with `- `, `|` or `>`.',
    bad: 'files: [\n  - drills.yaml\n]',
    good: 'files: [drills.yaml]',
    message: () => 'this form cannot stand inside brackets',
    help: () => 'inside brackets write lists as [a, b] and texts in quotes',
  },
  'yaml/syntax': {
    severity: 'error',
    summary: 'something that cannot stand here',
    explanation:
      'The line cannot be read as YAML: a character or a word stands where none can. Mostly quotes are missing around a text with : # [ ] { } , & * in it.',
    bad: 'title: "Spring" season',
    good: 'title: "Spring season"',
    message: ({ found }: { found: string }) => `${found} cannot stand here`,
    help: () => 'put texts with special characters in double quotes',
  },
} as const satisfies Entries;
