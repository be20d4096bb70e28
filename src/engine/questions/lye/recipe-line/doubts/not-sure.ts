import { unbroken } from '../../../../over-lines.ts';
import { TextToFit } from '../../../../text/patterns/fitting.ts';
import { FAT } from '../../amounts/words.ts';
import { OF_WHAT } from './of-what.ts';

/*
 * What whoever asks does not know of the recipe themselves: which unit, which lye, how strong it is, which superfat. Asked back in its own
 * words; who only does not know how much lye, or whether it is right, asks for just that and is answered.
 */
const DOUBTS_IT = unbroken`
  (?:no (?:se|sabe|sabemos|recuerdo|me acuerdo|estoy segur[oa]|tengo claro|tengo idea)|ni (?:se|idea|
  me acuerdo)|not (?:so |too |very |quite |really )?(?:sure|certain)|(?:don'?t|dont|do not|can'?t|cant|
  cannot|didn'?t|never) (?:really )?(?:know|remember|recall|tell|ask(?:ed)?)|unsure|dunno|no idea|forgotten|
  forget)(?: (?:any ?more|now|ya|bien|de))*
`;
/** Of a recipe: what its figures are of, what the lye is, which oil it is. */
const OF_IT = [
  unbroken`
    ${DOUBTS_IT} (?:if|whether|which|what|si|cual|con cual|en que|de que|que)(?! (?:i|we|to|yo|hacer|hago|
    debo|tengo|voy|puedo|le pongo)(?!\p{L}))[^;]{0,40}?(?<!\p{L})(?:fluid|liquid[oa]?s?|volum\p{L}+|weight|
    peso|ounces?|onzas?|oz|grams?|gramos|ml|mililitros|pounds?|libras?|caustic\p{L}*|washing|lavar|naoh|koh|
    sodium|potassium|potasa|sosa|soda|ash|bleach|kind|sort|tipo|clase|one (?:it|this|that) is|bicho|animal|
    refined|refinad[oa]|double|doble|half|mitad|fits?|unit|unidad)(?!\p{L})
  `,
  // "Caustic, or is it washing soda".
  unbroken`
    (?:caustic\p{L}*|soda|sosa|lye|naoh),? (?:or|o) (?:is it |es |sera |the |la |de )*(?:washing(?: soda)?|
    lavar|crystals|soda ash|ash|bicarb\p{L}*|drain|desatasca\p{L}*|destapa\p{L}*)
  `,
  // "Can't remember if I looked at the scale after", "no me acuerdo si volvi a pesar": whether the weights that stand there were read.
  unbroken`
    ${DOUBTS_IT}(?: (?:if|whether|what|that|which|how much|si|lo que|de lo que|que|cuanto|de si))?(?: (?:it|i|we|he|she|the|la|el|lo|yo|was|fue|
    ever|even))*(?: (?!superfat|lye|sosa|soda)\p{L}+){0,3}? (?:look|check|read|watch|saw|see|notic|re-?weigh|weigh|tar|zero|scale|display|
    mir[eo]|pes[eo](?!\p{L})|pesar|pesad[oa]|revis|leid?|tare|marcaba|ponia|bascula|balanza|pantalla)(?:\p{L}*)
    (?! (?:(?:the|out|la|el|up) )*(?:water|lye|sosa|soda|agua|mica|colou?r|scent|salt))
  `,
  unbroken`
    (?:(?:forgot|forgotten|forgetting) to|did ?n['’]?t|did not|never) (?:re-?(?:weigh|check)|(?:weigh|check|read|look at|see|watch|note|
    notice)(?: (?:it|them|the (?:scales?|display|number|weight|reading)))?(?: again| after\p{L}*| then)?)(?= ?(?:[;,]|$|(?:after|before|when|
    while|again|anymore)(?!\p{L})))|
    (?:no (?:me )?(?:fije|mire|vi|lei|revise)|(?:me )?olvid[eo] (?:de )?(?:mirar|ver|pesar|revisar|tarar))(?: (?:en|el|la|lo|los|de|otra vez|luego|
    despues))* ?(?:balanza|bascula|peso|pantalla|numero|que (?:marcaba|ponia|decia)|(?=[;,]|$))
  `,
  // How strong potash is, which is sold from 85 to 100 %.
  unbroken`
    (?<=^(?=.*(?<!\p{L})(?:koh|potash|potas\p{L}+)(?!\p{L})).*)(?:no|not|does ?n'?t|doesnt|sin|without|
    ni)(?: (?:me|se|le|a|any|the|la|el|what|how|i))*(?: ?(?:says?|tells?|pone|dice|trae|marca|lleva|viene|
    give|gives|show|shows|se lee|read|know|sabe|se))?(?: (?:the|its|what|how|any|a|la|su|el|cual|que|es|de|
    his|tal|percent|percentage|porcentaje))* (?:strength|strong|purity|pure(?= ?(?:[;,]|$|it))|pureza|
    percent|percentage|porcentaje|concentration|concentracion)
  `,
  // Which superfat.
  unbroken`
    (?:${FAT})[^;]{0,40}?(?<![\d.,])\d{1,2}(?:[.,]\d)? ?(?:%|percent|por ciento)?,? (?:or|o)(?: (?:maybe|
    perhaps|was it|is it|it|quizas?|era|a lo mejor|else))* \d{1,2}(?:[.,]\d)?(?! ?(?:g|gr|ml|:))
  `,
  // More of it than any bar has (common practice): a figure gone wrong.
  `(?:${FAT}) ?(?:(?:of|at|de|del|al|a|is|es|says?|dice|:|=) ?)*(?:3[5-9]|[4-9]\\d)(?![\\d.,]*\\d| ?(?:g|gr|kg|oz|lb|ml)(?!\\p{L})|:)`,
  // Who lost count, poured twice or did not get to the end of it.
  '(?:lost (?:count|track|my place)|perdi (?:la|las) cuentas?)(?= ?(?:[;,]|$|and|y|so|de (?:lo|cuant|las? gramos)|of (?:what|how|the (?:grams|oils?))))',
  unbroken`
    (?:pour|weigh|add|measur|tip|count)(?:ed|t)?(?: (?:it|them|in|out|some|one|the))* (?:twice|two times|
    2 times)|(?:eche|pese|puse|medi|verti|agregue)(?: (?:l[oa]s?|uno|alguno))* (?:dos veces|2 veces|por 2)
  `,
  unbroken`
    (?:before|without|antes de(?: que)?|sin)(?: (?:i|we|yo|he|she))*(?: (?:could|had|pude|pudiera|
    poder))? (?:finish\p{L}*|end\p{L}*|termin\p{L}*|acab\p{L}*)(?: (?:of|de|the|la|el))* (?:weigh\p{L}*|
    pour\p{L}*|measur\p{L}*|pes\p{L}*|ech\p{L}*|med\p{L}*|vert\p{L}*)|(?:(?:did|have|had|has) ?n['’]?t|
    didnt|havent|never|no)(?: (?:he|ha|pude|alcance a))? (?:finish(?:ed)?|termin\p{L}*|acab\p{L}*)(?: (?:of|
    de|the|la|el))* (?:weigh\p{L}*|pour\p{L}*|measur\p{L}*|pes\p{L}*|ech\p{L}*|med\p{L}*|vert\p{L}*)
  `,
  // "Is the 5 lb with the water in? I never know", "aquí la libra es otra".
  unbroken`
    (?<=(?:^|; ?))(?:is|are|es|son|va|van)(?: [\p{L}\d]+){1,4} (?:with|including|con|incluyendo)(?: (?:the|
    el|la))? (?:water|agua|lye|sosa)(?: (?:in|included|and all|dentro|incluid[oa]))?
  `,
  '(?:i|we)(?: can)? never (?:know|remember|tell)(?= ?(?:[;,]|$|which|if|whether))|nunca (?:se|me acuerdo|recuerdo)(?= ?(?:[;,]|$|si |cual))',
  unbroken`
    (?:libra|onza|pound|ounce)s? (?:is|are|es|son|era) (?:otra|distint[oa]s?|diferentes?|different|another|
    not the same)|(?:otra|different|another) (?:libra|onza|pound|ounce)(?! (?:of|de)(?!\p{L}))
  `,
  // What was ordered is not here, and a share of all the oils.
  unbroken`
    (?:parcel|delivery|package|order|paquete|pedido|envio|encomienda)(?: (?:with|de|con|
    from) [^;,\d]{2,30})?(?: (?:is|has|had|esta|todavia|aun|still|me|nos))* ?(?:(?:never|not|no|(?:has|have|
    did|is)? ?n['’]?t)(?: (?:me|nos|ha|yet|todavia|aun|even))* (?:come|came|coming|arrived?|here|turned up|
    shown up|lleg\p{L}+|vino|venido)|(?:late|delayed|stuck|on its way|coming|atrasad[oa]|en camino|
    retrasad[oa]))
  `,
  unbroken`
    (?<=\d.*)(?:half|(?:a|1) (?:third|quarter)|most|some|part)(?: of)? (?:the|my) (?:oils?|
    fats?)(?= ?(?:[;,]|$))|(?<=\d.*)(?:la mitad|un tercio|parte|algo) (?:del?|de los|de mis) (?:aceites?|
    grasas?)(?= ?(?:[;,]|$))
  `,
  // "La mitad de la mitad", "half of a third": a part of a part.
  unbroken`
    (?:half|third|quarter|mitad|tercio|tercera parte|cuart[oa](?: parte)?) (?:of|de) (?:the |a |an |that |
    what (?:is |was )?|la |el |una? |es[oa] |lo que )*(?:half|third|quarter|mitad|medio|media|tercio|
    tercera parte|cuart[oa])
  `,
  // "Double everything but the coconut": the rest of it as it stands, or out?
  unbroken`
    (?:doubl\p{L}*|twice|hal(?:f|ve|ved|ving)|tripl\p{L}*|doble|duplic\p{L}*|mitad|triple)(?: (?:of|de|the|
    on|a|en|el|la))* (?:everything|all(?: (?:of it|the rest))?|the lot|it all|tod[oa]s?(?: (?:lo demas|los
    aceites))?) (?:but|except(?: for)?|apart from|bar|save|menos|salvo|excepto)(?! (?:lye|the lye|la sosa))
  `,
  // "Lye at 93% of full", "la sosa al 93% de lo que sale": a share of the lye, and no purity.
  unbroken`
    (?:lye|naoh|koh|caustic(?: soda)?|sosa|soda|potasa)[^;\d]{0,15} [1-9]\d(?:[.,]\d)? ?(?:%|percent|
    por ?ciento) (?:of|de) (?:the |its |my |la |lo |el |su )*(?:full|whole|total|normal|usual|calculated|
    calculat\p{L}+|amount|figure|what|that|lo que|que|sale|cuenta|calcul\p{L}+|tabla|entera|completa|
    necesaria|maximo|max)
  `,
  // "200 g coconut, I think", "onzas creo", "si no me falla la memoria".
  unbroken`
    (?<=(?<!(?<!\p{L})(?:al|at|superfat|sf|sobreengrasado) )(?<![\d.,])\d[\d.,]*(?: ?,? ?(?!purez|purity|
    pure|sosa|soda|lye|naoh|koh|potasa|sobre|superfat|percent|por)\p{L}+){0,5}? ?,? ?)(?:creo|i think|
    i believe|me parece|supongo|i guess|i suppose|probably|probablemente|a lo mejor|igual eran|from memory|
    de memoria)(?= ?(?:[;,]|$))
  `,
  '(?:if i remember(?: right(?:ly)?| correctly)?|if memory serves|si no me falla la memoria|si mal no recuerdo|si me acuerdo bien|si no recuerdo mal)',
  unbroken`
    (?:i think|i believe|creo que|me parece que|supongo que|i guess|i suppose|probably|maybe|
    quizas?) (?:(?:that|it|they|those|these|it['’]?s|they['’]?re|is|was|were|are|son|eran?|es|estan?|todo|
    all|in|en) )*(?:grams|ounces|oz|pounds|gramos|onzas|libras|\d[\d.,]*(?! ?(?:%|percent|por ciento)))
  `,
  // "500 g … en onzas": of two units.
  unbroken`
    (?<=\d ?(?:g|gr|gramos|grams?|kg)(?!\p{L})[^;]*)(?<!(?:lye|sosa|soda|naoh|koh|water|
    agua)[^;]{0,25})(?<!(?:is|are|es|va) )(?:all |todo |todos )?(?:in|en) (?:ounces|oz|pounds|onzas|
    libras)(?= ?(?:[;,]|$))
  `,
  // A fat with what is no fat in it.
  unbroken`
    (?:with|con)(?: (?:all|todo|toda|todos|todas|the|its|some|of|la|el|los|las|su|sus|un poco de|algo de|
    still|its own))* (?:jelly|gravy|broth|stock|cracklings?|bones?|rind|skin on|meat|crumbs|dregs|sediment|
    twigs|gelatina|caldo|jugo|chicharron\p{L}*|huesos?|carne|pellejos?|posos|sedimento|borra|ramas|ramitas)|
    (?:unstrained|not strained|un-strained|sin colar|sin filtrar|sin limpiar)
  `,
  // "Que me dé para 12 pastillas", "I want to make more of it".
  unbroken`
    (?<=\d.*)(?:que (?:me |nos )?(?:de|den|alcance|rinda|salgan?) para \d|(?:enough|to (?:do|
    be enough)) (?:for|to make) \d+ (?:bars?|soaps?|pieces|loaves|mou?lds?|people)|(?:quiero|want to|
    need to|necesito) (?:hacer|make) (?:mas|more|menos|less)(?= ?(?:[;,]|$)))
  `,
  ...OF_WHAT,
].map(pattern => new RegExp(`(?<!\\p{L})(?:${pattern})(?!\\p{L})`, 'u'));

