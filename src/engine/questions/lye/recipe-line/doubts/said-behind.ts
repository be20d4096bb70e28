import { unbroken } from '../../../../over-lines.ts';
import type { Item } from '../items/item.ts';
import { isMeasure, isName, isOil, partsOf } from '../settling/parts.ts';

/*
 * What is said of a recipe behind it, in words that name no oil: the reader of oils passes such a sentence by, and it may change the
 * weight of any of them. Each row is a way to point back.
 */

const VESSEL =
  '(?:jar|lid|bowl|tub|pan|pot|tin|bottle|jug|container|packaging|tarro|frasco|bote|olla|envase|bol|tazon|lata|botella|recipiente|jarra)';
const VOLUME =
  '(?:volume|cups?|mls?|millilit(?:er|re)s|lit(?:er|re)s|spoons?|jugs?|glass(?:es)?|tazas?|vasos?|mililitros?|litros?|cucharad?as?|volumen)';
/** One of the oils by its place, or all of them. */
const ONE_OF_THEM = unbroken`
  (?:the (?:first|second|third|former|latter|other|last)(?: one)?|(?:one|none|neither|either|some|
  half) of (?:them|those|these|it|the (?:two|2|lot|mix))|(?:el|lo|del|al) (?:primero|segundo|tercero|ultimo|
  otro)|(?:un[oa]|ningun[oa]|algun[oa]|la mitad) de (?:los|las|ellos|ellas|est[oa]s|es[oa]s)(?: (?:dos|2))?)
`;
const SAYS = unbroken`
  (?:is|was|are|were|isn'?t|wasn'?t|should|must|has|had|goes|went|stays?|turned|weighs?|es|era|son|eran|fue|
  va|van|iba|no|queda|quedo|pesa|pesaba|resulto|salio|tiene|tenia|debe|ya|se|me|lo|la)
`;
const ALL_OF_IT = '(?:it|them|this|that|some|a bit|part|most|all|the (?:mix|mixture|blend|oils?|fats?|lot))';

const POINTS_BACK: readonly RegExp[] = [
  `${ONE_OF_THEM},?(?: one)? ${SAYS}`,
  // "Take 100 off each", "quítale 100 a cada uno", "súmale 100 al primero".
  unbroken`
    (?:take|add|subtract|knock|put|quit\p{L}*|sum\p{L}*|anad\p{L}*|agreg\p{L}*|ponl\p{L}*|rest\p{L}*|
    baj\p{L}*|sub\p{L}*)(?: \p{L}+){0,2} \d[\d.,]* ?(?:%|g|gr|gramos|grams|oz)?(?: \p{L}+){0,2} (?:each|
    them|both|first|second|last|all|uno|una|primero|segundo|ultimo|otro|todo)
  `,
  // What is gone of all of it.
  unbroken`
    (?:spil\p{L}*|leak\p{L}*|stole\p{L}*|lost|lose|losing|dropp?\p{L}*|tipp\p{L}*|wast\p{L}*|bin(?:ned|s)?|
    threw|thrown|ate|eaten|drank|poured|took|taken|sold|burnt|ladled|scooped)(?: (?:away|out|off|
    over))? (?:[\p{L}\d]+ ){0,3}?${ALL_OF_IT}(?: (?:away|out|off|over))?
  `,
  unbroken`
    (?:boil\p{L}*|ran|run|runs|overflow\p{L}*|went|slopp\p{L}*|splash\p{L}*|seep\p{L}*) (?:over|out|
    everywhere|down)|(?:mix|mixture|blend|pan|pot|oils?|fats?|lot|some|half|it|jug|bowl) (?:has |had |all |
    just )?(?:leaked|spilled|spilt|escaped|overflowed|evaporated|vanished|shrank|burned off)
  `,
  '(?:is|are|was|were|has|have|all|now) (?:already )?(?:gone|missing|used up|sold|stolen|finished)',
  unbroken`
    se (?:me |nos |le )?(?:salio|rego|regaron|cayo|cayeron|volco|desbordo|escapo|derramo|derramaron|evaporo|
    quemo|perdio|perdieron)|(?:perdi|bote|tire|derrame|vote|regale|vendi|robaron|comieron|bebieron)(?!\p{L})
  `,
  // Not by weight, or with what it stands in.
  unbroken`
    (?<!(?:not|no|never) (?:\p{L}+ )?)(?:measur\p{L}*|weigh\p{L}*|took|medi\p{L}*|pes[eo]|pesad\p{L}+|
    calcul\p{L}+|tom[eo])(?: (?!not |no |never )\p{L}+){0,3} (?:by|in|with|en|por|con)(?: \p{L}+)? ${VOLUME}
  `,
  unbroken`
    (?:those|these|they|all|weights|figures|amounts|numbers|everything|pesos|cifras|cantidades|es[oa]s|son|
    todo)(?: (?:are|is|were|was|son|esta|estan|va|van|all|todas?|todos?))* (?:(?:in|en) )?${VOLUME}
  `,
  unbroken`
    (?:with|con|counting|including|incluid[oa]|contando)(?: (?:the|its|their|my|el|la|los|
    su))? ${VESSEL}(?: (?:still|was|were|is|and all|y todo|puest[oa]|incluid[oa]|on|weighs|pesa|included))
  `,
  `(?:without|sin|no|forgot to|forgot the|did ?n'?t|olvide) (?:\\p{L}+ )?tar(?:e|ing|ar|a|e)`,
  // "It is the list for a different soap", "that is what I do not want", "I make only part of this".
  unbroken`
    (?:a|an|another|the) (?:different|wrong|other) (?:soap|recipe|batch|list|card|page|line)|(?:what|
    which) i (?:do ?n'?t|do not|did ?n'?t|never) (?:want|use|need|make|have)|no es (?:lo|la|el) que|
    (?:otr[oa]|equivocad[oa]) (?:receta|jabon|lista|hoja)|(?:receta|lista|hoja) (?:equivocada|de otro)
  `,
  // "My sums were out, 100 less".
  unbroken`
    \d[\d.,]* ?(?:g|gr|gramos|grams|oz|kg)? (?:less|fewer|more|extra|menos|mas|de mas|de menos|too (?:much|
    many|little|few)|over|under|short|really|actually|en realidad|en verdad)(?= ?(?:[;,.]|$))
  `,
].map(pattern => new RegExp(`(?<![\\p{L}\\d])(?:${pattern})(?!\\p{L})`, 'u'));

