import { unbroken } from '../../../../over-lines.ts';

/** Places that a figure tells in the list of a recipe, from its head (0, 1, …) or its end (-1, -2, …); undefined where one is not plain. */
export type Places = { readonly text: string; readonly at: readonly number[] | undefined };

const ORDINALS: readonly (readonly [RegExp, number])[] = [
  [/^(?:first|1st|top|primer[oa]?s?|de arriba)$/u, 0],
  [/^(?:second|2nd|segund[oa]s?)$/u, 1],
  [/^(?:third|3rd|tercer[oa]?s?)$/u, 2],
  [/^(?:fourth|4th|cuart[oa]s?)$/u, 3],
  [/^(?:fifth|5th|quint[oa]s?)$/u, 4],
  [/^(?:sixth|6th|sext[oa]s?)$/u, 5],
  [/^(?:last|final|bottom|ultim[oa]s?|de abajo|del final)$/u, -1],
];
const ORDINAL = unbroken`
  (?:first|1st|top|second|2nd|third|3rd|fourth|4th|fifth|5th|sixth|6th|last|final|bottom|primer[oa]?s?|
  segund[oa]s?|tercer[oa]?s?|cuart[oa]s?|quint[oa]s?|sext[oa]s?|ultim[oa]s?)
`;
const NEXT = '(?: ?-? ?)';
const OF_LIST = unbroken`
  (?:ones?|two|three|2|3|dos|tres|oils?|fats?|butters?|ingredients?|items?|entry|entries|lines?|aceites?|
  grasas?|ingredientes?|renglon(?:es)?|lineas?|(?:of|on|in|de|en) (?:those|these|them|es[oa]s|est[oa]s)|
  (?:of|on|in|de|en) (?:the|this|that|my|la|esta|mi|l[oa]s|es[oa]s) (?:list|lot|oils|lista|aceites|two|
  three|four|five|[2-6]|dos|tres|cuatro))
`;
/** A stop, or what goes on about it: no noun that the ordinal would be of. */
const ENDS = unbroken`
  (?= ?(?:[;,:]|$|(?:is|was|are|were|isn'?t|wasn'?t|stays?|goes|went|can|has|had|hasn'?t|didn'?t|doesn'?t|
  won'?t|ran|run|though|please|today|tonight|this time|no|not|out|off|que|es|era|son|va|van|se|me|lo|la|los|
  las|ya|queda|quedan|falta|faltan|para|pa|hoy|ahora|esta|estan|sobra|al|with|at|con|for|i|we|y|
  and)(?![\p{L}]))(?! ?- ?\p{L}))
`;
const THE = '(?:(?:the|that|el|la|los|las|lo|al|del) )';

