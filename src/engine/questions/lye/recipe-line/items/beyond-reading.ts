import { unbroken } from '../../../../over-lines.ts';
import { TextToFit } from '../../../../text/patterns/fitting.ts';
import { RELATIVE_PARTS } from '../doubts/amounts/relative-parts.ts';
import { SUPERFAT_OF_ONE } from '../doubts/amounts/superfat-of-one.ts';
import { notSureOf } from '../doubts/not-sure.ts';
import { WET_WEIGHTS } from '../settling/wet-weight.ts';
import { WHICH_POT } from './which-pot.ts';

/** A scale that is wrong, by whatever it is. */
const FALSE_SCALE = unbroken`
  (?<!\p{L})(?:(?:the |my |our |those |that |this |la |mi |el |esa |esta )?(?:\p{L}+ )?(?:scales?|balanza|
  bascula|romana|pesa)(?:'s|s)?(?: (?:that|que|is|are|has|have|been|always|a bit|esta|anda|ya|me|le|siempre|
  un poco|medio|poquito|sometimes|a veces|it))* (?:(?:reads?|weighs?|reading|
  weighing) (?:\p{L}+ ){0,2}?(?:high|low|heavy|light|over|under|short|more|less|wrong|off|out)|out by|
  off by|playing up|wonky|broken|faulty|wrong|off(?= ?(?:[;,]|$|by))|adds?(?: on)?(?: (?:a few|some|\d+)|
  (?= ?[;,]))|(?:suma|aumenta|agrega|quita|roba|come|da|pesa|marca|mide) (?:de (?:mas|menos)|
  (?:\p{L}+ ){0,2}(?:gramos|mas|menos|mal))|mal(?: calibrada)?(?= ?(?:[;,]|$))|desajustada|descalibrada|
  descompuesta|rota|falla|fallando|tramposa|trampa|miente|loca))(?!\p{L})
`;

/**
 * What turns a recipe in a way that no reader here follows: its weight with the water in it, two recipes under letters, fat that goes
 * in when the lye is spent, so many bars that are to be another number. Asked back in its own words.
 */
