// The JSON Schemas that are shipped, file by file. Written by schemas.ts, checked for staleness by a test.

import { planSchema } from '../../src/language/schema.ts';

/** Text of each file of schemas/, by name. */
export function schemaFiles(): ReadonlyMap<string, string> {
  return new Map([['plan.schema.json', `${JSON.stringify(planSchema(), null, 2)}\n`]]);
}
