import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';
import type { EmergencyId } from './emergency.ts';
import { ACID, FELT, STRONG } from './ultramarine-whiff.ts';

/** Longer texts tell a story, and a story may hold somebody who is unwell. */
const LONGEST = 240;
const EGGS = /\b(?:eggs?|eggy|huevos?|podrid\w+|rotten)\b/u;
/** Soap with sulphur, yolk or white in it smells so of itself (common practice, no source); what frees the gas in mass is an acid. */
const SMELLS_OF_ITSELF = new RegExp(
  unbroken`
    \b(?:sul(?:ph|f)ur(?:ous)? (?:soaps?|bars?|batch)|(?:soaps?|bars?|batch) (?:with|of) (?:the )?sul(?:ph|
    f)ur|jabon(?:es|cito)? (?:de|con) (?:el )?azufre|pastillas? de azufre|(?:soap|jabon\w*|shampoo|bars?|
    pastillas?) (?:de|con|with|of|from) (?:\w+ ){0,2}?(?:yemas?|claras?|yolks?|egg whites?|eggs?|huevos?))\b
  `,
  'u',
);
/** Acids beside sulphur's own name, which {@link ACID} counts too. */
const ANY_ACID = new RegExp(ACID.source.replace('|sulfur|sulphur|azufre', ''), 'u');

const METAL = '(?:alumin\\w+|zinc|tin|galvani\\w+|hojalata|estano)';
/** Metal that was put away for good, before any lye met it. */
const PUT_AWAY = new RegExp(
  unbroken`
    \b(?:thrown? (?:out|away)|threw (?:out|away|all)|got rid of|gave away|retired|binned|no more|bote|
    bota(?:mos|do)|tire|tirad[oa]|regale|jubile|me deshice de|ya no uso|
    deje de usar)\b(?: \w+){0,4}? ${METAL}\b
  `,
  'u',
);
/** What lye does with it. */
const MEETS = new RegExp(
  unbroken`
    \b(?:fizz\w*|foam\w*|bubbl\w*|hiss\w*|smok\w*|gr[ea]y\w*|black\w*|hole\w*|hydrogen|burn\w*|melt\w*|
    pit(?:s|ted)|dissolv\w*|burbuj\w*|espum\w*|hidrogeno|humo|gris\w*|negr\w*|agujer\w*|hierv\w*|hirv\w*|
    derrit\w*|when i (?:put|poured|added)|cuando (?:eche|puse)|after it|because it|porque se)\b
  `,
  'u',
);

/** Who asks ahead, or for help, is told. */
const ASKS_FOR_HELP = new RegExp(
  unbroken`
    \b(?:si (?:un dia|alguna vez|algun\w*|pasa|sale)|if (?:it|i|we|ever|someone|somebody|that)|in case|
    por si|call\w*|llam\w*|ambulanc\w*|bomber\w*|fire brigade|emergenc\w*|urgenc\w*|protocol\w*|first aid|
    primeros auxilios|hospital|doctor|medic\w*)\b
  `,
  'u',
);

/**
 * The emergencies that a member's words themselves explain as none: soap that smells of the sulphur or egg in it, where no acid, no strong
 * smell and nobody who feels it is told of; aluminium that was thrown out before any lye met it. Pure.
 * @example explainedIn('my sulphur soap smells of eggs, normal?').has('hydrogen-sulfide') // true
 */
export function explainedIn(text: string): ReadonlySet<EmergencyId> {
  const plain = unaccented(text, LONGEST + 1);
  const explained = new Set<EmergencyId>();
  if (text.length > LONGEST || ASKS_FOR_HELP.test(plain)) return explained;
  if (
    EGGS.test(plain) &&
    SMELLS_OF_ITSELF.test(plain) &&
    ![ANY_ACID, STRONG, FELT].some(one => one.test(plain))
  )
    explained.add('hydrogen-sulfide');
  if (PUT_AWAY.test(plain) && !MEETS.test(plain)) explained.add('hydrogen-from-metal');
  return explained;
}
