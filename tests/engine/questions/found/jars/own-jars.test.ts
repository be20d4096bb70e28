import { describe, expect, test } from 'vitest';
import { withOwnJars } from '../../../../../src/engine/questions/found/jars/own-jars.ts';
import { readQuestion } from '../../../../../src/engine/questions/read.ts';

const JARS = ['Sky', 'Desert sand', 'Deep blue', 'Delft', 'gold mica'];
const read = (question: string) => {
  const own = withOwnJars(question, JARS);
  return own.restore(readQuestion(own.text));
};

describe('a jar by the name its owner gave it', () => {
  test.each([
    ['how much Sky for 2 cups?', 'dose', { colourant: 'Sky', portion: '2 cups' }],
    ['how much Deep blue for 2 cups?', 'dose', { colourant: 'Deep blue', portion: '2 cups' }],
    ['take 2 g of desert sand off my shelf', 'shelf use', { item: 'Desert sand', amount: '2 g' }],
    ['what would delft with desert sand look like?', 'preview', { mix: 'Delft + Desert sand' }],
  ])('is known in plain words: %s', (question, command, given) => {
    expect(read(question).readings[0]).toMatchObject({ command, given });
  });

  test('of one common word is no jar where the word means what it says', () => {
    expect(withOwnJars('how do I make sky blue', JARS).text).toBe('how do I make sky blue');
    expect(withOwnJars('a bar like the sky in winter', JARS).text).toBe('a bar like the sky in winter');
  });

  test('inside another word, or with nothing of one’s own, changes nothing', () => {
    for (const question of ['delftware tiles', 'how much gold mica for 1 cup', '', '🫧'.repeat(50)])
      expect(withOwnJars(question, JARS).text).toBe(question);
  });

  test('comes back as it is written, wherever the reading tells it', () => {
    const { facts } = read('how much Sky for 2 cups?');
    expect(facts.named).toEqual(['Sky']);
    expect(JSON.stringify(facts)).not.toContain('gold mica');
  });
});
