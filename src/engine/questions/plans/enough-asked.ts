import { amountsIn, type ToldAmount } from '../found/amounts.ts';
import { thingsIn } from '../found/names/entities.ts';
import type { Words } from '../found/words-of.ts';
import { amountOf } from '../portion-line/amount-at.ts';
import { BARS, LEAST_G, OIL } from './shares-asked.ts';

/** A jar that is weighed, and a batch: whether it is enough. */
export type EnoughAsked = {
  readonly colourant: string;
  readonly has: number;
  readonly grams: number;
  readonly of: 'oils' | 'batter';
};
const ENOUGH =
  /(?<!\p{L})(?:enough|suffice|do me|last me|alcanza\p{L}*|llega|suficiente|me da para|basta)(?!\p{L})/u;

/** "120 g of blue mica in a tub, batch is 1.5 kg, enough?": grams of powder, of one colourant, and of the batch. Pure. */
export function enoughAsked(read: Words): EnoughAsked | undefined {
  const text = read.text.toLowerCase();
  if (!ENOUGH.test(text) || /(?<!\p{L})(?:lye|naoh|sosa)(?!\p{L})/u.test(text)) return undefined;
  const things = thingsIn(read);
  const [thing, ...others] = things.filter(one => one.colourants.length > 0);
  const masses = amountsIn(read, things).filter(({ measure }) => measure === 'mass');
  if (!thing || others.length > 0 || masses.length !== 2) return undefined;
  // The weight that stands nearer to the name is of the jar.
  const [jar, batch] = masses.toSorted((a, b) => gap(a, thing) - gap(b, thing));
  const [has, grams] = [jar, batch].map(one =>
    amountOf(one!.text.replace(/ ?(?:of |de )?(?:oils?|aceites?|batter|masa)$/u, '')),
  );
  if (has?.measure !== 'mass' || grams?.measure !== 'mass' || grams.grams < LEAST_G) return undefined;
  return {
    colourant: thing.text,
    has: has.grams,
    grams: grams.grams,
    of: OIL.test(text) ? 'oils' : 'batter',
  };
}
const gap = (amount: ToldAmount, thing: { readonly from: number; readonly to: number }): number =>
  Math.min(Math.abs(amount.to - thing.from), Math.abs(amount.from - thing.to));

const HOW_MUCH = /(?<!\p{L})(?:how much|cuant[oa]|dose|dosis)(?!\p{L})/u;

/** A colourant for so many bars whose weight nobody tells: "how much mica for 12 bars". Pure. */
export function barsAsked(read: Words): { readonly colourant: string; readonly bars: number } | undefined {
  const text = read.text.toLowerCase();
  const bars = Number(BARS.exec(text)?.[1] ?? 0);
  if (bars < 1 || !HOW_MUCH.test(text)) return undefined;
  const things = thingsIn(read);
  const [thing, ...others] = things.filter(one => one.colourants.length > 0);
  if (!thing || others.length > 0 || amountsIn(read, things).length > 0) return undefined;
  return { colourant: thing.text, bars };
}
