import type { Carrier } from '../../colourants/colourant.ts';
import { unbroken } from '../../over-lines.ts';
import { LYE } from '../jobs/dose-by-phrase.ts';
import type { Found } from '../learned/features.ts';
import type { Words } from './words-of.ts';

/** Liquid that is asked for so much powder of one colourant. */
export type CarrierAmountAsked = {
  readonly colourant: string;
  /** How much powder, in words that `parseAmount` reads. */
  readonly powder: string;
  /** The carrier that was named; undefined where any may be ("how much liquid"). */
  readonly carrier: Carrier | undefined;
};

const CARRIER = unbroken`
  glycerine?|glycerol|glicerina|(?:distilled )?water|agua(?: destilada)?|(?:\p{L}+ ){0,2}?oil|aceite(?: de \p{L}+(?: dulces?)?|
  liviano|ligero)?|carrier|liquid|liquido|vehiculo
`;
/** "How much oil", "how many spoons of glycerin", "cuántas cucharadas de aceite". */
const HOW_MUCH = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:how (?:much|many(?: \p{L}+){1,2} of))|what amount of|cuant[oa]s?(?: (?:\p{L}+ )de| ml de)?|
    que (?:tanta?|cantidad de)) (${CARRIER})(?!\p{L})(?! (?:soap|batter|mica|dispersible|soluble))
  `,
  'u',
);
const ASKED_MANY = /^(?:many|cuant[oa]s)$/u;
/** A batch is told: the oil or water may be the recipe's. */
const OF_A_RECIPE =
  /(?<!\p{L})(?:recipes?|batch(?:es)?|loaf|superfat|recetas?|lotes?|tandas?|sobreengrasad\p{L})(?!\p{L})/u;

/**
 * How much liquid wets so much powder of one colourant: "how much oil do I need to wet 2 tablespoons of green mica". Undefined where a
 * portion, a recipe or lye stands beside it, whose own liquids may be meant. Pure.
 */
export function carrierAmountAsked(
  { text, words }: Words,
  { things, amounts, facts }: Found,
): CarrierAmountAsked | undefined {
  const liquid = HOW_MUCH.exec(text)?.[1];
  if (liquid === undefined || LYE.test(text) || OF_A_RECIPE.test(text)) return undefined;
  const named = things.filter(({ colourants }) => colourants.length > 0);
  const [thing, ...others] = named;
  // "How many teaspoons of oil" tells no amount.
  const [amount, ...more] = amounts.filter(({ from }) => !ASKED_MANY.test(words[from - 1] ?? ''));
  const isOfPowder = amount !== undefined && more.length === 0 && facts.powder === amount.text;
  if (thing === undefined || others.length > 0 || !isOfPowder || amount.perPound) return undefined;
  return { colourant: thing.text, powder: amount.text, carrier: carrierOf(liquid) };
}

const carrierOf = (liquid: string): Carrier | undefined => {
  if (/^gl[iy]/u.test(liquid)) return 'glycerin';
  if (/water|agua/u.test(liquid)) return 'water';
  return /oil|aceite/u.test(liquid) ? 'oil' : undefined;
};
