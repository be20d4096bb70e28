import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { lyeFor } from './lye-by-hand.ts';
import { ASKS_WHOLE, lyeIn, openTalk, type Reply, type Talk, textOf, understoodOf } from './talking.ts';

/* What a talk may not do where somebody could be hurt by it; common practice (no source), lye by the fats' own figures (`lye-by-hand.ts`). */

let talk: Talk;
beforeAll(async () => {
  talk = await openTalk();
});
afterAll(() => talk[Symbol.asyncDispose]());

const lastOf: Talk['lastOf'] = (...turns) => talk.lastOf(...turns);

describe('an oil that goes out of a recipe', () => {
  test.each([
    [
      ['Soda para 800 g de oliva y 200 de coco', 'si le saco el coco y pongo manteca de cerdo?'],
      'es',
      { olive: 800, lard: 200 },
    ],
    [
      ['lye for 800 g olive and 200 g coconut', 'if i take out the coconut and put lard in?'],
      'en',
      { olive: 800, lard: 200 },
    ],
    [
      ['lye for 800 g olive and 200 g coconut', 'swap 100 of the olive for lard'],
      'en',
      { olive: 700, coconut: 200, lard: 100 },
    ],
    [['lye for 500g olive oil', 'and if i swap 100 of it for coconut'], 'en', { olive: 400, coconut: 100 }],
    [['cuánta sosa para 500 g de oliva', 'y si cambio 100 por coco'], 'es', { olive: 400, coconut: 100 }],
  ] as const)('%j is reckoned with the other in its place', async (turns, language, oils) => {
    const { headline } = await lastOf(turns, language);
    for (const grams of Object.values(oils)) expect(headline).toContain(`${grams} g`);
    expect(Math.abs(lyeIn(headline) - lyeFor(oils, 5))).toBeLessThan(0.02 * lyeFor(oils, 5));
  });

  test.each([
    [['lye for 800 g olive and 200 g coconut', 'what if i leave out the coconut'], 'en'],
    [['Soda para 800 g de oliva y 200 de coco', 'y sin coco'], 'es'],
    // Of two oils nobody knows which gives way.
    [['lye for 800 g olive and 200 g coconut', 'swap 100 for lard'], 'en'],
    [['Soda para 800 g de oliva y 200 de coco', 'y si cambio 100 por manteca de cerdo'], 'es'],
    // More than there is.
    [['lye for 500 g olive', 'swap 500 of it for coconut'], 'en'],
    [['sosa para 500 g de oliva', 'cambio 600 por coco'], 'es'],
    // Ounces of a recipe in grams.
    [['lye for 500 g olive', 'swap 2 oz of it for coconut'], 'en'],
    [['sosa para 500 g de oliva', 'cambio 2 onzas por coco'], 'es'],
  ] as const)('%j is asked for, whole', async (turns, language) => {
    const asked = await lastOf(turns, language);
    expect(asked.headline).toBe(ASKS_WHOLE[language]);
    expect(textOf(asked)).not.toMatch(/\d ?g\b/u);
  });

  test('how long an oil takes is no change of the recipe', async () => {
    const { headline } = await lastOf([
      'lye for 800 g olive 200 g coconut',
      'how long does olive take to trace',
    ]);
    expect(headline).not.toBe(ASKS_WHOLE.en);
  });
});

describe('a figure of a recipe', () => {
  test.each([
    [['lye for 1kg oils 70 olive 30 coconut 5% sf', 'i meant 8'], 'en', 8, 1],
    [['sosa para 1 kg de aceites 70 oliva 30 coco 5% de sobreengrasado', 'quise decir 8'], 'es', 8, 1],
    [['lye for 1kg oils 70 olive 30 coconut 5% sf', 'i meant 8', 'same but a half kilo'], 'en', 8, 0.5],
    [
      [
        'sosa para 1 kg de aceites 70 oliva 30 coco 5% de sobreengrasado',
        'quise decir 8',
        'lo mismo pero medio kilo',
      ],
      'es',
      8,
      0.5,
    ],
    [['lye for 1kg oils 70 olive 30 coconut 5% sf', 'double it'], 'en', 5, 2],
  ] as const)(
    '%j is put right where the question before told it',
    async (turns, language, superfat, times) => {
      const { headline } = await lastOf(turns, language);
      const by = lyeFor({ olive: 700, coconut: 300 }, superfat) * times;
      expect(Math.abs(lyeIn(headline) - by)).toBeLessThan(0.02 * by);
    },
  );

  test.each([
    [['coconut 400g with 20 superfat lye how much', 'and the water at 33%'], 'en'],
    [['sosa para 400 g de coco al 20 de sobreengrasado', 'y el agua al 33%'], 'es'],
  ] as const)(
    '%j is the strength of the lye, with water as a share of the oils a press away',
    async (turns, language) => {
      const { headline, choices } = await lastOf(turns, language);
      // 33 parts of lye and 67 of water (arithmetic).
      const water = Number(
        /(?:in|en) (\d+(?:[.,]\d+)?) g (?:water|de agua)/u.exec(headline)?.[1]?.replace(',', '.'),
      );
      expect(Math.abs(water - (lyeIn(headline) * 67) / 33)).toBeLessThan(0.5);
      expect(choices?.some(one => one.label.includes('33% of oils'))).toBe(true);
    },
  );

  test.each([
    [['coconut 400g with 20 superfat lye how much', "If its potassium I've got"], 'en'],
    [['sosa para 400 g de coco al 20 de sobreengrasado', 'y si tengo potasa'], 'es'],
  ] as const)('%j is reckoned in the other lye, and never in the same grams', async (turns, language) => {
    const { headline } = await lastOf(turns, language);
    const grams = Number(/: (\d+(?:[.,]\d+)?) g (?:de )?KOH/u.exec(headline)?.[1]?.replace(',', '.'));
    // Molar masses 56.106 and 39.997 g/mol; sold at about 90 % (common practice, no source).
    const by = (lyeFor({ coconut: 400 }, 20) * 56.106) / 39.997 / 0.9;
    expect(Math.abs(grams - by)).toBeLessThan(0.03 * by);
  });
});

