import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askLine } from '../../../../src/terminal/seat.ts';
import { openConversation } from '../../../sets/open-conversation.ts';

let conversation: Awaited<ReturnType<typeof openConversation>>;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(() => conversation[Symbol.asyncDispose]());

const asked = async (question: string) => {
  const seat = { member: 'm', group: 'g', language: 'en' as const, manages: false, roles: [] };
  const { answer } = await askLine(`/ask question:${JSON.stringify(question)}`, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(answer.kind);
  const { understood } = answer.data as { understood?: { job?: string; lye?: string } };
  return { ...understood, headline: answer.headline, said: JSON.stringify(answer.blocks) };
};

describe('a matter near lye that shares its words with a colour that is asked about', () => {
  test('a scale stands behind the dose that is asked for', async () => {
    const answer = await asked(
      'titanium dioxide, 150ml portion, amount please. my scale only does whole grams',
    );
    expect(answer).toMatchObject({
      job: 'dose',
      headline: expect.stringContaining('titanium dioxide for 150 ml'),
    });
    expect(answer.said).toContain('Lye on a scale that shows 1 g');
  });

  test('the pH that a pigment bears is no bar’s', async () => {
    const answer = await asked('¿Es estable el azul de Prusia a pH 13? ¿Alguien lo ha comprobado en jabón?');
    expect(answer).toMatchObject({ job: 'survives-lye' });
    expect(answer.said).toContain('con pH 11 o más');
  });

  test('a spice that irritates skin stands first, beside a colourant it stands behind', async () => {
    expect(await asked('chilli in soap')).toMatchObject({ lye: 'kitchen-spice' });
    const beside = await asked('cayenne and paprika, do both keep their color in lye');
    expect(beside).toMatchObject({ job: 'survives-lye' });
    expect(beside.said).toContain('irritate skin');
  });

  test('what a colour has to bear is no matter of the jug, nor dust or a blind bet where a colour is surely asked of', async () => {
    for (const [question, job] of [
      ['is blueberry any good for a purple or will the lye kill it, I have a freezer full', 'survives-lye'],
      ['a fella at the fair swore blind titanium dioxide is banned in britain, in soap, is it', 'law'],
      ['Charcoal flies all over my kitchen. Best thing to stir it into first?', 'wet'],
    ] as const)
      expect(await asked(question)).toMatchObject({ job });
    const dust = await asked('Charcoal flies all over my kitchen. Best thing to stir it into first?');
    expect(dust.said).toContain('dust mask');
    expect(
      await asked('I poured the lye over frozen blueberry, will the lye kill it or do I cool the jug'),
    ).toHaveProperty('lye');
  });

  test('a batch of several colours whose oils are not told: what each part takes, and the oils are asked for', async () => {
    const answer = await asked('rainbow loaf, three equal layers red, yellow, blue, 900 ml, plan it');
    expect(answer).toMatchObject({ job: 'plan', headline: expect.stringContaining('3 parts, 300 ml each') });
    expect(answer.said).toContain('for 300 ml');
    expect(answer.said).toContain('Tell me your oils');
    const mixed = await asked('plan a batch of 3 kg of oils, coral and mint in equal parts');
    expect(mixed.said).toContain('/match target:coral');
    expect(mixed.said).toContain('hydrated chromium green');
    const plain = await asked('plan a 1 kg batter loaf, half plain and half navy');
    expect(plain.said).toContain('500 g batter stay plain');
  });

  test('a white film that is told is soda ash first, with how it is told from lye; grains and a sting stay with lye', async () => {
    const film = await asked('white powder all over the top of my loaf, it sat uncovered, is it lye?');
    expect(film).toMatchObject({ job: 'diagnose', headline: expect.stringContaining('soda ash') });
    expect(film.said).toContain('Gloves until you know');
    for (const grains of [
      'is the white powder on top of my bars lye or ash, it feels hard and gritty',
      'white powder on top of my loaf that stings, is it lye?',
    ])
      expect(await asked(grains)).toMatchObject({ lye: 'ash-or-lye' });
  });

  test('Chile is a country where law is asked of', async () => {
    expect(await asked('neones permitidos en chile para jabón?')).toMatchObject({ job: 'law' });
  });

  // Sulfides and acid: hydrogen sulfide (safety data sheets of ultramarine, section 10; from memory).
  test('acid beside ultramarine stands first, whatever colour is wished', async () => {
    expect(await asked('ultramarine and citric acid together ok?')).toMatchObject({
      lye: 'ultramarine-acid',
    });
  });
});

describe('a matter that stands behind only where the colour is surely asked about', () => {
  test.each([
    [
      'does pink mica change with 5 % superfat or does it stay pink in lye, it says glycerin only',
      'survives-lye',
    ],
    [
      'El ultramar azul se mantiene si meto el jabón al horno para que gelifique? o se me destiñe',
      'survives-lye',
    ],
    [
      'anyone got a number for indigo, 16 oz oils, only a tint of blue. every chart says something else',
      'dose',
    ],
  ])('%s', async (question, job) => {
    expect(await asked(question)).toMatchObject({ job });
  });

  test('where acid is put beside the pigment it stands first', async () => {
    expect(
      await asked('does ultramarine blue hold its colour in lye if I add lemon juice at trace'),
    ).not.toMatchObject({
      job: 'survives-lye',
    });
  });

  test('a soap that is entered is no matter of when it is safe', async () => {
    expect(
      await asked('Can I enter the challenge with a soap I cut last week or must it be new'),
    ).toMatchObject({
      job: 'challenge',
    });
  });
});

test('a named jar is surely asked about without a word of a shelf', async () => {
  expect(await asked('How much it stays to me of the pink clay? I buyed 200 g in the summer')).toMatchObject({
    job: 'shelf-show',
  });
});

describe('what stays out of soap, where it is only spoken of', () => {
  test.each([
    ['am i allowed to use cobalt carbonate from my glaze bucket in soap i sell in the US', 'law', 'cobalt'],
    ['paprika, 12 oz oils, pastel peach, how much', 'dose', 'paprika'],
    ['1 tbsp green oxide, how much oil to make it look like paint', 'wet', 'green'],
    ['is chromium oxide green legal in the united states if it is soap and not makeup', 'law', 'chromium'],
  ])('%s', async (question, job, named) => {
    const answer = await asked(question);
    expect(answer).toMatchObject({ job });
    expect(JSON.stringify(answer).toLowerCase()).toContain(named);
  });
});

describe('two that are asked about at once', () => {
  test('a plant that no catalogue holds is told beside the one that it does', async () => {
    const answer = await asked('spirulina or chlorella, do they stay green in lye');
    expect(answer.headline).toContain('Spirulina');
    expect(answer.said).toContain('“chlorella” starts green and dulls');
  });

  test('a plan keeps its shares while its oils are asked for', async () => {
    const answer = await asked('plan 3 layers, 1200 g oils. bottom navy, middle white, top gold');
    expect(answer).toMatchObject({
      job: 'plan',
      given: { portions: '1/3 navy; 1/3 white; 1/3 gold' },
      facts: { colours: [{ text: 'navy' }, { text: 'white' }, { text: 'gold' }] },
    });
  });
});
