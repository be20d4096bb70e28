import { findOil, knownOil, namesOf } from '../../../batch/oils/find-oil.ts';
import { parseOils } from '../../../batch/oils/lists/oil-list.ts';
import { unbroken } from '../../../over-lines.ts';
import { Refusal } from '../../../refusal.ts';
import { trimmed } from './oils.ts';
import { MASS } from './words.ts';

/** Oils with their weights, picked out of a sentence, and the words beside them that were passed by. */
export type OilsAmongWords = { readonly oils: string; readonly left: readonly string[] };

/** Whatever is said with these may change how much of what is meant: nothing beside them is passed by. */
const CHANGES = new RegExp(
  unbroken`
    \b(?:instead|rather|not|no|without|minus|less|more|forg[eo]t\w*|replac\w*|swap\w*|remov\w*|left out|
    half|doubl\w*|twice|triple|except|but|or|if|per|each|times|percent|convert\w*|sin|en vez|lugar|menos|
    mas|quit\w*|olvid\w*|cambi\w*|sustitu\w*|reemplaz\w*|mitad|doble|excepto|salvo|pero|si|por|cada|o|
    convert\w*|used|usado|waste|mixed|unknown|milk|leche|soap|jabon(?:es)?|base|argentin\w*|uruguay\w*|
    chilen?\w*|paraguay\w*|seeds?|semillas?|pipas|pepitas|paste|pasta)\b
  `,
  'u',
);
/** A fat that nobody weighed. */
const FAT =
  /\b(?:oils?|butters?|fats?|wax(?:es)?|lard|tallow|aceites?|mantecas?|mantequillas?|grasas?|ceras?|sebo)\b/u;
const KIND = /^(?:butters?|fat|wax|manteca|mantequilla|grasa|cera|sebo)$/u;
/** No name of an oil has more words. */
const LONGEST = 4;
const JOINTS = /\s*(?:[;,:+]|\b(?:and|y|e|con|with|plus|mas|then|luego)\b)\s*/u;
const ONE_MASS = new RegExp(`^(.*?)(${MASS})(?: (?:of|de))? ?(.*)$`, 'u');

/**
 * The weighed oils in what is left of a question, where its other words name no oil and change no amount: a figure of
 * something unknown, a second weight in a piece, or a word that may turn the sense gives undefined. Pure.
 * @example oilsAmongWords('recipe from book ; 500 g olive oil') // { oils: '500 g olive oil', left: ['recipe from book'] }
 */
export function oilsAmongWords(text: string): OilsAmongWords | undefined {
  const oils: string[] = [];
  const left: string[] = [];
  for (const piece of text.split(JOINTS).map(one => one.trim())) {
    if (piece === '') continue;
    const read = ofPiece(piece);
    if (!read) return undefined;
    if (read.oil !== undefined) oils.push(read.oil);
    left.push(...read.left.map(trimmed).filter(one => one !== ''));
  }
  if (oils.length === 0 || left.some(one => CHANGES.test(one) || FAT.test(one) || /\d/u.test(one)))
    return undefined;
  return { oils: oils.join(', '), left };
}

type Piece = { readonly oil?: string; readonly left: readonly string[] };

function ofPiece(piece: string): Piece | undefined {
  const [, before = '', mass, after = ''] = ONE_MASS.exec(piece) ?? [];
  if (mass === undefined) return namesOil(piece) ? undefined : { left: [piece] };
  if (new RegExp(MASS, 'u').test(after)) return undefined;
  const [behind, ahead] = [after.split(' '), before.trim().split(' ')];
  for (let count = Math.min(LONGEST, behind.length); count > 0; count -= 1) {
    const oil = weighed(mass, behind.slice(0, count).join(' '));
    if (oil) return namesOil(before) ? undefined : { oil, left: [before, behind.slice(count).join(' ')] };
  }
  for (let count = Math.min(LONGEST, ahead.length); count > 0; count -= 1) {
    const oil = weighed(mass, ahead.slice(-count).join(' '));
    if (oil) return namesOil(after) ? undefined : { oil, left: [ahead.slice(0, -count).join(' '), after] };
  }
  return undefined;
}