describe('lye that is over', () => {
  test.each([
    ['qué pasa si me paso de soda', 'es', 'No lo uses'],
    ['qué pasa si pongo demasiada soda', 'es', 'No lo uses'],
    ['what happens if i use too much lye', 'en', 'Do not use it'],
  ] as const)('“%s”: it burns, whatever it was of', async (turn, language, says) => {
    const answer = await lastOf([turn], language);
    expect(answer.headline).toContain(says);
    expect(answer.data).toMatchObject({ understood: { lye: 'too-much-in' } });
  });

  test.each([
    [
      ['qué pasa si me paso de soda', 'por 10 gramos en 1 kg'],
      'es',
      'No lo uses: la sosa de más se queda en el jabón y quema. Cuánto se pasa lo calculo con todo lo que echaste: «puse 150 g de sosa en 800 g de oliva y 200 g de coco».',
    ],
    [
      ['what happens if i use too much lye', 'by 10 grams in 1 kg'],
      'en',
      'Do not use it: lye that is over stays in the bar and burns. How far over it is I reckon from what went in: “I put 150 g lye in 800 g olive and 200 g coconut”.',
    ],
  ] as const)('%j is not to be used, and asked for once', async (turns, language, says) => {
    expect((await lastOf(turns, language)).headline).toBe(says);
  });
});

describe('a smell of eggs', () => {
  test.each([
    [['el ultramar azul aguanta la soda?', 'y el violeta', 'huele a huevo jaja es eso?'], 'es', /apártate/u],
    [
      ['does blue ultramarine hold in lye', 'and the violet', 'smells of eggs, is that it?'],
      'en',
      /stand back/u,
    ],
  ] as const)(
    '%j after ultramarine is usual, and told with what to look out for',
    async (turns, language, looks) => {
      const answer = await lastOf(turns, language);
      expect(answer.data).toMatchObject({ understood: { technique: 'egg-smell' } });
      expect(answer.cautions[0]).toMatchObject({ id: 'ultramarine-whiff', firm: true });
      expect(answer.cautions[0]!.text).toMatch(looks);
    },
  );

  test.each([
    [['does blue ultramarine hold in lye', 'smells of eggs and im dizzy, is that it?'], 'en'],
    [['el ultramar azul aguanta la soda?', 'huele a huevo y estoy mareada, es eso?'], 'es'],
    [['does blue ultramarine hold in lye', 'smells of rotten eggs, is that it?'], 'en'],
    [['el ultramar azul aguanta la soda?', 'huele a huevo podrido, es eso?'], 'es'],
    [['does blue ultramarine hold in lye', 'i put vinegar and it smells of eggs, is that it?'], 'en'],
    [['el ultramar azul aguanta la soda?', 'le puse vinagre y huele a huevo, es eso?'], 'es'],
    // Of another colour it is not usual.
    [['does charcoal hold in lye', 'smells of eggs, is that it?'], 'en'],
    [['el carbón activado aguanta la soda?', 'huele a huevo, es eso?'], 'es'],
    [['smells of eggs, is that it?'], 'en'],
    [['huele a huevo, es eso?'], 'es'],
  ] as const)('%j: out first', async (turns, language) => {
    expect((await lastOf(turns, language)).data).toHaveProperty('emergency.id', 'hydrogen-sulfide');
  });

  test.each([
    [['smells of eggs, is that it?', 'will an ice cream tub hold the lye?'], 'en'],
    [['huele a huevo, es eso?', 'aguanta la soda un balde de los de helado?'], 'es'],
  ] as const)('%j: what is asked of a bucket later is no alarm', async (turns, language) => {
    expect(understoodOf(await lastOf(turns, language)).lye).toBe('vessel');
  });
});

