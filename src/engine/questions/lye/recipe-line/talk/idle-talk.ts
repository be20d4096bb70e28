import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { PERSON } from '../doubts/harmless-phrases.ts';

/*
 * What is chatted beside a recipe and by its kind can neither keep an oil out of the pot nor change a weight; plain text of both
 * languages, from general knowledge of them (no source). Each goes only where no oil, no fat and no weight stands in it.
 */

/** Greetings from somewhere: of whoever writes. */
const GREETINGS = [
  unbroken`
    (?:and |y )?(?:cheers|greetings|regards|love|hugs|thanks|saludos|abrazos|gracias|besos) (?:from|
    desde) (?:(?:the|a|my|our|la|el|mi|un|una) )?\p{L}+(?: \p{L}+)?(?= *(?:;|$))
  `,
  unbroken`
    ^(?:(?:muchos? )?saludos?|saluditos|greetings|hello|hi|hiya|hey|hola|good (?:morning|evening|afternoon|
    day)|morning|evening|buen dia|buenos dias|buenas(?: tardes| noches)?|regards|un abrazo|
    abrazos)(?: (?:all|everyone|folks|a todos|a todas|para todos|grupo|amig[oa]s|gente))?,? (?:desde|from|
    de) [^;,.\d]{2,30}(?=[;,.])
  `,
];
/** The clock: no weight is told in hours. */
const CLOCK = [
  '(?:son|eran|ya son|casi|como|a|desde|hasta) las \\d{1,2}(?: y (?:media|cuarto|pico))?(?: (?:de la (?:manana|tarde|noche|madrugada)|en punto|am|pm))*',
  "(?:it'?s |its |gone |nearly |just )*\\d{1,2} ?(?:in the (?:morning|afternoon|evening)|at night|o'?clock)",
  unbroken`
    (?:start|starting|started|begin|beginning|finish|finishing|knock off|clock off|meet|meeting|empiezo|
    empezamos|arranco|termino|salgo) (?:at|a las) \d{1,2}(?! ?%| ?percent)(?: when [^;,\d]{3,40})?
  `,
];
/** Where whoever asks comes from: a shift, a walk, a day's work. */
const COMING = [
  unbroken`
    (?:recien |ya |hoy )?(?:salgo|salimos|vengo|venimos|llego|llegamos|saliendo|llegando|volviendo|
    acabo de (?:salir|llegar|volver))(?: recien| ahora| ya| tarde| cansad[oa])*(?: (?:de (?:la|mi|un|una)|
    del?) [\p{L}]+)(?: (?:de|en) (?:la |el )?[\p{L}]+)?
  `,
  unbroken`
    (?:i'?m |we'?re |im )?(?:just )?(?:(?:come|came|got|am|back|home|in) )*(?:off|back from|home from|
    in from) (?:(?:my|the|a|an|two|three) )?(?:(?:long|late|night|early|double|day) )*(?:shifts?|work|
    rounds?|duty|nights|job|walk|school|church)
  `,
  unbroken`
    after (?:an?|the|my|our) (?:(?:long|hard|busy|whole|full) )*(?:day|days|week|night|shift|morning|
    afternoon|evening)(?:'s work)?(?: (?:of|at|on|in|spent))?(?: \p{L}+ing)?(?: (?:the |
    my )?\p{L}+)?(?= (?:i|we)(?!\p{L})| ?[;,:])
  `,
];
/** How it is with people of whom nothing is taken: who comes, sleeps, works or is out. */
const PEOPLE = [
  unbroken`
    (?:ya |hoy |cuando )?(?:llega|llegan|viene|vienen|vuelve|vuelven|duerme|duermen|se durmio|
    esta durmiendo|esta dormid[oa]|trabaja)(?: \p{L}+)? (?:mi|mis|el|la|los|las) ${PERSON}(?: (?:del?|a|al|
    en)(?: la| el)? \p{L}+)?
  `,
  unbroken`
    (?:while |as |when )?(?:my|our|the) ${PERSON}(?:'s| is| are)? (?:(?:finally|now|already|
    all) )*(?:off (?:shift|work|duty)|coming (?:over|home|round)|visiting|asleep|sleeping|snoring|napping|
    at (?:work|school|church))(?: (?:tonight|today|now|this (?:morning|evening|afternoon)|later))?
  `,
  '(?:so |and )?(?:i|we)(?: can)? finally (?:get|got|have time|found time) to (?:soap|make soap|make some)(?: together)?',
  '(?:por fin|al fin) (?:puedo|podemos|tengo tiempo de) (?:jabonear|hacer jabon)(?: junt[oa]s)?',
];
/** Who praises an oil: it is weighed elsewhere, or asked for. */
const PRAISE = [
  `(?:my|our|the|mi|la|el|mis) ${PERSON} (?:swears by|jura por|adores|loves|prefers|recommends|adora|prefiere|me recomienda|recomienda)(?! \\d)`,
];
/** Of whom soap is made, and after what they wash: "my husband loves them after the ovens". */
const WASHED_AFTER = [
  `(?:my|our|the|mi|la|el|mis) ${PERSON} (?:loves?|likes?) (?:it|them|these|those|this)(?: (?:after|for) (?:(?:the|his|her|a|long) )*\\p{L}+)?(?= ?[;,:])`,
  `(?:a )?(?:mi|la|el|mis) ${PERSON} (?:le|les) (?:encantan?|gustan?)(?: (?:despues|para) (?:(?:de|del|la|el|los|las) )*\\p{L}+)?(?= ?[;,:])`,
];
/** Who speaks up once more, and what is read off a label. */
const SPEAKING = ['(?:oh|ah|ay|eh)(?: and| y| que)(?! no(?!\\p{L})| not(?!\\p{L}))'];
/** "The balance is a good one": the scale, and not what is left of the oils. */
const OF_THE_SCALE = [
  unbroken`
    (?:the|my|our) balance (?:is|was|reads|weighs)(?: (?:an?|the|very|quite|really|only|to|one|two|half|0[.,]\d+|good|new|old|accurate|exact|fine|
    digital|precise|lab|decent|lovely|cheap|gram|grams?|decimals?|places?))+(?= ?[;,]| ?$)
  `,
];
/** Sums that will not come out: of figures, whichever they are. */
const DOUBTS = [
  '(?:y |pero )?no (?:me|nos|le) (?:cierran?|cuadran?)(?: (?:la cuenta|las cuentas|los numeros|nada))?',
  "(?:and |but )?(?:it|the (?:sums?|numbers|figures)|my (?:sums?|numbers|figures)) (?:don'?t|doesn'?t|won'?t|do not|does not) (?:add up|come out)(?: right)?",
];
/** Who holds a figure to be high or low: which it is is asked, and it stays as it was told. */
const OTHERS_VIEW = [
  unbroken`
    (?:but |pero |y |and )?(?:(?:the|my|an?|some|el|la|mi|una?) )?(?:(?:other|otr[oa]) )?(?:fella|lad|lass|
    guy|man|woman|lady|chap|bloke|one|tipo|senora?|chic[oa]|muchach[oa]|${PERSON})(?: (?:at|in|on|from|de|
    del|en) (?:(?:the|la|el|mi) )?\p{L}+)? (?:says|said|reckons|thinks|dice|dijo|cree)(?: (?:that|
    que))? (?:that'?s|it'?s|it is|that is|es|esta)(?: (?:too|very|a bit|far too|muy|demasiado))? (?:high|
    low|much|a lot|off|wrong|strong|weak|alt[oa]|baj[oa]|much[oa]|poc[oa]|poquit[oa]|fuerte)
  `,
  unbroken`
    (?:y |and |but |pero )?(?:se me hace|me parece|(?:it |that )?(?:looks|seems))(?: (?:muy|un poco|
    demasiad[oa]|a bit|too|very|rather))? (?:poc[oa]|poquit[oa]|much[oa]|alt[oa]|baj[oa]|low|high|little|
    much|a lot)
  `,
];
/** How long a pound is, where it is the usual one. */
const POUND = [
  '(?:(?:la|las|con|de|son|una) )*libras? (?:(?:es|son) )?(?:de )?(?:las )?(?:de )?(?:16 (?:oz|onzas)|45[34](?: ?(?:g|gr|gramos))?)(?! (?:de|of))',
  '(?:the 16 (?:oz|ounce) pound|pounds? (?:is|are|of|at) (?:16 (?:oz|ounces)|45[34](?: ?g(?:rams)?)?))',
];

