import fc from 'fast-check';

/*
 * Property tests draw the same cases on every run, so that a commit is green or red and not now and then.
 * `PROPERTY_SEED=any npm test` draws new ones; a number repeats a run that failed.
 */
const wanted = process.env.PROPERTY_SEED ?? '20260501';
if (/^-?\d+$/.test(wanted)) fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(wanted) });

/*
 * Of the hundred cases that the library draws, the usual run tries the first half: what breaks one case in twelve is met with 99 in 100.
 * The whole walk tries all of them, and so do the mutants, whose survivors are counted by what all say.
 */
if (process.env.WALKS !== 'whole' && process.env.MUTANT_ROOT === undefined)
  fc.configureGlobal({ ...fc.readConfigureGlobal(), numRuns: 50 });