describe('lye on a bench as well as on somebody', () => {
  test.each([
    [
      ['I splashed lye water on my wrist', 'ok and its on the counter too'],
      'en',
      /^Skin first: running water, 15 minutes or more\. Then the surface: Do not neutralise/u,
    ],
    [
      ['me salpicó sosa en la muñeca', 'y también cayó en la mesada'],
      'es',
      /^Primero la piel: agua corriente, 15 minutos o más\. Luego la superficie: No la neutralices/u,
    ],
  ] as const)(
    '%j: the skin, then the bench, and the talk stays about the skin',
    async (turns, language, says) => {
      const answer = await lastOf(turns, language);
      expect(answer.headline).toMatch(says);
      expect(answer.data).toHaveProperty('emergency.id', 'lye-skin');
      const after = await lastOf(
        [...turns, language === 'en' ? 'its still stinging' : 'me sigue ardiendo'],
        language,
      );
      expect(after.data).toHaveProperty('emergency.id', 'lye-skin');
    },
  );

  test('whoever rinses it in a bucket is still told to rinse', async () => {
    const answer = await lastOf(['I splashed lye water on my wrist', 'can i rinse the lye off in a bucket']);
    expect(answer.data).toHaveProperty('emergency.id', 'lye-skin');
  });
});

describe('a bar that is not to be used', () => {
  test.each([
    [['soap is sweating oil on top', 'its been 4 days'], 'en', /^Don’t use it/u],
    [['el jabón suda aceite arriba', 'hace 4 días'], 'es', /^No lo uses/u],
  ] as const)('%j stays so, however long it has been', async (turns, language, says) => {
    const answer = await lastOf(turns, language);
    expect(answer.headline).toMatch(says);
    expect(answer.data).toMatchObject({ doNotUse: true, causes: [{ id: 'separation' }, ...rest(answer)] });
  });

  test.each([
    [['soap is sweating oil on top', 'its been 4 days', 'zap test whats that'], 'en'],
    [['el jabón suda aceite arriba', 'prueba de la lengua qué es?'], 'es'],
  ] as const)('%j: the test is answered, and no tongue is sent to it', async (turns, language) => {
    const answer = await lastOf(turns, language);
    expect(understoodOf(answer).lye).toBe('zap-test');
    expect(answer.headline).toMatch(/^No/u);
  });

  test.each([
    ['my soap is sweating little drops', 'en'],
    ['el jabón suda gotitas de agua', 'es'],
  ] as const)('“%s” is dew still: no oil was told', async (turn, language) => {
    const answer = await lastOf([turn], language);
    expect((answer.data as { causes: readonly { id: string }[] }).causes[0]?.id).toBe('humidity-dew');
  });
});

/** All causes but the first. */
const rest = ({ data }: Reply): readonly unknown[] =>
  (data as { readonly causes: readonly unknown[] }).causes.slice(1);

describe('after lye water and after somebody was hurt', () => {
  test.each([
    [
      [
        'can i put the paprika right in the lye water',
        'I did it already and its the colour of rust and thick at the bottom',
      ],
      'en',
    ],
    [['puedo echar el pimentón en el agua con sosa', 'ya lo eché y se fue al fondo'], 'es'],
  ] as const)('what sank in lye is told of no oil and no frother: %j', async (turns, language) => {
    expect(textOf(await lastOf(turns, language))).not.toMatch(
      /frother|drops of oil|gotas de aceite|batidor/iu,
    );
  });

  test.each([
    [['little bit of batter got near my eye, stings', 'does the blue pigment make it worse'], 'en'],
    [['me cayó masa en el ojo y me arde', '¿el colorante lo hace peor?'], 'es'],
  ] as const)('who asks whether it is worse so is told to go on rinsing: %j', async (turns, language) => {
    const reply = await lastOf(turns, language);
    expect(textOf(reply)).toMatch(/rins|enjuag|agua/iu);
    expect(JSON.stringify(reply.data)).toContain('lye-eye');
  });
});

test('a bar that may not be used stays so, whatever flaw was told before it', async () => {
  const { data } = await lastOf([
    'couldn’t pour it, too thick',
    'There’s an inch of yellow oil sitting above the soap this morning!',
  ]);
  expect(data).toMatchObject({ doNotUse: true });
});

test('an answer that leans on the turn before says so', async () => {
  const { data } = await lastOf(['puse el doble de mica, q pasa', 'ya esta en el molde'], 'es');
  expect(data).toMatchObject({ understood: { leans: true } });
});
