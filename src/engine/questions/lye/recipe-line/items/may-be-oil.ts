import { isNearOil, oilWordsMeant } from '../../amounts/chat-words.ts';
import { absenceIn } from '../doubts/beside-oils.ts';

/**
 * Whether a word in a sentence of its own may be an oil spelt amiss: one slip away from its name, or further where the sentence tells of
 * something that is not there or `isGone`. "Aguacero" is two from "aguacate", and no fat. `said`: what of the sentence is no amount. Pure.
 */
export const mayBeOil = (
  word: string,
  { isGone, said }: { readonly isGone: boolean; readonly said: string },
): boolean => (isGone || absenceIn(said) !== undefined ? isNearOil(word) : oilWordsMeant(word).length > 0);
