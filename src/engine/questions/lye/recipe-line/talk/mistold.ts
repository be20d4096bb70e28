import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';
import { decimal } from '../../amounts/words.ts';

/*
 * A figure that whoever asks wrote wrongly before, told beside the one that counts: "I typed 75 of castor earlier on, 57 is right". What was
 * said, typed or written was never in the pot; what was put or poured is, and is no slip of the pen.
 */
const UNIT = '(?:g|gr|gramos|grams?|oz|onzas?|ounces?|kg|kilos?|%)';
const OIL = '(?<oil>(?:aceite de |manteca de )?\\p{L}+(?: (?:oil|butter|kernel))?)';
const WROTE = unbroken`
  (?:(?:i|yo) )?(?:said|typed|wrote|had (?:said|typed|written|put down)|put down|told you|dije|escribi|
  teclee|anote|donde (?:dije|puse|decia|dice)|where (?:i|it) (?:said|wrote|typed|says))
`;
const SLIP = new RegExp(
  unbroken`
    (?<=^|[;,] ?(?:(?:sorry|perdon|ay|oops|and|y|but|pero|rectifico|correction|
    correccion)[^;,\d]{0,30}[;,:] ?)?)(?:and |y |but |pero |sorry |
    perdon )?${WROTE} (?<figure>\d[\d.,]*) ?${UNIT}?(?: (?:of|de))?(?: (?:the|my|el|
    la))? ${OIL}(?: (?:earlier|before|above|antes|arriba|ayer|yesterday)(?: on)?| in my (?:last|
    first) (?:text|message|post))*(?<more>(?: ?[;,] ?(?:(?:that|which|it|eso) (?:was|is|fue|era|es)(?: (?:a|
    un|my|mi|an))? (?:slip|typo|mistake|error|wrong|dedazo|lapsus|errata)|(?:scrap|scratch|forget|ignore|
    olvid\p{L}+) (?:that|it|eso|lo)|my (?:mistake|bad)|(?:that|it)['’]s wrong|wrong|
    mal))*)(?: ?[;,]? ?(?:lease|read|it['’]?s|it is|should (?:be|read|say)|es|son|era|eran|no|not that|is|
    make it) (?<again>\d[\d.,]*(?: ?${UNIT})?)
    (?: ${OIL.replace('oil>', 'same>')})?)?(?: ?[;,] ?(?<right>\d[\d.,]*) ?${UNIT}? (?:is|es) (?:right|
    correct|el bueno|lo correcto|it))?
  `,
  'gu',
);

const weightsOf = (line: string, oil: string): readonly number[] => {
  const name = oil.replace(/^(?:aceite|manteca) de | (?:oil|butter)$/gu, '');
  const pattern = new RegExp(
    unbroken`
      (?<![\d.,])(\d[\d.,]*) ?(?:${UNIT})?(?: (?:of|de))?(?: (?:the|aceite de|
      manteca de))? ${name}(?!\p{L})|(?<!\p{L})${name}(?: (?:oil|butter))? ?[:=]? ?(\d[\d.,]*)
    `,
    'gu',
  );
  return [...line.matchAll(pattern)].map(([, one, other]) => decimal((one ?? other)!.replace(/[.,]$/u, '')));
};

/**
 * A line without a figure that was written wrongly before, where the oil stands once elsewhere with another one, and what is said to be
 * right agrees with that. As it was elsewhere. Takes what `plainWords` gives with its clauses. Pure.
 */
export function withoutMistold(plain: string): string {
  return plain.replace(SLIP, (whole, ...rest) => {
    const { oil, figure, again, right, same } = rest.at(-1) as Record<string, string | undefined>;
    if (oil === undefined || knownOil(oil) === undefined) return whole;
    if (same !== undefined && knownOil(same) !== knownOil(oil)) return whole;
    const others = weightsOf(plain.replace(whole, ' ; '), oil);
    const [counts] = others;
    const told = again ?? right;
    const isSettled = told !== undefined && same !== undefined && others.length === 0;
    if (isSettled) return ` ; ${told} ${oil} ; `;
    if (others.length !== 1 || counts === decimal(figure!)) return whole;
    return told === undefined || Number.parseFloat(told.replace(',', '.')) === counts ? ' ; ' : whole;
  });
}
