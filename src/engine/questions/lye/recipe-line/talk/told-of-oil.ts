import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { FAT, LYE } from '../../amounts/words.ts';
import { isHarmlessBesideOil } from '../doubts/beside-oils.ts';
import { PERSON } from '../doubts/harmless-phrases.ts';
import { isOfElse } from './clauses-of-else.ts';

/*
 * What is told of an oil that is weighed elsewhere in the line: whence it came, how it looks and smells, what was done to it before it was
 * weighed, why it is in, that it went in. None takes any of it out of the pot. A sentence that says more of it, or of "it", stays where it
 * stands, and is asked.
 */

const DET = '(?:(?:the|my|our|that|this|el|la|los|las|mi|lo|ese|esa|este|esta)(?: own)? )';
const ADVERB = unbroken`
  (?:really|very|so|just|also|already|all|quite|still|now|even|too|rather|pretty|ever|bit|muy|bien|tan|ya|
  todo|toda|todavia|tambien|super|re|bastante|medio|algo|casi|asi|gracias a dios)
`;
const BE = unbroken`
  (?:is|was|['’]s|are|were|be|looks?|looked|smells?|smelled|smelt|feels?|tastes?|tasted|turned out|came out|
  comes out|seems?|es|era|son|esta|estaba|quedo|salio|sale|resulto(?: ser)?|parece|se ve|huele|olia|sabe|
  (?:tiene|tenia|has|had)(?: an?| un| una| buen| muy| mucho| the| el)*(?= (?:olor|color|smell|colour|aroma|
  sabor|taste|look)(?!\p{L}))|cost|costo)
`;
/** Nothing of these may stand in what is told: places, shares, what is yet to be, what else is in it, denials. */
const OPEN = new RegExp(
  unbroken`
    (?<!\p{L})(?:no(?!t bad)|not(?! bad)|n't|never|nunca|ni|nor|low|high|little|poc[oa]|scant\p{L}*|
    olvid\p{L}*|forg[eo]t\p{L}*|crema|cream\p{L}*|nata|whey|suero|paste|pasta|to be|ser (?!buen|muy|car|
    lind|bonit|ric|pur)|(?:present|gift|given|sent|brought|regalo|regalad[oa]) (?:to|for|a|para)(?! (?:me|
    us|mi|nosotr[oa]s) *$)|none|nothing|(?<! a )nada|sin|without|\p{L}+n['’]t|only|instead|except|menos|
    less|more|mas|extra|half|mitad|medi[oa] (?=\p{L}+ad)|third|quarter|part|parte|partly|some|bit of|rest|
    resto|most|other|otr[oa]s?|another|next|new recipe|swap\p{L}*|chang\p{L}*|cambi\p{L}*|replac\p{L}*|left|
    leave|dej\p{L}*|out(?! of (?:this world|the freezer|the fridge))|off(?! the)|gone|missing|falt\p{L}*|
    short|over|away|back|spill\p{L}*|spilt|derram\p{L}*|drop\p{L}*|fell|cay\p{L}*|lost|lose|perd\p{L}*|sold|
    vend\p{L}*|lent|prest\p{L}*|borrow\p{L}*|owe\p{L}*|deb\p{L}*|return\p{L}*|devol\p{L}*|keep\p{L}*|kept|
    guard\p{L}*|sav(?:e|ing|ed)|spare|apart\p{L}*|reserv\p{L}*|would|should|could|might|may|maybe|perhaps|
    quiza\p{L}*|creo|think|thought|guess\p{L}*|suppos\p{L}*|if|si|unless|until|hasta|later|despues|luego|
    after|tomorrow|manana|when|cuando|will|going to|gonna|wait\p{L}*|coming|on (?:its|the|order)|
    order\p{L}*|en camino|pending|pendiente|want\p{L}*|need\p{L}*|quier\p{L}*|optional|approx\p{L}*|about|
    roughly|unos|eye|ojo|water\p{L}*|wet|agua\p{L}*|mojad\p{L}*|milk\p{L}*|leche|salt\p{L}*|sal|sugar|
    azucar|flour|harina|honey|miel(?<!como (?:la )?miel)|jelly|meat|carne|bone|bones|hueso|huesos|rind|
    solids?|crumbs|herbs?|flowers?|petals|flores|hierbas|leaves|hojas|mix\p{L}*|blend\p{L}*|mezcl\p{L}*|cut|
    cortad[oa]|dilut\p{L}*|dilui\p{L}*|added|thinned|emulsif\p{L}*|saponif\p{L}*|soap already|
    fraction\p{L}*|fraccionad\p{L}*|hydrogen\p{L}*|hidrogenad\p{L}*|spread|margarin\p{L}*|substitut\p{L}*|
    fake|falso|(?:es|era|son) del? (?:(?:mi|la|su|tu|un|una|el) )?${PERSON}|label\p{L}*|etiqueta|says?|said|
    dice|pone|double|twice(?! (?:strained|filtered|rendered))|doble|weigh\p{L}*|pes(?:a|e|o|ado|ada|aba|
    amos|ar)|scale|balanza|bascula|jar|lid|tara|tare\p{L}*|${PERSON}['’]s|hers|his|theirs|suy[oa]|mine|car|
    coche|carro|garage|garaje|shed|cupboard|pantry|alacena|despensa|fridge|freezer|nevera|shelf|shop|store|
    tienda|drawer|attic|cellar|bodega|sotano|boot|counter|encimera|floor|suelo|piso|bin|basura|bowl|tub|
    bucket|otra olla)(?!\p{L})
  `,
  'u',
);
/** What an oil is beside its look: where it stands, whose it is, what it is for, what else is in it. */
const ELSEWHERE = new RegExp(
  unbroken`
    (?<!\p{L})(?:in|at|on|inside|under|behind|beside|with|for|by|en|con|para|pa|junto|donde|where|it|them|
    ${PERSON}|(?:puro |pura |solo )?(?:aroma|esencia|essence|fragrance|perfume|scent\p{L}*|
    perfumad\p{L}+)(?<!smells? of \p{L}+))(?!\p{L})|['’]s$|^(?:es|era|son|is|was) (?:de (?:la |el |mi |mis |
    su |un |una )?\p{L}*(?:masaje|pelo|cocina)|ours|yours|hers)
  `,
  'u',
);
const FREE = "[\\p{L}'’ -]";
const BEFORE = unbroken`
  (?:strained|filtered|sieved|rendered|melted|clarified|washed|cleaned|skimmed|softened|warmed|thawed|
  settled|colad[oa]|filtrad[oa]|derretid[oa]|clarificad[oa]|lavad[oa]|limpi[oa]|tamizad[oa]|fundid[oa])
`;
const BEFORE_I =
  '(?:cole|colamos|filtre|filtramos|derreti|derretimos|clarifique|lave|limpie|fundi|tamice|strained|filtered|rendered|melted|clarified|washed|sieved|skimmed)';
