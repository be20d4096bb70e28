import { readWords } from '../../../src/engine/flaws/reading/read.ts';
import { learn, type WrittenWording, writeWording } from '../../../src/engine/flaws/reading/wording.ts';
import { EXAMPLES } from './examples.ts';

/** The wording of the examples, counted now. */
export const learnedWording = (): WrittenWording =>
  writeWording(learn(EXAMPLES.map(({ text, cause }) => ({ gist: readWords(text).gist, cause }))));
