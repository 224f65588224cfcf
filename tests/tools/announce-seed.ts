// Runs once before all tests and says which seed the property tests use.

import { propertySeed } from './seed.ts';

export function setup(): void {
  console.log(`property tests: seed ${propertySeed()} (FOOTFALL_SEED=N npm test for another)`);
}
