import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { lyeFor } from './lye-by-hand.ts';
import { openTalk, type Talk, textOf, understoodOf } from './talking.ts';

/* What a maker asks on, and is told: common practice of chat (no source) unless a source stands beside it. */

let talk: Talk;
beforeAll(async () => {
  talk = await openTalk();
});
afterAll(() => talk[Symbol.asyncDispose]());

let rooms = 0;
/** A talk of its own, of a maker of its own: nobody has said anything there yet, and no jar or wish of another talk is theirs. */
const begin = () => {
  rooms += 1;
  const here = { channel: `room-${rooms}`, who: `maker ${rooms}` };
  return { say: (text: string, said = {}) => talk.say(text, { ...here, ...said }), here };
};

describe('a maker who goes on from a dose', () => {
  test('is told in one line what was read, and what it ran, and can change it', async () => {
    const { say } = begin();
    await say('how much mica for 1 kg oils');
    const answer = await say('same for the oxide?');
    expect(textOf(answer)).toContain(
      'Read as: /dose colourant:"iron oxide" portion:"1 kg oils", the rest as you asked before.',
    );
    expect(answer.choices?.some(one => one.label === 'Ask it another way')).toBe(true);
    expect((await say('and for 800g?')).headline).toContain('for 800 g oils');
  });

  test('gets grams where grams were asked for, of the same', async () => {
    const { say } = begin();
    await say('titanium dioxide how much for 3 lb oils');
    expect((await say('and in grams')).headline).toMatch(
      /^about \d+ g .* of titanium dioxide for 3 lb oils$/u,
    );
    expect((await say('i mean batter not oils')).headline).toContain('for 3 lb batter');
  });

  test('is offered both halves where half may be either', async () => {
    const { say } = begin();
    await say('ultramarine blue for 2 cups');
    const { choices } = await say('half that');
    expect(choices?.map(one => one.label)).toContain('I meant: portion:"2 cups" strength:"50% of full"');
  });

  test('hears how much liquid wets it where that is asked', async () => {
    const { say } = begin();
    await say('how much rose clay for 500 g oils');
    // Three parts of water to one of clay: the carrier of the catalogue's clays (common practice).
    expect((await say('how much water')).headline).toBe(
      'Wet it in 3 Tbsp water: 1 Tbsp rose clay for 500 g oils',
    );
  });

  test('hears which cups these are', async () => {
    const { say } = begin();
    await say('ultramarine blue for 2 cups');
    // NIST Handbook 44, appendix C: the US cup is 236.588 ml.
    expect((await say('is that us or uk cups')).headline).toContain('237 ml cup');
  });

  test('is asked for the rest of what was begun', async () => {
    const { say } = begin();
    const asked = await say('and for 800g?');
    expect(asked.headline).toBe(
      'For 800 g, of which colourant? If it is about lye: name every oil with its weight.',
    );
    expect((await say('gold mica')).headline).toMatch(/gold mica.* for 800 g/u);
  });
});

describe('a maker who goes on without naming anything', () => {
  test('hears how much of the green that holds, and not of the one that does not', async () => {
    const { say } = begin();
    await say('will spirulina green last');
    await say('which green does');
    expect(understoodOf(await say('how much for 2lb of oils')).given).toEqual({
      colourant: 'chromium oxide green',
      portion: '2 lb oils',
    });
  });

  test('may say how pale by what it is like', async () => {
    const { say } = begin();
    await say('how much blue for one loaf');
    await say('1200 oils');
    expect(understoodOf(await say('lighter, like a babys room')).given).toEqual({
      colourant: 'ultramarine blue',
      portion: '1200 g oils',
      strength: 'pastel',
    });
  });

  test('gets “per kilo” for a kilo of oils', async () => {
    const { say } = begin();
    await say('que azul no cambia con la sosa?', { language: 'es' });
    const { headline } = await say('cuanto le pongo x kilo', { language: 'es' });
    expect(headline).toContain('para 1 kg de aceites');
  });

  test('hears whether it bleeds, and keeps asking that of the next one', async () => {
    const { say } = begin();
    await say('charcoal for a black layer, 300g of batter');
    expect((await say('will it stain the facecloth')).headline).toContain('does not bleed');
    expect((await say('no the ultramarine i mean')).headline).toMatch(/^Ultramarine does not bleed/u);
  });

  test('hears that turmeric fades, and that ultramarine does not', async () => {
    const { say } = begin();
    await say('puedo usar cúrcuma para amarillo?', { language: 'es' });
    expect((await say('se destiñe?', { language: 'es' })).headline).toContain('con la luz se va');
    await say('que azul no cambia con la sosa?', { language: 'es' });
    expect((await say('y con el sol se va?', { language: 'es' })).headline).toContain('no se va con la luz');
  });

  test('hears the warmth in both scales', async () => {
    const { say } = begin();
    await say('what temp do ye soap at for swirls');
    expect((await say('in F?')).headline).toMatch(/°C \(86 to 100 °F\)/u);
  });

  test('is told grams by the same strength that was told in spoons', async () => {
    const { say } = begin();
    const first = await say('how much mica for 2 lb of oils');
    const grams = /about (\S+) g/u.exec(first.headline)?.[1];
    expect(grams).toBeDefined();
    expect((await say('my scale only does g')).headline).toContain(`about ${grams} g`);
  });
});

