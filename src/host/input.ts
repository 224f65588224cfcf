// Standard input, read to its end. For `footfall format -`.

import { readFileSync } from 'node:fs';

const STANDARD_INPUT = 0;

/** All bytes of it; waits for whoever writes them. Throws what the system says where it can't be read. */
export const readStandardInput = (): Uint8Array => readFileSync(STANDARD_INPUT);