/** "Weights are in ounces", of figures that stand in grams. */
const ALL_IN = new RegExp(
  unbroken`
    (?<!\p{L})(?:those|these|they|all|weights|figures|amounts|numbers|everything|pesos|cifras|cantidades|
    es[oa]s|son|todo)(?: (?:are|is|were|was|son|esta|estan|va|van|all|todas?|todos?))* (?:(?:in|
    en) )?(ounces|oz|pounds|lbs?|onzas|libras|grams|gramos|gr?|kilos?|kg)(?!\p{L})
  `,
  'u',
);
const SHORT: Readonly<Record<string, RegExp>> = { o: /^oz$/u, p: /^lb$/u, l: /^lb$/u, g: /^g$/u, k: /^kg$/u };

/** A unit told for all where an amount has another of its own. */
function otherUnit(said: string, items: readonly Item[]): string | undefined {
  const [found, unit] = ALL_IN.exec(said) ?? [];
  const own = unit === undefined ? undefined : SHORT[unit[0]!];
  const isOther = (item: Item) =>
    item.is === 'amount' && /^(?:g|kg|oz|lb)$/u.test(item.unit ?? '') && !own?.test(item.unit!);
  return own &&
    items.every(item => item.is !== 'amount' || item.unit === undefined || isOther(item)) &&
    items.some(isOther)
    ? found
    : undefined;
}

/**
 * The words behind the first weighed oil of a line that point back at a recipe and may change what of it is in the pot, though they
 * name no oil. Undefined where none do. Takes the items of a line. Pure.
 */
export function saidBehind(items: readonly Item[]): string | undefined {
  const oil = items.findIndex(isOil);
  const amount = items.findIndex(isMeasure);
  if (oil === -1 || amount === -1) return undefined;
  const behind = items.slice(Math.min(oil, amount));
  // Of what stands beside an oil's name it is asked whether that oil is in the pot.
  const besideOil = new Set(partsOf(behind).flatMap(part => (part.items.some(isOil) ? part.items : [])));
  const said = behind
    .map(item => (besideOil.has(item) || isName(item) || item.is === 'asks' ? '#' : item.text))
    .join(' ');
  return (
    otherUnit(said, items) ??
    POINTS_BACK.map(pattern => pattern.exec(said)?.[0]).find(found => found !== undefined)
  );
}
