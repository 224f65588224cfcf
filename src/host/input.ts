// Standard input, read to its end.

import { readFileSync } from 'node:fs';

const STANDARD_INPUT = 0;

export const readStandardInput = (): Uint8Array => readFileSync(STANDARD_INPUT);
