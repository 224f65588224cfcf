// What can be wrong with the files a plan is made of: missing ones, folders, globs that find nothing, paths that lead
// out of the plan. Reported while a plan's files are gathered.

import type { Entries } from '../entry.ts';

export const filesEntries = {
  'files/missing': {
    severity: 'error',
    summary: 'a file that is not there',
    explanation:
      'The plan, or a line of it, names a file that does not exist. Paths in a plan start at the folder of its entry file, with forward slashes, and letter case counts.',
    bad: 'files: [squads/seniors.yaml]    # the folder is called squad',
    good: 'files: [squad/seniors.yaml]',
    message: ({ wanted }: { wanted: string }) => `there is no file "${wanted}"`,
  },
  'files/no-season': {
    severity: 'error',
    summary: 'a folder without a season.yaml',
    explanation:
      'A folder given as a plan means the season.yaml in it. This folder has none. Name the entry file itself, or begin a plan with `footfall new DIR`.',
    bad: 'footfall build examples',
    good: 'footfall build examples/handball-spring',
    message: ({ folder }: { folder: string }) => `the folder "${folder}" has no season.yaml`,
  },
  'files/folder': {
    severity: 'error',
    summary: 'a folder where a file should be',
    explanation: 'A line that wants a file names a folder. To take in every file of a folder, write a glob.',
    bad: 'files: [squad]',
    good: 'files: [squad/*.yaml]',
    message: ({ wanted }: { wanted: string }) => `"${wanted}" is a folder, and a file is wanted`,
  },
  'files/not-a-file': {
    severity: 'error',
    summary: 'something that is neither a file nor a folder',
    explanation: 'A plan is read from ordinary files. Pipes, sockets and devices are not read.',
    bad: 'files: [control.pipe]',
    good: 'files: [squad/seniors.yaml]',
    message: ({ wanted }: { wanted: string }) => `"${wanted}" is a pipe, a device or the like, and a file is wanted`,
  },
  'files/unreadable': {
    severity: 'error',
    summary: 'a file that cannot be read',
    explanation:
      'The file, or the folder that a glob looks through, is there, and the system refuses to open it: mostly its permissions, or another program holds it. A link that leads nowhere or in a circle cannot be read either.',
    bad: 'files: [locked.yaml]     # permissions: none',
    good: 'files: [locked.yaml]     # permissions: readable',
    message: ({ wanted, reason }: { wanted: string; reason: string }) => `"${wanted}" cannot be read: ${reason}`,
  },
  'files/no-match': {
    severity: 'error',
    summary: 'a glob that finds no file',
    explanation:
      'A glob in `files:` has to find at least one file, because a squad left out by a slip would otherwise train nothing and nobody would be told. `*` stands for any part of one name, `**` for any folders, `?` for one character; letter case counts.',
    bad: 'files: [squad/*.yml]     # the files end in .yaml',
    good: 'files: [squad/*.yaml]',
    message: ({ pattern }: { pattern: string }) => `"${pattern}" finds no file`,
  },
  'files/outside': {
    severity: 'error',
    summary: 'a path that leads out of the plan folder',
    explanation:
      'Everything a plan reads lies in the folder of its entry file, so that the folder is the whole plan, on any machine and in git. Paths that leave it, through `..`, from the root, from a home folder, in the forms of Windows, or through a link, are refused.',
    bad: 'files: [../last-year/drills.yaml]',
    good: 'files: [drills.yaml]     # copied into the plan folder',
    message: ({ wanted, way }: { wanted: string; way: string }) => `"${wanted}" ${way}`,
    help: () => 'copy the file into the plan folder and write its path from there',
  },
  'files/not-portable': {
    severity: 'error',
    summary: 'a path that is not the same on every system',
    explanation:
      'Paths in a plan are written with forward slashes and without a colon, so that the plan builds on any machine.',
    bad: 'files: [squad\\seniors.yaml]',
    good: 'files: [squad/seniors.yaml]',
    message: ({ wanted, way }: { wanted: string; way: string }) => `"${wanted}" ${way}`,
  },
  'files/wrong-ending': {
    severity: 'error',
    summary: 'a file of another kind than wanted',
    explanation:
      'The ending of a file name says how it is read: `files:` takes .yaml and .yml, `roster:` and `record:` take .csv.',
    bad: 'files: [squad/roster.csv]',
    good: 'roster: squad/roster.csv',
    message: ({ wanted, endings, key }: { wanted: string; endings: string; key: string }) =>
      `${key} takes files that end in ${endings}, and this is "${wanted}"`,
  },
  'files/listed-twice': {
    severity: 'warning',
    summary: 'a file listed twice',
    explanation: 'A file is read once, however often it is listed. This line adds nothing and can be deleted.',
    bad: 'files: [squad/*.yaml, squad/seniors.yaml]',
    good: 'files: [squad/*.yaml]',
    message: ({ wanted }: { wanted: string }) => `"${wanted}" adds no file that is not read already`,
    help: () => 'delete this item',
  },
  'files/too-many': {
    severity: 'error',
    summary: 'more files than a plan can have',
    explanation:
      'The glob looks through, or finds, far more files than a plan has. It is mostly one that starts too high up and reaches into other folders. Name the folder it should stay in.',
    bad: 'files: ["**/*.yaml"]',
    good: 'files: [squad/*.yaml]',
    message: ({ pattern, most }: { pattern: string; most: number }) =>
      `"${pattern}" looks through more than ${String(most)} files and folders`,
    help: () => 'name the folder the glob should stay in',
  },
} as const satisfies Entries;
