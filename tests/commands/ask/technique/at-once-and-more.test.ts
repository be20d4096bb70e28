import { expect, test } from 'vitest';
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

test('the first text is as many whole sentences as are read at one look, at least one', () => {
  const parted = answers.filter(({ texts }) => texts.length === 2);
  expect(parted.length).toBeGreaterThan(20);
  for (const { technique, why, texts } of parted) {
    const said = why.findIndex((_, at) => oneText(why.slice(0, at + 1)) === texts[0]) + 1;
    expect(said, technique).toBeGreaterThan(0);
    if (said > 1) expect(wordCount(texts[0]!), technique).toBeLessThanOrEqual(AT_ONE_LOOK);
    expect(wordCount(oneText(why.slice(0, said + 1))), technique).toBeGreaterThan(AT_ONE_LOOK);
  }
  const longest = answers.map(({ why, texts }) =>
    texts.length === 1 && why.length > 1 ? wordCount(texts[0]!) : 0,
  );
  expect(Math.max(...longest)).toBe(AT_ONE_LOOK);
});
