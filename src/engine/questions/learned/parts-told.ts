import { unbroken } from '../../over-lines.ts';
import type { ToldAmount } from '../found/amounts.ts';

/** So many colours, layers or shades of one soap. */
const COUNTED = new RegExp(
  unbroken`
    \b(?:[2-9]|1[0-2]|two|three|four|five|six|seven|eight|dos|tres|cuatro|cinco|seis|siete|
    ocho)[- ](?:\p{L}+ )?(?:colou?rs?|layers?|shades?|tones?|parts?|pours?|bands?|stripes?|steps?|portions?|
    pots?|jugs?|colores|capas?|tonos?|partes?|franjas?|rayas?|bandas?|pasos|porciones|potes|jarras)\b
  `,
  'u',
);
/** Parts of one batter. */
const SHARE = new RegExp(
  unbroken`
    ^(?:half|halves|thirds?|quarters?|rest|remainder|equal(?:ly)?|evenly|split|divide[ds]?|each|mitad|mita|
    medio|tercios?|cuartos?|resto|iguales|parejo|repart\p{L}*|divid\p{L}*|cada|\d{1,2}(?:\/\d{1,2})+|
    \d{1,2}%|%)$
  `,
  'u',
);
/** Where in a loaf a colour lies, or how it gets there. */
const POURED = new RegExp(
  unbroken`
    ^(?:layers?|layered|swirls?|swirled|stripes?|striped|bands?|ombres?|gradient|graded|fade|rainbow|flag|
    marbled?|bottom|middle|top|tops|topped|base|drop|hanger|column|wells?|cavit(?:y|ies)|pours?|capas?|
    remolinos?|espiral|franjas?|rayas?|bandas?|degradad[oa]s?|degrade|arcoiris|bandera|marmol\p{L}*|abajo|
    arriba|encima|fondo|medio|base|huecos?|cavidades)$
  `,
  'u',
);
/** One thing or the other. */
const BETWEEN = /^(?:or|vs|versus|against|than|o|contra|frente)$/u;
const NAMED = /^<(?:thing|colour)>$/u;
const MARKS = /[,;.]/u;

const counted = (name: string, count: number, most: number) => `${name} ${Math.min(count, most)}`;

/** Whether one named thing stands beside another with a word of choice between them. */
const isChoice = (said: readonly string[]): boolean =>
  said.some(
    (word, at) =>
      BETWEEN.test(word) &&
      said.slice(Math.max(0, at - 2), at).some(one => NAMED.test(one)) &&
      said.slice(at + 1, at + 4).some(one => NAMED.test(one)),
  );

/**
 * How many colours one batter is to have, in which shares and where they lie: several colours and a size are a plan, one is a dose, two with
 * "or" between them are compared. `said`: the words with what is named and told put in its place.
 */
export function partsTold(
  words: readonly string[],
  amounts: readonly ToldAmount[],
  said: readonly string[],
): readonly string[] {
  const hues = said.filter((word, at) => NAMED.test(word) && !NAMED.test(said[at - 1] ?? '')).length;
  const plain = words.filter(word => !MARKS.test(word));
  const shares = plain.filter(word => SHARE.test(word)).length;
  const poured = plain.filter(word => POURED.test(word)).length;
  const isSized = amounts.some(({ of }) => of === 'batter' || of === 'oils');
  const isSeveral = COUNTED.test(words.join(' '));
  const isParted = isSeveral || shares + poured > 1;
  return [
    counted('hues', hues, 4),
    counted('shares', shares, 3),
    counted('poured', poured, 3),
    ...(isSeveral ? ['so many colours'] : []),
    `${hues > 2 ? 'many' : hues > 1 ? 'two' : 'few'} hues, ${isParted ? 'parted' : 'whole'}, ${isSized ? 'sized' : 'no size'}`,
    ...(isChoice(said) ? ['one or the other'] : []),
  ];
}