describe('a maker who speaks of scent', () => {
  // 3 % of 800 g are 24 g; a scent’s own sheet sets the limit (common practice, no source).
  test('is told grams of scent, and no pigment', async () => {
    const { say } = begin();
    await say('can i mix two fragrances');
    const { headline } = await say('so for 800g');
    expect(headline).toContain('24 g of fragrance for 800 g of oils');
    expect(headline).toContain('limit');
  });

  test('is told so after a dose of colour as well', async () => {
    const { say } = begin();
    await say('how much mica for 2 lb of oils');
    expect(understoodOf(await say('and fragrance for a pound')).technique).toBe('scent-amount');
  });
});

describe('a maker who puts something right', () => {
  test('says that it is batter', async () => {
    const { say } = begin();
    await say('cuánto dióxido de titanio para 2 libras de aceite', { language: 'es' });
    const answer = await say('perdón es de batido no de aceites', { language: 'es' });
    expect(answer.headline).toContain('para 2 lb de masa');
  });

  test('has the superfat changed, and keeps it when the water is asked for', async () => {
    const { say } = begin();
    await say('how much lye for 600 olive 400 lard');
    const right = await say('no 20 superfat cos of all the lard');
    const grams = Number(/: (\S+) g NaOH/u.exec(right.headline)?.[1]);
    expect(right.headline).toContain('600 g olive, 400 g lard at 20 % superfat');
    expect(Math.abs(grams - lyeFor({ olive: 600, lard: 400 }, 20))).toBeLessThan(1);
    expect((await say('water?')).headline).toContain('at 20 % superfat');
    expect(understoodOf(await say('and how much pink for that')).given?.portion).toBe('1000 g oils');
  });

  test('is asked where a reason tells that something went in', async () => {
    const { say } = begin();
    await say('how much lye for 600 coconut 400 sunflower');
    const answer = await say('no 20 superfat because i added more coconut');
    expect(answer.headline).not.toMatch(/\d g NaOH/u);
  });

  test('a weight after what was said of lye is no weight of a colour', async () => {
    const { say } = begin();
    await say('swapping palm for shea, is the lye the same?');
    for (const turn of ['its only 200g of it', 'and lard'])
      expect((await say(turn)).headline).toBe(
        'For lye I need the whole recipe anew: every oil with its weight, and the superfat.',
      );
  });
});

test('whoever reaches for vinegar is told no before all else', async () => {
  const { say } = begin();
  await say('lye splashed on my wrist what do i do');
  const answer = await say('i have vinegar here will i put that on');
  expect(answer.headline).toMatch(/^No vinegar.*only running water/u);
  expect(answer.data).toHaveProperty('emergency.id', 'lye-skin');
});

test('what is asked on of a contest is about the contest', async () => {
  const { say } = begin();
  await say('whens the contest closing');
  const answer = await say('can i put in two bars');
  expect(answer.headline).toMatch(/a challenge says its own rules/u);
});

