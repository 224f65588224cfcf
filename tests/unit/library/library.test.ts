// The library as one thing: built in, extended by a plan's own drills and lifts, with its kit and clearances.

import { describe, expect, it } from 'vitest';
import { CLEARANCES, findClearance } from '../../../src/library/clearances.ts';
import { DRILLS } from '../../../src/library/drills.ts';
import { BUILT_IN, extendLibrary, getFamily } from '../../../src/library/index.ts';
import { KIT, KIT_IDS, findKit, kitWords } from '../../../src/library/kit.ts';
import { LIFTS } from '../../../src/library/lifts.ts';
import { findRule } from '../../../src/library/rules.ts';
import type { Drill } from '../../../src/library/types.ts';

function drill(id: string): Drill {
  const found = BUILT_IN.drills.get(id);
  if (found === undefined) throw new Error(`no drill ${id}`);
  return found;
}

describe('the built-in library', () => {
  it('holds all drills and lifts in order', () => {
    expect([...BUILT_IN.drills.keys()]).toEqual(DRILLS.map((one) => one.id));
    expect([...BUILT_IN.lifts.keys()]).toEqual(LIFTS.map((one) => one.id));
  });

  it('gets the family of a drill', () => {
    expect(getFamily(BUILT_IN, drill('hurdle-hop')).map((one) => one.id)).toEqual([
      'rebound-jump',
      'rebound-jump-series',
      'hurdle-hop',
      'high-hurdle-hop',
      'single-leg-hurdle-hop',
    ]);
  });
});

describe("a plan's own drills", () => {
  it('take the place of the one with their id', () => {
    const own: Drill = { ...drill('hurdle-hop'), name: 'Hurdle hop, ours' };
    const library = extendLibrary(BUILT_IN, [own], []);
    expect(library.drills.get('hurdle-hop')?.name).toBe('Hurdle hop, ours');
    expect([...library.drills.keys()]).toEqual([...BUILT_IN.drills.keys()]);
    expect(library.families.get('rebound')?.[2]).toBe(own);
    expect(BUILT_IN.drills.get('hurdle-hop')?.name).toBe('Hurdle hop');
  });

  it('are added behind, in the order of their rungs, ids breaking ties', () => {
    const base = drill('hurdle-hop');
    const own = [
      { ...base, id: 'b-hop', family: 'own', rung: 2 },
      { ...base, id: 'a-hop', family: 'own', rung: 2 },
      { ...base, id: 'c-hop', family: 'own', rung: 1 },
    ];
    const library = extendLibrary(BUILT_IN, own, []);
    expect(library.families.get('own')?.map((one) => one.id)).toEqual(['c-hop', 'a-hop', 'b-hop']);
    expect([...library.drills.keys()].slice(-3)).toEqual(['b-hop', 'a-hop', 'c-hop']);
  });

  it('leave their old family when they are moved to another', () => {
    const library = extendLibrary(BUILT_IN, [{ ...drill('pogo'), family: 'own', rung: 1 }], []);
    expect(library.families.get('bounce')?.map((one) => one.id)).not.toContain('pogo');
    expect(library.families.get('own')?.map((one) => one.id)).toEqual(['pogo']);
    expect(() => getFamily(BUILT_IN, { ...drill('pogo'), family: 'own' })).toThrow('pogo');
  });

  it('change nothing when there are none', () => {
    expect(extendLibrary(BUILT_IN, [], [])).toBe(BUILT_IN);
  });

  it('may be lifts as well', () => {
    const [first] = LIFTS;
    if (first === undefined) throw new Error('no lifts');
    const library = extendLibrary(BUILT_IN, [], [{ ...first, id: 'own-squat' }]);
    expect(library.lifts.size).toBe(LIFTS.length + 1);
    expect(library.drills.size).toBe(DRILLS.length);
  });
});

describe('kit', () => {
  it('lists each piece once, with words for one and for more', () => {
    expect(new Set(KIT_IDS).size).toBe(KIT.length);
    expect(kitWords('boxes', 1)).toBe('box');
    expect(kitWords('boxes', 3)).toBe('boxes');
    expect(kitWords('racks', 0)).toBe('racks');
  });

  it('lists boxes by height, bars, dumbbells and kettlebells by mass', () => {
    const by = (listed: string): readonly string[] => KIT.filter((one) => one.listed === listed).map((one) => one.id);
    expect(by('heights')).toEqual(['boxes']);
    expect(by('masses')).toEqual(['bars', 'dumbbells', 'kettlebells']);
  });

  it('misses what is no kit', () => {
    expect(findKit('boxes')?.one).toBe('box');
    expect(findKit('trampolines')).toBeUndefined();
  });

  it('is all used by some drill or lift; a sled and cones wait for those of a plan', () => {
    const used = new Set([...DRILLS, ...LIFTS].flatMap((one) => one.kit));
    expect(KIT_IDS.filter((id) => !used.has(id))).toEqual(['sled', 'cones']);
  });
});

describe('clearances', () => {
  it('open rules that exist, and are no drill', () => {
    for (const clearance of CLEARANCES) {
      expect(BUILT_IN.drills.has(clearance.id), clearance.id).toBe(false);
      for (const rule of clearance.opens) expect(findRule(rule), rule).toBeDefined();
    }
  });

  it('are these', () => {
    expect(CLEARANCES.map((one) => one.id)).toEqual(['drops', 'single-leg-high', 'drop-strength', 'loads']);
    expect(findClearance('drops')?.opens).toContain('drop-age');
    expect(findClearance('pogo')).toBeUndefined();
  });
});
