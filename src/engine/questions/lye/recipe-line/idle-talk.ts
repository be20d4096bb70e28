import { knownOil } from '../../../batch/oils/find-oil.ts';
import { LYE } from '../words.ts';
import { PERSON } from './beside-oils.ts';

/*
 * What is chatted beside a recipe and by its kind can neither keep an oil out of the pot nor change a weight; plain text of both
 * languages, from general knowledge of them (no source). Each goes only where no oil, no fat and no weight stands in it.
 */

/** Greetings from somewhere: of whoever writes. */
const GREETINGS = [
  '^(?:(?:muchos? )?saludos?|saluditos|greetings|hello|hi|hiya|hey|hola|good (?:morning|evening|afternoon|day)|morning|evening|buen dia|buenos dias|buenas(?: tardes| noches)?|regards|un abrazo|abrazos)(?: (?:all|everyone|folks|a todos|a todas|para todos|grupo|amig[oa]s|gente))?,? (?:desde|from|de) [^;,.\\d]{2,30}(?=[;,.])',
];
/** The clock: no weight is told in hours. */
const CLOCK = [
  '(?:son|eran|ya son|casi|como|a|desde|hasta) las \\d{1,2}(?: y (?:media|cuarto|pico))?(?: (?:de la (?:manana|tarde|noche|madrugada)|en punto|am|pm))*',
  "(?:it'?s |its |gone |nearly |just )*\\d{1,2} ?(?:in the (?:morning|afternoon|evening)|at night|o'?clock)",
  '(?:start|starting|started|begin|beginning|finish|finishing|knock off|clock off|meet|meeting|empiezo|empezamos|arranco|termino|salgo) (?:at|a las) \\d{1,2}(?! ?%| ?percent)(?: when [^;,\\d]{3,40})?',
];
/** Where whoever asks comes from: a shift, a walk, a day's work. */
const COMING = [
  '(?:recien |ya |hoy )?(?:salgo|salimos|vengo|venimos|llego|llegamos|saliendo|llegando|volviendo|acabo de (?:salir|llegar|volver))(?: recien| ahora| ya| tarde| cansad[oa])*(?: (?:de (?:la|mi|un|una)|del?) [\\p{L}]+)(?: (?:de|en) (?:la |el )?[\\p{L}]+)?',
  "(?:i'?m |we'?re |im )?(?:just )?(?:(?:come|came|got|am|back|home|in) )*(?:off|back from|home from|in from) (?:(?:my|the|a|an|two|three) )?(?:(?:long|late|night|early|double|day) )*(?:shifts?|work|rounds?|duty|nights|job|walk|school|church)",
  "after (?:an?|the|my|our) (?:(?:long|hard|busy|whole|full) )*(?:day|days|week|night|shift|morning|afternoon|evening)(?:'s work)?(?: (?:of|at|on|in|spent))?(?: \\p{L}+ing)?(?: (?:the |my )?\\p{L}+)?(?= (?:i|we)(?!\\p{L})| ?[;,:])",
];
/** How it is with people of whom nothing is taken: who comes, sleeps, works or is out. */
const PEOPLE = [
  `(?:ya |hoy |cuando )?(?:llega|llegan|viene|vienen|vuelve|vuelven|duerme|duermen|se durmio|esta durmiendo|esta dormid[oa]|trabaja)(?: \\p{L}+)? (?:mi|mis|el|la|los|las) ${PERSON}(?: (?:del?|a|al|en)(?: la| el)? \\p{L}+)?`,
  `(?:while |as |when )?(?:my|our|the) ${PERSON}(?:'s| is| are)? (?:(?:finally|now|already|all) )*(?:off (?:shift|work|duty)|coming (?:over|home|round)|visiting|asleep|sleeping|snoring|napping|at (?:work|school|church))(?: (?:tonight|today|now|this (?:morning|evening|afternoon)|later))?`,
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
/** Sums that will not come out: of figures, whichever they are. */
const DOUBTS = [
  '(?:y |pero )?no (?:me|nos|le) (?:cierran?|cuadran?)(?: (?:la cuenta|las cuentas|los numeros|nada))?',
  "(?:and |but )?(?:it|the (?:sums?|numbers|figures)|my (?:sums?|numbers|figures)) (?:don'?t|doesn'?t|won'?t|do not|does not) (?:add up|come out)(?: right)?",
];
/** Who holds a figure to be high or low: which it is is asked, and it stays as it was told. */
const OTHERS_VIEW = [
  `(?:but |pero |y |and )?(?:(?:the|my|an?|some|el|la|mi|una?) )?(?:(?:other|otr[oa]) )?(?:fella|lad|lass|guy|man|woman|lady|chap|bloke|one|tipo|senora?|chic[oa]|muchach[oa]|${PERSON})(?: (?:at|in|on|from|de|del|en) (?:(?:the|la|el|mi) )?\\p{L}+)? (?:says|said|reckons|thinks|dice|dijo|cree)(?: (?:that|que))? (?:that'?s|it'?s|it is|that is|es|esta)(?: (?:too|very|a bit|far too|muy|demasiado))? (?:high|low|much|a lot|off|wrong|strong|weak|alt[oa]|baj[oa]|much[oa]|poc[oa]|poquit[oa]|fuerte)`,
  '(?:y |and |but |pero )?(?:se me hace|me parece|(?:it |that )?(?:looks|seems))(?: (?:muy|un poco|demasiad[oa]|a bit|too|very|rather))? (?:poc[oa]|poquit[oa]|much[oa]|alt[oa]|baj[oa]|low|high|little|much|a lot)',
];
/** How long a pound is, where it is the usual one. */
const POUND = [
  '(?:(?:la|las|con|de|son|una) )*libras? (?:(?:es|son) )?de 16 (?:oz|onzas)',
  'the 16 (?:oz|ounce) pound',
];

const TALK = [
  GREETINGS,
  CLOCK,
  COMING,
  PEOPLE,
  WASHED_AFTER,
  PRAISE,
  SPEAKING,
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
        mayBeRecipe(text) || (WEIGHT.test(text) && !/libra|pound/u.test(text)) ? text : ' ; ',
      ),
    plain,
  );
}

