// Runs before each test file and gives every property test in it the same seed.

import { configureGlobal } from 'fast-check';
import { propertySeed } from './seed.ts';

configureGlobal({ seed: propertySeed() });
