import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { lyeTopicIn } from '../../../../src/engine/questions/lye/topics/topics.ts';
import { openRoom } from '../../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
});
afterAll(() => room[Symbol.asyncDispose]());

const ask = async (question: string, locale = 'en-US') => {
  room.member.grant({ locale });
  const { text } = await room.member.run('/ask', { question });
  room.member.grant({ locale: 'en-US' });
  expect(room.faults).toEqual([]);
  return text;
};

/** Saponification values, mg KOH per g: Codex Alimentarius CXS 33-1981 (olive) and CXS 210-1999 (coconut). */
const CODEX = { olive: [184, 196], coconut: [248, 265] } as const;
/** Molar masses, g/mol: IUPAC atomic weights. */
const NAOH = 39.997;
const KOH = 56.1056;

type Recipe = {
  readonly olive?: number;
  readonly coconut?: number;
  readonly superfat?: number;
  readonly molar?: number;
  readonly purity?: number;
  /** Grams of that alkali that an acid takes besides. */
  readonly acid?: number;
};

/** The grams of alkali that the standards allow for a recipe: least and most. */
const lyeFor = ({ olive = 0, coconut = 0, superfat = 5, molar = NAOH, purity = 1, acid = 0 }: Recipe) =>
  ([0, 1] as const).map(
    end =>
      (((olive * CODEX.olive[end] + coconut * CODEX.coconut[end]) / 1000 / KOH) *
        molar *
        (1 - superfat / 100) +
        acid) /
      purity,
  );

const gramsSaid = (text: string, alkali: string) =>
  Number(
    new RegExp(`([\\d.,]+) g (?:de )?${alkali}`, 'u').exec(text.split('\n')[0]!)?.[1]?.replace(',', '.'),
  );

test('ready-made lye that stops a question is said to hold water', async () => {
  const english = await ask(
    "700 g olive 300 g coconut, I've a jug of masterbatched lye. how much lye do I pour?",
  );
  expect(english).toContain('how strong is it?');
  expect(english).toContain('100 g of 50 % solution are 50 g of dry lye');
  const spanish = await ask(
    '700 g de oliva y 300 g de coco, tengo sosa líquida. ¿Cuánta sosa echo?',
    'es-ES',
  );
  expect(spanish).toContain('100 g de solución al 50 % son 50 g de sosa seca');
});

test('an oil that may stay out is asked for by name', async () => {
  const answer = await ask('500 g olive oil and 250 g coconut oil that I sold, 5% superfat. how much lye?');
  expect(answer).toContain('Is “coconut oil” in the pot, all of it?');
  expect(answer).not.toMatch(/\d g NaOH/u);
});

