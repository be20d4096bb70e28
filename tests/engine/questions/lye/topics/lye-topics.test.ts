import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { isAskedGenerally } from '../../../../../src/engine/questions/lye/topics/asked-generally.ts';
import { LYE_TOPIC_ORIGINS } from '../../../../../src/engine/questions/lye/topics/topic.ts';
import { lyeTopicIn } from '../../../../../src/engine/questions/lye/topics/topics.ts';

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
  ['the batter is in the pot 2 hours and wont get thick', 'no-trace'],
  ['llevo una hora batiendo y sigue líquida', 'no-trace'],
  ['not thick at all after an hour of stirring', 'no-trace'],
  ['my soap wont trace', 'no-trace'],
  ['puree of pumpkin 100 g for 500g oils', 'puree'],
  ['puré de aguacate en el jabón, cuánto', 'puree'],
  ['can i use cinnamon from the kitchen for colour how much', 'kitchen-spice'],
  ['puedo echar canela en polvo al jabón', 'kitchen-spice'],
  ['¿cuánto aceite esencial de canela para 1 kg de aceites?', 'hot-oils-of-scent'],
  ['shells as mould can i pour soap in sea shells', 'sand-and-shells'],
  ['how much is 64 g of lye in water for half a batch', 'scale-batch'],
  ['what kind of jug is right for lye', 'vessel'],
  ['se me olvidó la sosa, qué hago', 'lye-forgotten'],
  ['My lye solution is in a glass measuring jug, is that fine?', 'glass-jug'],
  ['can I mix lye in a stainless steel pot?', 'vessel'],
  ['I only have an aluminium pan to melt my oils and mix soap in, ok?', 'aluminium'],
  ['my lye clumped, is it still good', 'clumped'],
  ['I replaced all the water with goat milk and it turned orange and smells, why?', 'scorched-milk'],
  ['my loaf has a crack on top and is very hot, what do I do?', 'hot-crack'],
  ['vanilla fragrance with 10% vanillin, what will happen and how much?', 'vanillin'],
  ['how do I test if my soap is safe to use?', 'safe-test'],
  ['pH strip says 10, is it lye heavy?', 'soap-ph'],
  ['can I pour leftover raw batter down the sink?', 'batter-away'],
  ['what superfat 0% with coconut 100% is that safe?', 'no-superfat'],
  ['can I mix lye with bleach to clean my pot?', 'lye-with-cleaner'],
  ['¿puedo vender jabón para bebés?', 'baby'],
  ['¿puedo mezclar sosa con lejía para limpiar la olla?', 'lye-with-cleaner'],
  // Asked by ourselves, in ways that no set had.
  ['is it ok to stir lye with a wooden spoon?', 'vessel'],
  ['can I use a copper pot for soap', 'vessel'],
  ['can I use the soap pot for cooking afterwards', 'vessel'],
  ['how far away should my dog be when I mix lye', 'children'],
  ['can I leave the lye water to cool overnight uncovered', 'unattended'],
  ['do I need a respirator to mix lye', 'gear'],
  ['can i use dishwashing gloves for lye', 'gear'],
  ['my glasses are enough right? no goggles', 'no-goggles'],
  ['can I add lye to boiling water to dissolve faster', 'cooling-lye'],
  ['can I add ice to hot lye water to cool it', 'cooling-lye'],
  ['should I cool lye water in the freezer', 'cooling-lye'],
  ['can I use expired olive oil for soap', 'old-oil'],
  ['I swapped lard for olive, same lye?', 'oil-swapped'],
  ['can I use half the lye to make it gentle', 'less-lye'],
  ['is 10% essential oil ok', 'scent-dose'],
  ['can I make lye from wood ash', 'other-alkali'],
  ['can I lick the spoon to check trace', 'zap-test'],
  ['is raw soap safe to wash hands with', 'when-safe'],
  ['can I cover honey soap with towels', 'hot-loaf'],
  ['can I put the mould on a radiator overnight', 'hot-oven'],
  ['can I put my soap in the microwave to speed cure', 'microwave'],
  ['do I need a mask for mica', 'dust'],
  ['my scale shows only 5 g steps can I weigh lye for 200 g oils', 'scale'],
  ['can I add hydrogen peroxide to lighten my batter', 'bleach-in-soap'],
  ['my recipe is 700 g oil and 99 g lye, mould is twice as big, how much lye', 'scale-batch'],
  ['puedo dejar la sosa disuelta toda la noche', 'unattended'],
  ['¿puedo disolver la sosa en agua caliente?', 'cooling-lye'],
  ['¿puedo cambiar la oliva por girasol con la misma sosa?', 'oil-swapped'],
  ['¿puedo poner la mitad de sosa para que sea más suave?', 'less-lye'],
  ['¿puedo tapar con mantas el jabón de miel?', 'hot-loaf'],
  ['¿necesito mascarilla para la mica?', 'dust'],
  ['q pasa si le hecho cloro al jabon pa blanquear', 'bleach-in-soap'],
  ['mi jabón tiene una grieta arriba y está muy caliente, ¿qué hago?', 'hot-crack'],
  // Asked by a third, as the least prepared of a class would; the matter each is about is ours to say.
  ['can i put milk in instead of the water', 'liquid-instead'],
  ['instead of water i have beer from the fridge is ok yes', 'liquid-instead'],
  ['quiero hacerlo con leche de cabra en vez de agua como se hace', 'liquid-instead'],
  ['en lugar de agua le pongo caldo de pollo', 'other-water'],
  ['cola instead of water for the lye', 'other-water'],
  ['puedo disolver la sosa en aceite', 'lye-in-oil'],
  ['agua oxigenada en vez de agua para la sosa', 'other-water'],
  ['le hecho lejia al jabon para que quede blanco', 'bleach-in-soap'],
  ['vinegar instead of water to make lye solution 500 g olive', 'liquid-instead'],
  ['can i use boiling water so the lye melts faster', 'cooling-lye'],
  ['agua caliente del grifo para la sosa vale?', 'cooling-lye'],
  ['agua de mar para hacer el jabon, vivo al lado del mar', 'other-water'],
  ['can i use sea water', 'other-water'],
  ['olla de aluminio de mi abuela sirve?', 'aluminium'],
  ['botella de cola vacia para guardar la sosa mezclada', 'drink-bottle'],
  ['can i use the same blender for soup after', 'back-to-food'],
  ['la batidora de la cocina la puedo usar luego para gazpacho', 'back-to-food'],
  ['my toddler wants to help stir the soap', 'children'],
  ['mi nieto de 6 años quiere ayudar a echar la sosa', 'children'],
  ['purpurina de manualidades para el jabon de mi hija', 'craft-glitter'],
  ['tinta de boli', 'ink'],
  ['beetroot juice insted of water pink soap', 'liquid-instead'],
  ['zumo de remolacha en vez de agua', 'liquid-instead'],
  ['coffee instead of water i mean cold one', 'liquid-instead'],
  ['miel 3 cucharadas en 500 g de aceite', 'sugars'],
  ['honey how much for 1 kg and when does it go in', 'sugars'],
  ['can i put fresh petals in the soap', 'fresh-plants'],
  ['petalos de rosa frescos dentro del jabon', 'fresh-plants'],
  ['arena de la playa en el jabon para exfoliar', 'sand-and-shells'],
  ['can i put sand from the beach', 'sand-and-shells'],
  ['conchas de la playa encima del jabon', 'sand-and-shells'],
  ['how much scent', 'scent-dose'],
  ['cuanto aroma para 500 g de aceite de oliva', 'scent-dose'],
  ['colonia de bebe para darle olor al jabon', 'household-scent'],
  ['aceite esencial de canela 30 ml en 500 g se puede', 'hot-oils-of-scent'],
  ['clove oil lots i like it how many drops', 'hot-oils-of-scent'],
  ['fabric softener for the smell can i add', 'household-scent'],
  ['suavizante de ropa para que huela bien', 'household-scent'],
  ['vanilla essence from the kitchen for smell', 'household-scent'],
  ['esencia de vainilla del super', 'household-scent'],
  ['soap for my baby with lavender oil is it ok', 'baby'],
  ['jabon para un bebe de 2 meses que aroma le pongo', 'baby'],
  ['can pregnant use essential oil in soap', 'pregnant'],
  ['tree tea oil for my dog shampoo bar', 'pets-washed'],
  ['how hot should the oils be', 'mixing-temperature'],
  ['a que temperatura mezclo', 'mixing-temperature'],
  ['my lye is at 60 and oils at 40 is it ok', 'mixing-temperature'],
  ['la sosa esta a 70 grados y los aceites a 30 que hago', 'mixing-temperature'],
  ['puedo meter el jabon en el horno para que vaya mas rapido', 'oven-to-hurry'],
  ['can i put the soap in the fridge with food', 'fridge-with-food'],
  ['lo dejo en la nevera al lado de la comida', 'fridge-with-food'],
  ['can i wrap it with electric blanket', 'electric-blanket'],
  ['manta electrica encima del jabon toda la noche', 'electric-blanket'],
  ['i forgot did i put the lye or not', 'lye-forgotten'],
  ['puedo echarle mas sosa ahora que esta blando', 'more-lye'],
  ['i put 130 lye and 65 water i swapped them for 500 olive', 'lye-and-water-swapped'],
  ['puse el agua y la sosa al reves 65 agua 130 sosa', 'lye-and-water-swapped'],
  ['i weighed the lye in ounces not grams 4.6 oz for 500 g', 'wrong-unit'],
  ['use una taza de sosa para medio litro de aceite', 'spooned-lye'],
  ['i only have a measuring cup how many spoons is 64 g lye', 'spooned-lye'],
  ['aceite de las latas de atun sirve para jabon', 'not-an-oil'],
  ['can i use motor oil', 'not-an-oil'],
  ['sosa del supermercado para desatascar vale', 'drain-cleaner'],
  ['jabon sin sosa para niños como lo hago', 'no-lye'],
  ['can i pour soap in a milk carton', 'mould-stuff'],
  ['un brik de leche de molde se puede', 'mould-stuff'],
  ['molde de silicona de magdalenas lo puedo usar despues para comer', 'back-to-food'],
  ['lata de sardinas como molde', 'mould-stuff'],
  ['crisp tube mould', 'mould-stuff'],
  ['pvc pipe mould ok?', 'mould-stuff'],
  ['yogurt pots for moulds', 'mould-stuff'],
  ['ice cube tray from the freezer as a mould then put it back', 'back-to-food'],
  ['how do i clean up after can it go down the sink', 'washing-up'],
  ['como friego los cacharros del jabon', 'washing-up'],
  ['puedo tirar el jabon malo por el fregadero', 'bad-batch-away'],
  ['can i throw the bad batch in the sea', 'bad-batch-away'],
  ['puedo lavar las cosas en el lavavajillas', 'washing-up'],
  ['la sosa se ha hecho una piedra, puedo darle con un martillo', 'clumped'],
  ['can i post soap to my sister after 3 days', 'when-safe'],
  ['cuando puedo usarlo ya lo he cortado ayer', 'when-safe'],
  ['can i wash the baby bottle with it', 'baby'],
  ['jabon para lavar al perro puedo usar el mio', 'pets-washed'],
  ['can i wear contact lenses when making soap', 'contact-lenses'],
  ['estoy embarazada puedo hacer jabon', 'pregnant'],
  ['i have asthma can i do it', 'asthma'],
  ['can i do it on the balcony', 'outdoors'],
  ['se puede hacer en clase con 12 alumnos', 'children'],
  ['how do i burn the top to make it shiny with a torch', 'flame'],
  ['i put 64 g lye in 500 g olive but forgot the water', 'water-forgotten'],
  ['olvide poner el coco que eran 200, ya lleva la sosa', 'oil-forgotten'],
  ['jabon en el horno', 'oven-to-hurry'],
  ['conchas en el jabon', 'sand-and-shells'],
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

