import { unbroken } from '../../../over-lines.ts';
import { prepared } from '../amounts/prepared.ts';
import { FAT, LYE, plainWords } from '../amounts/words.ts';
import { isHarmlessBesideOil } from './doubts/beside-oils.ts';
import type { Item } from './items/item.ts';
import { itemsOf } from './items/items.ts';
import { recipeLine } from './recipe-line.ts';

/** "I do the water by eye". */
const BY_EYE =
  /(?<!\p{L})(?:sin gas|without gas|no gas|by (?:eye|feel)|a ojo(?: de buen cubero)?|al tanteo)(?!\p{L})/gu;
const BY_EYE_TYPED = new RegExp(BY_EYE.source, 'giu');
/** Words of whoever is hurt, or in danger, or tells of another who is: with any of them a recipe is no calm question. */
const OF_HARM = new RegExp(
  unbroken`
    (?<!\p{L})(?:eyes?|face|skin|hands?|fingers?|arms?|legs?|feet|foot|mouth|lips?|tongue|throat|stomach|
    burn\p{L}*|scald\p{L}*|splash\p{L}*|spill\p{L}*|spat|spit\p{L}*|squirt\p{L}*|splatter\p{L}*|
    swallow\p{L}*|drank|drunk|drink\p{L}*|ate|eaten|lick\p{L}*|sip\p{L}*|tast\p{L}*|cough\p{L}*|
    breath\p{L}*|chok\p{L}*|wheez\p{L}*|fumes?|smok\p{L}*|fire|flames?|gas|smell\p{L}*|hurt\p{L}*|
    pain\p{L}*|sting\p{L}*|stung|itch\p{L}*|blister\p{L}*|rash|sore|raw|vomit\p{L}*|puk\p{L}*|sick|
    faint\p{L}*|dizzy|bab(?:y|ies)|child\p{L}*|kids?|toddlers?|son|daughter|boy|girl|dogs?|cats?|pets?|
    horses?|hens?|boil\p{L}*|volcano\p{L}*|overflow\p{L}*|over the (?:top|edge|side)|erupt\p{L}*|foam\p{L}*|
    fizz\p{L}*|bubbl\p{L}*|explo\p{L}*|alumin\p{L}*|tin|zinc|bleach|vinegar|acid|help|hospital|doctor|
    ambulance|poison\p{L}*|ojos?|cara|piel|manos?|dedos?|brazos?|piernas?|pies?|boca|labios?|lengua|
    garganta|estomago|quem\p{L}*|salpic\p{L}*|derram\p{L}*|trag\p{L}*|beb\p{L}*|tom[oó]|lami\p{L}*|
    prob\p{L}*|tos\p{L}*|respir\p{L}*|ahog\p{L}*|vapor\p{L}*|humo|fuego|llamas?|gases|huele|olor|dol\p{L}*|
    duele|ard\p{L}*|pica\p{L}*|ampoll\p{L}*|vomit\p{L}*|mare\p{L}*|niñ\p{L}*|nin[oa]s?|hij[oa]s?|nen[ea]s?|
    perr\p{L}*|gat[oa]s?|hierv\p{L}*|hirv\p{L}*|volcan|desbord\p{L}*|rebals\p{L}*|espuma|burbuj\p{L}*|
    explot\p{L}*|unconscious|comatos\p{L}*|lifeless|seizure\p{L}*|convuls\p{L}*|collaps\p{L}*|passed out|
    inconsciente|desmay\p{L}*|cloro|vinagre|acido|ayuda|auxilio|socorro|medico|hospital|urgencias|venen\p{L}*)(?!\p{L})
  `,
  'u',
);

