// Sections written in the wrong kind of brackets, read all the same: a list where groups by id are meant, a group where a
// list is. Called by decode once that is told, so that the other slips in them come in the same run.

import type { MapEntry, MapNode, Node } from '../read/types.ts';
import { keysOf } from './groups.ts';
import { suggestedId } from './ids.ts';
import type { Shape } from './shape.ts';

/** How one item of each section is written. */
export const EXAMPLES: Readonly<Record<string, string>> = {
  season: '`title: Spring` and `starts: 2027-01-04`',
  places: '`hall: { surface: sprung floor }`',
  slots: '`- { day: tuesday, minutes: 75, place: hall }`',
  competitions: '`- { name: County cup, date: 2027-04-24, prepare: peak }`',
  closures: '`- { from: 2027-02-15, until: 2027-02-21, because: hall closed }`',
  practice: '`- { day: monday, jumps: 60 }`',
  tests: '`- { date: 2027-03-09, what: [back-squat] }`',
  squads: '`seniors: { level: intermediate }`',
  athletes: '`mira: { squad: seniors, mass: 68 kg }`',
  rules: '`weekly-rise: [{ most: 8 %, because: two back from injury }]`',
  pins: '`- { week: 2027-03-01, contacts-a-week: 150, because: camp week }`',
  always: '`- { part: lifts, lines: [{ lift: pull-up, sets: 3, reps: 6 }], because: upper body }`',
  waivers: '`- { rule: session-spacing, from: 2027-03-01, until: 2027-03-07, because: camp }`',
  programmes: '`block: [{ week: 1, tuesday: [{ drill: hurdle-hop, sets: 4, reps: 5 }] }]`',
  use: '`- { programme: block, from: 2027-03-01 }`',
  drills: '`hurdle-hop: { name: Hurdle hop, … }`',
  lifts: '`half-squat: { name: Half squat, pattern: squat }`',
  record: '`done: record/done.csv`',
};

/** The items of a group where a list is meant, and whether each has lost the key it stands under. */
export function itemsOfGroup(
  shape: Shape<unknown>,
  node: Node,
): { readonly items: readonly Node[]; readonly isKeyed: boolean } {
  if (node.kind !== 'map') return { items: [], isKeyed: false };
  const known = keysOf(shape) ?? {};
  const isSingle = node.entries.some(({ key }) => Object.hasOwn(known, key));
  if (isSingle) return { items: [node], isKeyed: false };
  return { items: node.entries.map(({ value }) => value).filter(({ kind }) => kind === 'map'), isKeyed: true };
}

/** The entries of a list where groups by id are meant: `- id: mira`, `- name: Mira K.` or `- mira: { … }`. */
export function entriesOfList(node: Node): readonly MapEntry[] {
  if (node.kind !== 'sequence') return [];
  return node.items.flatMap((item) => (item.kind === 'map' ? entriesOfItem(item) : []));
}

function entriesOfItem(item: MapNode): readonly MapEntry[] {
  const named = item.entries.find(({ key }) => key === 'id') ?? item.entries.find(({ key }) => key === 'name');
  if (named?.value.kind === 'scalar') {
    const id = suggestedId(named.value.text);
    const entries = item.entries.filter((entry) => entry !== named);
    return id === undefined ? [] : [{ key: id, keySpan: named.value.span, value: { ...item, entries } }];
  }
  return item.entries.every(({ value }) => value.kind === 'map') ? item.entries : [];
}
