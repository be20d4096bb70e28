import { unbroken } from '../over-lines.ts';
import { readDecimal } from '../quantities/number.ts';
import { type Parts, wordedParts } from './premix-wordings.ts';

const FIGURE = String.raw`(\d+(?:[.,]\d+)?(?: \d+\/\d+)?|\d+\/\d+|an?|one|una?|uno)`;
const RATIO = new RegExp(String.raw`(?:^|\s)${FIGURE} ?[:+] ?${FIGURE}(?=[\s,;.]|$)`, 'iu');
const PARTS = new RegExp(
  String.raw`^${FIGURE} (?:parts?|partes?)\b.*?(?:\b(?:to|in|into|with|por|en|a|con|y|and)\b|,|\s) ?${FIGURE}(?: (?:parts?|partes?)\b| (?:of|de) )`,
  'iu',
);
/** "mixed 1 to 3 in oil", "uno a tres en aceite": figures with "to" between, and what it is wetted in. */
const TO = new RegExp(
  String.raw`^(?:(?:\p{L}+ ){0,3}(?:it |at )?)?(?:a razon de )?${FIGURE} (?:to|a|por) ${FIGURE} (?:in|with|of|en|con|de) `,
  'iu',
);
/** Vessels of no stated size, the same on both sides: "1 scoop to 3 scoops water". */
const SCOOPS = new RegExp(
  String.raw`^${FIGURE} (?:heaped |level )?(scoop|spoon|spoonful|cup|cap|medida|cucharon|palita|tapita|tapa)s? .*?\b${FIGURE} (?:heaped |level )?\2s? `,
  'iu',
);
/** "una cucharadita de arcilla con tres de agua": the second unit goes without saying. */
const ELIDED = new RegExp(
  unbroken`
    ^${FIGURE} (tsp|teaspoon|tbsp|tablespoon|spoon|spoonful|cup|g|gram|ml|cdta|cda|cucharadita|cucharada|
    taza|gramo|oz|ounce)s?\b.*?(?: (?:in|into|to|with|for|por|para|en|a|con|and|y)(?: (?:each|every|
    cada))? |, )${FIGURE} (?:of (?:the same (?:\p{L}+ )?(?:of )?)?|de )
  `,
  'iu',
);
const EVEN = new RegExp(
  unbroken`
    \b(?:equal (?:parts?|amounts?|weights?)|same (?:amount|weight|quantity|volume)|same of (?:each|both|
    powder|colou?r|pigment|mica|clay|oxide)|igual (?:cantidad|peso)|mism[oa] (?:peso|volumen)|half and half|
    half n half|mitad \p{L}+,? (?:y )?mitad \p{L}+|partes iguales|misma cantidad|mit(?:ad|[aá]) y mit(?:ad|
    [aá]))(?!\p{L})
  `,
  'iu',
);
/** "carbon en glicerina 1 a 2": the figures come last, powder first. */
const LAST = new RegExp(String.raw`\s${FIGURE} ?(?:a|to|por) ?${FIGURE}$`, 'iu');
const DOUBLE = /\b(?:double|twice|doble)\b.*\b(?:weight|amount|peso|cantidad|its|su|de|much)\b/iu;
const TRIPLE =
  /\b(?:triple|three times|3 times|tres veces|3 veces)\b.*\b(?:weight|amount|peso|cantidad|its|su|de)\b/iu;
/** "1 de arcilla por 3 de agua": parts without the word. */
const BARE_PARTS = new RegExp(
  String.raw`^${FIGURE} (?:de|of) \D+? (?:por|to|in|en|a|con|with) ${FIGURE} (?:de|of) `,
  'iu',
);
const COUNTED: ReadonlyMap<string, number> = new Map([
  ['a', 1],
  ['an', 1],
  ['one', 1],
  ['un', 1],
  ['una', 1],
  ['uno', 1],
]);

/**
 * Powder and liquid in a line of a paste, as parts by volume (spoons are): `1:2 in water`, "1 part to 3 parts". The line stands in
 * figures. Undefined where no parts are told.
 */
export function partsOf(plain: string): Parts | undefined {
  const worded = wordedParts(plain);
  if (worded) return worded;
  if (DOUBLE.test(plain)) return { powder: 1, liquid: 2 };
  if (TRIPLE.test(plain)) return { powder: 1, liquid: 3 };
  if (EVEN.test(plain)) return { powder: 1, liquid: 1 };
  const scoops = SCOOPS.exec(plain);
  if (scoops) return { powder: figureOf(scoops[1]!) ?? 0, liquid: figureOf(scoops[3]!) ?? 0 };
  const elided = ELIDED.exec(plain);
  if (elided) return { powder: figureOf(elided[1]!) ?? 0, liquid: figureOf(elided[3]!) ?? 0 };
  const match =
    RATIO.exec(plain) ?? TO.exec(plain) ?? PARTS.exec(plain) ?? BARE_PARTS.exec(plain) ?? LAST.exec(plain);
  const [powder, liquid] = [match?.[1], match?.[2]].map(part => part && figureOf(part));
  return powder && liquid ? { powder, liquid } : undefined;
}

function figureOf(written: string): number | undefined {
  const counted = COUNTED.get(written.toLowerCase());
  if (counted !== undefined) return counted;
  const [, whole = '0', over, under] = /^(?:(\d+) )?(\d+)\/(\d+)$/u.exec(written) ?? [];
  if (over !== undefined) return Number(whole) + Number(over) / Number(under);
  return readDecimal(written)[0];
}
