/** By what a recipe is multiplied, told in words of the grammar's `times`; undefined where no number is in them. */
export function timesOf(words: string): number | undefined {
  if (/(?:two|2) thirds|(?:dos|2) tercios/u.test(words)) return 2 / 3;
  if (/(?:three|3) quarters|(?:tres|3) cuartos/u.test(words)) return 3 / 4;
  if (/half|in 2$|halv|mitad|media/u.test(words)) return 0.5;
  if (/third|tercio|tercera/u.test(words)) return 1 / 3;
  if (/quarter|cuart[oa]/u.test(words)) return 1 / 4;
  if (/doubl|doble|dupli|twice/u.test(words)) return 2;
  if (/tripl|three times/u.test(words)) return 3;
  if (/quadrupl/u.test(words)) return 4;
  const [figure] = /\d/u.exec(words) ?? [];
  return figure === undefined ? undefined : Number(figure);
}

/** What came out of a recipe that was multiplied: "the lye doubled", "para el doble". */
const OUTCOME = /^(?:doubled|tripled|halved|(?:el |al )?(?:doble|triple)|(?:duplicad|triplicad)[oa])$/u;
/** "Lye for the double": of the batch that was told of. */
const FOR_IT = /^(?:double|triple|quadruple|half|a la mitad|la mitad)$/u;
const SAYS_WHO = /^(?:i|we|ive|i've|yo|again|more|otra|nuevo|mas)$/u;

/**
 * Whether a multiple is named once more as the outcome of the one told before, "double this: 14 oz olive; what's the lye doubled": it is
 * done once. Who tells that they doubled something, or wants it again, is not.
 */
export const isSameMultiple = (
  told: string,
  again: string,
  beside: readonly { readonly is: string; readonly text: string }[],
): boolean =>
  (OUTCOME.test(again) ||
    /^(?:cut|split) .* in (?:half|2)$/u.test(again) ||
    (FOR_IT.test(again) && beside.some(({ is }) => is === 'asks'))) &&
  timesOf(told) === timesOf(again) &&
  !beside.some(({ text }) => SAYS_WHO.test(text));
