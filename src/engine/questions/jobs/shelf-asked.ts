import { mayBeOfShelf } from '../fields/shelf-words.ts';
import type { QuestionRead, Reading } from '../read.ts';

/** From here on what was learned of a named jar needs no word of a shelf. */
const SURE_OF_SHELF = 0.97;

/** Whether what was read as asking for a shelf speaks of one, or surely of a jar that it names. Pure. */
export const isOfShelf = ({ score }: Reading, question: string, { facts }: QuestionRead): boolean =>
  mayBeOfShelf(question) || (score >= SURE_OF_SHELF && facts.named.length > 0);
