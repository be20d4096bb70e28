import type { Context } from '../../../src/conversation/context.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import { amountsIn } from '../../../src/engine/questions/found/amounts.ts';
import { thingsIn } from '../../../src/engine/questions/found/entities.ts';
import type { Facts } from '../../../src/engine/questions/found/facts.ts';
import { wordsOf } from '../../../src/engine/questions/found/words-of.ts';
import { askFollowUps } from '../follow-ups.ts';
import { keepLines } from '../kept-lines.ts';

/** More buttons than this fit under no answer. */
const MOST = 10;

/** What parts one jar from the next. */
const BETWEEN = /^(?:[,;.+&]|and|y|e|n|plus|mas|con|with)$/u;

/** One line for each jar that a question names, with the amount that stands by it. */
function linesFor(question: string, named: readonly string[]): readonly string[] {
  const read = wordsOf(question);
  const things = thingsIn(read);
  const amounts = amountsIn(read, things);
  const parts = partsOf(read.words, [...things, ...amounts]);
  const within = <Part extends Placed>([from, to]: readonly [number, number], all: readonly Part[]) =>
    all.filter(one => one.from >= from && one.from < to);
  const told = new Map(
    parts
      .flatMap(part => paired(within(part, things), within(part, amounts)))
      .map(one => [one.item, one.amount]),
  );
  return named.slice(0, MOST).map(item => {
    const amount = told.get(item);
    return lineOf('shelf add', amount === undefined ? { item } : { item, amount });
  });
}

type Placed = { readonly from: number; readonly to: number; readonly text: string };

/** The stretches of words between commas and "and", none of which cuts a name or an amount. */
function partsOf(words: readonly string[], whole: readonly Placed[]): readonly (readonly [number, number])[] {
  const cuts = words.flatMap((word, at) =>
    BETWEEN.test(word) && !whole.some(({ from, to }) => at >= from && at < to) ? [at] : [],
  );
  return [-1, ...cuts].map((cut, at) => [cut + 1, cuts[at] ?? words.length]);
}

/**
 * Which amount is of which thing in one part: all stand before their things, or all behind. Where one is left over it is
 * anybody's guess, and none is taken.
 */
function paired(things: readonly Placed[], amounts: readonly Placed[]) {
  const inTurn = [...things, ...amounts].toSorted((a, b) => a.from - b.from);
  const isThing = (one: Placed | undefined) => one !== undefined && things.includes(one);
  const alternate = inTurn.every((one, at) => at === 0 || isThing(one) !== isThing(inTurn[at - 1]));
  if (!alternate || things.length !== amounts.length) return [];
  return things.map(({ text }, at) => ({ item: text, amount: amounts[at]!.text }));
}

/** Several jars at once: each is added by a press of its own, so that none is dropped. Undefined where it is one. */
export async function severalJarsReply(
  question: string,
  facts: Facts,
  context: Context,
): Promise<Reply | undefined> {
  const { named } = facts;
  if (named.length < 2) return undefined;
  const { ask } = context.say;
  const lines = linesFor(question, named);
  await keepLines(lines, context);
  return {
    kind: 'reply',
    headline: ask.severalJars({ count: lines.length }),
    data: { understood: { job: 'shelf-add', command: 'shelf add', lines, facts } },
    blocks: [{ kind: 'rows', rows: lines }],
    cautions: [],
    choices: named.slice(0, lines.length).map((name, at) => ({
      kind: 'button',
      label: ask.addJar({ name }).slice(0, 80),
      follow: askFollowUps.run.with({ line: context.idempotencyKey, at }),
    })),
  };
}
