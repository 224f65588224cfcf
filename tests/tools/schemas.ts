// Writes schemas/ from the shapes that read a plan: `npm run schemas`, after one of them changed.

import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { schemaFiles } from './schema-files.ts';

mkdirSync('schemas', { recursive: true });
for (const [name, text] of schemaFiles()) writeFileSync(join('schemas', name), text);
