import { describe, expect, test } from 'vitest';
import { answeredTo, ownWords } from '../../../../commands/ask/technique/technique-answer.ts';
import type { Context } from '../../../../src/conversation/context.ts';
import { LANGUAGES } from '../../../../src/engine/language.ts';
import { answerTo } from '../../../../src/engine/questions/technique/answer-to.ts';
import type { Technique } from '../../../../src/engine/questions/technique/topic.ts';
import { wordCount } from '../../../../src/engine/text/word-count.ts';
import { wordsIn } from '../../../../src/words/index.ts';
import { oneText } from '../../../../src/words/sentence.ts';

/** Words beside the headline that somebody with gloves on reads at one look. From memory. */
const AT_ONE_LOOK = 55;

const answers = LANGUAGES.flatMap(language => {
  const say = wordsIn(language);
  return (Object.keys(say.technique.topics) as Technique[]).flatMap(technique => {
    const to = answerTo(technique, '');
    if ('lye' in to) return [];
    // Nothing but the words has a part in it.
    const { blocks } = answeredTo(technique, to, { say } as unknown as Context);
    const texts = blocks.flatMap(block => (block.kind === 'text' ? [block.text] : []));
    return [{ technique, why: ownWords(to, say).why, texts }];
  });
});

test('what stands behind an answer is told whole, in one text or in two', () => {
  expect(answers.length).toBeGreaterThan(100);
  for (const { why, texts } of answers) {
    expect(texts.length).toBeLessThanOrEqual(2);
    expect(oneText(texts)).toBe(oneText(why));
  }
});

describe('the first text is as many whole sentences as are read at one look', () => {
  const parted = answers.filter(({ texts }) => texts.length === 2);
  const saidFirst = ({ why, texts }: (typeof answers)[number]) =>
    why.findIndex((_, at) => oneText(why.slice(0, at + 1)) === texts[0]) + 1;

  test('it ends where a sentence does', () => {
    expect(parted.length).toBeGreaterThan(20);
    expect(parted.filter(one => saidFirst(one) === 0).map(({ technique }) => technique)).toEqual([]);
  });

  test('it is longer than that only where its first sentence is', () => {
    const long = parted.filter(one => saidFirst(one) > 1 && wordCount(one.texts[0]!) > AT_ONE_LOOK);
    expect(long.map(({ technique }) => technique)).toEqual([]);
  });

  test('with one sentence more it would be longer', () => {
    const short = parted.filter(
      one => wordCount(oneText(one.why.slice(0, saidFirst(one) + 1))) <= AT_ONE_LOOK,
    );
    expect(short.map(({ technique }) => technique)).toEqual([]);
  });

  test('what is as long as that is told in one', () => {
    const inOne = answers.filter(({ why, texts }) => texts.length === 1 && why.length > 1);
    expect(Math.max(...inOne.map(({ texts }) => wordCount(texts[0]!)))).toBe(AT_ONE_LOOK);
  });
});
