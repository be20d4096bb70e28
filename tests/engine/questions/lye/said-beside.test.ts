import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { saidBeside, wholeSentences } from '../../../../src/engine/questions/lye/said-beside.ts';
import { unlessRefused } from '../../../../src/engine/refusal.ts';
import { wrongOils } from '../../../sets/wrong-oils.ts';
import { readInChat } from '../read-in-chat.ts';

/*
 * Four pairs of makers each wrote 110 messages twice over: once as a recipe that stands, once, in nearly the same words, as one that does
 * not (something lent, spilt, still to come, weighed in its jar). They had seen no reader. No reader knows them all: what it cannot ask
 * it has to show. Of the altered ones 11 in 100 are read as they stand.
 */
type PairOfMessages = {
  readonly plain: string;
  readonly altered: string;
  readonly plain_oils: Record<string, number>;
};
const folder = new URL('pairs/', import.meta.url);
const pairs = readdirSync(folder).flatMap(
  file => JSON.parse(readFileSync(new URL(file, folder), 'utf8')).pairs as readonly PairOfMessages[],
);

/** Whether a message is answered with all of the oils that its first half tells. */
const standsAs = (message: string, oils: Record<string, number>): boolean => {
  const told = unlessRefused(() => readInChat(message))?.given;
  return (
    told?.oils !== undefined &&
    unlessRefused(() => wrongOils(told.oils!, oils, told.size) ?? 'as told') === 'as told'
  );
};

/** Whether a sentence beside it is told again. */
const isShown = (message: string): boolean =>
  saidBeside(message).length > 0 || (unlessRefused(() => readInChat(message))?.beside ?? []).length > 0;

describe('what is said beside a recipe', () => {
  it('is asked of or shown, where it changes what is in the pot, 97 times in 100', () => {
    expect(pairs).toHaveLength(440);
    const unseen = pairs.filter(
      ({ altered, plain_oils: oils }) => !isShown(altered) && standsAs(altered, oils),
    );
    console.info(
      `altered recipes: ${pairs.filter(({ altered, plain_oils: oils }) => standsAs(altered, oils)).length} of ${pairs.length} read as they stand, ${unseen.length} of these not shown`,
    );
    expect(unseen.length).toBeLessThanOrEqual(Math.floor(0.03 * pairs.length));
  });

  test.each([
    ['Tallow 900, castor 60. Still a fair bit of water in that. Lye?', ['Still a fair bit of water in that']],
    ['oliva 600, coco 200. Lo pesé dentro de la garrafa. ¿Soda?', ['Lo pesé dentro de la garrafa']],
    ['500 g olive, 60 castor. The castor’s still in the car! lye', ['The castor’s still in the car']],
    [
      '1.5 kg olive. It was in a jar. Some of it fell. It smelt. lye?',
      ['It was in a jar', 'Some of it fell'],
    ],
  ])('is told as it was typed: %s', (message, told) => {
    expect(saidBeside(message)).toEqual(told);
  });

  test.each([
    '600 g olive, 200 g coconut. My sister says hi. lye?',
    'Evening all. Lye for 600 g olive?',
    'Hola a todas. 600 g de oliva. ¿Soda?',
    '600 g olive, 200 g coconut. I want half of it. lye?',
    'I use palm kernel oil instead of palm oil. 600 g palm. Lye?',
    '600 g olive. Is it rancid?',
    '600 g olive, all of that in one pot, lye for it',
  ])('that is a greeting, a question or counted already is not: %s', message => {
    expect(saidBeside(message)).toEqual([]);
  });

  it('is cut where it is long, and is read in a message of any length', () => {
    const long = `500 g olive. ${'It was a very long story '.repeat(40)}. lye?`;
    expect(saidBeside(long)[0]).toMatch(/^It was a very.{60,76}…$/u);
    expect(saidBeside('It was. '.repeat(5_000))).toHaveLength(2);
  });
});

test('what was passed by is told as the sentence it stands in, where that has no figures', () => {
  const message = '500 g olive, 100 g castor. The tins are from a korma! Lye?';
  expect(wholeSentences(message, ['tins', 'korma', 'castor'])).toEqual([
    'The tins are from a korma',
    'castor',
  ]);
});