const TIMES = unbroken`
  (?: (?:myself|slowly|gently|well|twice|(?:two|three|\d|dos|tres|2|3) (?:times|veces)|por (?:un |
  una )?(?:trapo|manta|tela|colador|gasa)|through (?:a |the )?(?:cloth|sieve|muslin|coffee filter|filter)|
  yo mism[oa]|anoche|ayer|esta manana|hoy|last night|yesterday|this morning|today|(?:on )?(?:mon|tues|
  wednes|thurs|fri|satur|sun)day|el (?:lunes|martes|miercoles|jueves|viernes|sabado|domingo)|ya))*
`;
const FROM = `(?:(?:straight |all |fresh )?(?:from|off|out of)|del?) ${FREE}{2,50}`;
const TOLD: readonly string[] = [
  // Whence it came, when that is done.
  `(?:${ADVERB} )*(?:came|comes|come|is|was|['’]s|are|were|es|viene|vino|son|era|esta|fue)? ?(?:${ADVERB} )*${FROM}`,
  unbroken`
    (?:${ADVERB} )*(?:was|is|['’]s|were|fue|es|era)? ?(?:an? |un |una )?(?:${ADVERB} )*(?:present|gift|
    bargain|swap|prize|treat|leftover|inherited|given to (?:me|us)|sent|brought|regalo|herencia|premio|
    trueque|oferta|ganga|regalad[oa])(?: ${FREE}{2,40})?
  `,
  unbroken`
    (?:que )?(?:me|nos) ?(?:l[oa]s?|l[oa])? ?(?:la |lo |las |los )?(?:regal(?:o|aron)|dio|dieron|trajo|
    trajeron|mando|mandaron|llego|llegaron|vendio|vendieron|consigui\p{L}+|junte)(?: ${FREE}{2,50})?
  `,
  `(?:ya )?(?:se |te )l[oa]s? (?:compre|compramos)(?: ${FREE}{2,50})?`,
  unbroken`
    (?:ya )?(?:l[oa]s? )(?:compre|compramos|consegui|conseguimos|traje|trajimos|junte|juntamos|encontre|
    saque|hice|hicimos|prensa|prense|herede)(?: ${FREE}{2,50})?
  `,
  unbroken`
    (?:que )?(?:i|we|he|she|they|\p{L}+|(?:a|my|the|our) \p{L}+) (?:bought|got|found|made|rendered|pressed|
    brought|sent|gave me|gave us|presses|renders) (?:it|them|her|him|mine|ours)(?: ${FREE}{2,40})?
  `,
  `(?:took|tardo|tarda) ${FREE}{2,40}`,
  `(?:${ADVERB} )*(?:espes[oa]|thick|cloudy|turbi[oa]|green|verde|rancid|ranci[oa]|rico|rica)(?: (?:as|like|como) ${FREE}{2,25})?`,
  // What was done to it before it was weighed.
  `(?:(?:is|was|are|were|['’]s|has|have|had|been|got|gets|esta|estaba|fue|ha sido|se|me) )*(?:${ADVERB} )*${BEFORE}${TIMES}`,
  `(?:ya )?(?:l[oa]s? |i |we |se )(?:ya )?(?:${BEFORE_I}|derritio)(?: (?:it|them|her))?(?: sol[oa])?${TIMES}`,
  // That it is in, and why.
  unbroken`
    (?:(?:is|['’]s|are|was|it|ya|esta|va|son) )*(?:went|gone|goes|going|entro|entraron|va|esta|fue)? ?(?:in|
    in last|in first|in too|in as well|in already|in the pot|in the pan|dentro|adentro|
    en la olla)(?: (?:already|ya|now|too|last|first|fine|with the rest|al ultimo|primero|tambien|todo|
    toda))*
  `,
  unbroken`
    (?:is |es |va |['’]s |goes in )?(?:in )?(?:for|para|por) (?:the |la |el |mas |more |extra )?(?:hardness|
    lather|bubbles|foam|conditioning|moisture|slip|cream|shine|skin|hands|dureza|espuma|burbujas|suavidad|
    brillo|piel|manos|humectar|hidratar)(?: ${FREE}{2,30})?
  `,
];
const CONJ =
  '(?:and|but|so|because|cos|since|though|oh|also|btw|y|e|pero|que|porque|aunque|asi que|pues|ah|por cierto)';
