import { unbroken } from '../../over-lines.ts';
import { unitOfWord } from '../unit-words.ts';

/** A vowel with or without its accent. */
const anyAccent = (words: string): string =>
  words.replace(/(?<!\\)[aeiou]/gu, vowel => `[${vowel}${'áéíóú'['aeiou'.indexOf(vowel)]}]`);

const LITTLE = '(?:just|a (?:little|bit|touch|tad|hair|smidge)|slightly|somewhat) ';
const BEYOND = '(?:over|under|more than|less than|above|below|shy of)';
/** Said before an amount, these make it a rough one. */
const BEFORE = anyAccent(
  unbroken`
    ${LITTLE}${BEYOND}|not quite|(?:does ?n['’]?t|not) (?:quite )?(?:reach|make|come to)|no llega a|
    no alcanza(?: a)?|anywhere|somewhere|something like|about|bout|around|abt|a good|at least|at most|
    approx(?:imately)?\.?|roughly|circa|ca\.|prob(?:ably|s)?|prolly|maybe|like|just|only|exactly|almost|
    nearly|some|say|idk|i (?:think|guess|reckon)|more or less|give or take|aprox(?:imadamente)?\.?|
    algo asi como|como|unos|unas|casi|cerca de|alrededor de|mas o menos|sobre|tirando a|(?:un )?(?:poco|
    poquito|pelin) (?:mas|menos) de|algo (?:mas|menos) de|por ahi de|eso de|serian?|seran?|creo que|digamos|
    pues|minimo|maximo|quizas?|tal vez|pon(?:gamos|le)?|calculo(?: que)?|masomenos|may ?be|perhaps|nigh on|
    close to|near(?:ly)?(?! enough)
  `,
);
/** How surely an amount is known tells nothing of how much it is. */
const UNSURE = unbroken`
  (?:(?:i['’ ]?m|im|am) )?not (?:(?:too|very|quite|really|all that|100 ?%) )?(?:sure|certain|exact)|
  (?:i )?(?:have ?n['’]?t|had ?n['’]?t|did ?n['’]?t|have not|did not|never) (?:really |
  actually )?(?:measured?|weigh(?:ed)?|checked?)(?: it| them| that)?(?: yet| properly| exactly)?|
  (?:i )?(?:dunno|don['’]?t (?:know|quote me|hold me to (?:it|that)))(?: exactly| for sure)?|hard to (?:say|
  tell)|if that|(?:by|judged by) eye|eyeball(?:ed|ing)(?: it)?|i (?:suppose|should (?:say|think)|would say|
  dare ?say|['’]?d say)|i['’]?d (?:say|guess|reckon)|no (?:lo |la )?(?:medi|
  pese)(?: bien| exacto| todavia| aun)?|no (?:(?:estoy|toy) )?(?:muy |tan |del todo |bien )?segur(?:o|
  a)(?: del todo)?|no (?:lo )?se (?:bien|seguro|exacto|exactamente|cuanto)|a ojo(?: de buen cubero)?|
  (?:yo )?diria(?: yo| que)?|me parece(?: a mi)?|supongo(?: yo)?|calculo(?: yo)?|creo(?: yo)?
`;
/** Said behind it. */
const BEHIND = anyAccent(
  unbroken`
    (?:${UNSURE}|more or less|or so|or (?:thereabouts|near(?: enough)?|close(?: to it)?)|(?:near|
    close)(?: as)? enough|i (?:think|guess|reckon)|o (?:asi|algo asi|por ahi)|por ahi|(?:poco )?mas o menos|
    masomenos|y (?:pico|tantos?|algo)|aprox(?:imad(?:o|a|amente))?|(?:(?:o|or) )?(?:una? |a )?(?:tantito|
    poquito|poco|pelin|bit|tad|touch|little|hair|smidge) (?:mas|menos|more|less|under|over|shy)(?! (?:de|of|
    than|que)\b)|and (?:change|a bit|a little|some))(?!\p{L})
  `,
);
const HEDGES = new RegExp(
  String.raw`^(?:${BEYOND}|up to) |(?:^|(?<=[\s(¿]))(?:${BEFORE})(?=\s|\d|$)|~|(?<=\p{L}|\d|\s)(?<!\b(?:brit|engl|scott))[- ]?ish\b|(?<!\p{L})${BEHIND}`,
  'giu',
);