const VESSEL =
  '(?:pots?|pans?|saucepan|bowl|bucket|jug|tub|kettle|cooker|ollas?|cazo|cazuela|cubo|cubeta|balde|bol|cuenco|jarra|caldero)';
/** "La olla con todo pesa 3,2 kg": with the pot, unless it was tared. */
const IN_ITS_POT = new RegExp(
  unbroken`
    (?<=^(?!.*(?<!\p{L})(?:tar(?:e|ed|ada|ado|e)|zero(?:ed)?|a cero|en cero|without the (?:pot|pan|bowl)|
    sin (?:la olla|el cazo|el bol))(?!\p{L})).*)(?<!\p{L})(?:the|my|that|la|el|mi) ${VESSEL},? (?:(?:with|
    con|and|y) [^;,\d]{1,25} )?(?:weighs?|weighed|comes to|says|reads|pesa|peso|marca|da) (?:(?:about|me|
    unos|como|casi|nearly) )*(?!\d{1,3}(?:[.,]\d+)? ?(?:%|percent|por ?ciento))\d
  `,
  'u',
);
/** "El resto como siempre": what else there is, which nobody here knows. */
const THE_USUAL = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:the )?(?:rest|others?|other oils|remainder)|(?:el )?resto|lo demas|lo otro|
    los demas)(?: (?:is|are|es|va|van|goes|stays|todo|all|oils|aceites))* (?:(?:as|like|como|lo de|los de|
    the|el|la) )*(?:usual|always|normal|siempre|ya sab\p{L}+|you (?:all )?know)(?!\p{L})
  `,
  'u',
);

/** The words of a line by which whoever asks does not know what is weighed; undefined where none do. Takes what `plainWords` gives. Pure. */
export const notSureOf = (plain: string): string | undefined => new TextToFit(plain).firstOf(NOT_SURE);
const NOT_SURE: readonly RegExp[] = [...OF_IT, IN_ITS_POT, THE_USUAL];
