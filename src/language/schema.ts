// The JSON Schema (2020-12) of a plan file, made from the same shapes that decode it, so that an editor completes and
// checks what the tool reads. Called by the script that writes schemas/. One schema fits every file of a plan, so no key
// at the left edge is required.

import { ID_PATTERN } from './ids.ts';
import type { Keys } from './groups.ts';
import { drillName, exerciseName, liftName } from './known-names.ts';
import { listShapes, mapShapes } from './sections.ts';
import type { Form, JsonShape, Shape } from './shape.ts';
import { RULE_IDS, ruleShapeOf } from './shapes/rules.ts';
import { filesShape, recordShape, rosterShape, seasonShape, VERSION } from './shapes/season.ts';
import { TEXT_DEFINITION } from './words.ts';

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
const orNothing = (json: JsonShape): JsonShape => ({ anyOf: [json, { type: 'null' }] });

const described = (json: JsonShape, description: string): JsonShape => ({ ...json, description });

type Shared = Map<string, JsonShape>;

/** What stands at the left edge of a file; definitions that are referred to are put into `shared`. */
function fileJson(shared: Shared): JsonShape {
  const lists = Object.entries<Shape<unknown>>(listShapes).map(([key, shape]) => [
    key,
    described(orNothing({ type: 'array', items: jsonOf(shape, shared) }), describe(key)),
  ]);
  const maps = Object.entries<Shape<unknown>>(mapShapes).map(([key, shape]) => [
    key,
    described(orNothing(byId(key, jsonOf(shape, shared))), describe(key)),
  ]);
  const { required: _required, ...season } = jsonOf(seasonShape, shared);
  return groupJson({
    footfall: described(
      { type: 'number', const: VERSION },
      'Version of the plan language. Required in the entry file.',
    ),
    season,
    files: jsonOf(filesShape, shared),
    roster: jsonOf(rosterShape, shared),
    ...Object.fromEntries([...lists, ...maps]),
    rules: described(orNothing(rulesJson(shared)), 'Parameters of rules, changed for everybody or for some.'),
    record: jsonOf(recordShape, shared),
  });
}

function byId(section: string, item: JsonShape): JsonShape {
  const mayBeEmpty = section === 'squads' || section === 'athletes' || section === 'places';
  return {
    type: 'object',
    propertyNames: { type: 'string', pattern: ID_PATTERN },
    additionalProperties: mayBeEmpty ? orNothing(item) : item,
  };
}

function rulesJson(shared: Shared): JsonShape {
  const rules = RULE_IDS.flatMap((id) => {
    const shape = ruleShapeOf(id);
    return shape === undefined ? [] : [[id, oneOrMany(jsonOf(shape, shared))]];
  });
  return groupJson(Object.fromEntries(rules));
}

/** The schema as JSON. Its order is that of the shapes, so that the same shapes give the same bytes. */
export function planSchema(): JsonShape {
  const shared: Shared = new Map();
  const file = fileJson(shared);
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
function jsonOf(shape: Shape<unknown, boolean>, shared: Shared): JsonShape {
  if (shape.form.kind === 'same') return { ...shape.notes, ...jsonOf(shape.form.as, shared) };
  const { id, examples, description, ...json } = { ...formJson(shape.form, shared), ...shape.notes };
  const whole = {
    ...json,
    ...(description !== undefined && { description }),
    ...(examples !== undefined && { examples }),
  };
  if (typeof id !== 'string') return whole;
  shared.set(id, whole);
  return { $ref: `#/$defs/${id}` };
}

function formJson(form: Exclude<Form, { readonly kind: 'same' }>, shared: Shared): JsonShape {
  switch (form.kind) {
    case 'leaf':
      return form.json;
    case 'group':
      return keysJson(form.keys, shared);
    case 'each':
      return {
        type: 'object',
        propertyNames: { type: 'string', $ref: `#/$defs/${form.name}` },
        additionalProperties: jsonOf(form.value, shared),
      };
    case 'list':
      return { type: 'array', items: jsonOf(form.item, shared) };
    case 'one or more':
      return oneOrMany(jsonOf(form.item, shared));
    case 'either':
      return { anyOf: form.choices.map((choice) => jsonOf(choice, shared)) };
  }
}

function keysJson(keys: Keys, shared: Shared): JsonShape {
  const entries = Object.entries(keys);
  const required = entries.flatMap(([key, { isOptional }]) => (isOptional ? [] : [key]));
  return groupJson(Object.fromEntries(entries.map(([key, shape]) => [key, jsonOf(shape, shared)])), required);
}

function groupJson(properties: Readonly<Record<string, JsonShape>>, required: readonly string[] = []): JsonShape {
  return {
    type: 'object',
    properties,
    ...(required.length > 0 && { required }),
    additionalProperties: false,
  };
}

const oneOrMany = (item: JsonShape): JsonShape => ({ anyOf: [item, { type: 'array', items: item }] });
