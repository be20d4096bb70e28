import { knownOil } from '../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../over-lines.ts';
import { figureText } from '../../../quantities/for-readers.ts';
import { readOnce } from '../../../remembered.ts';
import { ofBatchAsked } from '../batch-asked.ts';
import { asListed } from '../recipe-line/items/as-listed.ts';
import { withFatLeftOver } from '../recipe-line/settling/fat-left-over.ts';
import { withWhole } from '../recipe-line/settling/whole-of-one.ts';
import { withoutAskedOfOil } from '../recipe-line/talk/asked-of-oil.ts';
import { benchSaid } from '../recipe-line/talk/bench-said.ts';
import { withoutElse, withoutSetAside } from '../recipe-line/talk/clauses-of-else.ts';
import { withoutFormerSoap } from '../recipe-line/talk/former-soap.ts';
import { askedPlainly } from '../recipe-line/talk/how-it-is-written.ts';
import { withoutTalk } from '../recipe-line/talk/idle-talk.ts';
import { withoutMistold } from '../recipe-line/talk/mistold.ts';
import { withoutStock } from '../recipe-line/talk/oil-stock.ts';
import { withOwnPound } from '../recipe-line/talk/own-pound.ts';
import { withoutScents } from '../recipe-line/talk/scents.ts';
import { withoutToldOfOil } from '../recipe-line/talk/told-of-oil.ts';
import { saidPlainly } from '../said-plainly.ts';
import { withSolution } from '../sums/ready-solution.ts';
import { asTyped, withOneMore } from './as-typed.ts';
import { FAT, LYE, POTASSIUM, plainWords, UNIT } from './words.ts';

/** Courtesies in which a word stands that elsewhere turns the sense. */
const COURTESIES = new RegExp(
  unbroken`
    (?<!\p{L})(?:if (?:it s|it'?s|its|thats|that s|that'?s) (?:no|not too much) (?:bother|trouble)|
    if you (?:please|can|could|would|don t mind|dont mind|don'?t mind|have (?:a|the) (?:minute|moment|
    second|sec|time))(?: please)?|no (?:rush|hurry|worries|pressure|bother)(?: on you| at all)?|
    nothin['’]?g? else(?: (?:in it|in the pot|in there|at all|mixing|mixed in|added|with it))?|nowt else|nothing more|and nothing else|sin (?:prisas?|apuros?)|
    no hay (?:prisa|apuro)|si (?:me )?(?:puede[ns]?|pueden|podria[ns]?|puedes|hace(?:n|s)? el favor|
    es (?:tan )?amable)|sin otra cosa|sin nada mas|y nada mas|sin decir mas|(?:would|could|can|
    will) you (?:please |kindly |possibly )?(?:work|figure|sort) (?:it |that )?out|(?:do|can|could|
    should) (?:i|we) (?:work|figure) (?:it |that )?out|digo mal|no (?:confio|se|entiendo|me fio|
    estoy segur[oa])|(?:i am |i'?m )?not (?:so |very |too )?sure|(?:i )?(?:don'?t|do not|can'?t|cannot|
    couldn'?t) (?:know|trust|remember|read)|(?:and )?i do mean|(?:it (?:is|was) )?meant to be|more or less|
    mas o menos|o sea|por favor)(?!\p{L})
  `,
  'gu',
);
/** "sosa al 5", "lye at 5%": no lye water is so weak, so that it is the superfat. */
const AT_LYE = new RegExp(
  unbroken`
    (?<=(?<!\p{L})${LYE}(?: (?:and|y|n) (?:water|agua))?) (?:(?:at|al|a|for|con|del|
    de) )?(\d{1,2}(?:[.,]\d)?)(?: ?(%|percent|por ciento))?(?= *(?:;|,|$|superfat|(?:but|
    pero)(?!\p{L})))(?!,\d)
  `,
  'u',
);
const WEAKEST = 12;
const NOUGHT = new RegExp(`(${FAT}) (?:cero|zero|nil|nought)(?!\\p{L})`, 'u');

