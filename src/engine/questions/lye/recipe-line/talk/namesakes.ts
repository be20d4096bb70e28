import { knownOil } from '../../../../batch/oils/find-oil.ts';
import { unbroken } from '../../../../over-lines.ts';

/*
 * Animals and people that are called as an oil is: "mi perra se llama Palma". Only what names them goes; whatever they did to the pot stays, and is
 * asked as it was (general knowledge of both languages, no source).
 */

const WHO = unbroken`
  (?:dogs?|puppy|spaniel|cat|kitten|goat|cow|pony|horse|hen|rabbit|parrot|daughter|niece|sister|cousin|friend|neighbou?r|mate|aunt|granny|nan|
  perr(?:it)?[oa]|gat(?:it)?[oa]|cabra|vaca|yegua|gallina|coneja|lora|hija|nieta|sobrina|hermana|prima|amiga|vecina|tia|abuela|cunada)
`;
const MINE = "(?:my|our|mi|nuestra|nuestro|una|a|the|la|el)(?: (?:\\p{L}+['’]?s|new|old|little|best|mejor))?";
/** "Mi perra se llama Palma y", "our goat is called Olive, and". */
const IS_CALLED = new RegExp(
  `(?<=^|[;,] ?)(?:${MINE}) ${WHO} (?:is called|is named|s name is|se llama|se llamaba) (\\p{L}+)(?= ?(?:[;,]|$| y | and ))(?: (?:y|and) )?`,
  'gu',
);
/** "For Olive, our neighbour's spaniel:", "para Palma, mi perra". */
const FOR_WHOM = new RegExp(
  `(?<!\\p{L})(?:(?:making|soap|bars?|some|jabon|haciendo|hago) )*(?:for|para) (\\p{L}+), (?:${MINE}) ${WHO}(?= ?[;:,]| ?$)`,
  'gu',
);
/** "Mi perra Karité necesita jabón:". */
const NEEDS_SOAP = new RegExp(
  unbroken`
    (?<=^|[;,] ?)(?:${MINE}) ${WHO} (\p{L}+) (?:needs?|wants?|would like|gets|deserves|necesita|quiere|pide|merece)
    (?: (?:a|an|some|more|new|un|una|mas|su|her|his|nuevo))* (?:soaps?|bars?|wash|bath|jabon(?:es)?|jaboncito|bano)(?= ?[;:,]| ?$)
  `,
  'gu',
);

/** A line without what only tells that somebody is called as an oil is. Takes what `plainWords` gives. Pure. */
export const withoutNamesakes = (plain: string): string =>
  [IS_CALLED, FOR_WHOM, NEEDS_SOAP].reduce(
    (line, pattern) =>
      line.replace(pattern, (said: string, name: string) => (knownOil(name) === undefined ? said : ' ; ')),
    plain,
  );
