import { unbroken } from '../../over-lines.ts';
import { sharesPowders } from '../fields/field-of.ts';
import type { Words } from '../found/words-of.ts';
import type { Found } from '../learned/features.ts';

/** Lye and its superfat by name: what is asked beside them is no dose of a colour. */
export const LYE =
  /(?<!\p{L})(?:lye|naoh|koh|sosa|soda|caustic\p{L}?|lejia|superfat|sobreengrasad\p{L})(?!\p{L})/u;

const TOO_MUCH = new RegExp(
  unbroken`
    (?<!\p{L})(?:too much|too many|overkill|over the top|overdo\p{L}*|demasiad[oa]s?|mucho no|es much[oa]|
    me pase|me estoy pasando|es una barbaridad|exagerad[oa]|get by with|manage with|make do with|(?:is|will|would) (?:that|it|this) (?:be )?enough|
    me alcanza|alcanza con|basta con|me basta)(?!\p{L})
  `,
  'u',
);
/** What has come of it is told: why it did is asked. */
const CAME_OF_IT = new RegExp(
  unbroken`
    (?<!\p{L})(?:came out|turned|went|gone|ended up|looks?|leaves|stain\p{L}*|suds|lather|salio|quedo|
    se puso|se volvio|se ve|la espuma (?:sale|salio|es)|mancha)(?!\p{L})
  `,
  'u',
);
/** Too little of it shows. */
const TOO_PALE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:only|just|still|barely|hardly|solo|apenas|sigue|queda) (?:\p{L}+ ){0,2}?(?:gr[ae]y|pale|
    light|faint|pink|beige|cream|gris|palid[oa]|clar[oa]|clarit[oa]|ros[oa]|crema)|barely (?:shows?|there|
    see|any)|hardly (?:shows?|any)|too (?:pale|light|faint|weak)|(?:no|not) (?:very |really |that )?(?:dark|
    black|strong|deep) enough|casi no se (?:ve|nota)|apenas se (?:ve|nota)|muy (?:palid[oa]|clarit[oa]|
    flojo))(?!\p{L})
  `,
  'u',
);
const HAS_PUT = /(?<!\p{L})(?:put|used|added|puse|le puse|eche|use|anadi|agregue)(?!\p{L})/u;

/** So much of one colourant in so much soap, and whether that is too much, or what was put in and shows too little. */
const isDoseWeighed = ({ text }: Words, { things, amounts, facts }: Found): boolean =>
  things.filter(({ colourants }) => colourants.length > 0).length === 1 &&
  amounts.some(({ of }) => of === 'powder') &&
  facts.portion !== undefined &&
  ((TOO_MUCH.test(text) && !CAME_OF_IT.test(text)) || (HAS_PUT.test(text) && TOO_PALE.test(text))) &&
  !LYE.test(text);

const HOW_MUCH = /(?<!\p{L})(?:how much|how many (?:spoons|tsps?|teaspoons)|cuant[oa])(?!\p{L})/u;
const IN_SO_MUCH = new RegExp(
  unbroken`
    (?<!\p{L})(?:per|each|every|por|cada)(?: \d+)? ?(?:pounds?|lbs?|kilos?|kg|cups?|libras?|tazas?|
    lit(?:ros?|res?|ers?)|ppo)(?!\p{L})|(?<!\p{L})(?:for|in|to|para|en|a) (?:an? |un |una )?(?:\d[\d.,/]*|half|medio|
    media)? ?(?:pounds?|lbs?|kilos?|kg|g|grams?|gramos|oz|ounces|cups?|libras?|tazas?|lit(?:ros?|res?|ers?)|ml)(?!\p{L})
  `,
  'u',
);
/** What is told first is why it is asked: "my white looks like butter. How much titanium dioxide per pound of oil". */
function endsInDose({ text }: Words, { things }: Found): boolean {
  const pieces = text.split(/[.;!?]+/u).filter(piece => piece.trim() !== '');
  const last = pieces.at(-1) ?? '';
  if (pieces.length < 2 || LYE.test(text) || !HOW_MUCH.test(last) || !IN_SO_MUCH.test(last)) return false;
  return (
    things.filter(({ colourants, text: name }) => colourants.length > 0 && last.includes(name)).length === 1
  );
}

/** "Indigo powder dose for denim blue", "the usual rate for spirulina", "arcilla rosa, qué porcentaje se usa": the dose of one colourant, by such a word. */
const ITS_DOSE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:dose|dosage|dosis) (?:for|of|de|del|para)|(?:usual|normal|typical|standard|common|
    recommended|suggested|usage|use|dosing|safe|right) rates?|rates? (?:of use|for|of)|what rate|(?:what|which)
    (?:percent(?:age)?|%) (?:of|do|should|is|to|for)|(?:a )?que (?:porcentaje|tasa|proporcion|%) (?:(?:de|del)
    (?:\p{L}+ ){1,3})?(?:se|le|lleva|va|uso|usan?|usas|pongo|echo|conviene|recomiendan?))(?!\p{L})
  `,
  'u',
);
/** A bleach, a bath, an exchange and a heart have rates too; what a law permits is no dose. */
const OF_ANOTHER_RATE =
  /(?<!\p{L})(?:exchange|heart|tax|interest|hourly|permit\p{L}*|allowed|legal\p{L}*|ley|norma)(?!\p{L})/u;
