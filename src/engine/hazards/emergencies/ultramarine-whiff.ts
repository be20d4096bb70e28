import { unbroken } from '../../over-lines.ts';
import { unaccented } from '../../text/unaccented.ts';

/** Longer texts tell a story, and a story may hold somebody who is unwell. */
const LONGEST = 200;
/** Of blues it is ultramarine that smells so. */
const ULTRAMARINE = /\bultra ?mar(?:in[aeo]s?|es)?\b|\b(?:el|mi|este|the|my|this) (?:azul|blue)\b/u;
const EGGS = new RegExp(
  unbroken`
    \b(?:(?:rotten|bad|off|boiled|spoil\w*) eggs?|eggy|(?:stink\w*|stank|stunk|smell\w*|smelt|whiff\w*|
    pong\w*|reek\w*) (?:\w+ ){0,2}eggs?|huevos? podrid\w+|(?:huele\w*|olor|olia|oler) a huevos?|
    sulfhidric\w+)\b
  `,
  'u',
);
/** What frees the gas, or the crafts in which acid meets the pigment. */
export const ACID = new RegExp(
  unbroken`
    \b(?:acid\w*|citric\w*|vinegar|lemon\w*|limes?|lactic|descaler|limon\w*|vinagre|antical|salfuman|
    muriatic\w*|neutrali\w*|ph|bath|bombs?|fizz\w*|bombas?|bano|sulfur|sulphur|azufre|clean\w*|limpi\w*|
    drains?|desague)\b
  `,
  'u',
);
/** Much of it, or where it cannot get away. */
export const STRONG = new RegExp(
  unbroken`
    \b(?:strong\w*|really|so bad|very|awful\w*|horr\w*|terribl\w*|tremend\w*|fuert\w*|mucho|muchisimo|
    apest\w*|pest\w*|whole|entire|toda|todo el|room|flat|kitchen|cocina|cuarto|pieza|sotano|basement|garage|
    windows?|ventanas?|closed|shut|cerrad\w*|hot|heat\w*|calent\w*|caliente|sewer|gas(?:es)?|fumes?|
    breath\w*|respir\w*|everywhere|sudden\w*|de repente|any ?more|ya (?:casi )?no|(?:can ?not|cant|can't|
    couldnt|couldn't) (?:\w+ )?smell)\b
  `,
  'u',
);
/** Somebody who feels it, or asks for help. */
export const FELT = new RegExp(
  unbroken`
    \b(?:head\w*|dizz\w*|sick|ill|nause\w*|vomit\w*|threw up|faint\w*|eyes?|throat|cough\w*|chest|lungs?|
    tired|sleepy|woozy|pale|feel\w*|hurt\w*|sting\w*|burn\w*|cabeza|mare\w*|ojos?|garganta|tos|tosi\w*|
    pecho|asco|arde\w*|pica\w*|duele\w*|desmay\w*|sient[oe] (?:mal|rar\w*|mareo)|help|ayuda|auxilio|
    danger\w*|peligro\w*|toxic\w*|poison\w*|venen\w*|what (?:do|should|would) (?:i|we)|que (?:hago|hacemos|
    hacer|hay que|pasos)|if i ever|si algun|kids?|child\w*|baby|pregnan\w*|embaraz\w*|nin[oa]s?|bebe|class|
    pupils?)\b
  `,
  'u',
);
/** What is asked of the colour or the bar, not of anybody. */
const ASKED = new RegExp(
  unbroken`
    ^\W*(?:is|are|does|do|which|why|could you|can you|es|cual)\b|\?|\b(?:normal|ruined|why|wrong|heard|
    hold up|aguanta\w*|libera\w*|que (?:ha )?pas(?:o|ado)|por que|se dano|sirve)\b
  `,
  'u',
);

/** A smell that is named in passing, and not as rotten: "ultramarine smells like egg". */
const MILD = /^[^.!]*\b(?:smell\w*|smelt|whiff\w*|huele\w*|olor|olia) (?:\w+ ){0,2}(?:eggs?|huevos?)\W*$/u;
const ROTTEN = /\b(?:rotten|bad|off|spoil\w*|podrid\w+|stink\w*|stank|stunk|reek\w*|pong\w*)\b/u;
const isMild = (plain: string): boolean => MILD.test(plain) && !ROTTEN.test(plain);

/**
 * Whether a text asks why a colour with ultramarine smells of rotten eggs, or says that it smells of egg and
 * no more, and tells of no acid, of no strong smell and of nobody who feels
 * it. In lye the pigment may give off a trace of hydrogen sulfide (common practice, no source); whoever asks
 * is told so with what to look
 * out for (`firstAid.ultramarineWhiff` of the words), and in any doubt the first aid is shown. Pure.
 * @example isUltramarineWhiff('huele a huevo podrido, le puse azul ultramar, normal?') // true
 */
export function isUltramarineWhiff(text: string): boolean {
  if (text.length > LONGEST) return false;
  const plain = unaccented(text);
  return (
    ULTRAMARINE.test(plain) &&
    EGGS.test(plain) &&
    (ASKED.test(plain) || isMild(plain)) &&
    ![ACID, STRONG, FELT].some(pattern => pattern.test(plain))
  );
}

/**
 * Whether a text tells of a smell of rotten eggs and of nothing else: no acid, no strong smell, nobody who feels it. First aid stands
 * first, since the gas may kill and what frees it is not told; behind it stands what it usually is where soap is made, a trace that
 * ultramarine gives off (common practice, no source). Pure.
 * @example isBareEggSmell('fos, huele a huevo podrido') // true
 */
export function isBareEggSmell(text: string): boolean {
  if (text.length > LONGEST) return false;
  const plain = unaccented(text);
  return EGGS.test(plain) && ![ACID, STRONG, FELT].some(pattern => pattern.test(plain));
}

/**
 * A text that tells of a smell of egg alone, with the colour that was spoken of just before where that is ultramarine: “smells of eggs, is that it?”
 * then asks of the pigment, as it would had it named it. Rotten eggs, acid, much of it and whoever feels it stay as they were told. Pure.
 * @param spokenOf what the question before was about, such as “ultramarine violet”; undefined where it was about no colour
 * @example withSpokenOf('huele a huevo, es eso?', 'ultramar violeta') // 'ultramar violeta: huele a huevo, es eso?'
 */
export function withSpokenOf(text: string, spokenOf: string | undefined): string {
  if (spokenOf === undefined || !ULTRAMARINE.test(unaccented(spokenOf))) return text;
  return isBareEggSmell(text) && !ROTTEN.test(unaccented(text)) ? `${spokenOf}: ${text}` : text;
}
