// The JSON Schema (2020-12) of a plan file, made from the same shapes that decode it, so that an editor completes and
// checks what the tool reads. Called by the script that writes schemas/. One schema fits every file of a plan, so no key
// at the left edge is required.

import * as z from 'zod';
import { group } from './groups.ts';
import { drillName, exerciseName, liftName } from './known-names.ts';
import type { JsonShape } from './reading.ts';
import { listShapes, mapShapes } from './sections.ts';
import { RULE_IDS, ruleShapeOf } from './shapes/rules.ts';
import { filesShape, recordShape, rosterShape, seasonShape, VERSION } from './shapes/season.ts';
import { oneOrMore, TEXT_DEFINITION } from './words.ts';

/** What each list and group at the left edge is, as an editor shows it. */
const DESCRIPTIONS = {
  slots: 'When who can train, and where.',
  competitions: 'Competitions, matches and tournaments: the season leads to them.',
  closures: 'Days without training for everybody, or at some places.',
  practice: 'Jumping the sport itself does. It counts.',
  tests: 'Test days.',
  pins: 'Your own numbers and choices; the rest is planned round them.',
  always: 'Lines in every session.',
  waivers: 'Rules left out for a while, with the reason.',
  use: 'Where programmes are used.',
  places: 'Places by id, with the kit that is really there.',
  squads: 'Squads by id: fields of their athletes, as defaults.',
  athletes: 'Athletes by id.',
  programmes: 'Sessions written by hand, by id.',
  drills: 'Drills added to the library, or in the place of built-in ones, by id.',
  lifts: 'Lifts added to the library, or in the place of built-in ones, by id.',
} as const;

type Key = keyof typeof DESCRIPTIONS;

const describe = (key: string): string => DESCRIPTIONS[key as Key];

/** An item that leaves everything to the defaults may be written as a key alone. */
function orNothing(shape: z.ZodType): z.ZodType {
  return shape.or(z.null());
}

function fileShape(): z.ZodType {
  const lists = Object.entries<z.ZodType>(listShapes).map(([key, shape]) => [
    key,
    orNothing(z.array(shape)).describe(describe(key)),
  ]);
  const maps = Object.entries<z.ZodType>(mapShapes).map(([key, shape]) => {
    const value = key === 'squads' || key === 'athletes' || key === 'places' ? orNothing(shape) : shape;
    return [key, orNothing(z.record(z.string().meta({ pattern: ID_PATTERN }), value)).describe(describe(key))];
  });
  const rules = Object.fromEntries(
    RULE_IDS.flatMap((id) => {
      const shape = ruleShapeOf(id);
      return shape === undefined ? [] : [[id, oneOrMore(shape).optional()]];
    }),
  );
  const optional = Object.fromEntries(
    [...lists, ...maps].map(([key, shape]) => [key, (shape as z.ZodType).optional()]),
  );
  return group({
    footfall: z.literal(VERSION).describe('Version of the plan language. Required in the entry file.').optional(),
    season: seasonShape.partial().describe('What the season is, and when.').optional(),
    files: filesShape.optional(),
    roster: rosterShape.optional(),
    ...optional,
    rules: orNothing(group(rules)).describe('Parameters of rules, changed for everybody or for some.').optional(),
    record: recordShape.optional(),
  });
}

const ID_PATTERN = '^[\\p{L}\\p{N}][\\p{L}\\p{N}\\p{M}_-]{0,63}$';

/** The schema as JSON. Its order is that of the shapes, so that the same shapes give the same bytes. */
export function planSchema(): JsonShape {
  const shared = new Map<string, JsonShape>();
  const file = jsonOf(fileShape(), shared);
  for (const name of [drillName, liftName, exerciseName]) jsonOf(name, shared);
  shared.set('text', TEXT_DEFINITION);
  const definitions = [...shared].toSorted(([a], [b]) => (a < b ? -1 : 1));
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'A footfall plan',
    description: 'One file of a season of jump training: the entry file or one that it includes.',
    ...file,
    $defs: Object.fromEntries(definitions),
  };
}

/** A shape as JSON Schema; those with an id of their own are put into `shared`, once, and referred to. */
function jsonOf(shape: z.ZodType, shared: Map<string, JsonShape>): JsonShape {
  const json = z.toJSONSchema(shape, {
    io: 'input',
    unrepresentable: 'any',
    override: (context) => {
      spellOut(context, shared);
    },
  });
  const { $schema: _schema, $defs, ...rest } = json;
  for (const [id, { id: _id, ...definition }] of Object.entries($defs ?? {})) shared.set(id, definition);
  if (typeof rest.id !== 'string') return rest;
  const { id, ...definition } = rest;
  shared.set(id, definition);
  return { $ref: `#/$defs/${id}` };
}

interface Overridden {
  readonly zodSchema: z.core.$ZodTypes;
  readonly jsonSchema: z.core.JSONSchema.BaseSchema;
}

const oneOrMany = (item: JsonShape): JsonShape => ({ anyOf: [item, { type: 'array', items: item }] });

/** Choices and one-or-more are made by hand before zod sees them, so their alternatives are put in here. */
function spellOut({ zodSchema, jsonSchema }: Overridden, shared: Map<string, JsonShape>): void {
  const meta: Readonly<Record<string, unknown>> = z.globalRegistry.get(zodSchema) ?? {};
  const { choices, oneOrMore: item, examples } = meta;
  if (Array.isArray(examples) && jsonSchema.$ref === undefined) jsonSchema.examples = examples;
  if (Array.isArray(choices))
    replace(jsonSchema, { anyOf: choices.map((choice: z.ZodType) => jsonOf(choice, shared)) });
  if (item instanceof z.ZodType) replace(jsonSchema, oneOrMany(jsonOf(item, shared)));
}

function replace(json: z.core.JSONSchema.BaseSchema, by: z.core.JSONSchema.BaseSchema): void {
  const { description } = json;
  for (const key of Object.keys(json)) delete json[key];
  Object.assign(json, by, description === undefined ? {} : { description });
}
