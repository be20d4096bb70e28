import fc from 'fast-check';

// A mutant needs one counterexample, not the smallest, and is tried a few thousand times over all.
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true, numRuns: 25 });
