// The rules of who may import whom, read by dependency-cruiser in `npm run layers` and by layers.test.ts, which plants
// one violation of each. Imports point from a later stage to an earlier one; every rule's comment says what to do
// instead. The TypeScript source is parsed by swc, which sees type-only imports as well.

/** Rooms that depend on nothing that happens in the pipeline, in their own order. */
const GROUND = ['util', 'source', 'diagnostics', 'library', 'plan'];

/**
 * Each room of src/, earliest first: the rooms it may import, and the way out for somebody who wants another.
 * @type {ReadonlyArray<{room: string, may: readonly string[], instead: string}>}
 */
export const ROOMS = [
  { room: 'util', may: [], instead: 'src/util depends on nothing: move what needs more into the room that owns it.' },
  {
    room: 'source',
    may: ['util'],
    instead: 'src/source knows files and places only: take what you need as an argument.',
  },
  {
    room: 'diagnostics',
    may: ['util', 'source'],
    instead: 'A diagnostic is data: have the stage that reports it hand over plain params instead of its own types.',
  },
  {
    room: 'library',
    may: ['util', 'source', 'diagnostics'],
    instead: 'The library holds numbers and names that nobody derives: move the logic into the stage that uses them.',
  },
  {
    room: 'read',
    may: ['util', 'source', 'diagnostics'],
    instead:
      'Readers turn text into located nodes and know nothing of what the nodes mean: interpret them in src/language.',
  },
  {
    room: 'language',
    may: ['read', ...GROUND],
    instead: 'Decoding ends at the authored file: bind names and fill defaults in src/plan, compute in src/schedule.',
  },
  {
    room: 'plan',
    may: ['language', 'util', 'source', 'diagnostics', 'library'],
    instead:
      'The plan is what the coach wrote, made whole: leave everything that is decided or computed to src/schedule.',
  },
  {
    room: 'record',
    may: ['read', 'language', ...GROUND],
    instead: 'The record is what was done, whatever is planned next: let the later stage read the record.',
  },
  {
    room: 'build',
    may: ['record', ...GROUND],
    instead:
      'src/build holds the shape of a result and not how it is made: fill it in src/schedule, read it in src/report.',
  },
  {
    room: 'schedule',
    may: ['build', 'record', ...GROUND],
    instead: 'The scheduler is given a plan and returns a schedule: bind what it needs in src/plan and pass it in.',
  },
  {
    room: 'audit',
    may: ['build', 'record', ...GROUND],
    instead: 'A rule reads a compiled build and works the rest out again for itself: put what it lacks into src/build.',
  },
  {
    room: 'diff',
    may: ['build', 'record', ...GROUND],
    instead: 'A diff compares two builds: put what it lacks into src/build, and words into src/report.',
  },
  {
    room: 'reuse',
    may: ['audit', 'schedule', 'build', ...GROUND],
    instead: 'What is kept is what a build says: have the command make of an athlete what it wants to find again.',
  },
  {
    room: 'report',
    may: ['diff', 'audit', 'build', 'record', ...GROUND],
    instead: 'A report arranges what a build already says: put what it lacks into src/build instead of asking a stage.',
  },
  {
    room: 'render',
    may: ['report', 'diagnostics', 'source', 'util'],
    instead:
      'A renderer reads a report and nothing else: add what it lacks to src/report, so that every format gets it.',
  },
  {
    room: 'host',
    may: ['diff', 'read', ...GROUND],
    instead:
      'The host answers questions about files, time and terminal: call the stages from src/cli or src/compile.ts.',
  },
  {
    room: 'cli',
    may: [
      'host',
      'render',
      'report',
      'reuse',
      'diff',
      'audit',
      'schedule',
      'build',
      'record',
      'language',
      'read',
      ...GROUND,
    ],
    instead: 'Nothing follows the command line.',
  },
];

/**
 * Packages with one owner. `owners` are paths below src/ as regular expressions.
 * @type {ReadonlyArray<{name: string, owners: readonly string[], instead: string}>}
 */
export const OWNED_PACKAGES = [
  { name: 'yaml', owners: ['read/'], instead: 'Use the nodes of src/read/types.ts, which carry their places.' },
  {
    name: 'csv-parse',
    owners: ['read/'],
    instead: 'Read tables through src/read, which keeps the place of each cell.',
  },
  {
    name: 'csv-stringify',
    owners: ['render/csv/'],
    instead: 'Give src/report a table and let src/render/csv write it.',
  },
  {
    name: 'chalk',
    owners: ['render/terminal/', 'render/palette\\.ts'],
    instead: 'Colour by meaning through src/render/palette.ts, or render in src/render/terminal.',
  },
  {
    name: 'luxon',
    owners: ['render/', 'host/'],
    instead: 'Count days as src/plan does; time zones matter to calendars and the clock only.',
  },
  {
    name: 'd3-scale',
    owners: ['render/html/'],
    instead: 'A chart is drawn in src/render/html from numbers that src/report already holds.',
  },
  {
    name: 'd3-shape',
    owners: ['render/html/'],
    instead: 'A chart is drawn in src/render/html from numbers that src/report already holds.',
  },
  {
    name: 'preact',
    owners: ['render/html/'],
    instead: 'Pages are made in src/render/html; give src/report what they should say.',
  },
  {
    name: 'preact-render-to-string',
    owners: ['render/html/'],
    instead: 'Pages are made in src/render/html; give src/report what they should say.',
  },
  {
    name: 'ical-generator',
    owners: ['render/ical/'],
    instead: 'Give src/report the events and let src/render/ical write the calendar.',
  },
  {
    name: 'timezones-ical-library',
    owners: ['render/ical/'],
    instead: 'Give src/report the events and let src/render/ical write the calendar.',
  },
  { name: 'commander', owners: ['cli/'], instead: 'Read options in src/cli and pass what they mean.' },
  {
    name: 'chokidar',
    owners: ['host/'],
    instead: 'Ask src/host to watch files: what a save means is for the commands to say.',
  },
  { name: 'execa', owners: ['diff/', 'host/'], instead: 'Ask src/host to run a program, and pass in what it said.' },
];