/** "Am I gonna burn my face off?": asked of what is weighed, before anybody met it. */
const AHEAD = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:(?:am|are|is|will|would|wont|won't)(?: (?:i|we|it|this|that|they|not))+|i'?m|
    gonna) )?(?:gonna|gunna|going to|will|would)(?: (?:it|this|that|i|we|me))?(?: just)? (?:burn|sting|eat|
    peel)(?: (?:ma|my|me|our|the|your|anyone'?s))?(?: (?:face|skin|hands?|bum|fingers|
    kids?))?(?: off)?(?!\p{L})|(?<!\p{L})(?:will|would) (?:it|this|that|i|we) (?:burn|sting)(?: (?:me|us|my|
    the|our))?(?: (?:face|skin|hands?))?(?!\p{L})|(?<!\p{L})(?:me |nos |no )?(?:voy a|vamos a|va a|ira a|
    vaya a)(?: (?:me|nos))? (?:quemar(?:me|nos|te)?|picar(?:me|nos)?|arder)(?: (?:la|las|el) (?:cara|piel|
    manos?))?(?!\p{L})
  `,
  'gu',
);

/** "Está bien o quema?", "is that ok or does it burn": what its lye would do, asked last and of the recipe. */
const OR_BURNS = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:or|and|,) ?)?(?:does|do|is) (?:it|this|that|they) (?:burn|going to burn)(?= *[;,]? *$)|
    (?<!\p{L})or (?:burns?|is it going to burn)(?= *[;,]? *$)|(?<!\p{L})(?:o|
    u) (?:que )?(?:es que )?queman?(?= *[;,]? *$)
  `,
  'gu',
);

/** For whose skin it is: why a superfat is wanted. */
const DRY_SKIN = new RegExp(
  unbroken`
    (?<!\p{L})(?:because|cos|cuz|since|as|for|porque|ya que|para|pa) (?:(?:i|we|tengo|tenemos|have|i've|got|
    my|our|mi|mis|la|las|his|her|tiene) )*(?:skin|hands?|piel|manos?) (?:(?:is|are|gets?|esta|estan|muy|
    very|so|really|es|son|too) )*(?:dry|sensitive|oily|secas?|sensibles?|grasa)(?!\p{L})
  `,
  'gu',
);

/** Whether a word of whoever is hurt or in danger stands in a text, lower case without accents. Pure. */
export const tellsOfHarm = (plain: string): boolean => OF_HARM.test(plain);

/**
 * Whether a text is nothing but a recipe whose lye is asked for: every amount of it has its place, and no word of it is of harm.
 * Pure.
 */
export function isPlainRecipe(text: string): boolean {
  const plain = plainWords(text, { clauses: true }).replace(BY_EYE, ' ; ');
  return (
    /\d/u.test(plain) &&
    !OF_HARM.test(plain.replace(AHEAD, ' ').replace(OR_BURNS, ' ').replace(DRY_SKIN, ' ')) &&
    ('line' in recipeLine(prepared(text.replace(BY_EYE_TYPED, ' ; '))) ||
      isListOfWeights(plain.replace(OR_BURNS, ' ')))
  );
}

/** Of what is told beside a list so many words may be strange: one fat that has no entry, "marge". */
const MOST_STRANGE = 1;
const LEAST_WEIGHTS = 2;
/** "My nan's recipe", "la receta de mi abuela". */
const WHOSE =
  /(?<!\p{L})(?:(?:my|our) \p{L}+(?:['’]?s)? recipe|(?:la |una )?receta de (?:mi|nuestra|la) \p{L}+)(?!\p{L})/gu;
/**
 * Whether a text is a list of weights or litres of fats that asks for its lye or tells it, and hardly a word beside it; a fat that
 * nobody knows or a litre, which the reader of recipes does not take, is no harm.
 */
function isListOfWeights(plain: string): boolean {
  const items = itemsOf(plain.replace(WHOSE, ' '));
  const strange = items.flatMap((item, at) =>
    item.is === 'word' && !isHarmlessBesideOil(item.text)
      ? [items[at - 1]?.is === 'amount' || items[at + 1]?.is === 'amount']
      : [],
  );
  const isFat = (item: Item) => item.is === 'name' && (item.known === 'oil' || item.known === 'any-oil');
  return (
    strange.length <= MOST_STRANGE &&
    strange.every(isWeighed => isWeighed) &&
    items.filter(({ is }) => is === 'amount').length >= LEAST_WEIGHTS &&
    items.some(isFat) &&
    items.some(item => item.is === 'asks' || (item.is === 'name' && item.known === 'lye'))
  );
}

const OF_LYE = new RegExp(`(?<![\\p{L}\\d])(?:${LYE}|${FAT})(?!\\p{L})`, 'u');

/** Whether a text tells a whole recipe and speaks of its lye or superfat: what it asks for is the lye. Pure. */
export function asksForLyeOf(text: string): boolean {
  const plain = plainWords(text, { clauses: true });
  return /\d/u.test(plain) && OF_LYE.test(plain) && 'line' in recipeLine(prepared(text));
}
