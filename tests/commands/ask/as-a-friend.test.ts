import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import { askLine } from '../../../src/terminal/seat.ts';
import { openConversation } from '../../sets/open-conversation.ts';

/* What an experienced maker would answer first (common practice). */

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

let asked = 0;
/** The first line of an answer, and all of it as text. */
async function answerTo(question: string, language: 'en' | 'es') {
  asked += 1;
  const seat = { member: `friend-${asked}`, group: 'friends', language, manages: false, roles: [] };
  const { answer } = await askLine(`/ask question:${JSON.stringify(question)}`, seat, conversation);
  return { headline: answer.kind === 'reply' ? answer.headline : '', all: JSON.stringify(answer) };
}

type Row = readonly ['en' | 'es', string, RegExp];
const first = (name: string, rows: readonly Row[]) =>
  describe(name, () => {
    test.each(rows)('%s: %s', async (language, question, headline) =>
      expect((await answerTo(question, language)).headline).toMatch(headline),
    );
  });

first('liquid for so much powder is three times its spoons', [
  [
    'en',
    'How much oil do I need to wet 2 tablespoons of green mica?',
    /^6 Tbsp \(89 ml\) of light oil for 2 tablespoons of green mica/u,
  ],
  ['es', 'cuánta glicerina para remojar 2 cdas de titanio', /^6 cda \(89 ml\) de glicerina para 2 cdas/u],
  ['en', 'how many teaspoons of oil to disperse 1 tsp activated charcoal', /^1 Tbsp \(15 ml\) of light oil/u],
  ['en', 'how much water do I mix with 2 tsp neon pink', /does not disperse in water/u],
  // A batch stands beside it: its own oils may be meant.
  ['en', 'how much oil for 500 g with 1 tsp mica', /^Wet mica/u],
]);

first('two colourants are told apart by what they are, or by how strong, as it is asked', [
  [
    'en',
    'difference between madder and rose clay?',
    /^madder root is a plant powder.*rose clay is a soft, earthy clay/u,
  ],
  [
    'es',
    'en qué se diferencia la arcilla rosa del óxido rojo',
    /óxido de hierro rojo es un pigmento mineral.*arcilla rosa es una arcilla/u,
  ],
  [
    'en',
    'which is stronger, green chrome oxide or green mica',
    /^chromium oxide green is stronger: about 4 times/u,
  ],
]);

first('a flaw stands before the rule of an oven, and before the law of selling', [
  ['en', 'soap cracked right down the middle in the oven, what did i do', /overheating crack/u],
  ['en', 'orange spots in the bars and they smell like old crayons, can i still sell them', /rancidity/u],
  ['es', 'Se me partió arriba, a lo largo. Por qué', /grieta por sobrecalentamiento/u],
]);

first('a plant that is named is no powder without a label', [
  [
    'en',
    'could someone tell me how much annatto powder to use, the bag says nothing useful',
    /annatto for 1 cup/u,
  ],
  ['en', 'got a bag of blue powder at the market, no label, can i use it', /^Leave it out of soap/u],
]);
