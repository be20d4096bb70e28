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
  describe(`${name}`, () => {
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
    /^Madder root is a plant powder.*rose clay is a soft, earthy clay/u,
  ],
  [
    'es',
    'en qué se diferencia la arcilla rosa del óxido rojo',
    /^Óxido de hierro rojo es un pigmento mineral.*arcilla rosa es una arcilla/u,
  ],
  [
    'en',
    'which is stronger, green chrome oxide or green mica',
    /^Chromium oxide green is stronger: about 4 times/u,
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

first('the most that does no harm, and grams, are told where they are asked', [
  [
    'en',
    'activated charcoal, 1000 g of oils, how much is enough but won’t give me gray lather?',
    /^1 Tbsp activated charcoal.*At most 2 Tbsp/u,
  ],
  ['es', 'cúrcuma, 1 kilo de aceites, hasta cuánto sin que manche las toallas', /Como máximo 2 cda/u],
  ['es', 'Cuántos gramos de dióxido de titanio para 2 kg de aceite de oliva', /^Unos 21 g: 2 cda/u],
  ['en', 'how much turmeric for 1 kg of oils', /^1 Tbsp turmeric for 1 kg oils$/u],
]);

first('a little of one beside another is a tint of it, and a hue that is asked about does not go in', [
  ['en', 'If I put a little black oxide and some red oxide together, what color comes out?', /^Brown/u],
  ['en', 'black oxide and red oxide together, what color comes out?', /^Charcoal/u],
  [
    'es',
    '1 cda de arcilla rosada en 500 ml de mezcla, queda rosado bebé o rojo ladrillo',
    /: arcilla rosa$/u,
  ],
]);

first('what is not wished is no strength', [
  [
    'en',
    'how much blue mica for 500 g oils, proper bold, none of that washed out stuff',
    /^1 Tbsp blue mica/u,
  ],
]);

first('an empty jar goes off the shelf', [
  ['es', 'ya se me acabó el ultramar azul, quítalo de lo mío', /no está en tu estantería/u],
  ['en', 'my red oxide jar is empty, remove it', /is not on your shelf/u],
]);

first('parts of a batch that is told by its colours', [
  [
    'es',
    'Ármame una tanda: verde, blanco y colorado, parejos, 1500 g de aceites',
    /^3 partes de 500 g de aceites/u,
  ],
  [
    'en',
    'My mold takes about 1400 ml of batter and I would like lavender, sage and white in equal parts, all of it pastel. How much of everything do I weigh out?',
    /^3 parts, 467 ml each\. 1\/8 tsp ultramarine violet/u,
  ],
  [
    'en',
    'three equal parts navy, white and yellow, 40 oz of oils, plan it',
    /ultramarine blue, .*black iron oxide/u,
  ],
  [
    'en',
    'plan two equal parts grey and white, 900 ml of batter',
    /^2 parts, 450 ml each\. 1\/8 tsp activated charcoal/u,
  ],
]);

first('a name that may be several is shown as the one that holds in lye', [
  ['es', '2 cditas de mica azul en 600 g de aceites, qué tan azul queda', /mica azul \(ultramar\)$/u],
  ['en', 'what does 1 tsp green mica look like in 2 cups', /green mica \(chromium oxide\)$/u],
]);

first('what something turns is a hue, and no plant of that name', [
  ['es', 'el hibisco se pone café con la sosa?', /^Hibisco/u],
  ['es', 'el café aguanta la sosa', /da un marrón que se queda/u],
]);