describe('lye that is asked for is that of the whole question', () => {
  // Acetic acid of 5 % vinegar, 60.05 g/mol; citric acid monohydrate, 210.14 g/mol, which is counted where
  // the label is not told, and anhydrous, 192.12; three protons each (handbook values).
  const vinegar = ((50 * 0.05) / 60.05) * NAOH;
  const citric = ((10 * 3) / 210.14) * NAOH;
  const anhydrous = ((10 * 3) / 192.12) * NAOH;
  const asked: readonly (readonly [string, 'NaOH' | 'KOH', Recipe, string?])[] = [
    ['how much KOH for 500 g olive', 'KOH', { olive: 500, molar: KOH, purity: 0.9 }],
    [
      'how much potassium hydroxide for 500 g olive with KOH 85%',
      'KOH',
      { olive: 500, molar: KOH, purity: 0.85 },
    ],
    ['cuánta potasa para 500 g de oliva', 'KOH', { olive: 500, molar: KOH, purity: 0.9 }, 'es-ES'],
    ['how much lye for 1000 g olive, lye purity 90%', 'NaOH', { olive: 1000, purity: 0.9 }],
    ['how much lye for 1000 g olive no superfat', 'NaOH', { olive: 1000, superfat: 0 }],
    ['cuánta sosa para 1000 g de oliva sin sobreengrasado', 'NaOH', { olive: 1000, superfat: 0 }, 'es-ES'],
    ['how much lye for 1000 g olive 20% superfat', 'NaOH', { olive: 1000, superfat: 20 }],
    ['how much lye for 1 lb 4 oz olive', 'NaOH', { olive: 20 * 28.349523125 }],
    ['how much lye for 1 kg oils, half coconut half olive', 'NaOH', { olive: 500, coconut: 500 }],
    ['how much lye for 900 g oils, two thirds olive one third coconut', 'NaOH', { olive: 600, coconut: 300 }],
    ['cuánta sosa para 1.500 g de oliva', 'NaOH', { olive: 1500 }, 'es-ES'],
    ['how much lye for goat milk soap 1000 g olive', 'NaOH', { olive: 1000 }],
    ['how much lye for 1000 g olive and 50 g vinegar', 'NaOH', { olive: 1000, acid: vinegar }],
    ['how much lye for 1000 g olive with 10 g citric acid', 'NaOH', { olive: 1000, acid: citric }],
    ['cuánta sosa para 1000 g de oliva y 50 g de vinagre', 'NaOH', { olive: 1000, acid: vinegar }, 'es-ES'],
    ['how much lye for 1000 g olive with 20 g honey', 'NaOH', { olive: 1000 }],
    ['how much lye for 1000 g olive with milk', 'NaOH', { olive: 1000 }],
    ['how much lye for 1000 g olive with coffee instead of water', 'NaOH', { olive: 1000 }],
    ['1 kg olive 500 g coconut how much lye n water', 'NaOH', { olive: 1000, coconut: 500 }],
    ['how much lie for two pounds of olive', 'NaOH', { olive: 2 * 453.59237 }],
    ['how much lye for half a pound of coconut', 'NaOH', { coconut: 0.5 * 453.59237 }],
    ['olive 700, coconut 300, all in grams, how much lye', 'NaOH', { olive: 700, coconut: 300 }],
    ['castile, 1500 g olive oil and nothing more, how much NaOH how much water', 'NaOH', { olive: 1500 }],
    [
      'Please calculate the caustic soda for 700 g of olive with 0 % superfat, for comparison only. I shall not be making it.',
      'NaOH',
      { olive: 700, superfat: 0 },
    ],
    [
      'calculame la sosa xfa, 1 kilo d oliva y medio kilo d coco',
      'NaOH',
      { olive: 1000, coconut: 500 },
      'es-ES',
    ],
    [
      'cuánta soda y cuánta agua para 400 de oliva y 300 de coco todo en gramos',
      'NaOH',
      { olive: 400, coconut: 300 },
      'es-MX',
    ],
  ];
  for (const [question, alkali, recipe, locale] of asked)
    test(`lye: ${question}`, async () => {
      const text = await ask(question, locale);
      const grams = gramsSaid(text, alkali);
      const [least, most] = lyeFor(recipe);
      expect(grams).toBeGreaterThan(least!);
      expect(grams).toBeLessThan(most!);
    });

  test('an acid adds exactly what it eats, and purity or superfat scales exactly', async () => {
    const plain = gramsSaid(await ask('how much lye for 1000 g olive'), 'NaOH');
    const near = async (question: string, alkali: string, expected: number) =>
      expect(Math.abs(gramsSaid(await ask(question), alkali) - expected)).toBeLessThan(0.25);
    await near('how much lye for 1000 g olive and 50 g vinegar', 'NaOH', plain + vinegar);
    await near('how much lye for 1000 g olive with 10 g citric acid', 'NaOH', plain + citric);
    await near('how much lye for 1000 g olive with 10 g anhydrous citric acid', 'NaOH', plain + anhydrous);
    await near('how much lye for 1000 g olive, lye purity 90%', 'NaOH', plain / 0.9);
    await near('how much lye for 1000 g olive no superfat', 'NaOH', plain / 0.95);
    await near('how much lye for 1000 g olive 20% superfat', 'NaOH', (plain / 0.95) * 0.8);
    await near('how much KOH for 1000 g olive', 'KOH', (plain * KOH) / NAOH / 0.9);
  });

  test('KOH without a purity says which it takes', async () => {
    expect(await ask('how much KOH for 500 g olive')).toContain('counted at 90 %');
    expect(await ask('how much KOH 85% for 500 g olive')).not.toContain('counted at 90 %');
    expect(await ask('cuánta potasa para 500 g de oliva', 'es-ES')).toContain('se cuenta al 90 %');
  });

  test('both alkalis are two amounts', async () => {
    const text = await ask('how much lye for 1000 g olive, 60% KOH 40% NaOH');
    const [sodium] = lyeFor({ olive: 400 });
    expect(gramsSaid(text, 'NaOH')).toBeGreaterThan(sodium!);
    expect(gramsSaid(text, 'NaOH')).toBeLessThan(lyeFor({ olive: 400 })[1]!);
    expect(gramsSaid(text, 'KOH')).toBeGreaterThan(lyeFor({ olive: 600, molar: KOH, purity: 0.9 })[0]!);
  });

  test.each([
    ['how much lye for 1000 g olive 38% water', 380],
    ['cuánta sosa para 1000 g de oliva con 38% de agua', 380],
    ['how much lye for 1000 g olive 2:1 water', 2],
    ['how much lye for 1000 g olive at 40% lye concentration', 60 / 40],
  ])('water as told: %s', async (question, expected) => {
    const [first = ''] = (await ask(question)).split('\n');
    const [, lye, water] = /([\d.]+) g (?:de )?NaOH (?:in|en) ([\d.]+) g/u
      .exec(first.replaceAll(/(\d),(\d)/gu, '$1.$2'))!
      .map(Number);
    const told = expected < 10 ? water! / lye! : water!;
    expect(Math.abs(told / expected - 1)).toBeLessThan(0.01);
  });

  test('lye that comes dissolved is told by the gram of solution', async () => {
    const text = await ask('how much 50% lye solution for 1000 g olive');
    const grams = Number(
      /([\d.]+) g (?:\([^)]*\) )?(?:of )?(?:the )?(?:lye solution|solution|50 % )/u.exec(text)?.[1],
    );
    const [least, most] = lyeFor({ olive: 1000 });
    expect(grams).toBeGreaterThan(2 * least!);
    expect(grams).toBeLessThan(2 * most!);
  });
});