/** Words at the end that change no amount. */
const TRAILING = new RegExp(
  unbroken`
    (?:^|[\s,(–-]+)(?:each(?: one)?|ea|apiece|a go|a piece|a pop|by weight|al peso|cada un[oa]|(?:(?:and |
    y |counting |contando |sumando |entre )(?:everything|todos?|todas?|it all)|(?:in |grand |the )?(?:all|
    tot(?:al)?)|all (?:told|up|in)|(?:all |put )?together|altogether|overall|combined|
    everything (?:together|in(?:cluded)?|counted)|en total|en conjunto|total(?:es)?|(?:todos?|
    todas?) (?:junt[oa]s?|incluid[oa]s?|sumad[oa]s?)|junt[oa]s|sumad[oa]s))[).]*$
  `,
  'iu',
);
/** The same before it: "a total of 2 kg", "todo junto 800 g". */
const TOTAL_OF = new RegExp(
  unbroken`
    ^(?:(?:(?:a|un|the|el|in|en) )?total(?: of| de| es| is|:)?|all (?:told|together|in all)|altogether|
    in all|todo (?:junto|sumado)|entre (?:todo|todos|todas)|en conjunto)[,:]? (?=\d)
  `,
  'iu',
);
/** What an amount leaves out is no part of it: "750 g of oils, without the water". */
const WITHOUT = new RegExp(
  unbroken`
    \s*[,(](?![^\d]*(?<!\p{L})(?:half|mitad|double|doble|thirds?|tercios?|quarters?|
    cuartos?)(?!\p{L}))\s*(?:without|sin|not|no|aparte|that|que|i |y eso|(?:the )?(?:lye|water|sosa|
    agua)\b[^\d]*\b(?:not|extra|apart|aparte|no))\b[^\d]*$
  `,
  'iu',
);
/** "a 2 lb loaf", "receta de 1 kg": an article, and the whole that an amount is the size of. */
const LEADING = new RegExp(
  unbroken`
    ^(?:(?:an?|el|la|the|my|mi|our|this|esta?|(?:one|una?)(?! \d\/\d)) )?(?:(?:batch|recipe|loaf|bar|mould|
    mold|jug|pot|bowl|receta|lote|tanda|pan|masa|mezcla|jab[oó]n|barra|pastilla|molde|jarra|olla|
    vaso) (?:of|de) |(?=(?:oils?|aceites?|batter|masa): ))?(?:(?:an?|el|la|the|(?:one|
    una?)(?! \d\/\d)) )?(?=\d|(?:oils?|aceites?|batter|masa): )
  `,
  'iu',
);

/** The hedges of an amount left out, and whether there were any. */
export function hedged(text: string): { readonly text: string; readonly about: boolean } {
  // "taza y pico" is one and a little.
  const firm = text.replace(/^(?=\p{L}+ y (?:pico|algo)\b)/iu, '1 ').replace(HEDGES, ' ');
  return { text: firm, about: firm !== text };
}

/** An amount without what stands before and behind it and changes nothing. */
/** "Sumando grasa y aceite", "all the oils and fats together". */
const OILS_COUNTED = new RegExp(
  unbroken`
    [\s,(]+(?:sumando|contando|juntando|entre|counting|adding)(?: (?:the|all|el|los|las|la|todos?|
    todas?))* (?:oils?|fats?|butters?|aceites?|grasas?|mantecas?)(?: (?:and|y) (?:(?:the|los|las|la|
    el) )?(?:oils?|fats?|butters?|aceites?|grasas?|mantecas?))?[).]*$
  `,
  'iu',
);