const BEYOND: readonly RegExp[] = [
  ...WET_WEIGHTS,
  ...RELATIVE_PARTS,
  ...SUPERFAT_OF_ONE,
  // "Split 60 to 40 by weight … or was it by what each takes?": who leaves it open is asked.
  new RegExp(
    unbroken`
      (?<=\d.*)(?<!\p{L})(?:or (?:was|is|were|are) (?:it|that|they|those|these)|o (?:era|eran|es|son|fue|
      fueron|seria))(?= (?:by|per|por|the|el|la|los|las|of|de|with|con|at|al|only|solo|\d)(?!\p{L}))
    `,
    'u',
  ),
  // "A otra tanda 200 g de coco": what goes into another batch has a lye of its own; another pot is told by `vessels.ts`.
  /(?<!\p{L})otr[oa] (?:lote|tanda)(?!\p{L})/u,
  // "Mañana le agrego 200 g; hoy hay 800 g", "tomorrow I add".
  new RegExp(
    unbroken`
      (?<!(?:\b(?:la|esta|each|every|de) ))(?<!\p{L})(?:tomorrow|manana)(?!\p{L})(?: (?:le|les|lo|la|yo|i|
      i'?ll|ill|we|we'?ll|will|voy a|vamos a|going to|shall|can|want to)(?!\p{L}))*(?: )?(?:agreg|anad|echo|
      echa|pong|pondr|met|sum|adds?(?!\p{L})|puts?(?!\p{L})|pour|top)\p{L}*
    `,
    'u',
  ),
  // "Half and half potassium and sodium hydroxide": by which of the two's weights.
  new RegExp(
    unbroken`
      (?<![\d.,])\d[\d.,]* ?%?(?: (?:of|de|del))?(?: (?:the|my|la|el))? (?:alkali|alkalis|alcali)(?!\p{L})|
      (?<!\p{L})(?:half|mitad)(?: (?:of|de|del))?(?: (?:the|my|la|el))? (?:alkali|alcali|lye|sosa)(?!\p{L})
    `,
    'u',
  ),
  /(?<!\p{L})(?:(?:potassium|potasio) (?:and|y|&|plus|con) (?:sodium|sodio)|(?:sodium|sodio) (?:and|y|&|plus|con) (?:potassium|potasio))(?!\p{L})/u,
  // "Superfat 5 … no, twice that superfat": of which it is a multiple nobody reads here.
  new RegExp(
    unbroken`
      (?<!\p{L})(?:doble|double|twice|triple|mitad|half)(?: (?:de|of|the|that|el|la|del|
      as much))* (?:superfat\p{L}*|sf|(?:sobre|super) ?(?:grasa|engrasado))(?!\p{L})
    `,
    'u',
  ),
  // "Double this, but not the castor".
  new RegExp(
    unbroken`
      (?<!\p{L})(?:doubl\p{L}+|tripl\p{L}+|doble|duplic\p{L}+)(?!\p{L})[^;]{0,30}?(?<!\p{L})(?:but not|
      except|bar|pero no|menos|salvo|excepto)(?= (?:the|my|el|la|los|las)(?!\p{L}))
    `,
    'u',
  ),
  // "Of that kilo a quarter stayed in the bottle".
  new RegExp(
    unbroken`
      (?<!\p{L})(?:of|from|de) (?:that|those|ese|esa|esos|esas) (?:kilo|kg|litro|litre|liter|pound|lb|libra|
      half|medi[oa]|\d)|(?<!(?:lye|sosa|soda|caustica|naoh|koh)(?: (?:i|we|have|i've|que|me|
      que me))* )(?<!\p{L})(?:left|kept|deje|dejo|dejamos|dejado|quedo|guarde|
      reserve)(?: (?!alone)\p{L}+){0,4} (?:in|en) (?:the|my|its|la|el|su|mi) (?:bottle|jug|tin|jar|tub|can|
      drum|botella|frasco|bote|tarro|alacena|despensa|nevera|lata|garrafa|jarra)(?!\p{L})
    `,
    'u',
  ),
  // "The rest of a kilo coconut": what is left of a weight, of which nobody told what was taken.
  new RegExp(
    unbroken`
      (?<!\p{L})(?:rest|remainder|resto|restante) (?:of|de|del)(?: (?:the|an?|that|my|el|la|los|las|una?|
      es[ea]))* (?:\d[\d.,]* ?)?(?:kilos?|kg|g|gr|grams?|gramos|lbs?|pounds?|libras?|oz|ounces?|
      onzas?)(?!\p{L})
    `,
    'u',
  ),
  // "A: ... B: ...".
  /(?<![\p{L}\d])(?:a|1|uno?|one|primera?|first)\)? ?: ?[^;:]*\d[^:]*(?<![\p{L}\d])(?:b|2|dos|two|segunda?|second)\)? ?:/u,
  /(?<!\p{L})(?:for each|para cada (?:una?|receta)|de cada receta|lye for both|sosa para (?:ambas|las dos))(?!\p{L})/u,
  new RegExp(
    unbroken`
      (?<!\p{L})(?:recipe|receta|batch|lote|tanda|formula)s? (?:a|1|uno|one)(?![\p{L}\d])(?! ?(?:kg|kilo|g|
      lb|oz|gram)).*(?:recipe|receta|batch|lote|tanda|formula) (?:b|2|dos|two)(?![\p{L}\d])(?! ?(?:kg|kilo|
      g|lb|oz|gram))
    `,
    'u',
  ),
  ...WHICH_POT,
  // Which is which, turned round: the other way about, swapped, muddled, crossed.
  new RegExp(
    unbroken`
      (?<!\p{L})(?:al reves|(?:al|lo) contrario|(?:the )?(?:other|opposite|wrong) way (?:a?round|about|up)|
      the (?:other|opposite|wrong) way(?= ?(?:[;,]|$))|(?:is|was|its|it's|just|exactly) the opposite|
      vice ?versa|viceversa|backwards|back to front|in reverse|(?:the )?reversed?(?: of that)?(?= ?(?:[;,]|
      $)))(?!\p{L})
    `,
    'u',
  ),
  new RegExp(
    unbroken`
      (?<!\p{L})(?:swap|switch|flip|turn|chang|revers|exchang)(?:p?ed|p?ing|e|es|s)? (?:those|these|them|
      both|the (?:two|2|first|last|amounts|figures|numbers|weights))(?![\p{L}\d])(?!\p{L})|(?<!\p{L})(?:got|
      had|have|put|wrote|mixed|muddled) (?:them|those|these|it|(?:those|these|the) (?:two|2|amounts|numbers|
      figures|weights)) (?:up|mixed|muddled|crossed|swapped|switched|confused|round|around|about)(?!\p{L})|
      (?<!\p{L})(?:invert|cruc|cruzad|trocad|trastoc|intercambi|permut|voltead)\p{L}*(?!\p{L})|
      (?<!\p{L})(?:los|las) (?:confund|cambie|trastoc)\p{L}*(?!\p{L})
    `,
    'u',
  ),
  // "The book says 183 g for 1000 g of coconut, but I use 1000 g of olive": the first is another's pot.
  new RegExp(
    unbroken`
      \d[^;]*(?<!\p{L})(?:but|pero)(?: (?:i|im|we|yo|nosotr[oa]s|am|are|have|voy|a|['’]?m|
      ['’]?re))*(?:['’]m)? (?:using|use|usar|uso|usare|usamos)(?!\p{L})[^;%]*\d[\d.,]* ?(?:kg|kilos?|g|gr|
      gramos|grams|lbs?|pounds?|libras?|oz|ounces?|onzas?)(?!\p{L})
    `,
    'u',
  ),
  // "With the two amounts swapped".
  new RegExp(
    unbroken`
      (?<!\p{L})(?:amounts?|weights?|figures?|numbers?|quantit\p{L}+|two|both|oils?|cantidades|pesos|cifras|
      dos)(?: (?:are|is|were|was|just|all|estan|van|the))* (?:swapped|switched|exchanged|interchanged|
      flipped|muddled|cambiad[oa]s|cruzad[oa]s|invertid[oa]s)(?!\p{L})
    `,
    'u',
  ),
  // Of a volume nobody here knows the weight.
  /(?<!(?:not|no|never|nunca)(?: \p{L}+)? )(?<!\p{L})(?:(?:by|in) volume|por volumen|en volumen)(?!\p{L})/u,
  // "I make only part of this".
  new RegExp(
    unbroken`
      (?<!\p{L})(?:only|just) (?:a )?(?:part|bit|some|portion) of (?:this|that|it|them|these|the (?:recipe|
      batch|following))(?!\p{L})|(?<!\p{L})(?:solo|nomas|solamente|
      nada mas) (?:una )?parte(?: de)?(?! (?:del? )?(?:agua|jabon|dia))(?!\p{L})
    `,
    'u',
  ),
  // "Which I already doubled": whether the weights that stand there are the doubled ones nobody here knows.
  new RegExp(
    unbroken`
      (?<!(?:lye|sosa|soda|caustica|naoh|koh|potasa)(?: (?:is|esta|va|that))? )(?<!\p{L})(?:already|ya|just|
      have|had|has|been|i've|we've|ive|i'd|he|hemos|habia|ha|esta|estan|fue|were|was|is|are|que|which|
      that)(?: (?:i|we|she|he|yo|lo|la|los|las|le|all|been|already|ya|just|todo))* (?:doubled|tripled|
      quadrupled|halved|doblad[oa]s?|doble|duplicad[oa]s?|duplique|triplicad[oa]s?|triplique|partid[oa]s?|
      multiplicad[oa]s?|multiplique|scaled|resized|escalad[oa]s?)(?!\p{L})
    `,
    'u',
  ),
  // "Es ya el doble de mi receta".
  new RegExp(
    unbroken`
      (?<!\p{L})(?:is|are|was|its|it's|thats|that's|es|son|era|eran|ya|already)(?: (?:ya|already|now|
      ahora))? (?:el doble|the double|double|twice|la mitad|half|el triple|triple) (?:de|of|the|my|mi|la|
      lo)(?!\p{L})
    `,
    'u',
  ),
  // "Pounds of 500 g": in some countries; the one that is read here has 454. Where all stand in such pounds, `own-pound.ts` has read them.
  new RegExp(
    unbroken`
      (?<!\p{L})(?:libras?|pounds?)(?: (?:of|de|son|es|are|is|aca|here|que|the|del|la|el|mercado|market|
      pueblo|feria|tienda|shop|tiene|trae|pesa|weighs?|has))* (?!45[34])\d{3}(?!\d| ?(?:oz|lb)|
      [.,]\d)(?: ?(?:g|gr|gramos|grams?)(?!\p{L}))?(?! (?:of|de|\p{L}+ (?:oil|butter)) )
    `,
    'u',
  ),
  // "By the measuring jug", "en el vasito medidor": what a cup holds, and no weight, unless a scale is spoken of.
  new RegExp(
    unbroken`
      (?<=^(?!.*(?<!\p{L})(?:scales?|weigh\p{L}*|balanza|bascula|pes[eoa]|pesad[oa]s?|pesar|pesamos|
      romana)(?!\p{L})).*)(?<!\p{L})(?:(?:measur\p{L}+|graduated) (?:jugs?|cups?|beakers?|glass(?:es)?)|
      (?:all |just |only )?by (?:the )?(?:jug|cup|mug|spoon|ladle|glass|cupful|jugful)|(?:vas(?:o|ito)|taza|
      tacita|jarr(?:a|ita)|cubo|cuchara) (?:medidor[a]?|de medir|graduad[oa])|probeta|biberon|(?:i|we|
      yo)(?: (?:always|just|only))? (?:used?|uso|usamos|mido con|medi con) (?:an?|the|my|una|la|
      mi) (?:jugs?|cups?|mugs?|jarra|taza|tacita|vaso|vasito)(?= ?(?:[;,]|$|(?:like|as|como|de siempre|
      for it all|para todo)(?!\p{L}))))(?!\p{L})
    `,
    'u',
  ),
  // "The scale adds a few grams", "la báscula anda mal": each weight is another one.
  new RegExp(`(?<=\\d.*)${FALSE_SCALE}`, 'u'),
  new RegExp(`${FALSE_SCALE}(?=.*\\d)`, 'u'),
  // "I go by eye": no weight was weighed.
  new RegExp(
    unbroken`
      (?<=\d.*)(?<!\p{L})(?<!(?:weigh(?:ed|t)|on the scales?),? (?:and )?)(?:(?:i|we|yo|nosotros|she|he) )?(?:(?:never|didn'?t|did not|don'?t|not|
      haven'?t) (?:even )?(?:weigh(?:ed)?|measured?|touch(?:ed)? the (?:\p{L}+ ){0,3}scales?)|no (?:lo |la |
      los |las |l[oa]s? )?(?:pes[eoa]|pesamos|medi)(?! (?:agua|sosa|la sosa|
      el agua)))(?!\p{L})(?! (?:the )?(?:water|lye|sosa|agua|mica|scent|fragrance|salt))
    `,
    'u',
  ),
  // "2 kilos of olive, one of those I gave away": a part of what was weighed.
  new RegExp(
    unbroken`
      (?<=\d.*)(?<![\p{L}\d.,])(?:one|two|three|some|most|part|a bit|a little|[1-9]|una?|uno|dos|tres|
      algun\p{L}*|parte|un poco) (?:of|de) (?:those|these|them|that|which|es[oa]s?|est[oa]s|
      ell[oa]s?)(?= ?(?:[;,]|$|(?:i|we|he|she|they|my|is|was|were|went|got|goes|stays?|que|yo|se|me|la|lo|
      le|los|las|mi|ya|va|queda|regal\p{L}*|guard\p{L}*)(?!\p{L})))
    `,
    'u',
  ),
  // A kilo of soap is no kilo of oils.
  /\d ?(?:kg|kilos?|g|gr|gramos|grams|lbs?|pounds?|libras?|oz) (?:of|de) (?:finished )?(?:soaps?|jabon(?:es)?)(?!\p{L})/u,
  // Fat that no lye is meant for.
  new RegExp(
    unbroken`
      (?<!\p{L})(?:after (?:the )?(?:cook(?:ing)?|gel)|post[- ]cook|at the end of (?:the )?cook|
      despues de (?:la )?coccion|tras la coccion|al final de la coccion|terminada la coccion)(?!\p{L})
    `,
    'u',
  ),
  // "Makes 8 bars, I need 20".
  new RegExp(
    unbroken`
      (?<![\d.,])\d{1,3} (?:bars?|soaps?|jabones|jaboncitos|pastillas|barras)(?!\p{L}).*(?<!\p{L})(?:need|
      want|order\p{L}*|make|encarg\p{L}+|quiero|necesito|piden|pidieron|
      hacer)(?!\p{L})[^;]{0,20}?(?<![\d.,])\d{1,3}(?! ?(?:g|gr|gramos|grams|kg|kilos?|oz|lbs?|ml|%|
      por ciento|percent|\d|[.,]\d))
    `,
    'u',
  ),
];

/** The words of a line that turn its recipe beyond what is followed here; undefined where none do. Takes what `plainWords` gives. */
export function beyondIn(plain: string): string | undefined {
  return new TextToFit(plain).firstOf(BEYOND) ?? notSureOf(plain);
}
