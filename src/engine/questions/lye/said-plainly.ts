import { knownAdditive } from '../../batch/additives/additives.ts';
import { knownOil } from '../../batch/oils/find-oil.ts';
import { unbroken } from '../../over-lines.ts';
import { COUNT, LYE, MASS, UNIT } from './amounts/words.ts';

/** "No son 800 sino 600", "not 1 kg but 800 g". */
const NOT_BUT = new RegExp(
  `(?<!\\p{L})(?:no (?:son|eran?|es|fueron)|not) ${COUNT} ?(?:${UNIT})?(?: (?:of |de )\\p{L}+)? (?:sino|but)(?= \\d)`,
  'gu',
);
const LYE_FORM = new RegExp(
  `(?<!\\p{L})(${LYE}) (?:pellets?|flakes?|beads?|crystals?|granules?|pearls?|en (?:perlas|escamas|polvo|lentejas|granos))(?!\\p{L})`,
  'gu',
);
/** How a soap feels: "still soft as butter", "quedó como mantequilla". */
const SIMILE = new RegExp(
  unbroken`
    (?<!\p{L})(?:soft|hard|white|smooth|thick|greasy|yellow|feels|looks|quedo|queda|esta|parece|blando|
    suave)(?: \p{L}+)?(?: (?:as|like|como)(?: (?:a|the|la|el|una))?) (?:butter|lard|wax|candle wax|cheese|
    mantequilla|manteca|cera|queso)(?= ?(?:;|,|$|and |y ))
  `,
  'gu',
);
/** "Buttermilk for the liquid, 11 ounces"; the weight of an oil that follows is none of it. */
const FOR_LIQUID = new RegExp(
  unbroken`
    (?<!\p{L})(\p{L}+(?: (?:de )?\p{L}+)?) (?:for|as|por|como|de|instead of|in place of|en (?:vez|
    lugar) de) ?(?:the |all the |my |el |la |l )?(?:liquid|water|liquido|agua),? (${MASS})(?: (?:frozen|
    cold|chilled|congelad[oa]|fri[oa]|helad[oa]|flat|(?:ya )?sin gas))?(?= ?(?:[;,]|$|(?:and|y|superfat|lye|sosa)(?!\p{L})))
  `,
  'gu',
);
/** "All the water is frozen goat milk, 300 g of it", "in place of the water i use stout gone flat, 200 g". */
const WATER_IS = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:all|toda|todo) )?(?:(?:of|the|el|la) )*(?:water|liquid|agua|liquido) (?:is|as|will be|es|va|sera)(?: (?:all|frozen|
    cold|flat|congelad[oa]|fri[oa]|de))* (?<name>\p{L}+(?: (?:de )?\p{L}+)?),? (?<mass>${MASS})(?: (?:of|de) (?:it|that|eso|ella))?|
    (?<!\p{L})(?:in place of|instead of|en (?:vez|lugar) de)(?: (?:all|the|of|el|la))* (?:water|agua),?(?: (?:i|we|use|using|put|uso|usamos|
    pongo|lleva|echo|take|frozen|cold))* (?<other>\p{L}+(?: (?:de )?\p{L}+)?)(?: (?:gone flat|flat|sin gas|cold|frozen|congelad[oa]|fri[oa]))*,?
    (?<grams>${MASS})
  `,
  'gu',
);
/** "The liquid is half water half coconut milk", "part of the liquid is coconut milk at trace": how it is divided, and no share of an oil. */
const LIQUID_DIVIDED = new RegExp(
  unbroken`
    (?<!\p{L})(?:the |el )?(?:liquid|liquido) (?:is|es|:|=|va)? ?(?:half|1\/2|mitad) (?:water|agua)(?:,| and| y)? ?(?:half|1\/2|mitad) (?:\p{L}+ )?
    (?:milk|leche(?: de \p{L}+)?|beer|cerveza|aloe|tea)(?!\p{L})|(?<!\p{L})(?:part|some|half|a third|parte|
    la mitad|un tercio) (?:of|de|del) (?:the |el )?
    ?(?:liquid|water|liquido|agua) (?:is|es|va)(?: (?:frozen|cold))* (?:\p{L}+ )?(?:milk|leche(?: de \p{L}+)?)(?: (?:at|in|en|a la) (?:trace|traza))?
    (?=,? ?(?:;|,|$))
  `,
  'gu',
);
/** "Coco lo mismo que la leche", behind the milk's weight. */
const SAME_AS_LIQUID = new RegExp(
  unbroken`
    (${MASS})(?: of| de)? ((?:\p{L}+ )?(leche|milk|agua|water|
    buttermilk)(?!\p{L})[^;,\d]{0,15})([;,].*?)(?<!\p{L})(\p{L}+),? (?:lo mismo|igual|tanto|
    (?:the )?same(?: weight| amount)?) (?:que|como|as) (?:la |el |the )?\3(?!\p{L})
  `,
  'u',
);
/** "Lard's 60%", "the coconut's only 14 oz". */
const IS = /(?<!\p{L})(\p{L}{3,})'s (?=(?:only |just |about )?\d)/gu;
/** "Canola's from the chip shop": told of an oil as with the verb written out. */
const IS_SAID = new RegExp(
  unbroken`
    (?<!\p{L})(\p{L}{3,})['’]s (?=(?:from|been|fresh|in|out|gone|the|an?|there|my|our|still|all|now|not|for|
    right|dead|lovely|old|new|off|on|to|come|left|only|just)(?!\p{L}))
  `,
  'gu',
);
/** "De palma, de palma": said once more, so that nobody mistakes it. */
const SAID_TWICE = /(?<=(?:de|of|g) )(\p{L}+), (?:de |of )?\1(?= ?,)/gu;
/** "80% oliva 20% coco, ¿cuánta sosa por cada kilo de aceites?" */
const PER_KILO =
  /(?<!\p{L})(?:por (?:cada )?|per |for (?:each|every) )(?:1 )?(kilo|kg|libra|pound|lb) (?:de |of )?(?:aceites?|grasas?|oils?|fats?)(?!\p{L})/gu;
/** "9 parts to 1". */
const PARTS_TO = /(?<![\d.,])(\d{1,2}) (?:parts?|partes?) (?:to|a|por) (\d{1,2})(?= ?(?:[,;]|$))/gu;
/** "Ratio 60:30:10": of oils; water and lye have two figures, and the second is one. */
const RATIO_OF_OILS =
  /(?<!\p{L})(?:in (?:the |a )?)?(?:ratio|proporcion|proportions?)(?: of| de)? (?=\d+ ?: ?\d+ ?: ?\d)/gu;
/** "An 80:20 olive/coconut blend", "1.2 kg oil mix". */
const BLEND = /(?<=\d+:\d+ \p{L}+(?: \p{L}+)? ?\/ ?\p{L}+(?: \p{L}+)?) (?:blend|mix|mezcla)(?!\p{L})/gu;
const OIL_MIX = new RegExp(`(?<=${MASS} )(?:oils?|fats?) (?:mix|blend|mixture)(?=[,;:]? .*%)`, 'gu');
/** "Castilla 100 %, 1 kg de oliva". */
const ALL_CASTILE = /(?<!\p{L})castill?[ea] 100 ?%(?=,.*(?<!\p{L})(?:oliva|olive)(?!\p{L}))/gu;
/** "200 coconut, 200 palm is making 400 g". */
const MAKING = new RegExp(
  `,? (?:is |are |it )?(?:making|makes|(?<=\\d(?: ?(?:g|gr|kg|oz|lbs?))? )=) (?=${MASS})`,
  'gu',
);

/** "And sunflower, 100 of that". */
const OF_THAT = /(?<=\d ?(?:g|gr|gramos|grams|oz)?) (?:of|de) (?:it|that|eso|ese)(?= ?(?:[;,]|$))/gu;
/** "Coco 330 g, oliva el doble": of the one weight before it. */
const MULTIPLE_OF_FIRST = new RegExp(
  unbroken`
    ^(?<head>[^;\d]*)(?<figure>\d[\d.,]*)(?<unit> ?(?:g|gr|gramos|grams|oz|
    kg))?(?<tail>[^;,\d]*), (?<oil>\p{L}+(?: \p{L}+)?) (?<times>el doble|la mitad|double that|twice that|
    half that)(?= ?(?:[;,]|$))
  `,
  'u',
);
function multiplied(whole: string, ...rest: readonly unknown[]): string {
  const { head, figure, unit = '', tail, oil, times } = rest.at(-1) as Record<string, string>;
  if (knownOil(oil!) === undefined) return whole;
  const told = Number(figure!.replace(',', '.')) * (/mitad|half/u.test(times!) ? 0.5 : 2);
  return `${head}${figure}${unit}${tail}, ${oil} ${told}${unit}`;
}

/** "Milk of 4 % fat": how rich a milk is, and no oil. */
const MILK_FAT = new RegExp(
  unbroken`
    (?<=(?<!\p{L})(?:milk|leche|cream|nata|yogh?urt?|yogur|kefir)(?!\p{L})[^;,]{0,30}?) (?:(?:with|con|of|
    at|al|del?) )?\d{1,2}(?:[.,]\d)? ?(?:%|percent|por ciento)(?: (?:of|de))? (?:milk ?fat|butter ?fat|fat|
    materia grasa|grasa)(?!\p{L})
  `,
  'gu',
);
/** "The tub says 90% pure", "mine is 90% flakes": no superfat and no share of an oil is so high. */
const SAYS_PURE = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:the |my |la |el |mi )?(?:tub|bag|label|tin|jar|packet|bolsa|etiqueta|bote|tarro|saco)|mine|it|la mia|el mio) (?:is|says|reads|
    es|dice|pone|marca)(?: (?:it's|its|it is|que es|al|del?))? (?<percent>(?:8|9)\d(?:[.,]\d+)?|100) ?(?:%|percent|por ?ciento)(?: (?:de )?(?:pure|
    flakes?|pellets?|strong|purity|pureza|escamas|perlas|pur[oa]))?(?! ?(?:of |de )?(?:the |la )?(?:oil|fat|olive|coconut|aceite|oliva|coco))
    (?![\p{L}\d])
  `,
  'gu',
);
/** The city; the same word in Spanish takes something away. */
const QUITO = /(?<=(?<!\p{L})(?:en|de|desde|por|in|from) )quito(?!\p{L})/gu;