/** Kinds of soap, named before or behind their recipe. */
const KINDS = new RegExp(
  unbroken`
    (?<!\d ?(?:\p{L}+ )?(?:of |de )?)(?<!\p{L})(?:(?:castile|salt|hemp|beer|shampoo|(?:goats? ?)?milk|bar|
    hand|face|dish|laundry|cold process|bastille) (?:soaps?|bars?)|barras? de sal|
    jabon(?:es)? (?:de )?(?:castilla|sal|leche(?: de cabra)?|cerveza|lavar|ropa|cocina|platos|
    tocador))(?!\p{L})
  `,
  'gu',
);
/** Kinds that only potassium hydroxide makes. */
const SOFT_KINDS = new RegExp(
  unbroken`
    (?<!\d ?(?:\p{L}+ )?(?:of |de )?)(?<!\p{L})(?:(?:liquid|soft|shaving|shave|cream|soft shave) soaps?(?: paste)?|shaving (?:cream|pucks?)|
    liquid (?:shampoo|hand ?wash|body ?wash)|(?:champu|shampoo) liquido|
    crema de afeitar|jabon(?:es)? (?:de )?(?:liquido|blando|blanco|pasta|afeitar))(?!\p{L})
  `,
  'gu',
);
/** "1 kg olive oil paste": what potash makes of it. */
const OIL_PASTE = /(?<=\d.*(?:oil|aceite de \p{L}+)) (?:soap )?(?:paste|pasta)(?= ?(?:[,;]|$))/gu;
/** Figures of times, people and pieces. */
const COUNTED = new RegExp(
  unbroken`
    (?<![\d.,])(?:(?<!\p{L})(?:day|dia) \d{1,3}(?! ?(?:g|gr|gramos|grams|kg|oz|lbs?|%|ml|de|of)(?!\p{L})|[.,]\d)|\d{1,3} (?:double |long |late |night )*(?:shifts?|turnos?|guardias?)(?: (?:dobles?|
    largos?|seguid[oa]s))?|\d{1,3} (?:below|degrees|grados|bars|pastillas|barras|people|personas|of us|
    years?|anos|days?|dias|weeks?|semanas|minutes?|minutos|hours?|horas|months?|meses|am|pm|
    o ?clock))(?!\p{L})|(?<!\p{L})(?:at \d{1,2} ?(?:am|pm|o ?clock)|(?:by|until|till|'?til|
    a las) \d{1,2}(?: ?(?:am|pm|o ?clock))?|at \d{1,2} (?:tonight|today|this (?:morning|evening|afternoon))|
    (?<=(?:start|melt|goes|going|went|meet|pour|party|class|dinner|tea|home|back|leave|open|clos|pick|
    tonight|today|tomorrow|morning|afternoon|evening)\p{L}*(?: \p{L}+){0,3} )at \d{1,2})(?= ?(?:;|,|$)|
    (?<=tonight|today|morning|evening|afternoon) )
  `,
  'gu',
);

const EQUAL_PARTS =
  /(?<!\p{L})(?:equal parts|partes iguales)(?: of| de)? ((?:\p{L}+ ?){1,3}(?:, (?:\p{L}+ ?){1,3})*(?: (?:and|y|e) (?:\p{L}+ ?){1,3}))(?=[,;]|$)/u;
/** "equal parts olive, coconut and rice bran" as percents, where each is an oil. */
function inEqualParts(said: string, list: string): string {
  const oils = list.split(/, ?| (?:and|y|e) /u).map(one => one.trim());
  if (oils.length < 2 || oils.some(oil => knownOil(oil) === undefined)) return said;
  return oils.map(oil => `${figureText(100 / oils.length)}% ${oil}`).join(', ');
}

