import { unbroken } from '../../over-lines.ts';
import type { Outside } from './scope.ts';

/** Words of a bar, its batter and its making; with one of them, what stands beside is a mould, a likeness or a place. */
const OF_SOAP = new RegExp(
  unbroken`
    \b(?:soap\w*|jabon\w*|batter|saponif\w*|superfat|sobreengras\w*|traces?|traza|loaf|loaves|swirls?|bars?|
    barras?|barritas?|pastillas?|batch\w*|lotes?|tandas?|cp|ppo|lather|mould\w*|mold\w*|moldes?|desmold\w*|
    curing|curar(?! (?:las |mis |unas )?aceitunas)|curad[oa]s?|mezcla|masa(?! madre| de (?:pan|pizza|
    hojaldre))|cold process|proceso (?:en )?frio)\b
  `,
  'u',
);
const LYE = /\b(?:lye|caustic\w?|naoh|koh|caustic soda|sosa|soda caustica|potasa)\b/u;

/** What else lye is bought for. Olives are cured in it, their oil is saponified by it. */
const OTHER_USE_OF_LYE = new RegExp(
  unbroken`
    \b(?:pretzels?|bagels?|lutefisk|lutfisk|hominy|posole|pozole|nixtamal\w*|ramen|noodles|fideos|(?:green|
    black|raw|table) olives?(?! oils?)|olives (?:off|from|in brine)|(?:curar|endulzar|quemar|alinar|cocer|
    preparar) (?:(?:las|mis|unas|estas) )?olivas|(?:brin|pickl|cur)\w+ (?:\w+ ){0,2}olives?(?! oils?)|
    aceitunas?|bio ?diesel|(?:clear|unblock|unclog|clean|free|destapar|desatascar|destrancar|
    limpiar)\w* (?:\w+ ){0,3}(?:drains?|sinks?|toilets?|pipes?|ovens?|tiles?|canerias?|desagues?|
    fregaderos?|inodoros?|horno|azulejos)|(?:drains?|sinks?|toilets?|canerias?|desague|
    inodoro) (?:\w+ ){0,2}(?:block\w*|clog\w*|back\w* up|tapad\w*|atascad\w*)|
    fregar (?:\w+ ){0,2}(?:azulejos|suelos?|pisos?)|(?:strip|remove|quitar|decapar) (?:\w+ ){0,3}(?:paint|
    varnish|pintura|barniz)|titra\w+|titulacion\w*|septic tanks?|cess ?pits?|fosa septica|pozo (?:septico|
    negro))\b
  `,
  'u',
);
/** A grade of lye that is bought under another use's name is lye for soap all the same. */
const SOLD_AS = new RegExp(
  unbroken`
    \b(?:(?:that|which) i (?:use|have|bought)|(?:sold|bought|comes|labelled) as|que (?:uso|tengo|compre|
    venden)|la de|el de|drain (?:cleaner|opener|crystals) (?:lye|for)|my recipe|mi receta)\b
  `,
  'u',
);

/** Money, offices and customers are business, whatever is sold. */
const BUSINESS = new RegExp(
  unbroken`
    \b(?:what|how much) (?:should|do|can|would|to) (?:(?:i|we|you|one) )?(?:sell|charge|ask for)\b|\b(?:are|
    do) (?:ye|you|yous|u|y all|folks) (?:\w+ )?(?:charg\w+|sell(?:ing)? (?:\w+ ){0,3}for)\b|\b(?:charg\w+|
    quot(?:e|ing)) (?:(?:her|him|them|me|people|customers?|folk) )?(?:for |per |a )?(?:bars?|loaf|order|
    wedding|favou?rs)\b|\b(?:do|should|can) i (?:quote|invoice|refund)\b|\ba (?:como|cuanto) (?:(?:lo|la|
    los|las) )?(?:vend\w+|doy|dan|cobr\w+|ponen)\b|\bcuanto (?:les? |te |me |se )?(?:cobr\w+|pid(?:o|
    en) por)\b|\bque (?:papeles|tramites?|permisos?|requisitos)\b|\b(?:(?:pay|charge|add|need|
    owe) (?:\w+ ){0,2}vat|sales tax|customs (?:form|declaration)|product liability|public liability)\b|
    \b(?:customer|client[ea]s?|clienta)\b (?:\w+ ){0,12}(?:refund|money back|review|devol\w+|reembols\w+|
    resena|contesto|respondo|queja)\b|\b(?:cheapest|best) (?:courier|envelope|card reader|postage|
    shipping)\b|\b(?:gst|vat) (?:rate|number|return|should|do)\b|\b(?:sales|income|trade) tax\b|
    \btax ?(?:man|return|office|rate|form)s?\b|\bdeclaracion (?:trimestral|anual|de la renta|de impuestos|
    jurada)\b|\bregistro sanitario\b|\bregist(?:er|ering|ration|ered|ro|rar|rarme) (?:\w+ ){0,4}(?:company|
    business|trader|empresa|negocio|marca|trade ?mark)\b|\b(?:registration|licen[cs]e|permit|permiso|
    licencia) (?:\w+ ){0,4}(?:sell\w*|trade|market|officemates?|customers|vender|mercado)\b|\b(?:open|start|
    set up|abrir|montar|poner) (?:\w+ ){0,2}(?:company|business|empresa|negocio|tienda)\b|\b(?:a|my|the|
    small|bank|get|take) (?:\w+ )?loans?\b|\b(?:un|mi|el|pedir) (?:prestamo|credito)\b|\b(?:mortgage|
    hipoteca|invoices?|facturas?|trademarks?)\b
  `,
  'u',
);