const PREDICATE = new RegExp(`^(?:${TOLD.join('|')})$`, 'u');
/** How it is, and how dear it was. */
const LOOKS = new RegExp(`^(?:${ADVERB} )*${BE} (?:${ADVERB} )*${FREE}{2,60}$`, 'u');
const IT_HEAD = /^(?:it|she|he|they|its|it['’]s|lo|la|los|las|le|se|que|which|that)(?: |(?=['’]))/u;
const ANY_IT =
  /(?<!\p{L})(?:it|it['’]s|its|them|they|she|he|that|this|lo|la|los|las|ell[oa]s?|es[eao]s?|est[ea])(?!\p{L})/u;
const OF_LYE = new RegExp(`(?<!\\p{L})(?:${LYE}|${FAT}|soda)(?!\\p{L})`, 'u');
const LONGEST_NAME = 4;

/** The one oil of a clause and what stands behind its name; undefined where none or several are named. */
function oilAtHead(clause: string): { readonly oil: string; readonly behind: string } | undefined {
  const words = clause.split(' ');
  for (let from = 0; from < Math.min(words.length, 4); from += 1)
    for (let length = Math.min(LONGEST_NAME, words.length - from); length > 0; length -= 1) {
      const named = words
        .slice(from, from + length)
        .join(' ')
        .replace(/['’]s$/u, '');
      const oil = knownOil(named);
      const head = words.slice(0, from).join(' ');
      if (oil === undefined || !HEAD.test(`${head} `.trimStart())) continue;
      const rest = clause
        .split(' ')
        .slice(from + length)
        .join(' ');
      const isOwned = /['’]s$/u.test(words[from + length - 1]!);
      return {
        oil: oil.id,
        behind: `${isOwned ? 'is ' : ''}${rest.replace(/^(?:oil|butter|fat|bottle|itself) ?/u, '')}`.trim(),
      };
    }
  return undefined;
}
const SOMEBODY_SAYS = `(?:(?:my |our |mi |la |el )?(?:${PERSON}|\\p{L}+) (?:says|reckons|thinks|dice|cree|opina)(?: (?:that|que))? )`;
const HEAD = new RegExp(`^(?:${CONJ},? )*${SOMEBODY_SAYS}?${DET}?(?:de )?$`, 'u');
const isTold = (said: string): boolean =>
  said
    .split(new RegExp(` ${CONJ} `, 'u'))
    .map(one =>
      one
        .trim()
        .replace(IT_HEAD, (whole: string) =>
          /^(?:it|she|he|they|its|que|which|that)/u.test(whole) ? '' : whole,
        ),
    )
    .every(
      one =>
        one !== '' &&
        !OPEN.test(one) &&
        !/\d/u.test(one.replace(/\d (?:times|veces|years?|anos|weeks?|semanas|months?|meses)/gu, '')) &&
        !OF_LYE.test(one) &&
        !namesOil(one) &&
        (PREDICATE.test(one) || (LOOKS.test(one) && !ELSEWHERE.test(one))),
    );
const namesOil = (said: string): boolean =>
  said.split(/[^\p{L}]+/u).some(word => word.length > 2 && knownOil(word) !== undefined);

/** The oils of a line that stand beside a figure. */
function weighedIn(line: string): ReadonlySet<string> {
  const found = new Set<string>();
  for (const clause of line.split(/[;,]/u)) {
    if (!/\d/u.test(clause)) continue;
    const words = clause.split(/[^\p{L}'’]+/u).filter(word => word !== '');
    for (let at = 0; at < words.length; at += 1)
      for (let length = Math.min(LONGEST_NAME, words.length - at); length > 0; length -= 1) {
        const oil = knownOil(words.slice(at, at + length).join(' '));
        if (oil) found.add(oil.id);
      }
  }
  return found;
}

const MOST_CLAUSES = 400;
/**
 * A line without what is told of an oil that is weighed in it and leaves it in the pot. Takes what `plainWords` gives with its clauses.
 * Pure.
 */
export function withoutToldOfOil(plain: string): string {
  const parts = plain.split(/(;|,(?!\d))/u);
  if (parts.length > MOST_CLAUSES) return plain;
  const weighed = weighedIn(plain);
  const out = [...parts];
  for (let at = 0; at < parts.length; at += 2) {
    const clause = parts[at]!.trim();
    if (clause === '' || /\d(?! (?:times|veces|years?|anos))/u.test(clause)) continue;
    const found = oilAtHead(clause);
    if (!found || !weighed.has(found.oil) || found.behind === '' || !isTold(found.behind)) continue;
    if (isSaidOnOf(parts, at)) continue;
    out[at] = ' ; ';
  }
  return out.join('');
}

/**
 * Whether what stands in the same sentence, or is said of "it" in the next one, is more than is known to change nothing. A list of oils
 * with their weights is none of it.
 */
function isSaidOnOf(parts: readonly string[], at: number): boolean {
  const stops = (from: number, step: 1 | -1): number => {
    let place = from;
    while (place + step > 0 && place + step < parts.length && parts[place + step] !== ';') place += step * 2;
    return place;
  };
  const [first, last] = [stops(at, -1), stops(at, 1)];
  const own = parts.filter((_, place) => place % 2 === 0 && place >= first && place <= last && place !== at);
  const next = parts.filter((_, place) => place % 2 === 0 && place > last && place <= stops(last + 2, 1));
  return own.some(one => isOpen(one, false)) || next.some(one => isOpen(one, true));
}
function isOpen(part: string, mayBeOfElse: boolean): boolean {
  const clause = part.trim();
  const isOfRecipe = /\d/u.test(clause) && namesOil(clause);
  if (clause === '' || isOfRecipe || OF_LYE.test(clause) || isAsked(clause)) return false;
  if (mayBeOfElse && !ANY_IT.test(clause)) return false;
  const bare = clause.replace(new RegExp(`^(?:${CONJ} )+`, 'u'), '');
  return !(
    isTold(bare) ||
    isOfElse(bare) ||
    (bare.split(' ').length <= 4 && bare.split(' ').every(isHarmlessBesideOil))
  );
}
const isAsked = (clause: string): boolean =>
  /^(?:what|how|cuant|que (?:soda|sosa)|can|could|lye|is (?:it|that) (?:ok|right|enough|safe))/u.test(clause);