describe('what is not understood stops the answer', () => {
  test.each([
    ['how much lye for 500 g olive and 500 g emu oil', /emu oil/],
    ['how much lye for 500 g blorbo oil', /blorbo oil/],
    // "4" for "for", or four and a half kilos.
    ['lye 4 500g lard', /“4 500 g” could be 500 or 4500/],
    ['lye 4 500g lard bars', /“4 500 g” could be 500 or 4500/],
    ['how much lye for 500 g motor oil', /motor oil/],
    ['cuánta sosa para 500 g de aceite de motor', /motor/],
    ['how much lye for 2 cups olive', /[Ww]eigh/],
    ['cuánta sosa para 2 tazas de oliva', /[Pp]es/],
    ['how much lye for 1000 g olive with unicorn dust', /unicorn dust/],
    ['how much lye for 1000 g olive with honey', /honey/],
    ['how much lye for 1000 g olive minus 10%', /./],
    ['how much lye for 1000 g olive -5% superfat', /./],
    ['how much lye for 1000 g olive twice', /twice/],
    ['how much lye for 1000 g olive and constructor', /constructor/],
    ['how much lie for 1000 g olive n 200 g moonbeam', /moonbeam/],
    ['olive 700, moonbeam 300, all in grams, how much lye', /moonbeam/],
    ['castile, 1000 g olive and nothing more but 50 g glimmer, how much lye', /glimmer/],
    ['cuánta soda para un kilo de aceite de motor', /motor/],
  ])('%s', async (question, sentence) => {
    const text = await ask(question, /[áé]/u.test(question) || question.startsWith('cu') ? 'es-ES' : 'en-US');
    expect(text).toMatch(sentence);
    expect(text).not.toMatch(/\d g (?:de )?(?:NaOH|KOH|lye|sosa)\b/u);
  });
});

