import { US_TEASPOON_ML } from '../../src/engine/quantities/units.ts';
import { readPowder } from '../../src/engine/text/amounts/powders/powder-phrase.ts';
import { near, sameThing } from './same-thing.ts';

/** Labels that tell an amount to so much oil, as that to a pound. */
function toThePound(label: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const { tsp, g, per_g_oils: grams, g_per_kg_oils: perKilo } = label;
  const pounds = 453.59237 / Number(grams);
  if (perKilo !== undefined) return { g_per_lb_oils: Number(perKilo) * 0.45359237 };
  if (grams === undefined) return label;
  return tsp === undefined
    ? { g_per_lb_oils: Number(g) * pounds }
    : { tsp_per_lb_oils: Number(tsp) * pounds };
}

/** Grams to the pound of oils as the percent that they are. */
const percentOf = ({ perPound, low }: ReturnType<typeof readPowder>): number | undefined =>
  perPound && low?.measure === 'mass' ? (100 * low.grams) / 453.59237 : undefined;

/** What is wrong with how an amount of powder is read, beside its label. */
export function wrongPowder(text: string, label: Readonly<Record<string, unknown>>): string | undefined {
  const read = readPowder(text);
  const expect = toThePound(label);
  const bad = (wanted: unknown, got: number | undefined) =>
    wanted !== undefined && (got === undefined || !near(got, wanted));
  const tsp = (amount: (typeof read)['high']) =>
    amount?.measure === 'volume' ? amount.millilitres / US_TEASPOON_ML : undefined;
  const grams = (amount: (typeof read)['high']) => (amount?.measure === 'mass' ? amount.grams : undefined);
  const wrong =
    (read.perPound
      ? bad(expect.tsp, undefined) || bad(expect.g, undefined)
      : bad(expect.tsp, tsp(read.low)) || bad(expect.g, grams(read.low))) ||
    bad(expect.percent_oils ?? expect.percent, read.percentOfOils ?? percentOf(read)) ||
    bad(expect.tsp_low, tsp(read.low)) ||
    bad(expect.tsp_high, tsp(read.high)) ||
    bad(expect.g_low, grams(read.low)) ||
    bad(expect.g_high, grams(read.high)) ||
    (expect.tsp_per_lb_oils !== undefined &&
      (!read.perPound || bad(expect.tsp_per_lb_oils, tsp(read.low)))) ||
    (expect.g_per_lb_oils !== undefined && (!read.perPound || bad(expect.g_per_lb_oils, grams(read.low)))) ||
    (expect.oz_per_lb_oils !== undefined &&
      (!read.perPound || bad(Number(expect.oz_per_lb_oils) * 28.349523125, grams(read.low)))) ||
    (expect.colourant !== undefined && !sameThing(read.name, expect.colourant as string));
  return wrong ? `got ${JSON.stringify(read)}` : undefined;
}
