import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openTalk, type Talk, textOf, understoodOf } from './talking.ts';

/*
 * What a talk is in danger of stays with it: soap that has too much lye is not spoken of as if it were sound, and what lies in a jug of lye is no
 * mica. Common practice of soap makers (no source) where none is named; lye that the fats do not take stays free (stoichiometry, Codex CXS 33
 * and 210).
 */

let talk: Talk;
beforeAll(async () => {
  talk = await openTalk();
});
afterAll(() => talk[Symbol.asyncDispose]());

const HEAVY = [
  [
    'en',
    'I think I left the coconut oil out. Its sitting melted on the stove and the soap is in the mold 2 hours',
  ],
  ['en', 'forgot to put the lard in, realised when i saw the pan still full'],
  ['en', 'i put 180 g lye in 1000 g olive'],
  ['en', 'my bars zap after 5 weeks'],
  ['en', 'I put twice the lye in it'],
  [
    'es',
    'se me olvidó el aceite de coco, está derretido en la cocina y el jabón lleva dos horas en el molde',
  ],
  [
    'es',
    'me acabo de dar cuenta de que no le eché la manteca, sigue en el cazo y el jabón ya está en el molde',
  ],
  ['es', 'mis jabones dan calambre a las cinco semanas'],
  ['es', 'eché el doble de sosa'],
] as const;
const TURNS = {
  en: [
    ['cant i just let it cure longer', 'cure-lye-heavy'],
    ['and if i leave it six months', 'cure-lye-heavy'],
    ['alright how do i do it', 'rebatch-lye-heavy'],
    ['can i use it for laundry', 'lye-heavy-laundry'],
    ['how do i get rid of it then', 'bad-batch-away'],
    ['is it ok on skin', 'rebatch-lye-heavy'],
  ],
  es: [
    ['y si lo dejo curar más tiempo', 'cure-lye-heavy'],
    ['y si espero seis meses', 'cure-lye-heavy'],
    ['vale, cómo lo hago', 'rebatch-lye-heavy'],
    ['y para lavar la ropa?', 'lye-heavy-laundry'],
    ['entonces lo tiro a la basura?', 'bad-batch-away'],
    ['y para regalar?', 'rebatch-lye-heavy'],
  ],
} as const;

describe('soap with too much lye', () => {
  test.each(HEAVY)('%s: %s: is not sound, whatever is asked of it next', async (language, told) => {
    for (const [turn, matter] of TURNS[language])
      expect([turn, understoodOf(await talk.lastOf([told, turn], language)).lye]).toEqual([turn, matter]);
  });

  test.each([
    ['en', HEAVY[0][1], 'n how do i know its safe after', 'Once put right: four weeks'],
    ['es', HEAVY[5][1], 'y después cómo sé que está bien', 'Una vez arreglado: cuatro semanas'],
    ['en', HEAVY[0][1], 'will the purple still be purple', 'Melted again a swirl becomes one dull colour'],
    ['es', HEAVY[5][1], 'y el morado se queda morado?', 'Fundido de nuevo'],
  ] as const)('%s: %s, %s', async (language, told, turn, first) => {
    const answer = await talk.lastOf([told, turn], language);
    expect(answer.headline).toContain(first);
    expect(textOf(answer)).toContain({ en: 'too much lye', es: 'demasiada sosa' }[language]);
  });

  test('a talk stays in danger over several turns, until something else is plainly asked', async () => {
    const turns = [HEAVY[0][1], 'alright how do i do it', 'ok', 'how long does it cure'];
    expect(understoodOf(await talk.lastOf(turns)).lye).toBe('cure-lye-heavy');
    const other = [...turns.slice(0, 2), 'how much red oxide for 800 g of oils', 'how long does soap cure'];
    expect(understoodOf(await talk.lastOf(other)).technique).toBe('cure-time');
  });

  test('bars without a zap are sound', async () => {
    expect(understoodOf(await talk.lastOf(['no zap at 4 weeks, can i sell them'])).lye).not.toBe('zap-use');
    expect(understoodOf(await talk.lastOf(['no da calambre, lo puedo usar?'], 'es')).lye).not.toBe('zap-use');
  });
});