describe('lye that was weighed is checked', () => {
  const superfatSaid = (text: string) =>
    Number(
      /(?:superfat|sobreengrasado) (?:of )?([−-]?[\d.,]+)/u
        .exec(text)?.[1]
        ?.replace('−', '-')
        .replace(',', '.'),
    );

  test.each([
    ['I put 150 g lye in 1000 g olive by mistake', { olive: 1000 }, 150, /Do not use it/],
    ['my recipe says 160 g lye for 1000 g olive is that right', { olive: 1000 }, 160, /Do not use it/],
    ['puse 150 g de sosa en 1000 g de oliva por error', { olive: 1000 }, 150, /No lo uses/],
    [
      'my recipe says 100 g lye for 500 g olive and 250 g coconut is that right',
      { olive: 500, coconut: 250 },
      100,
      /./,
    ],
    ['my recipe says 100 g lye for 1000 g olive', { olive: 1000 }, 100, /Little lye/],
    // Half of such a solution is lye, by weight.
    ['I used 300 g 50% lye solution in 1000 g olive', { olive: 1000 }, 150, /Do not use it/],
  ])('%s', async (question, recipe, grams, sentence) => {
    const text = await ask(question, question.startsWith('puse') ? 'es-ES' : 'en-US');
    const [low, high] = lyeFor({ ...recipe, superfat: 0 }).map(whole => 100 * (1 - grams / whole));
    expect(superfatSaid(text)).toBeGreaterThan(low!);
    expect(superfatSaid(text)).toBeLessThan(high!);
    expect(text).toMatch(sentence);
  });

  test.each([
    ['my recipe says 170 g KOH for 1000 g olive is that right', 0.9],
    ['my recipe says 170 g KOH for 1000 g olive with KOH 85%, is that right', 0.85],
    ['170 g KOH 85% for 1000 g olive', 0.85],
    ['I weighed 170 g of KOH at 85% for 1000 g olive oil', 0.85],
  ])('potassium hydroxide counts at its purity: %s', async (question, purity) => {
    const [low, high] = lyeFor({ olive: 1000, superfat: 0, molar: KOH, purity }).map(
      whole => 100 * (1 - 170 / whole),
    );
    const said = superfatSaid(await ask(question));
    expect(said).toBeGreaterThan(low!);
    expect(said).toBeLessThan(high!);
  });

  test('lye that burns is told with what to do', async () => {
    const text = await ask('I put 150 g lye in 1000 g olive by mistake');
    for (const word of [/pH paper/, /no tongue/, /discard/, /rebatch/, /local rules/])
      expect(text).toMatch(word);
  });

  test('lye near the edge is no all-clear: some olive oil takes less', async () => {
    // 133 g is 1.9 % superfat for a middling olive oil, but too much for one at the low end of CXS 33-1981 (131.2 g).
    expect(133).toBeGreaterThan(lyeFor({ olive: 1000, superfat: 0 })[0]!);
    expect(await ask('my recipe says 133 g lye for 1000 g olive is that right')).toMatch(/may be lye-heavy/);
  });

  test('oils that nobody named give no superfat', async () => {
    // Even coconut (CXS 210-1999: at most 265) takes no more than 189 g.
    const much = await ask('can I use 200 g lye for 1000 g oils');
    expect(much).toMatch(/No: 200 g lye is more than/);
    const some = await ask('can I use 140 g lye for 1000 g oils');
    expect(some).toMatch(/Which oils/);
    expect(some).not.toMatch(/superfat \d/);
  });

  test('an acid takes its lye before the oils do', async () => {
    const without = superfatSaid(await ask('my recipe says 120 g lye for 1000 g olive'));
    const with50 = superfatSaid(await ask('my recipe says 120 g lye for 1000 g olive and 50 g vinegar'));
    expect(with50 - without).toBeGreaterThan(0.9);
    expect(with50 - without).toBeLessThan(1.5);
  });

  test.each(['I put 100 g NaOH and 40 g KOH in 1000 g olive', 'I put 150 g lye in 1000 g emu oil'])(
    'no superfat where the lye or the oils are not all understood: %s',
    async question => {
      expect(await ask(question)).not.toMatch(/superfat [−-]?\d/u);
    },
  );
});

