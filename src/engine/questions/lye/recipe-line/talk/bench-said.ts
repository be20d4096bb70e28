import { unbroken } from '../../../../over-lines.ts';
import { FAT, LYE } from '../../amounts/words.ts';
import { withoutLeftOut } from './left-out.ts';
import { LYE_AND_FAT_SAID } from './lye-and-fat-said.ts';

const LIQUID_BESIDE =
  /(?<!\p{L})(?:milk|leche|buttermilk|beer|cerveza|tea|te|coffee|cafe|wine|vino)(?!\p{L})/u;
const MASS = String.raw`\d[\d.,]* ?(?:g|gr|gramos|grams?|oz|onzas?|ounces?)?`;

/** Turns of phrase of the bench that only say the same otherwise. */
const SAID: readonly (readonly [RegExp, string])[] = [
  ...LYE_AND_FAT_SAID,
  // "Karité, que también cuenta para la soda": it is in.
  [
    new RegExp(
      unbroken`
        ,? (?:que|which|that) (?:also |tambien )?(?:counts?|cuentan?|entran?)(?: (?:too|as well|
        tambien))? (?:for|in|towards|para|en) (?:the |la )?(?:${LYE}|soda)(?: (?:too|as well|
        tambien))?(?= ?[,;])
      `,
      'gu',
    ),
    '',
  ],
  // "900 g olive, 300 g of it infused with calendula": a part of what was told, all of which is in.
  [
    new RegExp(
      unbroken`
        , ${MASS} (?:of (?:it|that|which|those)|de (?:el|ella|ese|esos|eso)) (?:is |are |was |esta |estan |
        va )?(?:infused|steeped|infusionad[oa]s?|macerad[oa]s?)(?: (?:with|in|con|de|en) \p{L}+)?(?= ?[,;])
      `,
      'gu',
    ),
    '',
  ],
  // "Uno de coco por cada tres de oliva": so many parts of each.
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(?:1|un|una|uno|one)(?: partes?)? (?:de|of) (\p{L}+(?: \p{L}+)?) (?:por|for|
        to)(?: (?:cada|every|each))? (\d)(?: (?:partes?|parts?))? (?:de|of) (\p{L}+)(?= ?[,;])
      `,
      'gu',
    ),
    '1 part $1, $2 parts $3',
  ],
  // "The whole lot of oils is 1000 g", "1 kilo entre oliva 700 y coco 300".
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(?:the )?(?:whole|entire) (?:lot|batch|amount|weight) of (?:the |my )?(oils?|
        fats?)(?: (?:is|are|comes to|weighs|being))? (${MASS})(?!\p{L})
      `,
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
    new RegExp(
      unbroken`
        (?<!\p{L})(?:(?:\d|un|una|a|one) (?:litros?|lit(?:er|re)s?|tazas?|cups?) no|(?:no|not) (?:\d|un|una|
        a|one) (?:litros?|lit(?:er|re)s?|tazas?|cups?)),? (?:sino |but )?(?=\d[\d.,]* ?(?:g|gr|gramos|
        grams?|kg|kilos?|oz)(?!\p{L}))
      `,
      'gu',
    ),
    '',
  ],
  // "Like we had aboard": of soap that was made elsewhere.
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(?:like|como|as) (?:(?:i|we|they) )?(?:had|used to (?:have|make|get)|always (?:had|made)|
        teniamos|haciamos|usabamos) (?:aboard|ashore|at sea|on (?:the )?(?:boat|ship)|a bordo|
        en (?:el )?(?:barco|mar))(?= ?(?:[;,]|$))
      `,
      'gu',
    ),
    '',
  ],
  // "Because coconut dries my hands": why, and of how much nothing.
  [
    new RegExp(
      unbroken`
        ,? (?:because|cos|cuz|porque|ya que) (?:(?:the|el|la) )?\p{L}+ (?:(?:me|nos|le) )?(?:dries|
        irritates|reseca|seca|irrita)(?: out)?(?: (?:(?:my|our|mi|mis|la|las|los|el) )?(?:skin|hands?|face|
        piel|manos?|cara|me))?(?: (?:something awful|terribly|badly|so much|a lot|mucho|
        muchisimo))?(?= ?(?:[;,]|$))
      `,
      'gu',
    ),
    ' ; ',
  ],
  // "Thinking 65% tallow …", at the head of all of it.
  [/^(?:(?:i'?m |i was |was |just )*thinking(?: of| about| maybe)?|estoy pensando en|pienso en)(?= \d)/u, ''],
  // "That worked a treat. Another: 250 lard …", where nothing was weighed before.
  [/^([^\d]*(?:^|[;,.] ?))(?:and |y )?(?:another|next|new|otra|nueva)(?: one)? ?: ?(?=\d)/u, '$1; '],
  // "Two on the go: the first is done. The second is …": of the first nothing is weighed.
  [
    new RegExp(
      unbroken`
        ^[^\d;]{0,40}2 (?:recetas|recipes|batches|tandas|lotes|on the go)(?!\p{L})[^\d]{0,120}?(?:the other|
        the second|second|la otra|la segunda)(?: one)? (?:is|es|va|lleva) (?=[^;]*\d)
      `,
      'u',
    ),
    ' ; ',
  ],
  // "My recipe was for 130" is told elsewhere; "me sobra sosa, 87 g justos": lye by its weight.
  [
    new RegExp(
      unbroken`
        (?<!\p{L})(?:me (?:sobra|queda|quedan)|tengo|hay|i have|i've|i've got|
        there's)(?: \p{L}+)? (${LYE}),? (${MASS})(?: (?:justos?|exact(?:ly|os)|left|nomas))?(?= ?(?:[;,]|$))
      `,
      'gu',
    ),
    '$2 $1',
  ],
  // "100% coconut 900 g": nothing else is in it.
  [/(?<!\p{L})(?<![\d.,])100 ?% (?:de )?(?=\p{L}+(?: \p{L}+)? \d+ ?(?:g|gr|kg|oz|lbs?)(?!\p{L}))/gu, ''],
  // "That's the whole recipe, lard".
  [
    /(?<!\p{L})(\p{L}{4,})(?!\p{L})(.*?)(?:that'?s|thats|es) (?:the whole recipe|all of it|toda la receta),? (?:just |only |solo )?\1(?= ?(?:[;,]|$))/gu,
    '$1$2 ; ',
  ],
  // "Tengo 900 g de aceite usado de freír, de girasol todo".
  [
    /(?<=\d ?(?:g|gr|kg|gramos|kilos?|litros?) de aceite) ?, (?:(?:es|todo) )?de (\p{L}+)(?: (?:todo|nomas|puro))?(?= ?(?:[;,]|$))/gu,
    ' de $1',
  ],
  // "La colé tres veces", "strained it twice".
  [
    /,? (?:(?:i|we|la|lo|las|los) )(?:strained|filtered|washed|cleaned|cole|colamos|filtre|lave) (?:it |them )?(?:\d (?:veces|times)|twice)(?= ?(?:[;,]|$))/gu,
    '',
  ],
  // "Pásamela a gramos": of what is answered.
  [
    /(?<!\p{L})(?:pasa(?:me)?l[ao]s?|convert (?:it|them)|(?:put|turn) (?:it|them)) (?:a|1|to|into|in) gram\p{L}*(?: (?:y|and|,))?/gu,
    ' ',
  ],
  // "The power went out": of no oil.
  [
    new RegExp(
      unbroken`
        (?:also |and |y )?(?:the |la )?(?:power|electricity|internet|signal|luz) (?:went|has gone|se (?:fue|
        corto)|(?:is )?cut)(?: (?:out|off|down))?(?= ?(?:[;,]|$|(?:in|en|so|at) ))
      `,
      'gu',
    ),
    ' ; ',
  ],
  // "The pork man": who sells it.
  [
    /(?<!\p{L})(?:the )?(?:pork|beef|meat|egg|milk|fish) (?:man|lady|woman|shop|stall|counter)(?!\p{L})/gu,
    'the butcher',
  ],
  // "I forgot to weigh the cocoa butter. It's 60 g on top of 340 g olive": it is in, and that is its weight.
  [
    new RegExp(
      unbroken`
        (?:(?:i|we) )?forgot to (?:weigh|count|write down) (?:the |my )?(\p{L}+(?: (?:oil|
        butter))?)(?: (?:til|until|till) (?:after|later|the end))? ?[;,] (?:it'?s|it was|there'?s|
        that'?s) (${MASS}) (?:on top of|besides|plus|as well as) `,
      'gu',
    ),
    '$2 $1, ',
  ],
  // "What superfat did I end up with if it was 130 g lye into …": told beside a check of lye that is weighed.
  [
    new RegExp(
      unbroken`
        (?:^|(?<=[;,] ?))(?:so )?what(?:'s| is| was)? (?:the |my )?${FAT} (?:did|do|have|will|would|am|
        was) (?:i|we) (?:(?:end(?:ed)? up|get|have|got|left) ?)+(?:with|at)? ?(?:if|when|from|
        with) (?:(?:it (?:was|is)|i (?:used?|put|did|do)|there (?:was|is)) )?(?=\d)
      `,
      'gu',
    ),
    '',
  ],
  // "Me pasé con el oliva, eché 640 en vez de 600", "weighed coconut wrong, got 280 in the pan instead of 200": so much is in it.
  [
    new RegExp(
      unbroken`
        (?:se me (?:fue|paso) la mano|me pase|me equivoque) (?:con|en|de) (?:el |la )?(\p{L}+),? (?:y |
        que )?(?:(?:le )?(?:eche|puse|son|van|cayeron) )?(\d+) ?(?:g|gr|gramos)? (?:en (?:vez|lugar) de|
        y no) \d+(?: ?(?:g|gr|gramos))?(?= ?(?:[;,]|$))
      `,
      'gu',
    ),
    ' ; $2 g $1',
  ],
  [
    new RegExp(
      unbroken`
        (?:weighed|measured) (?:the )?(\p{L}+) wrong,? (?:got|have|put|there'?s) (\d+) ?(?:g|
        grams)?(?: in the (?:pan|pot|bowl))? instead of \d+(?: ?(?:g|grams))?(?= ?(?:[;,]|and |$))
      `,
      'gu',
    ),
    ' ; $2 g $1 ; ',
  ],
  // "A la olla: oliva 700".
  [
    /(?<=^|; ?)(?:a|en|in|into) (?:la|mi|the|my) (?:olla|cazo|pot|pan)(?: (?:van?|hay|goes?))? ?: ?(?=[^:]*\d)/gu,
    '',
  ],
  // "Jabón de coco puro para lavar ropa: 1 kg …": which soap, at the head of its recipe.
  [
    new RegExp(
      unbroken`
        ^(?![^:]*(?<!\p{L})(?:not?|without|sin|old|last|ayer|anterior|half|double|mitad|doble|otr[oa]s?|
        other|soft|liquid|liquido|shav\p{L}*|shave|cream|blando|afeitar|pasta|potash)(?!\p{L}))(?:(?:an?|
        the|my|un|el|mi) )?(?:jabon(?:es)?|barra) (?:de )?[^;:,\d]{2,40} ?: ?(?=\d)
      `,
      'u',
    ),
    '',
  ],
  // "Me lo pasas a gramos con la sosa": of what is answered.
  [/(?:me )?l[ao]s? pasas? (?:a|1) gramos(?: con)?/gu, ' '],
];
const NO_WATER =
  /,?(?: (?:and|with|but|y|con|pero))* (?:no|zero|nada de|cero|without (?:any )?|sin) ?(?:water|agua)(?: (?:at all|in it))?(?!\p{L})/u;

/** The same line with turns of phrase of the bench told as the readers behind take them. Pure. */
export function benchSaid(plain: string): string {
  const said = SAID.reduce(
    (line, [pattern, instead]) => line.replace(pattern, instead),
    withoutLeftOut(plain),
  );
  return LIQUID_BESIDE.test(said) ? said.replace(NO_WATER, ' as the liquid ; ') : said;
}
