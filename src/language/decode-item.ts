// Reads one item by its shape. Called by decoding for each athlete, slot, pin and so on, one at a time, so that ten
// thousand athletes are ten thousand small jobs. What is wrong in one key leaves the others readable.

import * as z from 'zod';
import type { Diagnostic } from '../diagnostics/types.ts';
import type { Node } from '../read/types.ts';
import type { Item, Located } from './authored.ts';
import { diagnose } from './issues.ts';
import { plainOf } from './nodes.ts';
import type { Plain } from './nodes.ts';

/** The item, whole or broken; problems are added to `diagnostics`. */
export function decodeItem<T>(shape: z.ZodType<T>, located: Located, diagnostics: Diagnostic[]): Item<T> {
  const plain = inputOf(shape, located.node);
  const parsed = shape.safeParse(plain);
  if (parsed.success) return { ...located, kind: 'whole', value: parsed.data };
  for (const found of diagnose(located, parsed.error.issues)) diagnostics.push(found);
  return { ...located, kind: 'broken', value: located.node.kind === 'map' ? salvage(shape, plain) : {} };
}

/** An item with nothing written is one that leaves all to the defaults: `seniors:` with no line below it. */
function inputOf(shape: unknown, node: Node): Plain {
  return node.kind === 'scalar' && node.value === null && shape instanceof z.ZodObject ? {} : plainOf(node);
}

/** The keys that can be read by themselves. */
function salvage<T>(shape: z.ZodType<T>, plain: Plain): Partial<T> {
  if (!(shape instanceof z.ZodObject) || Array.isArray(plain)) return {};
  const read: Record<string, unknown> = {};
  for (const [key, keyShape] of Object.entries<z.ZodType>(shape.shape)) {
    const parsed = keyShape.safeParse(plain[key as keyof typeof plain]);
    if (parsed.success && parsed.data !== undefined) read[key] = parsed.data;
  }
  return read as Partial<T>;
}
