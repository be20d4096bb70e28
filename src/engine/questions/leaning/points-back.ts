import { plainTurn } from './plain.ts';

const POINTS =
  /(?<!\p{L})(?:it|its|that|thats|this|these|those|they|them|theyre|mine|one|ones|both|still|already|eso|esto|esos|esas|ese|esa|este|esta|lo|ambos|ambas|sigue|todavia|aun|ya|tampoco|tambien)(?!\p{L})/u;
const MOST_WORDS = 12;

/** Whether a turn speaks of something that it does not name: what is not understood of it may be about what came before. Pure. */
export function pointsBack(typed: string): boolean {
  const text = plainTurn(typed);
  return text.split(' ').length <= MOST_WORDS && POINTS.test(text);
}

const HURT =
  /(?<!\p{L})(?:sting\p{L}*|stung|burn\p{L}*|pink|red(?:dish|ness)?|blister\p{L}*|skin|eyes?|rins\p{L}*|hurt\p{L}*|itch\p{L}*|numb|pain\p{L}*|sore|swell\p{L}*|swollen|vinegar|lemon|cream|doctors?|hospital|ambulance|lick\p{L}*|swallow\p{L}*|vomit\p{L}*|crying|cough\p{L}*|breath\p{L}*|dizzy|slippery|arde\p{L}*|quem\p{L}*|roj[oa]s?|rosad[oa]s?|ampollas?|piel|ojos?|enjuag\p{L}*|aclar\p{L}*|lav(?:e|ado|ando|arme)|duel\p{L}*|pica\p{L}*|escuec\p{L}*|hinchad\p{L}*|vinagre|limon|crema|pomada|medic[oa]s?|urgencias|ambulancia|trag\p{L}*|vomit\p{L}*|llora\p{L}*|tos|tose\p{L}*|respira\p{L}*|mareo\p{L}*|resbalos[oa])(?!\p{L})/u;
/** Longer texts tell what they are about. */
const MOST_OF_HURT = 16;

/** After first aid was given: whether a turn still tells of it, so that it is given once more before anything is read. Pure. */
export function isStillHurt(typed: string): boolean {
  const text = plainTurn(typed);
  return text.split(' ').length <= MOST_OF_HURT && HURT.test(text);
}

const ACID = /(?<!\p{L})(?:vinegar|vinagre|lemon|limon|citric|citrico)(?!\p{L})/u;
const MOST_OF_ACID = 10;
/** Whether somebody who was told to rinse reaches for vinegar or lemon. Pure. */
export function asksForAcid(typed: string): boolean {
  const text = plainTurn(typed);
  return text.split(' ').length <= MOST_OF_ACID && ACID.test(text);
}