/**
 * Things that another craft makes, colours or mends, a body has, a kitchen cooks or a day brings: what a question is about
 * that speaks of none of our words.
 */
const OBJECTS: readonly (readonly [Outside, string])[] = [
  [
    'food',
    unbroken`
      cakes?|cheese|butter ?cream|icing|fondant|pretzels?|sourdough|(?:my|the) starter|masa madre|
      bizcochos?|tortas?|pasteles|glaseado|merengue|queso|pan casero|jelly beans|yogh?urt|kombucha|pickles|
      chutney|ganache|bors(?:ch|cht|h)|goulash|lasagn[ae]|lasana|empanadas?|guisos?|estofado|
      milanesas?|alfajor(?:es)?|cheesecake|brownies|quiche|biryani|ceviche|arepas?
    `,
  ],
  [
    'body-care',
    unbroken`
      lotions?|locion(?:es)?|(?:sugar|salt|body|coffee|face|lip|foot) scrubs?|scrub recipe|exfoliante|
      deodorants?|desodorante|nail (?:polish|varnish)|esmalte de unas|lip ?(?:balm|gloss)s?|lip ?sticks?|
      labial(?:es)?|face (?:masks?|creams?)|mascarillas?|eye ?shadows?|hair (?:dye|tint|rinse|oil)|
      hand cream|crema (?:de|para) (?:manos|la cara)|beard (?:oil|balm|dye)|cutis|(?:on|en) (?:my|mi|la|
      your|her|his) (?:face|cara|scalp)
    `,
  ],
  [
    'textiles',
    unbroken`
      (?:t ?)?shirts?|tie ?dy\w+|my cotton|woollen|wool|yarn|fabrics?|curtains?|playeras?|camisetas?|remeras?|poleras?|franelas?|hoodies?|lana|
      telas?|indigo vat|mordants?|mordiente|paint (?:the|my|our|a) (?:hall|wall|room|bedroom|kitchen|fence|
      door|boat|shed|gate|house)|pintar (?:la|el|mi|una?) (?:sala|pared|cuarto|casa|puerta|reja|cocina|
      barco)
    `,
  ],
  ['candles', 'wicks?|candles?|velas?|pabilos?|wax melts?'],
  [
    'other',
    unbroken`
      gun ?\w* (?:bluing|blueing)|bluing (?:a|the|my) (?:gun|barrel)|patina|tattoo\w*|tatuajes?|slime|
      play ?dough|epoxy|resin|resina|poster|flyer|cartel|laundry (?:liquid|powder|detergent)|washing powder|
      detergente|suavizante|fabric softener|(?:take|taking|tomar|sacar|hacer) (?:\w+ ){0,2}(?:photos?|
      pictures?|fotos?) (?:\w+ ){0,4}(?:phone|camera|celular|camara|movil)|bank holiday|public holiday|
      festivo|feriado|santo se|(?:win|won|wins|lose|lost|gana|gano|ganar) (?:\w+ ){0,2}(?:derby|match|game|
      cup|league|final|partido|clasico|liga|copa)|(?:does|do|is) (?:the )?(?:number|bus|train|tram|
      ferry) (?:\w+ ){0,2}(?:go|run|stop|late)\w*|will it (?:blow|rain|snow|freeze|be (?:minus|below zero|
      freezing|sunny|windy|(?:that|this|so) (?:hot|cold)))|va a hacer (?:menos \w+|mucho frio|mucho calor|
      buen tiempo)|(?:going|gonna|fit) to (?:go out|rain|snow|blow)|va a (?:llover|nevar|helar)|(?:roses?|
      rosales|tomato\w*|leaf|leaves|hojas|matas?|plants?|plantas?) (?:dem |them |ya |me )?(?:have|has|got|
      get|tienen?|le salio) (?:\w+ ){0,2}(?:spots?|powder|holes|mildew|polvo|manchas|hongo)|(?:compute|
      calculate|calcula\w*) (?:\w+ ){0,2}(?:ph|molarity|molaridad|moles) .*\b(?:acid|acido|buffer)
    `,
  ],
];
const ABOUT = OBJECTS.map(
  ([field, words]) => [field, new RegExp(String.raw`\b(?:${words})\b`, 'gu')] as const,
);