describe('a whole plan in plain words', () => {
  test.each([
    [
      'plan a batch with 700 g olive, 300 g coconut, 20 g honey, lavender 3%, ultramarine',
      /oils:"700 g olive, 300 g coconut" additives:"honey 20 g"/,
      ['lavender 3%', 'ultramarine'],
    ],
    [
      'plan a batch of 1000 g olive with 50 g salt and a drizzle of glimmer, 8% superfat',
      /oils:"1000 g olive" superfat:8 additives:"salt 50 g"/,
      ['glimmer'],
    ],
  ])('%s', async (question, line, left) => {
    const text = await ask(question);
    expect(text).toMatch(line);
    expect(text).not.toMatch(/size:/);
    const [, said = ''] = /Not taken into this plan: ([^\n]*)/.exec(text) ?? [];
    for (const piece of left) expect(said).toContain(piece);
  });

  test('where all of it is understood nothing is said to be left out', async () => {
    const text = await ask('plan a batch with 700 g olive and 300 g coconut, 5% superfat, 2:1 water');
    expect(text).toMatch(/oils:"700 g olive, 300 g coconut"/);
    expect(text).not.toContain('Not taken');
  });
});

describe('lejía is asked back', () => {
  test.each(['cuánta lejía para 1000 g de oliva', 'calcula la lejía para 500 g de coco'])(
    '%s',
    async question => {
      const text = await ask(question, 'es-ES');
      expect(text).toMatch(/¿sosa cáustica \(NaOH\) o la de limpiar\?/);
      expect(text).not.toMatch(/\d g (?:de )?NaOH/u);
    },
  );

  test('where another word tells which, it is not', async () => {
    expect(
      gramsSaid(await ask('cuánta lejía de sosa para 1000 g de oliva', 'es-ES'), 'NaOH'),
    ).toBeGreaterThan(120);
  });
});

describe('water for lye', () => {
  test.each([
    ['how much water for 140 g lye', 'en-US', /284 g water for 140 g lye/],
    ['cuánta agua para 140 g de sosa', 'es-ES', /284 g de agua para 140 g de sosa/],
    ['how much water for 140 g lye 2:1', 'en-US', /280 g water/],
    // 140 x 60 / 40
    ['how much water for 140 g lye at 40% concentration', 'en-US', /210 g water/],
  ])('%s', async (question, locale, sentence) => {
    expect(await ask(question, locale)).toMatch(sentence);
  });
});

