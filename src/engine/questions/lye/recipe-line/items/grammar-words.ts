import { unbroken } from '../../../../over-lines.ts';
import { type Word, word } from './grammar-word.ts';
import { WHOSE_RECIPE } from './whose-recipe.ts';

/** "Half an hour", "media hora", "my third ever batch": of no recipe. */
const OF_TIME = unbroken`
  (?:an? |de |the |of an? )?(?:hours?|hora|horas|dia|day|dozen|docena|past|asleep|way|term|manana|tarde|
  noche|mes|ano|siglo|mundo|bath|shower|century)|(?:to|past) (?:\d|noon|midnight)
`;
/** "My third ever batch", "the fourth of July": the one in a row. */
const IN_A_ROW =
  '(?:ever |soap |real )?(?:batch|time|soap|attempt|try|loaf|week|month|year|class|lesson|bar|lote|tanda|vez|jabon|clase|intento|semana)|of july';
const fraction = (share: number, pattern: string): Word => ({
  pattern: new RegExp(
    unbroken`
      \s*(?<![\p{L}\d/])(?:${pattern})(?![\p{L}\d/])(?! ?(?:an? )?(?:kilos?|kg|pounds?|lbs?|ounces?|oz|
      libras?|cups?|tazas?|g|gr|grams?|gramos?)(?!\p{L}))(?! ?(?:${OF_TIME})(?!\p{L}))
    `,
    'uy',
  ),
  of: span => ({ ...span, is: 'fraction', share }),
});
/** A part, and not the one in a row; "a third batch" may be either, and is read as a part. */
const PART = `(?:(?<=(?:one|an?|una?) \\p{L}+)|(?! ?(?:${IN_A_ROW})(?!\\p{L})))`;
const OTHER = '(?:the |an? |one |la |una? )?(?:other |another |otra |otro )?';

const PERSON = '(?:skin|hands?|hair|piel|manos|pelo|cara)';

/** Behind these words a clause ends or goes on to what else is asked: "half of the coconut" or "half an hour" does neither. */
const ENDS =
  '(?= ?(?:[;,.:]|$|(?:and|y|so|please|pls|por favor|porfa|nomas|nada mas|solamente|at|al)(?!\\p{L})|(?:with|con) (?:\\d|superfat|sobre|lye|sosa|soda)))';
const OF_RECIPE = unbroken`
  (?: (?:of )?(?:it|this|that|(?:the |this |that |my )?(?:recipe|batch|lot|amounts?|quantit(?:y|ies)|size)|
  everything|as much|all of (?:it|this|that))| (?:de )?(?:todo|esto|eso|ella|(?:la |esta |esa |
  mi )?(?:receta|tanda|cantidad)|cada cosa|lo que dice|las cantidades))?
`;
const MULTIPLE = unbroken`
  (?:(?:an? |one |just |only )*(?:half|third|quarter|double|triple|twice)|(?:two|2) thirds|(?:three|
  3) quarters|(?:la |una? |el )*(?:mitad|tercio|tercera parte|cuarto|cuarta parte|doble|triple)|(?:dos|
  2) tercios|(?:tres|3) cuartos|media(?= receta| tanda))
`;
/** "I make half", "yo hago la mitad": so much of the recipe that was told. */
const SO_MUCH_OF_IT = [
  unbroken`
    (?:i|we)(?:'?(?:ll|m|re|d)| am| are| will| would| only| just)* (?:make|making|do|doing|want|need|like|
    use|using|take|taking|go for|going for|after)(?: (?:to )?(?:make|do))?(?: (?:only|just|
    about))? ${MULTIPLE}${OF_RECIPE}${ENDS}
  `,
  unbroken`
    (?:yo |nosotr[oa]s )?(?:solo |nomas |solamente )?(?:hago|hacemos|hare|haremos|quiero|queremos|voy a|
    vamos a|preparo|preparamos|necesito|necesitamos)(?: (?:hacer|preparar))?(?: (?:solo|nomas|
    solamente))? ${MULTIPLE}${OF_RECIPE}${ENDS}
  `,
];

