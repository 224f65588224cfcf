// Decides, by its text alone, whether a path or glob written in a plan may be followed: from the plan's folder, staying
// in it, and the same on every system. Used before anything is asked of the machine; links are judged afterwards, by
// where they lead.

import { problem } from '../diagnostics/problem.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Span } from '../source/types.ts';

/** A path from the plan's folder without `.` and `..`: its parts. */
export interface PlanPath {
  readonly kind: 'path';
  readonly parts: readonly string[];
  /** The parts joined, as files are called in diagnostics. */
  readonly path: string;
}

/** The parts of a path below the plan's folder; else a diagnostic at `span` that says why it may not be followed. */
export function parsePlanPath(written: string, span: Span | undefined): PlanPath | Diagnostic {
  const outside = leadsOutside(written);
  if (outside !== undefined) {
    return problem('files/outside', { params: { wanted: written, way: outside }, span });
  }
  const unportable = isUnportable(written);
  if (unportable !== undefined) {
    const { way, help } = unportable;
    return problem('files/not-portable', { params: { wanted: written, way }, span, help });
  }
  const parts = partsWithin(written);
  if (parts !== undefined) return { kind: 'path', parts, path: parts.join('/') };
  return problem('files/outside', {
    params: { wanted: written, way: 'goes up out of the plan folder with ..' },
    span,
  });
}

function leadsOutside(written: string): string | undefined {
  if (/^[A-Za-z]:/u.test(written)) return 'begins with a drive of Windows, and a path in a plan begins in its folder';
  if (/^(?:\\\\|\/\/)/u.test(written)) return 'names another machine, and a path in a plan begins in its folder';
  if (/^[/\\]/u.test(written)) return 'begins at the root, and a path in a plan begins in its folder';
  if (written.startsWith('~')) return 'begins in a home folder, and a path in a plan begins in its folder';
  if (/^[A-Za-z][A-Za-z0-9+.-]+:\/\//u.test(written)) return 'is an address, and a plan reads files of its folder only';
  const backslashed = written.includes('\\') && partsWithin(written.replaceAll('\\', '/')) === undefined;
  return backslashed ? 'goes up out of the plan folder with ..' : undefined;
}

interface Unportable {
  readonly way: string;
  readonly help: string;
}

const RESERVED_ON_WINDOWS = /^(?:con|prn|aux|nul|com[0-9]|lpt[0-9])(?:\.|$)/iu;

function isUnportable(written: string): Unportable | undefined {
  if (/[\u0000-\u001f\u007f]/u.test(written))
    return { way: 'has a control character in it', help: 'type the path anew' };
  if (written.includes('\\')) {
    return {
      way: 'is written with backslashes, as on Windows',
      help: `write forward slashes: ${written.replaceAll('\\', '/')}`,
    };
  }
  if (written.includes(':')) return { way: 'has a colon in it, which Windows refuses', help: 'rename the file' };
  const parts = written.split('/');
  if (parts.some((part) => RESERVED_ON_WINDOWS.test(part))) {
    return { way: 'has a name that Windows keeps for a device', help: 'rename the file' };
  }
  if (parts.some((part) => /[^.][. ]$/u.test(part))) {
    return { way: 'has a name that ends in a dot or a space, which Windows drops', help: 'rename the file' };
  }
  return written === '' ? { way: 'is no path', help: 'write the path of a file from the plan folder' } : undefined;
}

/** The parts with `.` and `..` worked out, or undefined if they lead out of the folder. */
function partsWithin(written: string): readonly string[] | undefined {
  const parts: string[] = [];
  for (const part of written.split('/')) {
    if (part === '..' && parts.pop() === undefined) return undefined;
    if (part !== '..' && part !== '.' && part !== '') parts.push(part);
  }
  return parts;
}
