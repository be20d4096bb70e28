import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import { lineOf } from '../../src/conversation/typed/line-of.ts';
import { unaccented } from '../../src/engine/text/unaccented.ts';
import { keepAskedLine } from '../../src/records/asked/index.ts';
import { askFollowUps } from './follow-ups.ts';

const AMOUNT =
  /(?<![\d.,/])\d+(?:[.,]\d+)?(?:\/\d+)?\s*(?:kg|g|gr|grams?|gramos?|oz|ounces?|onzas?|lbs?|pounds?|libras?|tsps?|cdtas?|tbsps?|cdas?|ml)\b/iu;
/** More buttons than this fit under no answer. */
const MOST = 10;

/** The parts of a text that each tell of one thing. */
const piecesOf = (question: string): readonly string[] =>
  question.split(/\s*(?:[;:\n+]|,(?!\d)|\b(?:and|y)\b)\s*/iu).filter(piece => piece !== '');

/** One line for each jar that a question names, with the amount that stands in the same part of it. */
function linesFor(question: string, named: readonly string[]): readonly string[] {
  const pieces = piecesOf(question);
  return named.slice(0, MOST).map(item => {
    const own = pieces.find(piece => unaccented(piece).includes(item));
    const amount = own === undefined ? undefined : AMOUNT.exec(own)?.[0];
    return lineOf('shelf add', amount === undefined ? { item } : { item, amount });
  });
}

/** Several jars at once: each is added by a press of its own, so that none is dropped. Undefined where it is one. */
export async function severalJarsReply(
  question: string,
  named: readonly string[],
  context: Context,
): Promise<Reply | undefined> {
  if (named.length < 2) return undefined;
  const { ask } = context.say;
  const lines = linesFor(question, named);
  await keepAskedLine(
    context.shelf,
    context.idempotencyKey,
    { command: 'ask', given: {}, candidates: [...lines] },
    context.change.at,
  );
  return {
    kind: 'reply',
    headline: ask.severalJars({ count: lines.length }),
    data: { understood: { job: 'shelf-add', command: 'shelf add', lines } },
    blocks: [{ kind: 'rows', rows: lines }],
    cautions: [],
    choices: named.slice(0, lines.length).map((name, at) => ({
      kind: 'button',
      label: ask.addJar({ name }).slice(0, 80),
      follow: askFollowUps.run.with({ line: context.idempotencyKey, at }),
    })),
  };
}