describe('near lye', () => {
  test('the whole recipe stands before its lye, whatever was changed in it', async () => {
    const { say } = begin();
    await say('800 olive 200 coconut lye at 5');
    const half = await say('half that');
    expect(half.headline).toMatch(/^For 400 g olive, 100 g coconut at 5 % superfat: (\S+) g NaOH/u);
    const lard = await say('swap the coconut for lard');
    expect(lard.headline).toMatch(/^For 400 g olive, 100 g lard at 5 % superfat: /u);
    const grams = Number(/: (\S+) g NaOH/u.exec(lard.headline)?.[1]);
    expect(grams).toBeCloseTo(lyeFor({ olive: 400, lard: 100 }, 5), 0);
    const mild = await say('at 10%');
    expect(Number(/: (\S+) g NaOH/u.exec(mild.headline)?.[1])).toBeCloseTo(
      lyeFor({ olive: 400, lard: 100 }, 10),
      0,
    );
  });

  test('what has no place in the recipe is asked for, and no gram is told', async () => {
    for (const turn of ['and for 2 cups', 'swap the palm for lard', 'with less coconut']) {
      const { say } = begin();
      await say('800 olive 200 coconut lye at 5');
      const asked = await say(turn);
      expect([turn, asked.headline]).toEqual([
        turn,
        'For lye I need the whole recipe anew: every oil with its weight, and the superfat.',
      ]);
      expect(textOf(asked)).not.toMatch(/\d ?g/u);
    }
  });

  test('no spoon of lye is told after spoons of colour', async () => {
    const { say } = begin();
    await say('how much mica for 2 cups');
    expect((await say('lye?')).headline).toBe(
      'Lye is never measured by spoons or cups: weigh it to the gram.',
    );
    await say('lye for 500 g olive oil');
    expect((await say('in spoons')).headline).toBe(
      'Lye is never measured by spoons or cups: weigh it to the gram.',
    );
  });

  test('first aid is given again while somebody is hurt, and nothing that is carried stands over it', async () => {
    const { say } = begin();
    await say('how much mica for 1 kg oils');
    expect((await say('got lye on my wrist its stinging')).headline).toContain('running water now');
    for (const turn of [
      'did that now what',
      'just a bit pink no blister. can i carry on soaping',
      'y en español?',
    ]) {
      const again = await say(turn);
      expect(again.data).toHaveProperty('emergency.id', 'lye-skin');
      expect(textOf(again)).toMatch(/running water|agua corriente/u);
    }
    expect((await say('might have got it in my eye')).data).toHaveProperty('emergency');
  });
});

describe('a maker who asks on about a matter or a flaw', () => {
  test('is told the sentence that tells how long', async () => {
    const { say } = begin();
    await say('layers keep falling into each other');
    expect((await say('how long is that')).headline).toContain('5 to 20 minutes');
  });

  test('is told why', async () => {
    const { say } = begin();
    await say('do i pour lye in water or water in lye??');
    expect((await say('why')).headline).toMatch(/boils|spits/u);
  });

  test('is told what comes next when it is still lumpy', async () => {
    const { say } = begin();
    await say('my batter is getting thick what now');
    expect((await say('did that and its still lumpy')).headline).toMatch(/spoon it in/u);
  });

  test('is told of next time, and of this bar, by the flaw that was found', async () => {
    const { say } = begin();
    const { data } = await say('My white soap has see through wiggly lines in it, whats that');
    const next = await say('how do i stop it next time');
    const { causes } = data as { causes: readonly { id: string }[] };
    expect((next.data as { causes: readonly { id: string }[] }).causes[0]?.id).toBe(causes[0]?.id);
    expect(next.headline).toMatch(/cooler|white/u);
    expect((await say('how much less water')).headline).toMatch(/water/u);
  });

  // The grains had been told of as mica that settles.
  test.each([
    ['el agua con sosa se me puso turbia, sirve?', 'tiene granitos en el fondo', 'es', 'undissolved-lye'],
    ['lye water gone cloudy is it ruined', 'it has lumps at the bottom', 'en', 'undissolved-lye'],
  ] as const)('“%s”, “%s”: what goes on from lye is about that lye', async (first, next, language, lye) => {
    const { say } = begin();
    await say(first, { language });
    expect((await say(next, { language })).data).toMatchObject({ understood: { lye } });
  });

  test('what became of a bar is no other colour for the dose before', async () => {
    const { say } = begin();
    await say('how much mica for 1 kg oils');
    expect((await say('my black is grey')).data).toMatchObject({ understood: { command: 'diagnose' } });
  });

  test('a colour that is named after a matter of lye is about the colour', async () => {
    const { say } = begin();
    await say('lye water gone cloudy is it ruined');
    expect((await say('my mica sinks to the bottom')).data).not.toMatchObject({
      understood: { lye: expect.any(String) },
    });
  });

  test('a bar that may hold lye is not used, whatever is asked on', async () => {
    const { say } = begin();
    await say('batter split oily on top');
    expect((await say('its in the mould already, 2 hrs')).headline).toMatch(/^Don’t use it/u);
    expect((await say('can i save it')).headline).toMatch(/^Don’t use it/u);
  });
});

