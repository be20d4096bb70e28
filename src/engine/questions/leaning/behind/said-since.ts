import { unbroken } from '../../../over-lines.ts';
import { unaccented } from '../../../text/unaccented.ts';
import { wordCount } from '../../../text/word-count.ts';
import { isStillHurt } from '../subject/points-back.ts';

/** Longer turns tell what they are about, words. */
const MOST_WORDS = 6;
const ASKS = new RegExp(
  unbroken`
    [?¿]|^\W*(?:and |y |ok |so )*(?:how|what|why|which|when|where|who|can|could|do|does|did|is|are|will|
    would|should|como|que|cual\p{L}*|cuant\p{L}*|cuando|donde|por ?que|puedo|puede|se puede|es|son|hay|add|
    undo|show|make)(?!\p{L})
  `,
  'iu',
);

/**
 * Whether a turn tells one thing more and asks for nothing: "paprika" behind a question that nobody understood. What stings is somebody's skin,
 * and no sign of a bar. Pure.
 */
export const onlyTells = (turn: string): boolean =>
  !turn.startsWith('/') &&
  wordCount(turn) <= MOST_WORDS &&
  !ASKS.test(unaccented(turn)) &&
  !isStillHurt(turn);

const BECAME = new RegExp(
  unbroken`
    ^\W*(?:(?:it|its|mine|mi|me|se|has|ha|all|pero|but|y|and|uy|ay|oh|che|hey) )*(?:went|gone|turned|
    came out|looks?|salio|ha salido|quedo|se puso|puso|volvio) (?:\p{L}+ ?){1,4}(?:(?:as soon as|when|once|
    apenas|cuando|al|en cuanto)(?: \p{L}+){1,4})?\W*$
  `,
  'iu',
);
/** Whether a turn tells what something became, and nothing else: "went blue grey". Pure. */
export const tellsWhatItBecame = (turn: string): boolean => BECAME.test(unaccented(turn));

const AMOUNT = /\d|(?<!\p{L})(?:cu[aá]nt[oa]s?|how (?:much|many))(?!\p{L})/iu;
/** Whether a turn tells or asks an amount, which is no sign of a flaw. Pure. */
export const isOfAmount = (turn: string): boolean => AMOUNT.test(turn);