const PLACES: readonly (readonly [RegExp, (match: RegExpExecArray) => readonly number[] | undefined])[] = [
  // "The last but one", "next to last", "the one before last", "second from the end", "el penúltimo", "el anterior al último".
  [
    /(?<![\p{L}\d])(?:last but (?:two|2)|third (?:to|from)(?: the)? (?:last|end|bottom)|third last|antepenult\p{L}+)(?: (?:one|oil|fat|aceite))?(?!\p{L})/u,
    () => [-3],
  ],
  [
    new RegExp(
      unbroken`
        (?<![\p{L}\d])(?:(?:last|bottom) but (?:one|1)|(?:next|second|one)[- ](?:to|
        from)[- ](?:the[- ])?(?:last|end|bottom)|second last|(?:one|1|the oil|that) (?:before|
        above) (?:the )?last|penult\p{L}+|(?:anterior|que va antes|de antes) (?:al?|del?) (?:ultim[oa]|
        final)|segund[oa] (?:por|desde) (?:el )?(?:final|cola|abajo))(?: (?:one|oil|fat|aceite))?(?!\p{L})
      `,
      'u',
    ),
    () => [-2],
  ],
  // "The middle one", "el de en medio".
  [
    /(?<![\p{L}\d])(?:(?:the )?middle (?:one|oil|fat)|(?:el|la) (?:del (?:medio|centro)|de(?: en)? medio|central))(?!\p{L})/u,
    () => [Number.NaN],
  ],
  [
    /(?<![\p{L}\d])(?:the )?middle (?:two|2|ones|three|3)(?!\p{L})|(?<!\p{L})(?:los|las)(?: \d| dos)? (?:del medio|de(?: en)? medio|centrales)(?!\p{L})/u,
    () => undefined,
  ],
  // "The last two", "los dos últimos", "los primeros tres".
  [
    new RegExp(
      `(?<![\\p{L}\\d])(?:${THE})?(?<of>${ORDINAL}) (?<many>two|three|2|3|dos|tres)(?: (?:ones|oils|fats|aceites))?${ENDS}`,
      'u',
    ),
    ({ groups }) => several(groups!.of!, groups!.many!),
  ],
  [
    /(?<![\p{L}\d])(?:los|las) (?<many>dos|tres|2|3) (?<of>primer[oa]s|ultim[oa]s)(?!\p{L})/u,
    ({ groups }) => several(groups!.of!, groups!.many!),
  ],
  // "Number 3", "#2", "item 2", "the one in third place", "el que va tercero".
  [
    new RegExp(
      unbroken`
        (?<![\p{L}\d])(?:(?:number|no|nr|item|ingredient|numero|num|ingrediente)(?: #)? ?|
        # ?)(?<figure>[1-6])(?![\d.,]*\d|\p{L}| ?(?:%|g|gr|kg|oz|lbs?|percent|por)(?!\p{L}))
      `,
      'u',
    ),
    ({ groups }) => [Number(groups!.figure) - 1],
  ],
  [
    new RegExp(
      unbroken`
        (?<![\p{L}\d])(?:(?:in|en) (?:the )?(?<of>${ORDINAL}) (?:place|position|lugar|posicion)|
        (?:en )?(?:el |la )?que (?:va|viene|esta)(?: de| en)? (?<es>${ORDINAL}))(?!\p{L})
      `,
      'u',
    ),
    ({ groups }) => place(groups!.of ?? groups!.es!),
  ],
  // "Quita el 3": no percent and no weight.
  [
    new RegExp(
      unbroken`
        (?<=(?<!\p{L})(?:quit\p{L}*|sin|salvo|menos|excepto|omit\p{L}*|salt\p{L}*|saca\p{L}*|tach\p{L}*|
        skip|drop|omit|without|except)(?: (?:the|el|la))? )(?<figure>[1-6])(?![\d.,:]*\d| ?(?:%|g|gr|kg|oz|
        lbs?|ml|percent|por|de|of|aceites?|oils?|cosas?)(?!\p{L}))
      `,
      'u',
    ),
    ({ groups }) => [Number(groups!.figure) - 1],
  ],
  // "The second one", "the last of the list", "the third stays in", "el último no", "la segunda la dejo".
  [
    new RegExp(
      `(?<!(?<!\\p{L})(?:an?|1|un|una|my|our|your|his|her|mi|su|tu) )(?<![\\p{L}\\d])(?:${THE})?(?<of>${ORDINAL})${NEXT}${OF_LIST}(?!\\p{L})`,
      'u',
    ),
    ({ groups }) => place(groups!.of!),
  ],
  [new RegExp(`(?<![\\p{L}\\d])${THE}(?<of>${ORDINAL})${ENDS}`, 'u'), ({ groups }) => place(groups!.of!)],
  [
    new RegExp(
      `(?<![\\p{L}\\d])(?:no|not|without|minus|except|bar|skip|drop|omit|sin|menos|salvo|excepto) (?<of>${ORDINAL})${ENDS}`,
      'u',
    ),
    ({ groups }) => place(groups!.of!),
  ],
];

function place(ordinal: string): readonly number[] | undefined {
  const at = ORDINALS.find(([pattern]) => pattern.test(ordinal))?.[1];
  return at === undefined ? undefined : [at];
}
function several(ordinal: string, many: string): readonly number[] | undefined {
  const count = /^(?:three|tres|3)$/u.test(many) ? 3 : 2;
  const from = place(ordinal)?.[0];
  if (from === 0) return Array.from({ length: count }, (_, at) => at);
  return from === -1 ? Array.from({ length: count }, (_, at) => -1 - at) : undefined;
}

/** The first place in a list that a clause names; undefined where it names none. Takes what `plainWords` gives. Pure. */
export function placesIn(clause: string): Places | undefined {
  for (const [pattern, of] of PLACES) {
    const match = pattern.exec(clause);
    if (match) return { text: match[0].trim(), at: of(match) };
  }
  return undefined;
}

/** Which of `count` things those places are; undefined where one of them is none. Pure. */
export function placed(at: readonly number[], count: number): readonly number[] | undefined {
  const found = at.map(one =>
    Number.isNaN(one) ? (count % 2 === 1 ? (count - 1) / 2 : -1 - count) : one < 0 ? count + one : one,
  );
  return found.every(one => one >= 0 && one < count) ? found : undefined;
}
