import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../../../src/conversation/conversation.ts';
import type { Language } from '../../../../src/engine/language.ts';
import { askLine } from '../../../../src/terminal/seat.ts';
import { openConversation } from '../../../sets/open-conversation.ts';

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(async () => {
  await conversation[Symbol.asyncDispose]();
});

async function asked(question: string, language: Language = 'en') {
  const seat = { member: `maker of ${question}`, group: 'sums', language, manages: false, roles: [] };
  const { answer } = await askLine(`/ask question:${JSON.stringify(question)}`, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(`answered with ${answer.kind}`);
  const cautions = answer.cautions.map(({ text }) => text);
  return { headline: answer.headline, said: JSON.stringify(answer.blocks), blocks: answer.blocks, cautions };
}

describe('a batch that is shared among colours', () => {
  // A full dose by the catalogue: charcoal 1/2 tsp a cup, titanium dioxide 1/2 tsp a cup, ultramarine 1/4 tsp a cup.
  test('tells each of them for its part, the first one first', async () => {
    const { headline, said } = await asked(
      '1000 g oils in equal parts: charcoal, white and ultramarine blue. how much of each',
    );
    expect(headline).toMatch(/^Each of 3: 333 g oils\. 1 tsp activated charcoal for 333 g oils/);
    expect(said).toMatch(/1 tsp titanium dioxide for 333 g oils/);
    expect(said).toMatch(/1\/2 tsp ultramarine blue for 333 g oils/);
  });
});

describe('each colour of a shared batch has all that a dose has', () => {
  test('its grams, how it is wetted, and its cautions by its name', async () => {
    const { headline, blocks, cautions } = await asked(
      'equal parts ultramarine blue, red oxide and charcoal for 12 bars',
    );
    expect(headline).toContain('Taken as 12 bars of 110 g');
    const grams = blocks.find(block => block.kind === 'measures' && block.firm);
    expect(grams?.kind === 'measures' && grams.measures.map(({ label }) => label)).toEqual([
      'ultramarine blue',
      'red iron oxide',
      'activated charcoal',
    ]);
    for (const measure of grams?.kind === 'measures' ? grams.measures : [])
      expect(measure.value).toMatch(/^about [\d.]+ g/u);
    const steps = blocks.filter(block => block.kind === 'rows' && block.fold === 'steps');
    expect(steps.map(block => block.kind === 'rows' && block.title)).toEqual([
      'Ultramarine blue',
      'Red iron oxide',
      'Activated charcoal',
    ]);
    // What all share stands once; what only one has is told by its name.
    expect(cautions.filter(text => text.startsWith('Gloves and goggles'))).toHaveLength(1);
    expect(cautions).toContain('Activated charcoal stains hands, cloths and counters, wet or dry.');
    expect(
      cautions.filter(text => /^(?:Red iron oxide|Activated charcoal): The carrier oil/u.test(text)),
    ).toHaveLength(2);
  });

  test('shares that are told are kept to: 420 and 180 of 600 g', async () => {
    const { headline, said } = await asked('70% white and 30% blue, 600 g oils, how much of each');
    expect(headline).toMatch(/^600 g oils, shared as you told\. .*titanium dioxide for 420 g oils/u);
    expect(said).toContain('ultramarine blue for 180 g oils');
    const spanish = await asked('70% blanco y 30% azul, 600 g de aceites, cuánto de cada uno', 'es');
    expect(spanish.headline).toMatch(/^600 g de aceites, repartidos como dijiste\. /u);
  });

  test('what is no colour has no part, and a hot spice is warned of', async () => {
    const { headline, said } = await asked('equal parts: peppermint oil, cinnamon and charcoal');
    expect(headline).toMatch(
      /^No part for peppermint oil, cinnamon: no colourant of mine\. .*charcoal for 1 cup/u,
    );
    expect(said).toContain('irritate skin');
    const spanish = await asked(
      'partes iguales: aceite de menta, azúcar y carbón para 500 g de aceites',
      'es',
    );
    expect(spanish.headline).toMatch(
      /^Sin parte para aceite de menta, azúcar|^Sin parte para aceite de menta, azucar/u,
    );
    expect(spanish.said).not.toContain('irritan');
  });
});

test('a pigment that is a mere hue elsewhere is told of where it is dosed', async () => {
  expect((await asked('how much vermilion for 12 bars')).headline).toContain('mercury');
  expect((await asked('cuánto bermellón para 500 g de aceites', 'es')).headline).toContain('mercurio');
  // A mica of that hue is none.
  const seat = { member: 'hue', group: 'sums', language: 'en' as const, manages: false, roles: [] };
  const { answer } = await askLine(
    '/ask question:"how much vermilion mica for 2 cups batter"',
    seat,
    conversation,
  );
  expect(JSON.stringify(answer)).not.toContain('mercury');
});

describe('what stays out of soap gets no sum, whatever stands beside it', () => {
  test.each([
    ['1000 g oils in equal parts: vermilion, lead white and charcoal. how much of each', /lead white/],
    ['650 g oils 3 colours how much each, one is arsenic green', /arsenic/],
    ['20 g of lead white in a jar, batch is 1 kg, enough?', /lead white/],
    ['a good green pls, paris green maybe', /paris green/],
    ['equal parts white lead and blue for 1 kg oils', /white lead/],
    ['asbestos for 12 bars', /asbestos.*ask your local authority/iu],
    ['equal parts asbestos and charcoal for 1 kg oils', /Asbestos/],
    ['how much realgar for 12 bars', /realgar/],
  ])('%s', async (question, named) => {
    const { headline } = await asked(question);
    expect(headline).toMatch(/does not go into soap/);
    expect(headline).toMatch(named);
  });

  test.each([
    [
      '1 kg de aceites en partes iguales: bermellón, blanco de plomo y carbón. cuánto de cada',
      /blanco de plomo/,
    ],
    ['20 g de cinabrio, el lote es de 1 kg, alcanza?', /cinabrio/],
    ['cuánto amianto para 12 pastillas', /amianto.*ayuntamiento/iu],
  ])('%s', async (question, named) => {
    const { headline } = await asked(question, 'es');
    expect(headline).toMatch(/no entra en el jabón/);
    expect(headline).toMatch(named);
  });
});