export const unframed = (text: string): string =>
  text
    .replace(OILS_COUNTED, ' oils')
    .replace(/[?!¿¡]+/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim()
    .replace(TOTAL_OF, '')
    .replace(LEADING, '')
    .replace(WITHOUT, '')
    .replace(TRAILING, '');

const PART =
  /^(?:half|third|quarter|medi[ao]|cuartos?|tercios?|quarters|thirds|an?|un|una|and|y|tres|three)$/iu;
const OF_SOAP =
  /^(?:of|de|del|raw|my|mi|the|la|el|los|las|oils?|fats?|aceites?|grasas?|batter|soap|masa|mezcla|pasta|jab[oó]n|total|bars?)$/iu;
/** What begins a remark on an amount: where it stands, what it is for, how it was measured, or a courtesy. */
const REMARK = new RegExp(
  unbroken`
    ^(?:(?:it|it['’]?s|that|that['’]?s|which|what|whatever|as|so|nothing|same|like|always|usually|cos|coz|
    because|i|i['’]?(?:ve|m)|he|she|they|we|is|was|ok|okay|thank|ya|que|segun|seg[uú]n|porque|pues|eso|esto|
    asi|as[ií]|creo|digo|o sea|osea|lo que|nom[aá]s|no m[aá]s|nada m[aá]s|contando|por ah[ií]|tops|level|
    exact\p{L}*|exacto|justos?|justas?|dear|love|luv|mate|hun|honey|darling|bro|man|dude|mij[oa]|hij[oa]|
    amig[oa]|vecin[oa]|comadre|che|oig[ae]n?|oye|parce|po|we[yi]|gü?ey|no (?:more|less)|not (?:more|less|
    a))(?!\p{L})|in (?:the|my|a)\b|en (?:la|el|mi|un|una)\b|on (?:the|my)\b|to the\b|(?:from|out of|taken|
    de la|del) |(?:for|para|per|por) (?:the |my |each |every |la |el |mi |cada )?(?!(?:lb|pound|kilo|kg|
    libra)\b)\p{L}|by eye|left\b|sobrantes?\b|que (?:me )?(?:sobra|queda)|max(?:imum)?\b|tops\b|
    min(?:imum)?\b|pl(?:ease|s|z)\b|por favor|thanks?\b|thx\b|gracias|'?\s?worth\b(?! of)|(?:bien )?(?:llen|
    escas|coplet|complet|generos|colmad)[oa]s?\b|full\b|if\b|because\b|give or take)
  `,
  'iu',
);

/** Said behind an amount, these may change how much of it is meant. */
const CHANGES = new RegExp(
  unbroken`
    (?<!\p{L})(?:half|halves|double|twice|triple|thirds?|quarters?|fourths?|fifths?|sixths?|eighths?|
    tenths?|parts?|partes?|quint[oa]s?|sext[oa]s?|octav[oa]s?|except|minus|less than|mitad|doble|triple|
    tercios?|cuartos?|salvo|excepto|imperial(?:es)?|british|forgot(?:ten)?|olvid\p{L}*|two|three|four|five|
    six|seven|eight|nine|ten|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez)(?!\p{L})
  `,
  'iu',
);

/**
 * How much is to be coloured, without a remark behind it: "250 ml in the measuring jug" is 250 ml, "2 cups per colour" 2 cups.
 * What holds another figure, another unit or oils is left as it was written.
 */
export function withoutRemark(text: string): string {
  const words = [...text.matchAll(/[\p{L}\p{M}'’]+\.?/gu)];
  const figured = words.findLastIndex(
    ({ 0: word, index }) => isUnit(word) && /[\d½¼¾⅓⅔⅛]\s*$/u.test(text.slice(0, index)),
  );
  const counted = words.findIndex(({ 0: word, index }) => isUnit(word) && isCounted(text.slice(0, index)));
  const unit = Math.max(figured, counted);
  if (unit < 0) return text;
  let at = unit + 1;
  while (
    at < words.length &&
    (PART.test(words[at]![0]) || OF_SOAP.test(words[at]![0])) &&
    /^\s*$/u.test(between(text, words, at))
  )
    at += 1;
  const from = words[at]?.index;
  if (from === undefined) return text;
  const rest = text.slice(from);
  if (/\d|\b(?:oils?|fats?|aceites?|grasas?)\b/iu.test(rest) || CHANGES.test(rest)) return text;
  if (words.slice(at).some(({ 0: word }) => word.length > 2 && isUnit(word))) return text;
  const isAside = /[,;(–-]\s*$/u.test(text.slice(0, from)) && !/\b(?:or|o|maybe|quizas?)\b/iu.test(rest);
  return isAside || REMARK.test(rest) ? text.slice(0, from).replace(/[\s,;('’–-]+$/u, '') : text;
}

const between = (text: string, words: readonly RegExpExecArray[], at: number): string =>
  text.slice(words[at - 1]!.index + words[at - 1]![0].length, words[at]!.index);
const isUnit = (word: string): boolean => unitOfWord(word.replace(/[.'’]+$/u, '')) !== undefined;
const isCounted = (before: string): boolean => /(?:^|[\d½¼¾⅓⅔⅛]|\p{L})\s*$/u.test(before);