const isDoseNamed = ({ text }: Words, { things }: Found): boolean =>
  ITS_DOSE.test(text) &&
  !OF_ANOTHER_RATE.test(text) &&
  things.filter(({ colourants }) => colourants.length > 0).length === 1 &&
  !LYE.test(text);

const MOST_BETWEEN = 2;
/** What has no name and yet is to be dosed. */
const ANY_COLOURANT = /^(?:colou?rant(?:e?s?)|pigment\p{L}*|color|colou?r|polvo|powder)$/u;
const ASKS_HOW_MUCH = /^(?:much|cuant[oa]s?)$/u;
const FILLS = /^(?:of|de|del|the|el|la|my|mi|this|that|ese|esa|este|esta|your|powdered|un|una|a)$/u;
/** "How much violet ultramarine … 180 ml", "cuánto colorante lleva una porción de 140 ml": an amount of it for so much soap. */
export function asksHowMuchOf(read: Words, { things, amounts, facts }: Found): boolean {
  const { text, words } = read;
  if (LYE.test(text) || KEPT.test(text) || sharesPowders(read)) return false;
  const asked = words.findIndex(word => ASKS_HOW_MUCH.test(word));
  if (asked < 0 || words.findLastIndex(word => ASKS_HOW_MUCH.test(word)) !== asked) return false;
  const next = words.findIndex((word, at) => at > asked && !FILLS.test(word));
  const named = things.filter(({ colourants }) => colourants.length > 0);
  const [thing] = named;
  const isNamed = named.length === 1 && thing!.from >= next - MOST_BETWEEN && thing!.from <= next;
  const isAny =
    named.length === 0 &&
    ANY_COLOURANT.test(words[next] ?? '') &&
    OF_BATTER.test(text) &&
    !OF_EACH.test(text);
  const isFor =
    facts.portion !== undefined || IN_SO_MUCH.test(text) || amounts.some(({ of }) => of !== 'powder');
  const isToUse = isNamed && TO_USE.test(words.slice(thing!.to, thing!.to + USED_WITHIN).join(' '));
  return (isFor && (isNamed || isAny)) || isToUse;
}
/** "How much annatto powder to use": it is dosed, for whatever portion. */
const USED_WITHIN = 5;
const TO_USE = new RegExp(
  unbroken`
    ^(?:powder |root |en polvo )?(?:to (?:use|add|put(?: in)?)|(?:do|should|would|can) (?:i|we|you) (?:use|add|put|need)|goes in|
    (?:le |se )?(?:poner|pongo|echar|echo|uso|usar|anado|agrego|usan?|usas|lleva|va)(?!\p{L}))
  `,
  'u',
);
/** What is left on a shelf is no dose. */
const KEPT =
  /(?<!\p{L})(?:left|still have|do i have|have i got|me queda\p{L}*|tengo (?:todavia|aun)|todavia tengo|aun tengo)(?!\p{L})/u;
const OF_EACH = /(?<!\p{L})(?:each|cada|apiece)(?!\p{L})/u;
const OF_BATTER = /(?<!\p{L})(?:batter|soap|portion|loaf|masa|mezcla|jabon|porcion|batido)(?!\p{L})/u;

/** Whether a turn of phrase asks for the dose of one colourant, whatever the other words are taken for. Pure. */
export const asksForDose = (words: Words, found: Found): boolean =>
  isDoseWeighed(words, found) || endsInDose(words, found) || isDoseNamed(words, found);