describe('handling of lye is answered before colours', () => {
  test.each([
    ['can I use drain cleaner as lye', /never use drain cleaner/],
    ['baking soda instead of lye', /makes no soap/],
    ['bicarbonato en vez de sosa', /no hacen jabón/],
    ['puedo usar lejía de la ropa', /no es sosa/],
    ['can I mix lye in a glass jug', /No glass.*polypropylene/s],
    ['puedo mezclar la sosa en una jarra de vidrio', /Vidrio no/],
    ['what if I forget goggles', /Do not start without goggles/],
    ['y si olvido las gafas', /No empieces sin gafas/],
    ['eché la sosa dos veces', /No lo uses/],
    ['I added the lye twice', /Do not use it/],
    ['my scale was in ounces', /28\.35/],
    ['la balanza estaba en onzas', /28,35/],
    ['I forgot if I added the lye', /on a guess/],
    ['no sé si eché la sosa', /a ojo/],
    ['can I double the lye to make it harder', /one that burns/],
    ['puedo doblar la sosa para que quede más duro', /uno que quema/],
    ['too little water', /Never less water than lye/],
    ['how do I neutralise lye', /Do not neutralise/],
    ['vinegar to clean up lye', /Never vinegar/],
    ['how do I get rid of leftover lye water', /local/],
    ['how do I clean up spilled lye flakes on carpet', /every flake dry/],
    ['cómo limpio la sosa derramada', /barre la sosa seca/],
  ])('%s', async (question, sentence) => {
    const text = await ask(question, /[áéíóú]|\b(?:la|las|una|en vez)\b/u.test(question) ? 'es-ES' : 'en-US');
    expect(text).toMatch(sentence);
    expect(text).toMatch(/goggles|gafas/iu);
  });

  test('what first aid does not take for an emergency has its answer here', () => {
    expect(lyeTopicIn('pour water onto the lye?')).toBe('water-onto-lye');
    expect(lyeTopicIn('echo agua sobre la sosa')).toBe('water-onto-lye');
    expect(lyeTopicIn('aluminium pot for lye')).toBe('aluminium');
    expect(lyeTopicIn('olla de aluminio para la sosa')).toBe('aluminium');
  });

  test.each([
    'will mica survive lye',
    'not sure if mica survives lye',
    'does aluminium lake survive lye',
    'sea glass mica in lye',
    'how much titanium dioxide for 1000 g oils, lye 33%',
    '¿aguanta el ultramar la sosa?',
  ])('colours stay colours: %s', async question => {
    expect(lyeTopicIn(question)).toBeUndefined();
    expect(await ask(question)).not.toMatch(/no amount of lye/u);
  });
});

describe('a part of the batter', () => {
  const grams = (text: string) => Number(/(?:about|unos) ([\d.,]+) g/u.exec(text)?.[1]?.replace(',', '.'));
  test.each([
    ['dose for half my batter: ultramarine, 1 kg oils batch', 1 / 2],
    ['dose for two thirds of the batter: ultramarine, 1 kg oils batch', 2 / 3],
    ['cuánto azul ultramar para la mitad de la masa, lote de 1 kg de aceites', 1 / 2],
    ['how much ultramarine for a quarter of my batch, 1 kg oils', 1 / 4],
  ])('%s', async (question, share) => {
    const whole = grams(await ask('how much ultramarine for 1 kg oils'));
    // Both are rounded to a tenth of a gram.
    expect(Math.abs(grams(await ask(question)) - whole * share)).toBeLessThan(0.15);
  });
});

describe('a plan in a few words', () => {
  const first = async (question: string) => (await room.member.run('/ask', { question })).text;

  test('takes oils that are told as one list, and says what it left out', async () => {
    const text = await first('plan 500 g oils olive 70 coconut 30 w 1 cup blue');
    // By hand as for 350 g of olive oil and 150 g of coconut oil.
    expect(text.split('\n')[0]).toMatch(/^## 71 g NaOH in 14\d\.\d g water for 500 g oils$/);
    expect(text).toContain('Not taken into this plan: “1 cup blue”');
  });

  test.each([
    ['plan 1 kg olive 70% coconut 30%', '1000 g oils'],
    ['plan olive 70%, coconut 30%, 1.2 l', '8'],
    ['planea oliva 70%, coco 30%, para 1 kg', '1000 g'],
  ])('takes a size that stands alone, and does not say that it was left out: %s', async (question, size) => {
    const text = await first(question);
    expect(text.split('\n')[0]).toContain(size);
    expect(text).not.toMatch(/Not taken|No entró/u);
  });

  test('takes no size from what it says that it left out: how much there is of a colour is no batch', async () => {
    const text = await first('plan olive 70 coconut 30 with 2 cups blue');
    expect(text).toContain('How big?');
    expect(text).not.toMatch(/\d g NaOH|size:/u);
  });

  test('asks for oils that do not read as one list, and weighs nothing', async () => {
    const text = await first('plan olive 70 coconut 30 500 g');
    expect(text).toMatch(/How much of each oil: olive, coconut/);
    expect(text).not.toMatch(/\d g NaOH/);
  });
});
