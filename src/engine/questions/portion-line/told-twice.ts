import { unbroken } from '../../over-lines.ts';
import { isMetricUnit, measuredBy, OWN_MEASURE } from '../../quantities/told-in-two-units.ts';
import { unitOfWord } from '../../quantities/unit-words.ts';
import type { Item, Quantity } from './item.ts';

/** What may stand between an amount and the same once more: "a pint of batter, 568 ml", "16 oz (454 g)". */
const AGAIN = new RegExp(
  unbroken`
    ^(?:[,(=]|of|de|del|batter|masa|mezcla|soap|jabon|oils?|aceites?|or|o|sea|osea|about|abt|roughly|around|
    unos|unas|como|so|that|that's|thats|is|es|son|which|que|means|jug|cup|mug|full|jarra|taza|here|aqui|us|
    american|british|in|my|mi)$
  `,
  'u',
);
const VESSEL = new RegExp(
  unbroken`
    ^(?:jug|jar|pot|bowl|bucket|pail|tub|container|beaker|pitcher|mould|mold|cup|tin|bottle|carton|jarra|
    jarrita|olla|bol|cuenco|balde|cubeta|recipiente|molde|vaso|bote|envase|botella)s?$
  `,
  'u',
);
const HOLDING = /^(?:with|w|holding|con|has|have|got|tiene|lleva|there|there's|hay|but|pero|only|solo)$/u;
const INSIDE = /^(?:in|inside|into|dentro|adentro|en)$/u;
const REACH = 6;

const isPortion = (item: Item | undefined): item is Quantity =>
  item?.is === 'amount' &&
  !item.isSpoons &&
  !item.isOther &&
  !item.told.perPound &&
  item.product === undefined;

/** The next amount within reach, with what stands between. */
function nextTo(items: readonly Item[], at: number) {
  const next = items.slice(at + 1, at + 1 + REACH).findIndex(({ is }) => is === 'amount');
  const second = items[at + 1 + next];
  return next < 0 || !isPortion(second)
    ? undefined
    : { second, between: items.slice(at + 1, at + 1 + next), behind: items.slice(at + 2 + next) };
}

/**
 * A question without the amounts that tell nothing of their own: of one that was told in two units the one it was measured by, and of a
 * jug of so much only what is in it: "a pint jug with 400 ml of batter in it". Pure.
 */
export function withoutTwins(all: readonly Item[]): readonly Item[] {
  let items = all;
  for (const first of all) {
    const at = items.indexOf(first);
    const next = at < 0 || !isPortion(first) ? undefined : nextTo(items, at);
    if (!next || !isPortion(first) || next.second.told.measure !== first.told.measure) continue;
    const { second, between, behind } = next;
    const gone = isJugOf(first, { second, between, behind }) ? first : twinOf(first, second, between);
    if (gone === undefined) continue;
    const kept = gone === first ? second : first;
    const of = kept.told.of === 'unsaid' ? gone.told.of : kept.told.of;
    const whole = { ...kept, told: { ...kept.told, of } };
    items = items.flatMap(item => (item === gone ? [] : item === kept ? [whole] : [item]));
  }
  return items;
}

const inOneUnit = (amount: Quantity) => ({
  amount,
  value: amount.value,
  isMetric: isMetricUnit(unitOfWord(amount.told.text.split(' ').at(-1) ?? '')),
});

/** Of two amounts the one that only says the other once more. */
function twinOf(first: Quantity, second: Quantity, between: readonly Item[]): Quantity | undefined {
  if (between.length === 0 || !between.every(({ text }) => AGAIN.test(text))) return undefined;
  const kept = measuredBy(inOneUnit(first), inOneUnit(second))?.amount;
  return kept && (kept === first ? second : first);
}

type Beside = {
  readonly second: Quantity;
  readonly between: readonly Item[];
  readonly behind: readonly Item[];
};

/** Whether the first amount is how large a vessel is, and the second what it holds now. */
function isJugOf(first: Quantity, { second, between, behind }: Beside): boolean {
  if (!VESSEL.test(between[0]?.text ?? '') || second.value > first.value * OWN_MEASURE) return false;
  return (
    between.some(({ text }) => HOLDING.test(text)) || behind.slice(0, 4).some(({ text }) => INSIDE.test(text))
  );
}
