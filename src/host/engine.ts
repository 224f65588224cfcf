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
  // What a squad was compiled with is kept for a while: the less often it is marked as alive the better.
  setFlagsFromString('--heap-growing-percent=150');
}

/**
 * For who has done a long run and does a part of it again and again: what pays to be optimised has been by now, and of the
 * rest each round runs too little.
 */
export function settleForRounds(): void {
  settleForLongRun();
  setFlagsFromString('--interrupt-budget=4000000');
}