describe('a first soap, from what is bought to the cut', () => {
  test.each([
    ['i want to make my first soap what do i need', 'first-soap'],
    ['never made soap, where do i start?', 'first-soap'],
    ['what do i need to make soap', 'first-soap'],
    ['¿qué necesito para mi primer jabón?', 'first-soap'],
    ['nunca he hecho jabón, por dónde empiezo', 'first-soap'],
    ['when do i cut it', 'after-pour'],
    ['how long before i can unmould my loaf', 'after-pour'],
    ['how soon can I take it out of the mold?', 'after-pour'],
    ['ok i poured it now what', 'after-pour'],
    ['cuando desmoldo', 'after-pour'],
    ['¿cuándo puedo cortar el jabón?', 'after-pour'],
    ['ya lo vertí y ahora qué', 'after-pour'],
  ])('%s', (question, topic) => {
    expect(lyeTopicIn(question)).toBe(topic);
  });

  test.each([
    'when i cut it the soap crumbled',
    'cuando lo corto se desmorona',
    'when i unmould my soap it sticks to the mould',
    'my first soap is blue, how much ultramarine for 2 cups',
    'how long does ultramarine last',
  ])('what tells of a bar or asks for a colour is no such question: %s', question => {
    expect(['first-soap', 'after-pour']).not.toContain(lyeTopicIn(question));
  });
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
    'My lye solution is in a glass measuring jug, is that fine?',
    'can I mix lye with bleach to clean my pot?',
    'can I do soap making with my toddler asleep in the next room?',
    'my loaf has a crack on top and is very hot, what do I do?',
    'can I add lye to boiling water to dissolve faster',
    'my glasses are enough right? no goggles',
    'tengo la sosa disuelta en una jarra de vidrio, ¿está bien?',
    '¿aguanta el vinagre en el jabón crudo?',
    'can i use boiling water so the lye melts faster',
    'conchas de la playa encima del jabon',
    'crisp tube mould',
    'i have asthma can i do it',
  ])('%s is answered', text => {
    expect(isAskedGenerally(text)).toBe(true);
  });

  test.each([
    'what happens when lye touches skin, it just splashed me',
    'should I test with my tongue, it burns now',
    'can I keep lye in a drink bottle, my son drank it, help',
    'I mixed up the lye and water, the jug is boiling over',
    'I mixed lye with bleach and it smells, is that ok?',
    'my lye solution is in a glass jug and it cracked, is that fine?',
    'my loaf has a crack on top and is very hot and rising out of the mould',
    'no goggles and lye in my eye, is that ok?',
    'my hen ate raw soap, is that ok?',
    'i have asthma and i breathed the lye steam can i do it',
    'can i use boiling water, the lye is boiling over',
    'can i use a tin as a mould, it is fizzing',
    'what happens if I poured water onto the lye',
    'is it dangerous, I breathed in the steam from the lye and I cough, it hurts',
  ])('%s is first aid', text => {
    expect(isAskedGenerally(text)).toBe(false);
  });

  test('nothing that anybody wrote of an emergency, or asks to be ready for one, is taken for it', () => {
    const folder = join(import.meta.dirname, '../../../hazards/emergencies');
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
    // Which goes into which is a question with one answer, and first aid in its place told nobody.
    expect(taken.map(({ text }) => text).sort()).toEqual([
      "lye into water or water into lye? I always forget and I'm starting tomorrow",
      'water into lye or lye into water, and what goes wrong the other way round',
      'whats that rhyme about snow falling on the lake, is it lye into water or water into lye? want it straight before saturday',
    ]);
  });
});

test.each([
  'cuanta sosa para 700 gr de aceite de oliva y 300 gr de coco',
  'lye for oils 500 g olive 20 g castor oils',
  'sosa para aceites 70 g oliva, aceite 30 g coco',
])('grams of lye and oils are no degrees: %s', question => {
  expect(lyeTopicIn(question)).not.toBe('mixing-temperature');
});
