import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { isAskedGenerally } from '../../../src/engine/questions/lye/asked-generally.ts';
import { LYE_TOPIC_ORIGINS } from '../../../src/engine/questions/lye/topic.ts';
import { lyeTopicIn } from '../../../src/engine/questions/lye/topics.ts';

/** Asked by a chemist who makes soap and had seen nothing of the patterns; the matter each is about is ours to say. */
const ASKED: readonly (readonly [question: string, topic: string])[] = [
  ['did I forget the lye? my batter never thickened after 2 hours', 'lye-forgotten'],
  ['can I add more lye now? my soap is oily after 2 days', 'more-lye'],
  ['my soap zaps, can I just use it anyway?', 'zap-use'],
  ['how do I rebatch soap that has too much lye', 'rebatch-lye-heavy'],
  ['should I test my soap with my tongue', 'zap-test'],
  ['what pH should my soap be, can I test with strips', 'soap-ph'],
  ['can I pour leftover lye water down the sink', 'disposal'],
  ['how do I throw away lye', 'disposal'],
  ['can my kids help me make cold process soap', 'children'],
  ['what happens if I pour water onto lye', 'water-onto-lye'],
  ['I already added the lye to milk and it turned orange and smells like ammonia', 'scorched-milk'],
  ['how do I store sodium hydroxide', 'storing'],
  ['can I keep lye solution for next week in a drink bottle', 'drink-bottle'],
  ['can I use a plastic water bottle for lye solution', 'drink-bottle'],
  ['can I mix all my lye and milk at once', 'milk-at-once'],
  ['my lye has clumps and went hard, can I still use it', 'clumped'],
  ['how many tablespoons of lye for 500 g of oil', 'spooned-lye'],
  ['can I make soap without lye', 'no-lye'],
  ['is all the lye gone in finished soap', 'lye-gone'],
  ['how long until the soap is safe to touch', 'when-safe'],
  ['can I use KOH instead of NaOH same amount', 'koh-for-naoh'],
  ['can I microwave raw soap batter to heat it', 'microwave'],
  ['can I use vinegar to neutralise soap that is lye heavy', 'acid-on-soap'],
  ['can I add vinegar to the batter to lower the pH', 'acid-in-batter'],
  ['my lye heavy soap is 4 weeks old, does curing fix it', 'cure-lye-heavy'],
  ['can I mix bleach into the soap to whiten it', 'bleach-in-soap'],
  ['what happens when lye touches skin, just asking', 'lye-on-skin'],
  ['is it dangerous to inhale steam from lye water', 'lye-fumes'],
  ['how long must I wait before giving the soap to my baby', 'baby'],
  ['my 5 kg loaf is 95 C in the middle, wrap it more?', 'hot-loaf'],
  ['I mixed up the lye and water amounts', 'lye-and-water-swapped'],
  // Asked by a second maker, after the first round was mended.
  ['can I use vinegar to replace the water in my soap?', 'liquid-instead'],
  ['can I use lemon juice instead of water for the lye?', 'liquid-instead'],
  ['can I use wine as the liquid?', 'liquid-instead'],
  ['¿puedo usar leche de cabra en lugar de agua?', 'liquid-instead'],
  ['can I use beer instead of water straight from the bottle?', 'liquid-instead'],
  ['can I use orange juice instead of water?', 'liquid-instead'],
  ['can I use candle fragrance oil in soap?', 'candle-scent'],
  ['can I pour lye into warm milk?', 'milk-at-once'],
  ['how much honey per kg of oils and what is the danger?', 'sugars'],
  ['¿cuánta miel puedo poner en 1 kg de aceites?', 'sugars'],
  ['can I add 3 tablespoons of sugar to 500 g oils?', 'sugars'],
  ['is it safe to put my soap in the oven at 100 C overnight?', 'hot-oven'],
  ['I melted my oils and they are at 90 C, can I add the lye now?', 'hot-oils'],
  ['can my 7 year old help me make cold process soap?', 'children'],
  ['can I do soap making with my toddler asleep in the next room?', 'children'],
  ['my scale battery died and I measured lye with a cup, is it ok?', 'spooned-lye'],
  ['¿puedo medir la sosa con cucharas?', 'spooned-lye'],
  ['puedo usar una olla de aluminio', 'aluminium'],
  ['can I use my old casserole dish to mix lye', 'vessel'],
  ['what kind of jug is right for lye', 'vessel'],
  ['se me olvidó la sosa, qué hago', 'lye-forgotten'],
];

test.each(ASKED)('%s', (question, topic) => {
  expect(lyeTopicIn(question)).toBe(topic);
});

test.each([
  ['¿cómo guardo la sosa cáustica en casa?', 'storing'],
  ['puedo guardar el agua de sosa en una botella de agua', 'drink-bottle'],
  ['¿pueden mis hijos ayudar a hacer jabón?', 'children'],
  ['cuántas cucharadas de sosa para medio kilo de aceite', 'spooned-lye'],
  ['¿puedo hacer jabón sin sosa?', 'no-lye'],
  ['mi jabón da calambre, ¿lo puedo usar?', 'zap-use'],
  ['¿qué pasa si la sosa toca la piel?', 'lye-on-skin'],
  ['¿puedo calentar la masa en el microondas?', 'microwave'],
  ['¿cuánto tiempo hasta que pueda tocar el jabón sin guantes?', 'when-safe'],
  ['¿cómo tiro la sosa que sobró?', 'disposal'],
])('in Spanish: %s', (question, topic) => {
  expect(lyeTopicIn(question)).toBe(topic);
});

test('every matter says where its answer comes from', () => {
  for (const { trust, source } of Object.values(LYE_TOPIC_ORIGINS)) {
    expect(['from memory', 'common practice', 'published']).toContain(trust);
    expect(source.length).toBeGreaterThan(10);
  }
});

describe('asked in general, in the words of an accident', () => {
  test.each([
    'should I test my soap with my tongue',
    'what happens if I pour water onto lye',
    'can I keep lye solution for next week in a drink bottle',
    'what happens when lye touches skin, just asking',
    'is it dangerous to inhale steam from lye water',
    'I mixed up the lye and water amounts',
    'how long must I wait before giving the soap to my baby',
  ])('%s is answered', text => {
    expect(isAskedGenerally(text)).toBe(true);
  });

  test.each([
    'what happens when lye touches skin, it just splashed me',
    'should I test with my tongue, it burns now',
    'can I keep lye in a drink bottle, my son drank it, help',
    'I mixed up the lye and water, the jug is boiling over',
    'what happens if I poured water onto the lye',
    'is it dangerous, I breathed in the steam from the lye and I cough, it hurts',
  ])('%s is first aid', text => {
    expect(isAskedGenerally(text)).toBe(false);
  });

  test('nothing that anybody wrote of an emergency, or asks to be ready for one, is taken for it', () => {
    const folder = join(import.meta.dirname, '../hazards');
    const files = readdirSync(folder).filter(file => /^emergencies-.*\.json$/.test(file));
    expect(files.length).toBeGreaterThan(8);
    const taken = files.flatMap(file => {
      const set = JSON.parse(readFileSync(join(folder, file), 'utf8')) as {
        emergencies: { text: string }[];
        'first-aid-questions'?: { text: string }[];
      };
      return [...set.emergencies, ...(set['first-aid-questions'] ?? [])].filter(({ text }) =>
        isAskedGenerally(text),
      );
    });
    expect(taken.map(({ text }) => text)).toEqual([]);
  });
});