/** "Two to one olive and coconut", "2 to 1 water". */
const TO_ONE = /(?<![\d.,:])(\d{1,2}) (?:to|a) (?:one|uno|una|1)(?= (?!(?:of|de)(?!\p{L}))\p{L})/gu;
/** "5:1 water" is read behind the water. */
const RATIO_BEFORE_WATER = /(?<![\d.,:])(\d:1) (?:of )?(water|agua)(?!\p{L})/gu;
/** "In percent", "por ciento todo": what figures that make a hundred are. */
const IN_PERCENT =
  /(?<!\d),? (?:en|in|por|as) (?:porcentajes?|percent(?:ages?|s)?|ciento)(?! ?(?:de|of))(?: (?:sobre|of|on|de) (?=\d))?/gu;
/** What becomes of it: "to paste", "para jabón líquido". */
const TO_PASTE =
  /(?<=\d.*) (?:to|into|as|for|en|para|a) (?:a )?(?:soft |soap )?(?:paste|pasta)(?= ?(?:[,;]|$|\d))/gu;

/** "Manteca 500 de chancho": which fat it is stands behind its weight. */
const FAT_BEHIND = new RegExp(
  unbroken`
    (?<!\p{L})(manteca|grasa|sebo) (\d[\d.,]*(?: ?(?:g|gr|gramos|kg|kilos?|oz|onzas|libras?))?) de (chancho|
    cerdo|puerco|cochino|marrano|res|vaca|vacuno|cordero|pato|ganso)(?!\p{L}| ?\d)
  `,
  'gu',
);