/** Node's own modules that don't touch the machine, and so may be used anywhere. */
const PURE_NODE_MODULES = ['assert', 'buffer', 'crypto', 'path/posix', 'string_decoder', 'url', 'util'];

/** @param {readonly string[]} names */
const either = (names) => `(${names.join('|')})`;

/**
 * @param {{room: string, may: readonly string[], instead: string}} layer
 * @returns {import('dependency-cruiser').IForbiddenRuleType}
 */
function roomRule({ room, may, instead }) {
  return {
    name: `${room}-imports-only-what-comes-before`,
    severity: 'error',
    comment: instead,
    from: { path: `^src/${room}/` },
    to: { path: '^src/', pathNot: `^src/${either([room, ...may])}/` },
  };
}

/**
 * @param {{name: string, owners: readonly string[], instead: string}} owned
 * @returns {import('dependency-cruiser').IForbiddenRuleType}
 */
function packageRule({ name, owners, instead }) {
  return {
    name: `${name}-has-one-owner`,
    severity: 'error',
    comment: instead,
    from: { path: '^(src|bin)/', pathNot: `^src/${either(owners)}` },
    to: { path: `(^|node_modules/)${name}(/|$)`, pathNot: '^src/' },
  };
}

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: [
    {
      name: 'audit-and-schedule-share-nothing',
      severity: 'error',
      comment:
        'The audit finds the mistakes of the scheduler only while it works everything out anew: write the sum again in ' +
        'src/audit, or move a bare formula with a published source to src/record or src/util.',
      from: { path: '^src/(audit|schedule)/' },
      to: { path: '^src/(audit|schedule)/', pathNot: '^src/$1/' },
    },
    {
      name: 'renderers-share-nothing',
      severity: 'error',
      comment: 'Two renderers that need the same thing need it in the report: add it to src/report.',
      from: { path: '^src/render/([^/]+)/' },
      to: { path: '^src/render/[^/]+/', pathNot: '^src/render/$1/' },
    },
    ...ROOMS.filter(({ room }) => room !== 'cli').map(roomRule),
    {
      name: 'pipeline-knows-stages-only',
      severity: 'error',
      comment: 'src/compile.ts goes from documents to a report: leave files, arguments and formats to src/cli.',
      from: { path: '^src/[^/]+$' },
      to: { path: '^src/(cli|host|render)/' },
    },
    {
      name: 'commands-are-not-imported',
      severity: 'error',
      comment: 'Nothing builds on the command line: move what is wanted to the stage that owns it.',
      from: { pathNot: '^src/cli/' },
      to: { path: '^src/cli/' },
    },
    {
      name: 'host-alone-touches-the-machine',
      severity: 'error',
      comment:
        'Files, processes, time and terminals are behind src/host, so that everything else gives the same bytes ' +
        'everywhere: take what you need as an argument.',
      from: { path: '^src/', pathNot: '^src/host/' },
      to: { dependencyTypes: ['core'], pathNot: `^(node:)?${either(PURE_NODE_MODULES)}$` },
    },
    ...OWNED_PACKAGES.map(packageRule),
    {
      name: 'packages-are-known',
      severity: 'error',
      comment: 'A package has an owner: add it to OWNED_PACKAGES in tests/architecture/layers.mjs, with the reason.',
      from: { path: '^(src|bin)/' },
      to: {
        path: '.',
        pathNot: `^(src|bin|dist)/|^\\.|(^|node_modules/)${either(OWNED_PACKAGES.map(({ name }) => name))}(/|$)`,
        dependencyTypesNot: ['core'],
      },
    },
    {
      name: 'source-knows-no-tests',
      severity: 'error',
      comment: 'What is shipped stands on its own: move what is wanted from tests/ into src/.',
      from: { path: '^(src|bin)/' },
      to: { path: '^tests/' },
    },
    {
      name: 'no-cycles',
      severity: 'error',
      comment: 'Two files that need each other are one, or have a third between them: move what both need there.',
      from: { path: '^src/' },
      to: { circular: true },
    },
  ],
  options: {
    parser: 'swc',
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules|^dist/' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.js', '.mjs', '.json'],
      conditionNames: ['import', 'node', 'default'],
      exportsFields: ['exports'],
    },
  },
};
