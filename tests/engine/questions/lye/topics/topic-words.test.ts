import { expect, test } from 'vitest';
import { colourantsNamed } from '../../../../../src/engine/colourants/find.ts';
import { OUR_WORDS, SOAP_WORDS } from '../../../../../src/engine/questions/fields/soap-words.ts';
import { OF_MORE } from '../../../../../src/engine/questions/learned/topic-words/more.ts';
import { topicOf } from '../../../../../src/engine/questions/learned/topics.ts';
import { foldedColour, isColourWord } from '../../../../../src/engine/text/colours/folded-colours.ts';

const words = Object.entries(OF_MORE).flatMap(([topic, list]) =>
  list.split(' ').map(word => ({ topic, word })),
);

test('no word of another matter is a word of soap, a colour or what colours', () => {
  const ours = words.filter(({ word }) => {
    const plain = word.replace('*', '');
    return (
      OUR_WORDS.test(plain) ||
      SOAP_WORDS.test(plain) ||
      isColourWord(foldedColour(plain)) ||
      colourantsNamed(plain).length > 0
    );
  });
  expect(ours).toEqual([]);
  expect(words.length).toBeGreaterThan(1000);
});

test('a word is of its matter, once', () => {
  expect(topicOf('octopus')).toEqual(['food']);
  expect(topicOf('midges')).toEqual(['house']);
  expect(topicOf('trawlers')).toEqual(['sea']);
  expect(topicOf('batter')).toEqual([]);
  for (const { word } of words) expect(new Set(topicOf(word)).size).toBe(topicOf(word).length);
});
