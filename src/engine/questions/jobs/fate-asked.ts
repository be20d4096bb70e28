import { unbroken } from '../../over-lines.ts';
import { sharesPowders } from '../fields/field-of.ts';
import type { Words } from '../found/words-of.ts';
import type { Found } from '../learned/features.ts';

const OPENS = new RegExp(
  unbroken`
    (?:^|[.,;:?!] ?)(?:(?:so|and|but|ok|hi|hey|hello|please|tell me) )*(?:does|do|will|would|wont|won't|doesn't|
    doesnt) (?:(?:the|my|a|this|that|these|dried|ground|powdered|real|plain|any|some) )*$
  `,
  'u',
);
const BECOMES = new RegExp(
  unbroken`
    ^ ?(?:(?:powder|petals?|flowers?|leaves|root|soap|bars?|colou?r|really|actually|always|usually|still|just)
    )*(?:(?:go|goes)(?! (?:straight|right|in|into|on|well|with|first)(?!\p{L}))|turn|turns|
    stay|stays|keep|keeps|hold|holds|fade|fades|survive|survives|last|lasts|lose|loses|
    end up|change|changes|brown|discolou?r)(?!\p{L})
  `,
  'u',
);
const SE_VUELVE = new RegExp(
  unbroken`
    ^ ?(?:(?:en polvo|seca?|molid[oa]|natural) )?(?:no )?(?:se (?:pone|vuelve|queda|va|mantiene|destine|pierde|
    oscurece|quema|decolora|desvanece)|aguanta|resiste|soporta|vira|cambia)(?!\p{L})(?! (?:en|con|al|a|antes|despues|primero)(?!\p{L}))
  `,
  'u',
);
/** What has happened already is told, and its cause asked. */
const HAS_COME =
  /(?<!\p{L})(?:went|turned|gone|came out|se me|me (?:quedo|salio)|why|por que|how (?:much|many)|cuant[oa]s?)(?!\p{L})/u;

/** Whether what becomes of one named colourant is asked, before anything was made: "does hibiscus go brown in lye". Pure. */
export function asksItsFate(read: Words, { things, amounts }: Found): boolean {
  const { text, words } = read;
  if (sharesPowders(read)) return false;
  const named = things.filter(({ colourants }) => colourants.length > 0);
  const [thing] = named;
  if (named.length !== 1 || thing === undefined || amounts.length > 0 || HAS_COME.test(text)) return false;
  const before = `${words.slice(0, thing.from).join(' ')} `.trimStart();
  const behind = words.slice(thing.to, thing.to + MOST_BEHIND).join(' ');
  return (OPENS.test(before) && BECOMES.test(behind)) || (SE_VUELVE.test(behind) && IN_SOAP.test(text));
}

const MOST_BEHIND = 6;
const IN_SOAP = /(?<!\p{L})(?:soap\p{L}*|jabon\p{L}*|lye|sosa|soda|lejia|cp|batter|masa)(?!\p{L})/u;