/** `500 g olive`, where that is an oil which the plan's own reader takes. */
function weighed(mass: string, name: string): string | undefined {
  if (name === '') return undefined;
  try {
    const own = namesOf(findOil(name)).join(' ').toLowerCase();
    // "manteca, soy de aquí": a word for a fat that this oil has not is of another.
    if (name.split(' ').some(word => KIND.test(word) && !own.includes(word))) return undefined;
    parseOils(`${mass} ${name}`);
    return `${mass} ${name}`;
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

/** Whether any one to four words in a row name an oil. */
function namesOil(text: string): boolean {
  const words = text.split(' ').filter(word => word !== '');
  return words.some((_, from) =>
    words
      .slice(from, from + LONGEST)
      .some((__, more) => knownOil(words.slice(from, from + more + 1).join(' '))),
  );
}

const CLAUSES = /[;,](?!\d)|:(?= |$)|(?<=\p{L}) [-–—]+ (?=\p{L})/u;
/** What joins another oil to those that are weighed. */
const JOINED =
  /(?<!\p{L})(?:and|y|e|n|plus|with|con|mas|some|bits? of|splash|touch|poco|poquito|algo|chorrito|cucharad\p{L}*)(?!\p{L})/u;

/**
 * The clauses of a question that hold its oils and their amounts, as one list, and those that hold neither: who gave the recipe, what
 * happened, how soon it is needed. Words in front of the first amount of a clause may go too; nothing behind it does, since an oil
 * that nobody weighed may stand there. Undefined where a clause beside the oils names a fat or may change an amount. Pure.
 */
export function clausesOfOils(
  text: string,
): { readonly list: string; readonly left: readonly string[] } | undefined {
  const list: string[] = [];
  const left: string[] = [];
  for (const clause of text.split(CLAUSES).map(one => one.trim())) {
    if (clause === '') continue;
    if (/\d/u.test(clause) || namesOil(clause)) {
      const [whole, tail] = withoutTail(clause);
      const { head, rest } = withoutHead(whole);
      list.push(rest);
      left.push(head, tail);
    } else if (isPassedBy(clause)) left.push(trimmed(clause));
    else return undefined;
  }
  const told = left.filter(one => one !== '');
  return list.length === 0 || told.length === 0 ? undefined : { list: list.join(', '), left: told };
}

/** Who tells of something speaks of people, of times and of doing; a lone name or "a bit of" something tells of none. */
const TELLS = new RegExp(
  unbroken`
    (?<!\p{L})(?:i|i'?m|me|my|we|us|our|you|he|she|they|it|is|was|are|gave|said|says|made|mak\p{L}+|
    render\p{L}*|melt\p{L}*|need|want|hurry|first|today|tonight|tomorrow|recipe|mum|mom|gran\p{L}*|sister|
    neighbou?r|friend|teacher|class|market|wedding|christmas|se|mi|nos|le|les|lo|es|son|era|fue|tengo|dio|
    dijo|dice|regal\p{L}+|hac\p{L}+|hago|hice|derret\p{L}+|primer\p{L}?|hoy|manana|receta|suegra|vecin\p{L}|
    abuel\p{L}|herman\p{L}|amig\p{L}|clase|mercado|boda|navidad|prisa|cay\p{L}+)(?!\p{L})
  `,
  'u',
);
export const SOMETHING = new RegExp(
  unbroken`
    (?<!\p{L})(?:some|any|bits? of|splash|touch|dash|drizzle|drop|drops|spoon\p{L}*|handful|poco|poquito|
    algo|algun\p{L}*|chorrito|gotas?|cucharad\p{L}*|pizca|punado)(?!\p{L})
  `,
  'u',
);

/** Four words and more with one that only sentences have. */
const isSentence = (words: string): boolean =>
  words.split(' ').length >= 4 &&
  /(?<!\p{L})(?:on|so|at|the|this|that|just|very|not? sure|in|to|esta|este|la|el|muy|ya|asi|en)(?!\p{L})/u.test(
    words,
  ) &&
  !JOINED.test(words);

const isPassedBy = (words: string): boolean =>
  !CHANGES.test(words) &&
  !FAT.test(words) &&
  !namesOil(words) &&
  !SOMETHING.test(words) &&
  (TELLS.test(words) || trimmed(words) === '' || isSentence(words));

/** How it was always made, who it is for, why: "como hacía mi abuelo", "for my sister". */
const REASON = /^(.*?\p{L}) (?=(?:como|like|as|para|for|since|because|porque|ya que|pues) )([^\d]*)$/u;

/** Where the oils stand or lie: "on my scale", "en la olla ya". */
const PLACE = new RegExp(
  unbroken`
    ^(.*\p{L}) ((?:on|in|at|en|sobre) (?:the|my|our|an?|la|el|mi|una?) (?:(?:kitchen|digital|big|little|
    double) )?(?:scales?|pots?|pans?|bowls?|boiler|bench|counter|worktop|table|cupboard|pantry|kitchen|
    shelf|fridge|balanza|bascula|olla|cazo|cazuela|bol|mesa|encimera|cocina|alacena|despensa|estante|nevera|
    refri)(?: (?:now|here|already|right now|ready|melting|ya|ahora|listos?|listas?))?)$
  `,
  'u',
);

function withoutTail(clause: string): readonly [whole: string, tail: string] {
  const [, oils, place] = PLACE.exec(clause) ?? [];
  if (oils !== undefined && place !== undefined && namesOil(oils)) return [oils, place];
  const [, whole, tail] = REASON.exec(clause) ?? [];
  const isTail = whole !== undefined && tail !== undefined && namesOil(whole) && /\d/u.test(whole);
  return isTail && isPassedBy(tail) && !JOINED.test(tail) ? [whole, trimmed(tail)] : [clause, ''];
}

/** "my neighbour gave us 1 kg emu oil": what stands before the first weight or oil and joins nothing to it. */
function withoutHead(clause: string): { readonly head: string; readonly rest: string } {
  const words = clause.split(' ');
  const from = words.findIndex(
    (word, at) =>
      /^\d/u.test(word) ||
      namesOil(
        words
          .slice(at, at + LONGEST)
          .join(' ')
          .split(/ \d/u)[0]!,
      ),
  );
  const head = trimmed(words.slice(0, from).join(' '));
  return from > 0 && head !== '' && isPassedBy(head) && !JOINED.test(head)
    ? { head, rest: words.slice(from).join(' ') }
    : { head: '', rest: clause };
}