/** Turns of phrase told as the readers behind take them. Takes what `plainWords` gives with its clauses. Pure. */
export const saidPlainly = (plain: string): string =>
  plain
    .replace(NOT_BUT, '')
    .replace(OF_THAT, '')
    .replace(MULTIPLE_OF_FIRST, multiplied)
    .replace(MILK_FAT, '')
    .replace(QUITO, 'casa')
    .replace(SAYS_PURE, ' purity $<percent>% ')
    .replace(FAT_BEHIND, (whole, fat: string, mass: string, of: string) =>
      knownOil(`${fat} de ${of}`) === undefined ? whole : `${fat} de ${of} ${mass}`,
    )
    .replace(TO_ONE, '$1:1')
    .replace(RATIO_BEFORE_WATER, '$2 $1')
    .replace(IN_PERCENT, ' ; ')
    .replace(TO_PASTE, '')
    .replace(LYE_FORM, '$1')
    .replace(SIMILE, ' ')
    .replace(SAID_TWICE, '$1')
    .replace(IS_SAID, (whole, name: string) => (knownOil(name) === undefined ? whole : `${name} is `))
    .replace(IS, (whole, name: string) => (knownOil(name) === undefined ? whole : `${name} `))
    .replace(FOR_LIQUID, (whole, name: string, mass: string) =>
      knownAdditive(name) === undefined ? whole : `${mass} of ${name}`,
    )
    .replace(LIQUID_DIVIDED, ' water ')
    .replace(WATER_IS, (whole, ...rest) => {
      const { name, mass, other = name, grams = mass } = rest.at(-1) as Record<string, string>;
      return knownAdditive(other!) === undefined ? whole : `${grams} of ${other} as the liquid`;
    })
    .replace(
      SAME_AS_LIQUID,
      (whole, mass: string, liquid: string, _head: string, between: string, oil: string) =>
        knownOil(oil) === undefined ? whole : `${mass} of ${liquid}${between}${oil} ${mass}`,
    )
    .replace(PER_KILO, '; 1 $1 oils ;')
    .replace(PARTS_TO, '$1:$2')
    .replace(RATIO_OF_OILS, '')
    .replace(BLEND, '')
    .replace(OIL_MIX, 'oils')
    .replace(ALL_CASTILE, ' ; ')
    .replace(MAKING, ' ; total ');