describe('lye water that got out of hand', () => {
  test.each([
    [
      'es',
      [
        'eché el agua encima de la sosa y ha pegao un resoplido que casi me quedo en el sitio',
        'ya está quieto, pero tiene costras en el fondo. eso se aprovecha?',
      ],
    ],
    [
      'en',
      [
        'poured water on the lye and it shot up',
        'calm now, theres a crust on the bottom, can i still use it',
      ],
    ],
    ['en', ['my lye water is cloudy', 'and there are hard lumps stuck to the bottom']],
    ['es', ['mi agua de sosa está turbia', 'y hay grumos pegados al fondo']],
  ] as const)('%s: %j: what lies at the bottom is lye, and no mica', async (language, turns) => {
    const answer = await talk.lastOf(turns, language);
    expect(understoodOf(answer).lye).toBe('undissolved-lye');
    expect(textOf(answer)).not.toMatch(/mica/iu);
  });

  test.each([
    ['en', ['poured water on the lye and it shot up', 'the jug is aluminium']],
    ['es', ['eché el agua encima de la sosa y saltó', 'es que la jarra es de aluminio de la tienda']],
  ] as const)(
    '%s: %j: lye in aluminium makes hydrogen (safety data sheets, section 10)',
    async (language, turns) => {
      const { data } = await talk.lastOf(turns, language);
      expect(data).toMatchObject({ emergency: { id: 'hydrogen-from-metal' } });
    },
  );

  test('who still hurts is helped before anything is said of the jug', async () => {
    const { data } = await talk.lastOf([
      'poured water on the lye and it shot up',
      'my hand stings and theres crust in the jug',
    ]);
    expect(data).toHaveProperty('emergency');
  });
});

describe('going on after lye was on somebody', () => {
  test.each([
    [
      'en',
      ['lye splashed on my arm', 'rinsed 20 min, doesnt sting now. the lye is still there, can I keep going'],
    ],
    [
      'es',
      [
        'me salpicó sosa en el brazo',
        'ya llevo veinte minutos de agua y no escuece, puedo seguir con el jabón?',
      ],
    ],
  ] as const)(
    '%s: %j: the lye can wait (first aid of safety data sheets, section 4)',
    async (language, turns) => {
      const answer = await talk.lastOf(turns, language);
      expect(answer.headline).toMatch(/20/u);
      expect(textOf(answer)).toContain('/first-aid');
    },
  );
  test('never while it stings', async () => {
    const { data } = await talk.lastOf(['lye splashed on my arm', 'it still stings, can I keep going']);
    expect(data).toHaveProperty('emergency');
  });
});

describe('what stays out of soap', () => {
  test.each([
    [
      'en',
      ['can i use fabric dye', 'but i get it on my hands all the time and nothing happens'],
      'Still no.',
    ],
    ['en', ['can i use wall paint in soap', 'but its non toxic'], 'Still no.'],
    [
      'es',
      ['puedo usar la tinta de teñir claveles?', 'pero si me mancho las manos to los días y no me pasa na'],
      'Sigue siendo no.',
    ],
    ['es', ['puedo usar pintura acrílica en el jabón?', 'solo un poquito'], 'Sigue siendo no.'],
  ] as const)('%s: %j: stays out of it, whatever is held against that', async (language, turns, first) => {
    expect((await talk.lastOf(turns, language)).headline).toContain(first);
  });
});

describe('white on a loaf', () => {
  test.each([
    ['en', ['white powdery stuff on top of my loaf', 'how do I know its not straight lye']],
    ['es', ['polvillo blanco encima del pan de jabón', 'y si es sosa?']],
  ] as const)('%s: %j: is told apart from lye', async (language, turns) => {
    expect(understoodOf(await talk.lastOf(turns, language)).lye).toBe('ash-or-lye');
  });
});

describe('lye on skin and lye that was swallowed stay what a talk is about', () => {
  test('red and slippery skin is rinsed on, and is no pigment', async () => {
    const channel = 'wrist';
    await talk.say('ive splashed lye water on my wrist its stinging', { channel, language: 'en' });
    await talk.say('done about 3 mins, dont sting now. can i go back to it', { channel, language: 'en' });
    const answer = await talk.say('ok did the lot. bit red and slippy feeling', { channel, language: 'en' });
    expect(answer.data).toMatchObject({ emergency: { id: 'lye-skin' } });
  });
  test.each([
    [
      'en',
      'little lad has licked the spoon out the raw soap',
      'hes crying but breathing ok should i make him sick',
    ],
    ['es', 'el niño ha lamido la cuchara del jabón crudo', 'llora pero respira bien, ¿le hago vomitar?'],
  ] as const)('nobody is made to vomit (%s)', async (language, first, then) => {
    const channel = `licked ${language}`;
    await talk.say(first, { channel, language });
    expect((await talk.say(then, { channel, language })).data).toMatchObject({
      emergency: { id: 'lye-swallowed' },
    });
  });
});