/** Before a thing: what is like it, coloured as it is, or comes from its trade. */
const LIKENESS = new RegExp(
  unbroken`
    \b(?:like|(?<!thing )as|than|como|parec\w+|parez\w+|(?:el|ese|este|that|the) (?!receta|
    recipe)\p{L}+ (?:de|del|of|on)|tipo|estilo|cual|match(?:es|ing)?|same as|reminds me of|looks|colou?r of|
    shade of|smell of|smells? like|huele a|color|tono|verde|rojo|azul|rosa|amarillo|naranja|
    blanco)(?: (?:of|o|for|to|de|del|e|al|a|an|the|my|me|our|his|her|their|old|this|that|those|su|sus|ese|
    esa|wee|slice|piece|pedazo|trozo|el|la|los|las|un|una|mi)){0,4} (?:\w+ )?$
  `,
  'u',
);
/** Behind it: a mould, a pigment or a scent that only bears its name. */
const BEARS_ITS_NAME = new RegExp(
  unbroken`
    ^(?: ?(?:making|safe|grade|coloured|colored|style))? (?:tins?|pans?|moulds?|molds?|mica|micas|pigments?|
    dyes?|colou?rs?|colou?rants?|colou?ring|scents?|scented|fragrances?|perfume|powder|oxide|green|blue|red|
    pink|yellow|orange|white|brown|livery|like|annatto|indigo|charcoal|work|go in|be used)\b
  `,
  'u',
);
/** "Arcilla de mascarilla", "molde de torta", "clay of face masks": what it is bought as. */
const BOUGHT_FOR = new RegExp(
  unbroken`
    \b(?:molde|moldes|mica|arcilla|pigmento|colorante|tinte|polvo|aroma|esencia|fragancia|oxido|mould|mold|
    tin|mica|dye|pigment|clay|oxide|colou?rant|chips?)s? (?:de|del|of|from)(?: (?:la|el|los|las|the))? $
  `,
  'u',
);

/** Where a word of another craft stands for that craft, and not as a likeness or in another thing's name. */
function isMeant(text: string, at: number, length: number): boolean {
  const before = text.slice(0, at);
  return !LIKENESS.test(before) && !BOUGHT_FOR.test(before) && !BEARS_ITS_NAME.test(text.slice(at + length));
}

/** A question's words without what is only a likeness, or part of the name of what is bought. Pure. */
export const withoutLikenesses = (text: string): string =>
  ABOUT.reduce(
    (left, [, pattern]) =>
      left.replace(pattern, (found: string, at: number) => (isMeant(left, at, found.length) ? found : ' ')),
    text,
  );

/** A base that was made elsewhere and only melts: no lye, no batter. */
const ONLY_MELTED = new RegExp(
  unbroken`
    \b(?:glycerine? (?:soap|base)|soap base|(?:jabon|base) (?:de|con) glicerina|melt (?:and|n|&) pour)\b(?=.*\b(?:micro\w*|
    derr[ei]t\w+|fund\w+|melt\w*)\b)|\b(?:micro\w*|derr[ei]t\w+|fund\w+|melt\w*)\b(?=.*\b(?:glycerine? (?:soap|
    base)|soap base|(?:jabon|base) (?:de|con) glicerina)\b)
  `,
  'u',
);

/** Soap that is sprayed on plants is no bar. */
const SPRAYED = /\bsoap(?:y)? (?:spray|water)\b|\bjabon potasico\b/gu;

/**
 * The field of a question that by its object is about something else than soap: what lye is used for elsewhere, business,
 * or a thing that another craft makes and no word of ours beside it. `text` in lower case without accents. Undefined where
 * it does not say so plainly: then what was learned decides. Pure.
 * @example plainlyElsewhere('what lye strength for pretzels') // 'lye-elsewhere'
 */
export function plainlyElsewhere(text: string): Outside | undefined {
  const told = text.replace(SPRAYED, ' ');
  if (BUSINESS.test(told)) return 'business';
  if (ONLY_MELTED.test(told) && !LYE.test(told)) return 'melt-and-pour';
  if (OF_SOAP.test(told)) return undefined;
  if (LYE.test(told)) return OTHER_USE_OF_LYE.test(told) && !SOLD_AS.test(told) ? 'lye-elsewhere' : undefined;
  return ABOUT.find(([, pattern]) =>
    [...told.matchAll(pattern)].some(found => isMeant(told, found.index, found[0].length)),
  )?.[0];
}
