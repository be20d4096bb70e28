import { describe, expect, test } from 'vitest';
import { askedTopicIn } from '../../../../../../src/engine/questions/lye/topics/asked/read.ts';
import { ASKED_ROWS } from '../../../../../../src/engine/questions/lye/topics/asked/table.ts';
import { ASKED_TOPIC_ORIGINS } from '../../../../../../src/engine/questions/lye/topics/asked-topic.ts';

/** Asked by makers of five hands who had seen nothing of the table; which matter each is about is ours to say. */
const ASKED: readonly (readonly [question: string, topic: string])[] = [
  ['does clay change my lye number. its a lot of clay', 'takes-no-lye'],
  ['Does honey alter the lye figure? 15 g in 500 g of oils', 'takes-no-lye'],
  ['si le echo miel, ¿cambia la cantidad de sosa? una cucharada por kilo', 'takes-no-lye'],
  ['La cera de abeja cuenta como un aceite mas para la sosa o no se cuenta', 'wax-counted'],
  ['do I count beeswax in the lye', 'wax-counted'],
  ['want to use maple sap in place of the water. does the sugar change how much lye I need', 'liquid-lye'],
  ['si le pongo cafe en vez de agua le cambia la sosa', 'liquid-lye'],
  ['do I have to figure the fat in the milk into the lye? whole jersey milk', 'liquid-lye'],
  ['Can whey replace the water one for one? Fresh from the vat', 'liquid-instead'],
  ['can I swap crock lard gone a bit rancid for fresh, or will the lye be off', 'old-oil'],
  ['se puede cambiar el coco por manteca sin mover la sosa?', 'oil-swapped'],
  ['out of palm. can i swap lard in and keep the same lye??', 'oil-swapped'],
  ['manteca vegetal es lo mismo q manteca de cerdo para la cuenta de la sosa??', 'oil-swapped'],
  ['does lemon juice eat up any lye', 'acid-lye'],
  ['whats the difference between lye and caustic soda and sodium hydroxide', 'names-of-lye'],
  ['la soda en escamas es lo mismo que en perlas? cambia la cantidad?', 'flakes-or-pearls'],
  ['are beads and flakes of lye the same weight', 'flakes-or-pearls'],
  ['q es mejor para jabon solido la soda o la potasa', 'soda-or-potash'],
  ['which is harder, sodium or potassium', 'soda-or-potash'],
  ['puedo usar potasa en ves d soda pa barra dura?', 'soda-or-potash'],
  ['can I use potash instead of caustic soda for hard bars', 'soda-or-potash'],
  ['May I dissolve the lye in water with ice cubes in it?', 'cooling-lye'],
  ['puedo disolver la sosa en agua con hielo?', 'cooling-lye'],
  ['I made my lye up last night and left it covered, can I still use it?', 'lye-water-keeps'],
  ['could I mix the lye water the evening before and leave it shut in the shed?', 'lye-water-keeps'],
  ['is it fine to dissolve the caustic tonight and make soap tomorrow', 'lye-water-keeps'],
  ['se puede preparar la sosa la noche antes y dejarla tapada', 'lye-water-keeps'],
  ['puedo guardar la sosa ya disuelta en una garrafa cerrada hasta mañana por la tarde', 'lye-water-keeps'],
  ['Hice la lejía anoche y la dejé tapada, la puedo usar hoy?', 'lye-water-keeps'],
  ['se me puso dura la soda en el tarro, la puedo moler y usar igual?', 'clumped'],
  ['my lye has gone into one solid lump. Is it still fit to use?', 'clumped'],
  ['¿se puede mezclar NaOH y KOH en la misma receta? ¿en qué proporción?', 'koh-and-naoh'],
  ["NaOH vs KOH, what's the conversion factor?", 'koh-for-naoh'],
  ['la tabla de saponificación dice KOH y yo tengo NaOH, cómo paso de uno a otro', 'sap-to-naoh'],
  ['por qué la sosa comercial pone 98-99% y nadie lo corrige en la cuenta', 'purity-ignored'],
  ['is 33% lye concentration the same as 2:1 water to lye?', 'strength-and-ratio'],
  ['with 30% lye solution how do I work out the water', 'strength-and-ratio'],
  ['what does superfat even mean, my sister in law says it like I should know', 'superfat-meaning'],
  ['qe es eso del sobreengrasado q tanto dicen', 'superfat-meaning'],
  ['El sobreengrasado se pone en la sosa o en el aceite?? no me entero', 'superfat-on-which'],
  ['do I take 5% off the lye or put 5% more fat in?', 'superfat-on-which'],
  ['Is 3% superfat too low for a kitchen bar?', 'superfat-low'],
  ['un sobreengrasado de 10 es mucho? se me hace rancio', 'superfat-high'],
  ['why do some of ye go for 5 percent and others 8? is there a rule for sensitive skin', 'superfat-high'],
  ['What happens if I go 0 superfat by accident', 'no-superfat'],
  ['¿Sobreengrasar con un aceite al final (tras la traza) sirve de algo?', 'superfat-at-trace'],
  [
    'no tengo apuntado el sobreengrasado de una receta vieja, hay forma de saberlo por la sosa',
    'superfat-from-lye',
  ],
  ['how much lye in general per 100g of oil, roughly', 'lye-roughly'],
  ['Which oils need the most lye, is it coconut?', 'lye-roughly'],
  ['If a fellow gives you bear fat is there even a number for the lye', 'animal-fat'],
  ['¿Se puede valorar el jabón con fenolftaleína?', 'free-alkali-test'],
  ['my scale reads 5 g high on everything', 'scale-by-grams'],
  ['si duplico el lote tengo q duplicar tb el agua', 'scale-batch'],
  ['if I want no palm and no coconut can I make up the bubbles any other way', 'lather-without-coconut'],
  ['la sosa se echa en el agua o el agua en la sosa? Siempre me confundo', 'lye-into-water'],
  ['la sosa va encima del agua o el agua encima de la sosa?', 'lye-into-water'],
  ['el agua arriba de la soda o la soda arriba del agua?', 'lye-into-water'],
  ['whats the water for, does more water make softer soap', 'water-amount'],
  ['¿El agua tiene que ser destilada? la del grifo tiene mucha cal', 'tap-water'],
  ['how long does lye water keep if I mix it saturday and soap on tuesday', 'lye-water-keeps'],
  ['puedo usar la sosa de ayer, ya fría', 'lye-water-keeps'],
  ['does lye freeze in the garage in winter', 'lye-water-in-cold'],
  ['cuánto tarda en enfriar el agua con sosa', 'cooling-time'],
  ['ya la soda se me humedeció y está en bloque, todavía sirve', 'clumped'],
  ['la sosa que venden suelta sirve? viene en escamas sin etiqueta', 'purity-unknown'],
  [
    'qué onda, la sosa en la tlapalería me la venden en bolsita sin marca, cómo sé si sirve',
    'purity-unknown',
  ],
  ['is the lye with no brand on the bag ok, can i use it', 'purity-unknown'],
  ['Una pregunta, el agua tiene que ser destilada o me vale la de la fuente del pueblo', 'tap-water'],
  ['can i use spring water for the lye', 'tap-water'],
  ['can you use the drain caustic from the hardware', 'drain-cleaner'],
  ["if my recipe's for soda crystals can I just use caustic instead", 'caustic-for-soda'],
  ['washing soda instead of caustic', 'baking-soda'],
  ['how many grams of caustic are in a level tablespoon', 'spooned-lye'],
  ['qué plástico aguanta la sosa', 'vessel'],
  ['I left out the water and put lye flakes straight into oil', 'water-forgotten'],
  ['forgot half the lye, batter is still runny, can i add the rest', 'rest-of-lye'],
  ['si me equivoco y pongo menos sosa qué pasa', 'less-lye-went-in'],
  ['zaps on day two, is that lye heavy', 'zap-young'],
  ['uso el jabón pasado de sosa para lavar ropa?', 'lye-heavy-laundry'],
  ['¿se puede bajar la sosa si el jabón salió muy fuerte?', 'rebatch-lye-heavy'],
  ['how long until lye is gone from the soap', 'why-cure'],
  ['los jabones tienen sosa cuando ya están curados?', 'lye-gone'],
  ['my soap label says sodium olivate, must I list lye', 'lye-on-label'],
  ['can kids help decorate the soap after cure', 'children-cured'],
  ['¿a los cuántos días se puede usar el jabón?', 'when-safe'],
  ['terminé un kilo de jabón, cuántas barras salen', 'bars-per-kilo'],
  ['cómo evito la ceniza de soda encima del jabón', 'soda-ash-avoided'],
  ['my wooden mould stuck to the soap, what liner do I use', 'mould-stuff'],
  ['does sugar make more bubbles', 'sugars'],
  ['cómo sé que llegó a la traza', 'trace-signs'],
  ['ya curaron las barras, con qué papel las envuelvo', 'wrapping'],
  ['puedo vender mi jabón en la feria del colegio', 'selling'],
  ['what does lye smell like', 'lye-smell'],
  ['who first made soap with ashes', 'ash-lye-once'],
];