const OF_ALL = '(?: of (?:it|the (?:batch|lot|total|whole|recipe|oils?|fats?|mix|blend|amount|weight)))?';

/** The words that tell how the parts of a recipe stand to one another, the longer before the shorter. */
export const GRAMMAR: readonly Word[] = [
  word(
    'alike',
    unbroken`
      (?:(?:half|twice|three times) )?as (?:much|many)(?: (?:again|weight|oil))?(?: of)?|(?:half|twice|
      double) (?:that|this)(?: much| amount| weight)?(?: again)? (?:of|in)
    `,
    '(?:the )?(?:same|equal)(?: (?:again|amount|weight|quantity|figure))?(?: again)? (?:of|in)(?! (?:each|all|both)(?!\\p{L}))',
    unbroken`
      (?<!(?<!\p{L})(?:por lo|por|lo|mientras|
      entre) )(?:otr[oa]s? )?tant[oa]s?(?: igual)?(?: de)?(?! (?:tiempo|que|ver|rato|gusto)(?!\p{L}))|
      lo mismo (?:de|en)|(?:la misma|igual) cantidad (?:de|en)|(?:el mismo|igual) peso (?:de|en)|
      igual de(?= (?:aceite|manteca|\p{L}+ (?:que|como)))
    `,
    unbroken`
      (?:la mitad|el doble|el triple) de(?! (?:est[oa]s?|es[oa]s?|lo|tod[oa]s?|mi|la|
      una?)(?!\p{L}))(?= (?:aceite de |manteca de |grasa de )?\p{L}+ (?:que|como)(?!\p{L}))|(?:la mitad|
      el doble|el triple) de (?:eso|esto|ese peso|esa cantidad) (?:de|en)
    `,
  ),
  word(
    'aside',
    `${PERSON} (?:muy )?(?:dry|seca|seco|secas|grasa|sensible)|dry ${PERSON}`,
    '(?:just |only |solo )?(?:the|los|las) other (?:two|three|2|3)|(?:los|las) otr[oa]s (?:dos|tres|2|3)',
    'same (?:again|weight|amount)|(?:el )?mismo peso|la misma cantidad|as written|todo lo otro igual|lo demas igual',
  ),
  word('each', 'each(?: of)?|apiece|de cada (?:uno|una)|cada uno(?: de)?|de cada'),
  word(
    'even',
    '(?:in )?equal (?:parts|amounts|shares|weights|quantities)(?: of)?',
    '(?:a |en |por )?partes iguales(?: de)?',
    '(?:en|a|por) (?:tercios|mitades|cuartos)',
    'half and half|half n half|mitad y mitad|50 ?[/:-] ?50|fifty fifty',
    'the same of each|same (?:amount |weight )?of each|por igual|a partes',
  ),
  word(
    'rest',
    unbroken`
      (?:and |y )?(?:the |el |lo )?(?:rest|remainder|balance|resto|restante|demas)(?: (?:is|es|in|of it|
      sera|goes to|de))?(?: (?:hasta|up to|para) (?:el |los )?100(?: ?%)?)?
    `,
    '(?:y )?lo que (?:falta|queda|resta)(?: (?:de|es))?(?: (?:hasta|up to|para) (?:el |los )?100(?: ?%)?)?|whatever is left(?: is)?',
  ),
  word(
    'instead',
    '(?:in place|instead|in lieu) of(?: (?:the|my|it|that))?',
    'in its (?:place|stead)|en su lugar|en vez(?! de)',
    'en (?:lugar|vez) de(?:l| la| el)?',
    'instead(?! of)',
    unbroken`
      (?:where|donde) (?:it|the recipe|the book|the card|la receta|el libro)? ?(?:says|said|called for|dice|
      decia|pone|pide|ponia)(?: (?:the|el|la))?(?= \p{L})
    `,
    // "Lard where the coconut was".
    'where(?= (?:the |my )?(?:\\p{L}+ ){1,2}(?:was|were|went|used to be)(?!\\p{L}))',
    'donde (?:iba|llevaba|estaba)(?: (?:el|la))?',
  ),
  word(
    'corrects',
    unbroken`
      (?:no,? |naw,? |oh |ay,? )?(?:wait,?(?: no)?|hold on,?|hang on,?|sorry,?|oops,?|scratch (?:the|that)|
      correction|actually,?|i (?:meant|mean)(?! to (?:add|put|use))|(?<!(?:i|we|you) )make (?:it|that)|
      rather,?)(?: (?:no|its|it s|it's|make it))?
    `,
    unbroken`
      (?:no,? |ay,? )?(?:espera,?|esperen,?|para ?,|perdon,?|digo,?|me equivoque,?|quise decir|quiero decir|
      mejor dicho,?|corrijo,?|miento,?)(?: (?:no(?! (?:eran?|son|es|fueron)\b)|son|es|eran|era))?
    `,
    // "Typed 400, meant 140".
    '(?:but |and )?meant(?= \\d)',
  ),
  word('not', "no (?:eran?|son|es|fueron)|(?:it |they )?(?:was|were|is|are)(?:n'?t| not)|not"),
  word(
    'without',
    '(?:but )?(?:without|minus|leaving out|leave out|not using|skipping|less)(?: (?:the|any|my))?',
    '(?:pero )?(?:sin|quitando|menos)(?: (?:el|la|los|las|nada de))?',
    unbroken`
      (?:pero )?(?:no (?:hay|habia|hubo|tengo|tenemos|uso|me queda|queda|encontre|encontramos|halle|
      consegui)|paso de(?:l)?|se (?:me |nos )?acabo)(?: (?:el|la|mas))?
    `,
    // What was told and is not at hand, and what is struck out again.
    "(?:but )?(?:i |we )?(?:can'?t|cannot|couldn'?t|could not) (?:find|get) (?:it|any)(?! out| \\p{L}+ (?:oil|butter))",
    unbroken`
      (?:tacha|tachen|borra|borren|strike|cross out|(?<!(?:n'?t|not|to) )(?:forget|scrap)(?: about)?|
      quit(?:a|e|en|ale|emos)|saca(?:le|mos)?)(?: (?:out|the|el|la|los|lo de|lo del))*(?= (?:aceite |
      manteca )?\p{L})
    `,
    unbroken`
      (?:i |we )?(?:won'?t have|will not have|can'?t (?:get|find)|cannot (?:get|find)|couldn'?t (?:get|
      find)|no consigo|no encuentro|me falta)(?: (?:any|the|el|la))?
    `,
    "(?:but )?(?:i am |i'm |im |we are )?(?:no(?:t|w)?|nae) using(?: (?:the|any))?",
    unbroken`
      (?:i |we )?(?:have|ve|got)? ?(?:no|nae|out of|run out of|ran out of|don'?t have(?: any)?|
      haven'?t(?: got)?(?: any)?|do not have(?: any)?)(?: (?:more|the|any))?
    `,
  ),
  word(
    'swaps',
    '(?:i |we )?(?:have |ve )?(?:swap(?:ping|ped)?|chang(?:e|ing|ed)|replac(?:e|ing|ed)|switch(?:ing|ed)?|sub(?:bing|bed)?)(?: (?:out|the|my))*',
    unbroken`
      (?:he |hemos )?(?:la |lo |los |las |le |les )?(?:cambio|cambie|cambiar|cambiado|cambiamos|reemplazo|
      reemplace|reemplazar|reemplazado|sustituyo|sustitui|sustituir|sustituido)(?: (?:el|la|los|las|mi))*
    `,
  ),
  word(
    'times',
    ...SO_MUCH_OF_IT,
    '(?:cut|split) (?:it|this|that|everything|(?:the|this|that) (?:recipe|batch)|(?:it|this|that) all) in (?:half|2)(?: for (?:me|us))?',
    unbroken`
      (?:an? |1 |just |only )*(?:third|quarter) of (?:a |the |this |my )?(?:recipe|batch)|(?:1 |una |la )?(?:tercera|
      cuarta) parte de (?:la|esta|mi) (?:receta|tanda)
    `,
    '(?:an? |just |only )*half (?:a |the |of the |this |of this |my )?(?:recipe|batch)|(?:media|la mitad de (?:la|esta|mi)) (?:receta|tanda)|a la mitad',
  ),
  word(
    'times',
    unbroken`
      (?:doubl(?:e|ed|ing)(?: up)?|al doble|el doble|tripl(?:e|ed|ing)|el triple|al triple|halv(?:e|ed|ing)|
      half of (?:this|that|it)|la mitad de (?:esto|esta|todo|cada (?:cosa|uno))|half (?:of )?everything|
      quadruple|times (?:2|3|4)|x ?[234]|[234] ?x|make it [234] ?x|dupli(?:c|qu)\p{L}+|tripli(?:c|
      qu)\p{L}+)(?: (?:all (?:of )?)?(?:of|de|this|that|it|esto|esta|for me))*
    `,
  ),
  word(
    'rescales',
    unbroken`
      (?:need to |want to |to )?(?:scal(?:e|ed|ing)|resiz(?:e|ing)|(?:get|bring|take|cut) (?:it|this|
      that) (?:down|up)|fit (?:it|this|that)(?= (?:to|into))|pasa(?:me|r)?(?:lo)?(?: esto)?|ajust\p{L}+|
      reduc\p{L}+|escal\p{L}+|llev(?:a|e|ar)(?:me|lo|melo|nos)|agrand\p{L}+|achic\p{L}+)(?: (?:this|that|it|
      them|esto|everything|all|down|up))*(?: to| a| for| para)?(?: (?:fit|fill))?
    `,
    '(?:quiero|want to|i(?: would|d)? like to) (?:hacer|make|do)(?: (?:nomas|solo|just|only))?',
  ),
  word(
    'whole',
    '(?:in |en )?(?:total(?: (?:of|de))?(?: (?:oils|aceites|grasas))?|all told|all together|altogether|todo junto|conjunto)',
    '(?:the |los |las |all )?(?:two|three|four|[2-6]|dos|tres|cuatro) (?:of them )?(?:together|juntos|juntas)',
    '(?:pero )?para que (?:sumen|den|salgan|sean)(?: en total)?',
    '(?:all in|in all|together|juntos|juntas|entre (?:las|los|todos|todas)(?: (?:tres|dos|cuatro|[2-6]))?|de todo|por todo|of the lot|between them|all up)',
    '(?:lote|tanda|batch)(?: (?:de|of))?',
    '(?:up|down) to(?= \\d[\\d.,]* ?(?:g|kg|kilos?|lbs?|pounds?|oz|ounces?) of (?:oils?|fats?))',
    unbroken`
      (?:sobre|on|out of)(?: (?:un total de|un lote de|a total of|a batch of))?(?= (?:about |
      unos )?\d[\d.,]* ?(?:g|gr|gramos|grams?|kg|kilos?|oz|lbs?)(?= *(?:[;,]|$|de (?:aceite|grasa)|
      of (?:oil|fat))))
    `,
    'hasta (?:completar|llegar a|sumar|hacer)(?: los| el)?|to make up(?: to)?',
  ),
  ...WHOSE_RECIPE,
  fraction(2 / 3, `(?:two|2|dos)[ -](?:thirds|tercios)${OF_ALL}|2/3`),
  fraction(3 / 4, `(?:three|3|tres)[ -](?:quarters|fourths|cuartos)${OF_ALL}|3/4`),
  fraction(1 / 3, `${OTHER}(?:thirds?${PART}|tercio|tercera parte)${OF_ALL}|1/3`),
  fraction(1 / 4, `${OTHER}(?:quarter|fourth${PART}|cuarto${PART}|cuarta parte)${OF_ALL}|1/4`),
  fraction(1 / 5, `${OTHER}(?:fifth${PART}|quinto${PART}|quinta parte)${OF_ALL}|1/5`),
  fraction(1 / 2, `${OTHER}(?:half|mitad|medio|media)${OF_ALL}|1/2`),
];
