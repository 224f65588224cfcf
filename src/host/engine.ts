// How V8 goes about its work. bin/footfall.js sets it up for a run that is over at once: no optimised code and no marking of
// what is alive, as most runs end before either has paid for its making, and little room for young objects, as each page of
// it that is touched costs time. Called by the commands that go on for longer.

import { setFlagsFromString } from 'node:v8';

let isForLong = false;

/** Has V8 optimise what runs often, clear the heap bit by bit and give young objects more room. May be called again. */
export function settleForLongRun(): void {
  if (isForLong) return;
  isForLong = true;
  setFlagsFromString('--opt');
  // Of a function with all that it calls laid into it V8 makes more code than a run of seconds gets back.
  setFlagsFromString('--max-inlined-bytecode-size-cumulative=200');
  setFlagsFromString('--incremental-marking');
  setFlagsFromString('--semi-space-growth-factor=2');
}

/**
 * As `settleForLongRun`, for who does nearly the same again and again: what is new each time is soon old, so the heap may
 * grow further before all that is alive is marked, and code that pays is found late enough.
 */
export function settleForRounds(): void {
  settleForLongRun();
  setFlagsFromString('--heap-growing-percent=150');
  setFlagsFromString('--interrupt-budget=400000');
}
