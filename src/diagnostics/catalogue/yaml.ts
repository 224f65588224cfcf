// What can be wrong with YAML as such, whatever it says: indentation, quotes, brackets, aliases. Reported while a file
// is parsed; every complaint of the parser comes out under one of these codes and in our words.

import type { Entries } from '../entry.ts';

export const yamlEntries = {
  'yaml/more': {
    severity: 'error',
    summary: 'more mistakes in a file than are shown',
    explanation:
      'After a hundred mistakes the rest of a file is not looked at: mostly it is another kind of file, or one slip near its top spoils all that follows.',
    bad: 'a file that is no YAML at all',
    good: 'footfall: 1',
    message: ({ most }: { most: number }) =>
      `this file has more mistakes than the first ${String(most)}, which are shown`,
    help: () => 'mend the first ones and try again',
  },
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
  'yaml/reserved-character': {
    severity: 'error',
    summary: 'a text that begins with a character YAML keeps for itself',
    explanation: 'A text without quotes cannot begin with @, `, %, |, > and a few others. Put it in quotes.',
    bad: 'title: @spring',
    good: 'title: "@spring"',
    message: ({ found }: { found: string }) => `a text without quotes cannot begin with ${found}`,
    help: () => 'put the text in double quotes',
  },
  'yaml/bad-escape': {
    severity: 'error',
    summary: 'a backslash that means nothing',
    explanation:
      'In double quotes a backslash begins an escape such as \\n or \\u00e9. For a plain backslash write two, or use single quotes.',
    bad: 'because: "hall \\closed"',
    good: "because: 'hall \\closed'",
    message: ({ found }: { found: string }) => `${found} is no escape that can stand in double quotes`,
    help: () => 'write \\\\ for a backslash, or put the text in single quotes',
  },
  'yaml/bad-text-block': {
    severity: 'error',
    summary: 'a text block whose lines do not line up',
    explanation:
      'A text begun with `|` or `>` stands on the following lines, each indented at least as far as the first of them, and nothing else stands behind the mark.',
    bad: 'cue: | Short contacts\n  knees up',
    good: 'cue: |\n  Short contacts\n  knees up',
    message: () => 'the lines of this text block do not line up',
    help: () => 'begin the text on the line below the mark and indent all its lines alike',
  },
  'yaml/long-key': {
    severity: 'error',
    summary: 'a key that is too long or runs over lines',
    explanation:
      'A key is one short word on one line. A long one is mostly a text with a colon in it, which needs quotes.',
    bad: '"mira\n  k": { squad: seniors }',
    good: 'mira-k: { squad: seniors }',
    message: () => 'a key has to stand on one line and be short',
    help: () => 'shorten it, or put the whole text in quotes if it is no key',
  },
  'yaml/key-not-text': {
    severity: 'error',
    summary: 'a key that is no word',
    explanation: 'Keys are words. A list, a group or nothing at all cannot be a key.',
    bad: '? [mira, jon]\n: { mass: 68 kg }',
    good: 'mira: { mass: 68 kg }\njon: { mass: 68 kg }',
    message: ({ found }: { found: string }) => `a key has to be a word, and this is ${found}`,
    help: () => 'write `key: value`, with a word for the key',
  },
  'yaml/duplicate-key': {
    severity: 'error',
    summary: 'a key twice in one group',
    explanation:
      'Each key stands once in its group. Of two, one would silently win, and nobody could say which the coach meant. Delete one, or merge them.',
    bad: 'mira:\n  mass: 68 kg\n  mass: 70 kg',
    good: 'mira:\n  mass: 70 kg',
    message: ({ key }: { key: string }) => `the key "${key}" is there twice`,
    label: () => 'again here',
    help: () => 'delete one of the two, or merge them',
  },
  'yaml/unknown-alias': {
    severity: 'error',
    summary: 'an alias of nothing',
    explanation:
      'A word that begins with `*` stands for what was marked with `&` and the same name further up in the same file. Nothing is. A text that really begins with a star needs quotes.',
    bad: 'kit: *hall-kit',
    good: 'kit: { hurdles: 8 }',
    message: ({ name }: { name: string }) =>
      `*${name} stands for something marked &${name} further up, and there is none`,
  },
  'yaml/alias-too-large': {
    severity: 'error',
    summary: 'aliases that stand for too much',
    explanation:
      'Aliases repeat what they stand for, and aliases of aliases repeat it many times over. A plan that grows so large by them is not read. What many athletes share is written once, in `squads:`.',
    bad: 'a: &a [x, x, x]\nb: &b [*a, *a, *a]\nc: &c [*b, *b, *b]\n…     # and so on',
    good: 'squads:\n  seniors: { level: intermediate }\n  juniors: { level: beginner }',
    message: ({ most }: { most: number }) => `the aliases of this file repeat more than ${String(most)} values`,
    label: () => 'here it becomes too much',
    help: () => 'write what many share once, in squads:, instead of repeating it with aliases',
  },
  'yaml/merge-key': {
    severity: 'error',
    summary: 'a merge key',
    explanation:
      'The key `<<` is no part of YAML 1.2, and what it brings in stands on no line of its own that a problem could be shown at. What many athletes share is written once in `squads:`.',
    bad: 'mira: &senior { level: intermediate }\njon: { <<: *senior, mass: 82 kg }',
    good: 'mira: { squad: seniors }\njon: { squad: seniors, mass: 82 kg }',
    message: () => 'the merge key << is not used in plans',
    help: () => 'write what athletes share in squads: and name the squad, or write the values out',
  },
  'yaml/anchor': {
    severity: 'error',
    summary: 'an anchor in the wrong place',
    explanation: 'An anchor `&name` stands once, before the value it marks; an alias `*name` stands alone.',
    bad: 'kit: &a &b { hurdles: 8 }',
    good: 'kit: &a { hurdles: 8 }',
    message: () => 'an anchor or a tag cannot stand here',
    help: () => 'delete it',
  },
  'yaml/tag': {
    severity: 'error',
    summary: 'a tag',
    explanation:
      'Tags such as `!!str` or `!mine` tell a parser the kind of a value. In a plan each key knows its kind. Use quotes for a text.',
    bad: 'name: !!str 12',
    good: 'name: "12"',
    message: ({ tag }: { tag: string }) => `the tag ${tag} is not used in plans`,
    help: () => 'delete it; quotes make a value a text',
  },
  'yaml/directive': {
    severity: 'error',
    summary: 'a line for the YAML parser',
    explanation:
      'Lines that begin with % at the top of a file change how YAML is read: `%YAML 1.1` turns `no` and `on` into values and 12:30 into a number. Plans are YAML 1.2 everywhere.',
    bad: '%YAML 1.1\n---\nfootfall: 1',
    good: 'footfall: 1',
    message: ({ found }: { found: string }) => `the line ${found} is not used in plans, which are YAML 1.2`,
    help: () => 'delete this line and the --- below it',
  },
  'yaml/several-documents': {
    severity: 'error',
    summary: 'more than one document in a file',
    explanation:
      'A line of three dashes begins another document, and a plan file is one. Put the rest into a file of its own and list it in `files:`.',
    bad: 'season: { title: Spring, starts: 2027-01-04 }\n---\ntests: []',
    good: 'season: { title: Spring, starts: 2027-01-04 }\ntests: []',
    message: () => 'a second document begins here, and a plan file is one',
    help: () => 'delete the line of dashes, or put the rest into a file of its own and list it in files:',
  },
  'yaml/too-deep': {
    severity: 'error',
    summary: 'too many levels',
    explanation: 'A plan has about ten levels. A file with so many more is damaged or not a plan, and is not read.',
    bad: 'files: [[[[[[[[[[ … ]]]]]]]]]]',
    good: 'files: [drills.yaml]',
    message: ({ most }: { most: number }) => `this is more than ${String(most)} levels deep`,
  },
  'yaml/too-long': {
    severity: 'error',
    summary: 'more values than any plan has',
    explanation:
      'A squad of ten thousand athletes has less than a million words and marks. A file with so many more is damaged or not a plan, and is read no further. A large squad is kept shorter as a roster in CSV.',
    bad: 'files: [[], [], [], … ]',
    good: 'roster: squad/roster.csv',
    message: ({ most }: { most: number }) =>
      `this file has more than ${String(most)} words and marks, the last one read is here`,
    help: () => 'check that this is the file you mean; split it, or keep a large squad as a roster in CSV',
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