/** What a share is of where it is of none of the recipe: no oil, no weight, nothing that an oil stands in, no word for one told before. */
const OF_RECIPE = unbroken`
  (?:it|its|them|that|this|those|these|which|what|each|both|all|as|of|the|my|our|again|more|less|much|many|
  oils?|fats?|butters?|lye|water|recipes?|batch(?:es)?|amounts?|weights?|quantit\p{L}+|figures?|numbers?|
  mix|mixture|blend|batter|lot|stuff|rest|pots?|pans?|bowls?|jars?|jugs?|tins?|cans?|tubs?|bottles?|bags?|
  packets?|packs?|boxes|box|buckets?|blocks?|slabs?|bricks?|lumps?|kilos?|kg|g|grams?|pounds?|lbs?|ounces?|
  oz|litres?|liters?|cups?|spoons?|solids?|liquids?|ingredients?|everything|thing|one|ones|size|way|full|
  empty|gone|left|melted|used|es[oae]s?|est[oae]s?|ell[oa]s?|lo|tod[oa]s?|cada|que|aceites?|grasas?|
  mantecas?|sosa|soda|agua|recetas?|tandas?|lotes?|cantidad(?:es)?|pesos?|mezcla|masa|resto|ollas?|botes?|
  frascos?|tarros?|latas?|botellas?|garrafas?|bolsas?|paquetes?|bloques?|barras?|pastillas?|gramos|libras?|
  litros?|tazas?|mas|menos|mism[oa]s?|ingredientes?|total)
`;
/** "Half the cake", "la mitad de las tablas", "half asleep": of something else than the recipe, which it names. */
const SHARE_OF_ELSE = [
  `half (?:of )?(?:the|my|our|his|her|their|a) (?!${OF_RECIPE}(?!\\p{L}))\\p{L}+(?:'s)?`,
  'half(?: |-)(?:asleep|awake|dead|blind|deaf|daft|past|term|time|price)',
  `(?:la mitad|un tercio|una tercera parte) de (?:la|las|los|mis?|el|su|sus|nuestr[oa]s?) (?!${OF_RECIPE}(?!\\p{L}))\\p{L}+`,
  '(?:a|por la) mitad de precio',
];

