import type { Answerer } from '../asked.ts';

/** A matter of handling lye, lye that was weighed, or a recipe that was not understood. */
export const nearLye: Answerer = {
  id: 'near-lye',
  answer: async asked => (await asked.nearLye()).told,
};
