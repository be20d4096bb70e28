/** "A bit under a pound, call it 420 g": what is said second is what it is. */
const RESTATES =
  /^[^,;()]{1,60}[,;(]\s*(?:so |or |o )?(?:call it|say|make it|let'?s say|more like|rather|well|that is|that'?s|i'?d say|digamos|pongamos|o sea|m[aá]s bien|dir[ií]a)\s+(?=(?:about |around |some |unos |unas |como )?(?:\d|(?:an?|one|half|un|una|medi[oa])\s))/iu;
const NAMED: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
};
const AND_A_PART =
  /(?<![\p{L}\d.,/])(one|two|three|four|five|six|\d{1,2}) (?:and|an|n|&) (?:an? |one )?(half|quarter) (?=(?:kilos?|kgs?|pounds?|lbs?|cups?|lit(?:er|re)s?|pints?|quarts?|ounces?|oz)(?!\p{L}))/giu;

/**
 * An amount as it is told at last, with halves and quarters of its unit as one figure: "half a kilo, say 520 g" is 520 g, "one and a
 * half kilos" is 1.5 kilos. Pure.
 */
export const restated = (text: string): string =>
  text
    .replace(RESTATES, '')
    .replace(
      AND_A_PART,
      (_, whole: string, part: string) =>
        `${(NAMED[whole.toLowerCase()] ?? Number(whole)) + (/half/iu.test(part) ? 0.5 : 0.25)} `,
    );