/** "Straight castile, 900 g": pure olive oil, where no oil is named beside it (common practice). */
const STRAIGHT_CASTILE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:straight|plain|pure|true|real|proper|all|100 ?%|puro|pura|autentico|
    verdadero) (?:castill?e|castill?a)|castilla pur[oa])(?: soap)?(?:,|:| of| de)? ?(?=\d[\d.,]* ?(?:g|gr|
    gramos|grams|kg|kilos?|oz|onzas?|lbs?|pounds?|libras?)(?!\p{L}))|(?<=\d[\d.,]* ?(?:g|gr|gramos|grams|kg|
    kilos?|oz|onzas?|lbs?|pounds?|libras?) (?:of |de )?)(?:straight|plain|pure|true|real|
    proper) castill?e(?: soap)?(?!\p{L})
  `,
  'u',
);
const straightCastile = (_: string, ...rest: readonly unknown[]): string => {
  const line = String(rest.findLast(one => typeof one === 'string'));
  const isNamed = line.split(/[^\p{L}]+/u).some(word => word.length > 2 && knownOil(word) !== undefined);
  return isNamed ? ' ; ' : 'olive ';
};
/** "Batch B: 600 lard …": which of somebody's recipes, where no other one is told. */
const LABEL = new RegExp(
  unbroken`
    (?<=^|; ?|(?:for|para|de|of) (?:(?:the|my|la|el|mi) )?)(?:batch|recipe|lote|tanda|receta|
    formula) (?:no |n |num |number |numero |# ?)?(?:[a-h]|\d{1,2}(?= ?:))(?= ?(?:[:;,]|$))
  `,
  'gu',
);
const isOnlyOne = (rest: readonly unknown[]): boolean =>
  String(rest.findLast(one => typeof one === 'string')).match(LABEL)?.length === 1;

/** "Soda 136", "140 soda": in much of America soda alone is the caustic one. */
const SODA_WEIGHED = new RegExp(
  unbroken`
    ((?<![\d.,])\d+(?:[.,]\d+)? ?(?:(?:g|gr|gramos|oz|onzas)? ?(?:de )?))soda(?! (?:caustica|ash|crystals|
    water|bicarb))(?!\p{L})|(?<!\p{L})soda(?! (?:caustica|ash|crystals|water|bicarb))(?=[ :=]*\d)
  `,
  'gu',
);

/** The scents of a question, which its recipe is read without. Pure. */
export const scentsOf = (question: string): readonly string[] =>
  withoutScents(withSolution(withOneMore(ofBatchAsked(plainWords(asTyped(question), { clauses: true })))))
    .scents;

/** A question as it was typed, in plain words, its pounds in grams where they have a weight of their own. Pure. */
export const withPounds = (question: string): string =>
  withOwnPound(plainWords(asTyped(question), { clauses: true }));

/** A line as {@link recipeLine} takes it: courtesies away, shares beside lye told as the superfat that they are. */
export const prepared = readOnce((question): string => {
  const isPotash = POTASSIUM.test(plainWords(question));
  const said = withoutMistold(
    askedPlainly(asListed(withoutSetAside(withWhole(withFatLeftOver(ofBatchAsked(withPounds(question))))))),
  );
  const plain = saidPlainly(
    withoutTalk(
      withoutElse(
        benchSaid(
          withoutToldOfOil(
            withoutAskedOfOil(
              withoutFormerSoap(withoutScents(withSolution(withoutStock(withOneMore(said)))).rest),
            ),
          ),
        ),
      ),
    ),
  )
    .replace(/(?<!\p{L})double[ -]?check(?:ed|ing)?(?!\p{L})/gu, 'check')
    .replace(/(?<=100 ?% )(?:castill?e|castill?a)(?: soap)?(?!\p{L})/u, 'olive')
    .replace(STRAIGHT_CASTILE, straightCastile)
    .replace(LABEL, (whole, ...rest) => (isOnlyOne(rest) ? ' ; ' : whole))
    .replace(
      /(?:instead|in place) of (?:all )?(?:of )?(?:the |my )?water(?!\p{L})|en (?:vez|lugar) de(?:l)? (?:toda )?(?:el |la )?agua(?!\p{L})/gu,
      ' as the liquid ; ',
    )
    .replace(/(?<!\p{L})(?:por|for) (?:cada|every|each) (?=\d+ part)/gu, '')
    .replace(EQUAL_PARTS, inEqualParts)
    .replace(COURTESIES, ' ; ')
    .replace(NOUGHT, '$1 0%')
    .replace(KINDS, ' ; ')
    .replace(SOFT_KINDS, isPotash ? ' ; ' : '$&')
    .replace(OIL_PASTE, isPotash ? '' : '$&')
    .replace(
      new RegExp(String.raw`(?<=\d ?(?:${UNIT})? ?de )soda(?! caustica)|(?<=\bla )soda(?! caustica)`, 'gu'),
      'soda caustica',
    )
    .replace(SODA_WEIGHED, '$1soda caustica')
    .replace(new RegExp(`(${LYE}) instead(?! of)`, 'u'), '$1');
  const hasSuperfat = new RegExp(`(?<!\\p{L})${FAT}(?!\\p{L})`, 'u').test(plain);
  const told = hasSuperfat
    ? plain
    : plain
        .replace(/(?<!\p{L})(?:sg (\d{1,2})(?: ?%)?|se (\d{1,2}) ?%)(?![\d.,]\d)/u, 'superfat $1$2%')
        .replace(AT_LYE, (whole, figure: string) =>
          Number.parseFloat(figure.replace(',', '.')) <= WEAKEST ? ` ; superfat ${figure}%` : whole,
        );
  return told.replace(COUNTED, ' ; ');
});