const LIQUID_BESIDE =
  /(?<!\p{L})(?:milk|leche|buttermilk|beer|cerveza|tea|te|coffee|cafe|wine|vino)(?!\p{L})/u;
const MASS = String.raw`\d[\d.,]* ?(?:g|gr|gramos|grams?|oz|onzas?|ounces?)?`;
/** Turns of phrase of the bench that only say the same otherwise. */
const SAID: readonly (readonly [RegExp, string])[] = [
  // "Weighed out": all of it is there.
  [/(?<!\p{L})(weigh(?:ed|ing)?|measur(?:ed|ing))(?: it| them)? out(?!\p{L})/gu, '$1'],
  [
    new RegExp(
      `(?<=(?<!\\p{L})(?:i|we|i've|we've|have|he|yo|hemos) )(?:already|ya|just) (?=(?:weighed|measured|pese|pesado|medido) ${MASS} ?(?:of |de )?${LYE})`,
      'gu',
    ),
    '',
  ],
  // "La sosa ya está pesada, 140 g".
  [
    new RegExp(
      `(?<!\\p{L})(${LYE})(?: (?:ya|esta|is|already|all|have|has|been|la))* (?:pesada|weighed)(?: (?:ya|already))?[,:]? (?=\\d)`,
      'gu',
    ),
    '$1 ',
  ],
  // "My lye tub says 97%": how pure it is.
  [
    new RegExp(
      `(?<!\\p{L})(?:(?:my|the|mi|la|el) )?(?:${LYE} (?:tub|bag|label|tin|packet|bottle|jar|container|pot)|(?:bolsa|etiqueta|bote|envase|frasco|paquete) de (?:la |mi )?${LYE})(?: (?:it|que))? (?:says|reads|said|is|dice|pone|es|marca)(?: (?:al|de|it's|its))? ((?:8|9)\\d(?:[.,]\\d+)?|100) ?(?:%|percent|por ciento)(?: (?:pure|purity|pura|de pureza))?`,
      'gu',
    ),
    'lye purity $1%',
  ],
  // "La soda que conseguí es al 96 %".
  [
    new RegExp(
      `(?<!\\p{L})(?:(?:my|the|mi|la|el) )?(?:${LYE}|soda) (?:que|that|which|i|we)(?: (?:i|we|me|yo))?(?: (?:got|found|bought|have|can get|consegui|conseguimos|compre|encontre|tengo|venden|vendieron|dieron)) (?:es|is|viene|comes|dice|says)(?: (?:al|de|at|del))? ((?:8|9)\\d(?:[.,]\\d+)?) ?(?:%|percent|por ciento)(?: (?:pure|pura|de pureza))?`,
      'gu',
    ),
    'lye purity $1%',
  ],
  // "Mi hija quiere jabón de cacao: 400 g …": which soap, before its recipe.
  [
    new RegExp(
      `^(?:(?:my|our|mi|la|el) )?${PERSON} (?:wants|asked for|fancies|quiere|pidio|me pidio) (?:(?:an?|some|un|unos) )?(?:jabon(?:es)? de \\p{L}+|\\p{L}+ (?:soaps?|bars?)) ?: ?(?=\\d)`,
      'u',
    ),
    '',
  ],
  // "Yo saqué 150 de soda", "I make it 150 g lye", "me ha salido que necesito 71 g de sosa": what was reckoned is to be checked.
  [
    new RegExp(
      `(?<!\\p{L})(?:yo |i |we )?(?:saque|me (?:da|dio|dan|sale|salio|salen|ha (?:dado|salido)|han (?:dado|salido))|make it|got|get|came to|worked out)(?: (?:que|that))?(?: (?:necesito|ocupo|lleva|hacen? falta|i need|it needs|needs))?(?= ${MASS} ?(?:of |de )?(?:${LYE}|soda(?! (?:ash|water)))(?!\\p{L}))`,
      'gu',
    ),
    ' ; ',
  ],
  // "Can someone run 450 g olive …", "take 500 rapeseed", "si hago 750 g de oliva": what is asked of all that follows.
  [
    /^(?:[^\d;]{0,30}; ?)?(?:(?:can|could|would|will) (?:someone|somebody|anyone|you|ye|yous?)(?: (?:please|pls|plz))? (?:run|do|reckon|figure|check|crunch|calculate)|take|si (?:hago|hacemos|uso|usamos|pongo)|(?:if|what if) (?:i|we) (?:do|make|use|used|go with))(?: (?:con|with|solo|just|only))?(?= (?:\d|pur[oa] (?:aceite|manteca|sebo)))/u,
    '',
  ],
  // "Puro aceite de oliva 750 g": nothing else is in it.
  [/^ ?pur[oa] (?=aceite|manteca|sebo)/u, ''],
  // "¿Cuánta sosa si son 1250 de oliva?": of what there is.
  [
    new RegExp(
      `(?<=(?<!\\p{L})${LYE}) (?:si (?:son|es|tengo|uso|pongo)|if (?:i|we) (?:use|have)) (?=\\d)`,
      'gu',
    ),
    ' para ',
  ],
  // "Si quiero 5%": the superfat.
  [
    /(?<!\p{L})(?:si|if) (?:lo |la )?(?:quiero|queremos|i want|we want)(?: (?:it|un|una|a))?(?: (?:al|at))? (?=\d{1,2} ?(?:%|percent|por ?ciento)(?: ?(?:[;,]|$)))/gu,
    'al ',
  ],
  // "The whole lot of oils is 1000 g", "1 kilo entre oliva 700 y coco 300".
  [
    new RegExp(
      `(?<!\\p{L})(?:the )?(?:whole|entire) (?:lot|batch|amount|weight) of (?:the |my )?(oils?|fats?)(?: (?:is|are|comes to|weighs|being))? (${MASS})(?!\\p{L})`,
      'gu',
    ),
    ' ; $2 $1 ; ',
  ],
  [
    /(?<![\d.,])(\d[\d.,]* ?(?:kg|kilos?|g|gr|gramos|grams|lbs?|libras?|pounds?)) (?:entre|between) (?=(?:the |la |el )?\p{L}+(?: \p{L}+){0,2} \d)/gu,
    '$1 aceites ; ',
  ],
  // "Un litro no, 1000 gramos": it was weighed.
  [
    /(?<!\p{L})(?:(?:\d|un|una|a|one) (?:litros?|lit(?:er|re)s?|tazas?|cups?) no|(?:no|not) (?:\d|un|una|a|one) (?:litros?|lit(?:er|re)s?|tazas?|cups?)),? (?:sino |but )?(?=\d[\d.,]* ?(?:g|gr|gramos|grams?|kg|kilos?|oz)(?!\p{L}))/gu,
    '',
  ],
  // "Like we had aboard": of soap that was made elsewhere.
  [
    /(?<!\p{L})(?:like|como|as) (?:(?:i|we|they) )?(?:had|used to (?:have|make|get)|always (?:had|made)|teniamos|haciamos|usabamos) (?:aboard|ashore|at sea|on (?:the )?(?:boat|ship)|a bordo|en (?:el )?(?:barco|mar))(?= ?(?:[;,]|$))/gu,
    '',
  ],
  // "Because coconut dries my hands": why, and of how much nothing.
  [
    /,? (?:because|cos|cuz|porque|ya que) (?:(?:the|el|la) )?\p{L}+ (?:(?:me|nos|le) )?(?:dries|irritates|reseca|seca|irrita)(?: out)?(?: (?:(?:my|our|mi|mis|la|las|los|el) )?(?:skin|hands?|face|piel|manos?|cara|me))?(?: (?:something awful|terribly|badly|so much|a lot|mucho|muchisimo))?(?= ?(?:[;,]|$))/gu,
    ' ; ',
  ],
  // "Thinking 65% tallow …", at the head of all of it.
  [/^(?:(?:i'?m |i was |was |just )*thinking(?: of| about| maybe)?|estoy pensando en|pienso en)(?= \d)/u, ''],
  // "That worked a treat. Another: 250 lard …", where nothing was weighed before.
  [/^([^\d]*(?:^|[;,.] ?))(?:and |y )?(?:another|next|new|otra|nueva)(?: one)? ?: ?(?=\d)/u, '$1; '],
  // "Two on the go: the first is done. The second is …": of the first nothing is weighed.
  [
    /^[^\d;]{0,40}2 (?:recetas|recipes|batches|tandas|lotes|on the go)(?!\p{L})[^\d]{0,120}?(?:the other|the second|second|la otra|la segunda)(?: one)? (?:is|es|va|lleva) (?=[^;]*\d)/u,
    ' ; ',
  ],
];
const NO_WATER =
  /,?(?: (?:and|with|but|y|con|pero))* (?:no|zero|nada de|cero|without (?:any )?|sin) ?(?:water|agua)(?: (?:at all|in it))?(?!\p{L})/u;

const LEFT_OUT = [
  '(?:and |but )?(?:leave|leaving|left|take|taking|took|keep|keeping) (?:the |my |that )?(NAME) (?:out|off)(?: of it)?',
  '(?:forget|ignore|never mind|scrap|skip|drop)(?: about)? (?:the |my |that )?(NAME)(?: (?:i|we) (?:said|told you(?: about)?|mentioned|had)(?: (?:before|earlier|yesterday))?)?',
  '(?<!\\d ?(?:g|gr|gramos|kg|kilos?|oz|onzas?|%)? ?(?:de |of )?)(NAME) no (?:tengo|tenemos|hay|hubo|consegui|encontre|me queda|le pongo|uso)',
  '(?:olvid[ae](?:te|lo)?|olvidemos|olvidense|dejemos)(?: de| afuera)?(?: (?:el|la|lo de(?:l| la)?))? (NAME)(?: (?:que (?:te |les )?(?:dije|puse|mencione)|afuera|fuera))?',
].map(
  one =>
    new RegExp(
      `(?<!\\p{L})${one.replace('NAME', '(?:(?:aceite|manteca|mantequilla) de )?\\p{L}+(?: (?:oil|butter))?')}(?= ?(?:[;,]|$|so|y|and|asi))`,
      'gu',
    ),
);
/** "Same as before but leave the castor out": an oil that is told with no weight is none of the recipe that follows. */
const leftOut = (plain: string): string =>
  LEFT_OUT.reduce(
    (line, pattern) =>
      line.replace(pattern, (whole, name: string) => {
        const oil = knownOil(name);
        if (oil === undefined) return whole;
        const key = name.replace(/^(?:aceite|manteca|mantequilla) de | (?:oil|butter)$/gu, '');
        return line.split(key).length === 2 ? ' ; ' : whole;
      }),
    plain,
  );

/** The same line with turns of phrase of the bench told as the readers behind take them. Pure. */
export function benchSaid(plain: string): string {
  const said = SAID.reduce((line, [pattern, instead]) => line.replace(pattern, instead), leftOut(plain));
  return LIQUID_BESIDE.test(said) ? said.replace(NO_WATER, ' as the liquid ; ') : said;
}