describe('a general question is found by what is asked of what', () => {
  test.each(ASKED)('%s', (question, topic) => {
    expect(askedTopicIn(question)).toBe(topic);
  });

  test('no row of the table is without a question, and no matter of it without a row', () => {
    const asked = new Set(ASKED.map(([, topic]) => topic));
    const rows = new Set<string>(ASKED_ROWS.map(({ topic }) => topic));
    expect([...rows].filter(topic => !asked.has(topic))).toEqual([]);
    expect(Object.keys(ASKED_TOPIC_ORIGINS).filter(topic => !rows.has(topic))).toEqual([]);
  });
});

describe('what is told of a recipe, a flaw or harm is none', () => {
  test.each([
    '500 g olive, 200 g coconut, does clay change the lye',
    'Olive and coconut 80:20, a kilo of oils. Superfat 6',
    'how much lye for 500 g lard, superfat 8',
    '/plan oils:"olive 100%" superfat:3',
    'only 80 g caustic soda instead of 110',
    'swallowed lye water, does honey change the lye',
    'Phenolphthalein goes hot pink on every bar I test.',
    'color changed completely when lye touched it',
    'cambié el coco por oliva y no recalculé, al mes todas las barras muerden en la lengua',
    'it broke off in chunks when i cut it the next day, it doesnt zap',
    'echo el resto de la sosa mañana',
    'how come no vinegar on lye',
    "how do I store lye so it doesn't clump, with kids in the house",
    'used fryer oil 3 litres, I think sunflower, lye for cleaning soap 2% superfat',
    'can I use red mica in soap to sell at the fair',
    'dejé la lejia preparada en la nevera toda la noche al lado de la leche',
  ])('%s', question => {
    expect(askedTopicIn(question)).toBeUndefined();
  });

  test('a long text tells of a batch', () => {
    const long = `${'I made a batch last week and it went well. '.repeat(5)}does clay change my lye number?`;
    expect(long.length).toBeGreaterThan(240);
    expect(askedTopicIn(long)).toBeUndefined();
  });
});
