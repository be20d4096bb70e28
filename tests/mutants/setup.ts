import { registerHooks } from 'node:module';
import fc from 'fast-check';

const REMEMBERED = '/src/engine/remembered.ts';
/** Looks at that file itself. */
const OWN_TEST = '/tests/engine/remembered.test.ts';
registerHooks({
  resolve(specifier, context, next) {
    const found = next(specifier, context);
    if (!found.url.endsWith(REMEMBERED) || context.parentURL?.includes(OWN_TEST)) return found;
    return { ...found, url: new URL('unremembered.ts', import.meta.url).href };
  },
});

// A mutant needs one counterexample, not the smallest, and is tried a few thousand times over all.
fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true, numRuns: 25 });