const TALK = [
  SHARE_OF_ELSE,
  GREETINGS,
  CLOCK,
  COMING,
  PEOPLE,
  WASHED_AFTER,
  PRAISE,
  SPEAKING,
  OF_THE_SCALE,
  DOUBTS,
  OTHERS_VIEW,
  POUND,
].map(some => new RegExp(`(?<![\\p{L}\\d])(?:${some.join('|')})(?![\\p{L}\\d])`, 'gu'));

const OF_FAT =
  /(?<!\p{L})(?:oils?|fats?|butters?|wax|aceites?|mantecas?|mantequillas?|grasas?|ceras?|sebo)(?!\p{L})/u;
const WEIGHT =
  /\d ?(?:g|gr|gramos|grams?|kg|kilos?|oz|ounces?|onzas?|lbs?|pounds?|libras?|%|percent|ml)(?!\p{L})/u;
/** Whether something of a recipe may stand in it. */
const mayBeRecipe = (said: string): boolean =>
  OF_FAT.test(said) || said.split(/[^\p{L}]+/u).some(word => word.length > 2 && knownOil(word) !== undefined);

/** A line without what is chatted beside its recipe. Takes what `plainWords` gives with its clauses. Pure. */
export function withoutTalk(plain: string): string {
  return TALK.reduce(
    (said, pattern) =>
      said.replace(pattern, text =>
        mayBeRecipe(text) || (WEIGHT.test(text) && !/libra|pound|(?<!\d)(?:16 o|45[34])/u.test(text))
          ? text
          : ' ; ',
      ),
    plain,
  );
}
