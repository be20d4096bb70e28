const SHARES: readonly (readonly [share: string, words: string])[] = [
  ['2/3', String.raw`two[- ]thirds|2\/3|dos tercios`],
  ['3/4', String.raw`three[- ]quarters|3\/4|tres cuartos`],
  ['1/3', String.raw`(?:an? |one[- ])?third|1\/3|un tercio|tercio`],
  ['1/4', String.raw`(?:an? |one[- ])?quarter|1\/4|un cuarto|la cuarta parte`],
  ['1/2', String.raw`half|1\/2|(?:la )?mitad|medi[oa]`],
];
const WHOLE = String.raw`(?:batter|batch|soap|loaf|pot|masa|mezcla|lote|jabon|olla)`;

/**
 * The part of a batch that a question is about, `2/3` of "two thirds of the batter", where the whole is told elsewhere in
 * it; English or Spanish. Undefined where it is the whole.
 */
export function shareOfBatter(question: string): string | undefined {
  const plain = question.slice(0, 2000).normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  return SHARES.find(([, words]) =>
    new RegExp(
      String.raw`(?<![\p{L}\d/])(?:${words}) (?:of |de |del )?(?:the |my |our |this |la |el |mi |un |una )*${WHOLE}(?!\p{L})`,
      'u',
    ).test(plain),
  )?.[0];
}