describe('where nothing is kept', () => {
  const ASKS: readonly (readonly [string, string])[] = [
    [
      'same for the oxide?',
      'Iron oxide: for how much batter or oils? Or do you want to know whether it holds in lye?',
    ],
    [
      'lighter',
      'Of what? Nothing came before this that I still have: name the colourant and how much batter or oils.',
    ],
    [
      'ok did that now what',
      'What is it about: batter that went thick, colour with lumps, a bar that looks wrong? A few words are enough.',
    ],
    ['is it safe', 'Which colour or powder do you mean? Name it, such as “rose clay”.'],
  ];
  test.each(ASKS)('“%s” asks one kind question', async (turn, sentence) => {
    const asked = await begin().say(turn);
    expect(asked.headline).toBe(sentence);
    expect(understoodOf(asked).askedBack).toBe(true);
    expect(textOf(asked)).not.toContain('I can be wrong');
  });

  test('“y para 2 kilos?” is asked back in Spanish', async () => {
    expect((await begin().say('y para 2 kilos?')).headline).toBe(
      'Para 2 kilos, ¿de qué colorante? Si es sobre la sosa: dime cada aceite con su peso.',
    );
  });

  test('who may be hurt finds first aid under it', async () => {
    expect(textOf(await begin().say('did that now what'))).toContain('/first-aid');
  });
});

describe('whose talk it is', () => {
  test('another member’s question in the same channel is no context', async () => {
    const { say } = begin();
    await say('how much mica for 1 kg oils', { who: 'Ana' });
    expect(understoodOf(await say('and for 800g?', { who: 'Bea' })).askedBack).toBe(true);
    expect(understoodOf(await say('and for 800g?', { who: 'Ana' })).given).toEqual({
      colourant: 'mica',
      portion: '800 g oils',
    });
  });

  test('two members at once are each read by their own', async () => {
    const { say } = begin();
    await Promise.all([
      say('how much mica for 1 kg oils', { who: 'Ana' }),
      say('how much charcoal for 2 cups', { who: 'Bea' }),
    ]);
    const [ana, bea] = await Promise.all([say('lighter', { who: 'Ana' }), say('lighter', { who: 'Bea' })]);
    expect([understoodOf(ana).given?.colourant, understoodOf(bea).given?.colourant]).toEqual([
      'mica',
      'charcoal',
    ]);
  });

  test('another channel and another group are other talks', async () => {
    const { say } = begin();
    await say('how much mica for 1 kg oils');
    expect(understoodOf(await say('lighter', { channel: 'elsewhere' })).askedBack).toBe(true);
    expect(understoodOf(await say('lighter', { group: 'other club' })).askedBack).toBe(true);
  });

  test('half an hour later nothing leans on it, a minute before it still does', async () => {
    const { say } = begin();
    await say('how much mica for 1 kg oils');
    expect(understoodOf(await say('lighter', { after: 29 })).given?.colourant).toBe('mica');
    expect(understoodOf(await say('lighter', { after: 60 })).askedBack).toBe(true);
  });

  test('a question that is delivered twice is read twice alike', async () => {
    const { say } = begin();
    await say('lye for 1000 g olive oil 5% superfat', { id: 'first' });
    const once = await say('half that', { id: 'second' });
    const twice = await say('half that', { id: 'second' });
    expect([once.headline, twice.headline].map(text => /^For (\S+) g/u.exec(text)?.[1])).toEqual([
      '500',
      '500',
    ]);
  });

  test('a command that was typed is gone on from as well', async () => {
    const { say, here } = begin();
    await talk.ask(['dose'], { colourant: 'rose clay', portion: '500 g oils' }, here);
    expect(understoodOf(await say('and for 1 kg')).given).toEqual({
      colourant: 'rose clay',
      portion: '1 kg oils',
    });
  });

  test('thanks and “ok” are answered shortly and leave the talk as it was', async () => {
    const { say } = begin();
    await say('how much mica for 1 kg oils');
    expect((await say('thanks!')).headline).toBe('You’re welcome. Ask the next one when it comes up.');
    expect((await say('ok cool')).headline).toBe('Good. Ask the next one when it comes up.');
    expect(understoodOf(await say('and for 2 kg')).given?.portion).toBe('2 kg oils');
  });

  test('the same is told in the other language where that is asked, whatever one prefers', async () => {
    const { say, here } = begin();
    await talk.ask(['prefer'], { language: 'english' }, here);
    await say('800 olive 200 coconut lye at 5');
    const spanish = await say('y en español?');
    expect(spanish.language).toBe('es');
    expect(spanish.headline).toMatch(/^Para 800 g olive, 200 g coconut, con 5 % de sobreengrasado: 137,7 g/u);
  });
});
