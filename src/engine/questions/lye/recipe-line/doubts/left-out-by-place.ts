import { unbroken } from '../../../../over-lines.ts';

const PLACED = unbroken`
  (?:last|first|second|third|fourth|[1-4](?:st|nd|rd|th)|end|ultim[oa]s?|primer[oa]?s?|segund[oa]s?|
  tercer[oa]?s?|cuart[oa]s?|final|solid[oa]?s?|liquid[oa]?s?|vegetal(?:es)?|hard|soft)
`;
const ONES = '(?: (?:ones?|1|2|3|two|three|oils?|fats?|dos|tres|aceites?|grasas?|part|only|solo))*';
/**
 * "Without the last", "for just the first two", "the vegan version": an oil that is left out by its place in the list or its kind. Which
 * that is nobody here works out; it is asked.
 */
export const LEFT_OUT_BY_PLACE: readonly RegExp[] = [
  new RegExp(
    unbroken`
      (?<!\p{L})(?:without|minus|except(?:ing)?|skip(?:ping)?|leav(?:e|ing) out|(?:not|without) counting|
      dropping|sin(?: contar)?|quit(?:ando|o|amos)|salvo|menos|excepto|exceptuando|descontando|just|only|
      solo|solamente|nomas)(?<=\d.*)(?: (?:for|para|of|de|counting|the|el|la|lo|los|las|
      del))* ${PLACED}${ONES}(?= ?(?:[;,]|$|(?:at|al|a|con|with|and|y|sobreengrasado|superfat|\d|please|
      por)(?![\p{L}])))
    `,
    'u',
  ),
  new RegExp(
    unbroken`
      (?<!\p{L})(?:for|para|of|de)(?<=\d.*)(?: (?:just|only|solo|the|los|las|el|la))* (?:first|last|
      primer[oa]s|ultim[oa]s|liquid|solid|hard|soft) (?:two|2|three|3|dos|tres|ones?)(?!\p{L})
    `,
    'u',
  ),
  /(?<!\p{L})(?:vegana?|vegetarian)(?<=\d.*) (?:version|one|half|part)|(?:version|parte) (?:vegana|vegetal)(?!\p{L})/u,
];
