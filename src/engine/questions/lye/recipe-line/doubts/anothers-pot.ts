import { unbroken } from '../../../../over-lines.ts';
import { MASS } from '../../amounts/words.ts';
import { PERSON } from './harmless-phrases.ts';

const POT = unbroken`
  (?:pots?|batch(?:es)?|recipes?|soaps?|pans?|mix|bowls?|buckets?|lots?|loaf|one|ollas?|tandas?|recetas?|
  jabon(?:es)?|lotes?|masas?|mezclas?|formulas?|cazuelas?|baldes?|cubos?|calderos?)
`;
/** "Mine", "la mía": told of nothing but beside another's. */
const MINE = new RegExp(
  unbroken`
    (?<!\p{L})(?:mine|(?:the )?ones? (?:that )?(?:i|we)(?:'m)? mak(?:e|ing)|(?:la|el|lo|las|
    los) (?:mi[oa]s?|nuestr[oa]s?)|(?:la|el|lo) que (?:hago|hacemos|preparo|cocino)(?: yo)?)(?!\p{L})
  `,
  'gu',
);
/** "My pot": told by itself as often, so that it has another's beside it only where somebody else is named. */
const MY_POT = new RegExp(
  `(?<!\\p{L})(?:my|our|mi|nuestr[oa]) (?:own )?${POT}(?! (?:de|of)(?!\\p{L}))(?!\\p{L})`,
  'gu',
);
const CONTRACTED = '(?:it|that|there|here|what|let|he|she|who|how|where|today|tonight|everything|all)';
/** Whose pot it is: a name of any kind in the genitive, a pronoun, somebody near, "la olla de …". */
const OWNER = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?!${CONTRACTED}['’]s)\p{L}+['’]s (?:\p{L}+ ){0,2}${POT}|(?:her|his|
    their)(?: \p{L}+)? ${POT}|hers|his|theirs|suy[oa]s?|sus? ${POT}|${PERSON}|(?:la|el|una?|the|an?|that|
    esa|ese) ${POT}|${POT} de (?:(?:mi|la|el|tu|su|nuestr[oa]|don|dona) )?\p{L}+|(?:la|el|lo|las|
    los) de (?:(?:mi|la|el|tu|nuestr[oa]|don|dona) )?(?!\p{L}+ (?:otr[oa]|dia)|coco|oliva|palma|
    siempre)\p{L}+|del (?:vecino|otro|profe|jefe))(?!\p{L})
  `,
  'u',
);
const WEIGHT = new RegExp(`(?<![\\p{L}\\d])${MASS}`, 'u');
/** An amount, or one that is told by another's. */
const AMOUNT =
  /(?<![\p{L}\d])\d|(?<!\p{L})(?:half|twice|double|same|as much|third|quarter|mitad|doble|mism[oa]s?|igual|tanto|tercio|cuarta)(?!\p{L})/u;

/**
 * What a line tells of another's pot beside the asker's own, "mi suegra lleva 1 kg de manteca; la mía, 300 g de coco": the two are of
 * two lyes, and counted as one it would be too much for the asker's. Undefined where one pot alone is told, or where the recipe that is
 * counted `begins` behind the other's weights. Takes what the readers of a recipe take, and what was `said`, "de doña Lupe" with it. Pure.
 */
export function anothersPotIn(
  line: string,
  { begins, said }: { readonly begins: number; readonly said: string },
): string | undefined {
  const told = (text: string): string => text.replace(/^[;,: ]+|[;,: ]+$/gu, '').slice(0, 60);
  for (const [pattern, mayBeAlone] of [
    [MINE, false],
    [MY_POT, true],
  ] as const)
    for (const { 0: mine, index } of line.matchAll(pattern)) {
      const [before, after] = [line.slice(0, index), line.slice(index + mine.length)];
      const last = before.search(new RegExp(`${WEIGHT.source}(?!.*${WEIGHT.source})`, 'u'));
      const isOf =
        !mayBeAlone || OWNER.test(before) || OWNER.test(said.slice(0, Math.max(0, said.search(MY_POT))));
      if (last !== -1 && begins <= last && isOf && AMOUNT.test(ownWords(after))) return told(before);
      const behind = OWNER.exec(after);
      if (behind && WEIGHT.test(after.slice(0, behind.index)) && weighsBehind(after.slice(behind.index)))
        return told(after.slice(behind.index));
    }
  return undefined;
}

/** What follows in the sentence, without the superfat and the question. */
const ownWords = (after: string): string => after.split(';')[0]!.replace(/\d[\d.,]* ?%/gu, '');
/** "My wife's has 1 kg lard", and no "my neighbour says hi". */
const weighsBehind = (after: string): boolean => WEIGHT.test(after.split(';')[0]!);
