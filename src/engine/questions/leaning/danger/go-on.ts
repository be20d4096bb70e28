import type { EmergencyId } from '../../../hazards/index.ts';
import { unbroken } from '../../../over-lines.ts';
import { plainTurn } from '../turn/plain.ts';

const OUT_OF_HAND: ReadonlySet<EmergencyId> = new Set(['lye-skin', 'lye-eruption', 'fumes-inhaled']);
const GO_ON = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:can|should|may|could|ok(?:ay)? to|safe to|alright to) (?:i |we )?(?:still |now |
    just )?(?:keep (?:going|on|at it)|carry on|go on|go ahead|continue|finish|(?:get|go) back to|make (?:the|my|
    it)|use (?:the|that|my) lye|pour (?:it|the lye))|(?:puedo|podemos|debo) (?:ya )?(?:seguir|continuar|
    acabar|terminar)|(?:sigo|continuo|acabo|termino)(?: (?:con|haciendo|ya|entonces))?)(?!\p{L})
  `,
  'u',
);
/** It is not over. */
const WORSE = new RegExp(
  unbroken`
    (?<!\p{L})(?:worse|blister\p{L}*|burn(?:s|ing)|stings|stinging|numb|white|eyes?|bleed\p{L}*|swell\p{L}*|
    swollen|rins(?:e|ing)|vinegar|peor|ampollas?|arde|ardiendo|quema|escuece|dormid[oa]|blanc[oa]|ojos?|
    sangr\p{L}*|hinch\p{L}*|enjuag\p{L}*|vinagre)(?!\p{L})
  `,
  'u',
);
const NO_LONGER = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:doesnt|does not|isnt|not|no longer|stopped|didnt)(?: \p{L}+)? (?:stings?|stinging|
    burn(?:s|ing)?)|(?:ya )?no (?:me |le )?(?:escuece|arde|quema|duele|pica))(?!\p{L})
  `,
  'gu',
);
const MOST_WORDS = 26;

/**
 * Whether somebody to whom first aid was told asks to go on making soap, and tells of nothing that got worse: rinsing comes first, and the lye
 * can wait. Pure.
 */
export function asksToGoOn(typed: string, ids: readonly EmergencyId[]): boolean {
  if (!ids.every(id => OUT_OF_HAND.has(id))) return false;
  const text = plainTurn(typed);
  return (
    text.split(' ').length <= MOST_WORDS && GO_ON.test(text) && !WORSE.test(text.replace(NO_LONGER, ' '))
  );
}
