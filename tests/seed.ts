import fc from 'fast-check';

/*
 * Property tests draw the same cases on every run, so that a commit is green or red and not now and then.
 * `PROPERTY_SEED=any npm test` draws new ones; a number repeats a run that failed.
 */
const wanted = process.env.PROPERTY_SEED ?? '20260501';
if (/^-?\d+$/.test(wanted)) fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(wanted) });
