// Writes the JSON Schemas that are made from the shapes in the source: `npm run schemas`. Tests compare each file with
// its source, so that none goes stale.

import { mkdirSync, writeFileSync } from 'node:fs';
import { planSchema } from '../../src/language/schema.ts';
import { schemaText } from './schema-text.ts';

const SCHEMAS: Readonly<Record<string, object>> = { 'schemas/plan.schema.json': planSchema() };

mkdirSync('schemas', { recursive: true });
for (const [path, schema] of Object.entries(SCHEMAS)) {
  writeFileSync(path, schemaText(schema));
  console.log(`wrote ${path}`);
}
