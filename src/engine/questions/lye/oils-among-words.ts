import { findOil, knownOil, namesOf } from '../../batch/oils/find-oil.ts';
import { parseOils } from '../../batch/oils/oil-list.ts';
import { Refusal } from '../../refusal.ts';
import { trimmed } from './oils.ts';
import { MASS } from './words.ts';

/** Oils with their weights, picked out of a sentence, and the words beside them that were passed by. */
export type OilsAmongWords = { readonly oils: string; readonly left: readonly string[] };

/** Whatever is said with these may change how much of what is meant: nothing beside them is passed by. */
const CHANGES =
  /\b(?:instead|rather|not|no|without|minus|less|more|forg[eo]t\w*|replac\w*|swap\w*|remov\w*|left out|half|doubl\w*|twice|triple|except|but|or|if|per|each|times|percent|convert\w*|sin|en vez|lugar|menos|mas|quit\w*|olvid\w*|cambi\w*|sustitu\w*|reemplaz\w*|mitad|doble|excepto|salvo|pero|si|por|cada|o|convert\w*|used|usado|waste|mixed|unknown|milk|leche|soap|jabon(?:es)?|base|argentin\w*|uruguay\w*|chilen?\w*|paraguay\w*|seeds?|semillas?|pipas|pepitas|paste|pasta)\b/u;
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
