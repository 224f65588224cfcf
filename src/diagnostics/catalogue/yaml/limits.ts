// What YAML has and a plan doesn't take: characters and escapes that mean something else, keys that are long, no text
// or there twice, anchors, tags, several documents, and more of anything than is read. Joined by ../yaml.ts.

import type { Entries } from '../../entry.ts';

export const yamlLimits = {
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
} as const satisfies Entries;
