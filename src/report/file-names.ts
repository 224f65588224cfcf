// Names of files for the athletes of a plan: safe on every file system, and never two the same where letter case doesn't
// count. Ids of plain letters, digits, dashes and underscores stay as they are.

const PLAIN = /^[a-z0-9][a-z0-9_-]*$/u;
const UNSAFE = /[^a-z0-9_-]/gu;
const LONGEST = 60;
/** Names that mean something else to Windows. */
const RESERVED = /^(con|prn|aux|nul|com\d|lpt\d)$/u;

export interface FileNames {
  /** The name for an id, without an ending. Throws for an id that isn't one of those given. */
  readonly of: (id: string) => string;
}

/** Names for these ids, in their order: whoever comes later gives way. */
export function createFileNames(ids: Iterable<string>): FileNames {
  const names = new Map<string, string>();
  const taken = new Set<string>();
  for (const id of ids) {
    const wanted = safeName(id);
    let name = wanted;
    for (let number = 2; taken.has(name); number += 1) name = `${wanted}-${number}`;
    taken.add(name);
    names.set(id, name);
  }
  return {
    of: (id) => {
      const name = names.get(id);
      if (name === undefined) throw new Error(`no file name for ${id}`);
      return name;
    },
  };
}

/** Letters outside a to z are written as their number. */
function safeName(id: string): string {
  const lower = id.toLowerCase();
  const safe = lower.replaceAll(UNSAFE, (character) => `~${(character.codePointAt(0) ?? 0).toString(16)}`);
  const short = safe.slice(0, LONGEST);
  return PLAIN.test(short) && !RESERVED.test(short) ? short : `_${short}`;
}
