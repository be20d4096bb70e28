import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../../../src/conversation/conversation.ts';
import { findColourant } from '../../../../src/engine/colourants/asked/find-colourant.ts';
import { askLine } from '../../../../src/terminal/seat.ts';
import { openConversation } from '../../../sets/open-conversation.ts';

/* What short questions say outright, in plain words and in both languages; common practice (no source) unless said otherwise. */

let conversation: Conversation & AsyncDisposable;
beforeAll(async () => {
  conversation = await openConversation();
});
afterAll(async () => {
  await conversation[Symbol.asyncDispose]();
});

let count = 0;
async function asked(question: string) {
  count += 1;
  const seat = {
    member: `plain${count}`,
    group: 'outright',
    language: 'en' as const,
    manages: false,
    roles: [],
  };
  const { answer } = await askLine(`/ask question:${JSON.stringify(question)}`, seat, conversation);
  if (answer.kind !== 'reply') throw new Error(`answered with ${answer.kind}`);
  return answer;
}
const headlineOf = async (question: string) => (await asked(question)).headline;

describe('lye that was spilt on a bench is cleaned up, whatever the verb and the bench', () => {
  test.each([
    'se me regó soda en el mesón cómo limpio',
    'se me botó sosa en la encimera, cómo limpio',
    'se me chorreó soda en el tope de la cocina como la limpio',
    'se me volcó la soda cáustica en la mesa, cómo limpio',
    'se me derramó sosa en la mesa, cómo la limpio',
    'se me cayó soda cáustica en el piso como la limpio',
  ])('%s', async question => {
    expect(await headlineOf(question)).toBe(
      'No la neutralices: barre la sosa seca y luego lava el sitio con mucha agua.',
    );
  });
  test.each([
    'spilled lye on the counter how do i clean it',
    'i knocked lye over on the worktop how do I clean it up',
  ])('%s', async question => {
    expect(await headlineOf(question)).toBe(
      'Do not neutralise it: sweep dry lye up, then wash the place with plenty of water.',
    );
  });
  // Somebody there is more than a spill.
  test.each([
    'spilled lye on the floor and on my foot how do i clean it',
    'lye spilled on the counter and it is fizzing',
  ])('not: %s', async question => {
    expect((await asked(question)).data).toHaveProperty('emergency');
  });
});

describe('soap that rises in its mould is heat, lye that boils in its jug is left alone', () => {
  test.each([
    ['volcano!! its rising out the mould', 'The soap has overheated. Goggles and gloves, children out,'],
    ['soap is climbing out of the mold', 'The soap has overheated. Goggles and gloves, children out,'],
    ['el jabón está subiendo del molde', 'El jabón se recalentó. Gafas y guantes, niños fuera,'],
  ])('%s', async (question, headline) => {
    const { headline: told, data, blocks } = await asked(question);
    expect(told).toContain(headline);
    expect(data).toMatchObject({ emergency: { id: 'lye-eruption', inMould: true, also: [] } });
    expect(JSON.stringify(blocks[0])).toMatch(
      /stir it down with a long spoon|bájalo removiendo con una cuchara larga/u,
    );
  });
  test.each([
    ['the lye is boiling over in the jug', /step back, leave it/u],
    ['la soda está hirviendo y se sale de la jarra', /apártate/u],
    ['its coming out the mould all down the counter and smoking', /step back/u],
  ])('not: %s', async (question, headline) => {
    expect(await headlineOf(question)).toMatch(headline);
  });
});

test.each([
  ['zap test?? tongue?', /^Rub a cured bar with a wet fingertip/u],
  ['how do i do the zap test', /^Rub a cured bar with a wet fingertip/u],
  ['como se hace la prueba de la lengua', /^Frota una pastilla curada con la yema mojada/u],
  // Raw batter on a tongue is no test.
  ['can i lick raw batter to test it', /^No: the tongue is no instrument/u],
  ['mine traced in 30 secs wtf', /^Stop the stick blender: into the mould now/u],
  ['dio traza en 20 segundos', /^Para la batidora: al molde ya/u],
  ['ya eché el perfume y se puso duro como piedra', /^Guantes: apriétala ya en el molde/u],
  ['added fragrance and it went solid', /^Gloves on: press it into the mould hard now/u],
  ['best white that isnt td', /^Without titanium dioxide/u],
  ['el mejor blanco que no sea dioxido', /^Sin dióxido de titanio/u],
  ['orange peel gone brown specks', /^Usual: peel, petals and herbs go brown/u],
  ['los pétalos de rosa se pusieron marrones', /^Es normal: cáscara, pétalos y hierbas/u],
  ['como hago pa q el azul no quede gris', /^Aguanta la sosa y la luz: .* de azul ultramar/u],
  ['how do i stop my blue going grey', /^Holds in lye and light: .* ultramarine blue/u],
  ['que amarillo me recomienda q no se vaya', /^Aguanta la sosa y la luz: .* óxido de hierro amarillo/u],
  ['which yellow do you recommend that stays', /^Holds in lye and light: .* yellow iron oxide/u],
  ['bought wrong td oil one not water one can i still', /^Yes: wet the oil kind in light oil, not in water/u],
  ['compré dióxido dispersable en agua, en qué lo mojo', /^Sí: el de agua se moja en agua, no en aceite/u],
  ['oil or water for td??', /^As its label says/u],
  ['el dióxido en agua o aceite', /^Como diga su etiqueta/u],
  ['purple mica went grey why', /^Mostly manganese violet or a dye/u],
  ['el morado se me volvió gris', /^Casi siempre violeta de manganeso o un tinte/u],
  ['a qué hora se le echa el color', /^En emulsión o traza muy ligera/u],
  ['at what point do i add the colour', /^At emulsion or first light trace/u],
  ['does mica oil change the superfat', /^Take it off the oils/u],
  ['el aceite de la mica cambia el sobreengrasado?', /^Sácalo de los aceites/u],
  ['lye is scary stuff lol', /^I have no sure answer to that/u],
  ['whats the ratio clay to oils again', /^Yes, soft earth colours that stay: 1 tsp/u],
  ['cuánta arcilla por aceites', /^Sí, tonos tierra suaves/u],
  ['puedo partir el molde hoy, lo hice ayer a las 6', /^Fuera del molde a las 24 horas/u],
  ['can i cut it today', /^Out of the mou?ld/u],
  [
    'divido la mezcla en 4 jarras y cuando llego a la cuarta ya está tiesa',
    /^Bate solo hasta que no se vea aceite/u,
  ],
  ['i split it in 4 jugs and the last one is stiff', /^Blend only until/u],
  ['oxido rojo dosis', /^1\/4 cdta de óxido de hierro rojo/u],
  ['Falsa traza??', /^Caliéntala/u],
  ['recipe says 1 tsp ppo what is ppo', /454 g\) of the oils alone/u],
  ['la receta dice 1 cdta ppo que es ppo', /454 g\) de los aceites solos/u],
  ['hey bot can you see pics', /^Yes: attach the photo to \/diagnose/u],
  ['puedes ver fotos', /^Sí: adjunta la foto a \/diagnose/u],
  ['cómo lavo las jarras con mezcla', /^Quita la masa cruda con papel/u],
  ['how do i wash the jugs', /^Wipe raw batter off with paper/u],
  ['es mejor el color en polvo o líquido', /^En frío, polvo/u],
  ['powder or liquid colour?', /^Powder for cold process/u],
  ['what does lye actualy do to natural colours', /^Lye turns most of them/u],
  ['que le hace la soda a los colores naturales', /^La sosa cambia casi todos/u],
  ['ombre for beginners??', /^Ombre: pour a plain part/u],
  ['degradado para principiantes', /^Degradado: vierte una parte sin color/u],
  ['do I wear gloves unmoulding', /^Yes, gloves for the first two days/u],
  ['uso guantes para desmoldar?', /^Sí, guantes los dos primeros días/u],
  ['no me avisaron que se calienta tanto la soda!', /^Respeto sí, miedo no hace falta/u],
  ['nobody told me lye gets so hot', /^Respect is right/u],
  ['Buenas, gracias por aceptarme en el grupo, soy nueva', /^Hola\. Pregúntame/u],
  ['thanks for adding me, i’m new here', /^Hello\. Ask me/u],
  ['is the judge going to mark down for soda ash', /challenge says its own rules/u],
  ['el jurado descuenta puntos por la ceniza', /\/challenge open/u],
  ['el achiote cómo se usa?', /^Achiote: 1 a 2 cda de semillas/u],
  ['how do i use annatto', /^Annatto: 1 to 2 Tbsp seeds/u],
  ['coffee grounds for brown', /^Ground coffee gives brown specks/u],
  ['café molido para marrón', /^(?:El )?[Cc]afé molido/u],
  ['que hago si el dioxido no disuelve', /^Dióxido de titanio: 1 cdta en 1 cda/u],
  ['my td wont dissolve', /^Titanium dioxide: 1 tsp in 1 Tbsp/u],
  ['leftover mica already mixed in oil, can it keep', /^Wetted in oil: weeks/u],
  ['me sobró mica con aceite, la puedo guardar', /^(?:Mojad|Humedecid)\p{L}+ en aceite: semanas/u],
])('%s', async (question, headline) => {
  expect(await headlineOf(question)).toMatch(headline);
});

test('lead is never read across the comma of a list', async () => {
  const { headline, data } = await asked(
    'how do you make teal from what ive got (blue ultramarine, green chrome, yellow oxide, white)',
  );
  expect(data).toMatchObject({ understood: { command: 'match', given: { target: 'teal' } } });
  expect(headline).not.toMatch(/lead|poison/iu);
  expect(await headlineOf('can i use chrome yellow in soap')).toMatch(/does not go into soap/u);
});

/** A pound of oils makes so many US cups of batter, from the house's own dose of 1 tsp a cup: 2.78 tsp (`/dose`, per pound of oils). */
const TSP_PER_POUND = 2.78;
const POUND_G = 453.592; // NIST Handbook 44, appendix C

test.each([
  ['rose-clay', 'rose clay'],
  ['french-green-clay', 'green clay'],
])('%s: dose and answer tell one figure, a full colour of some 3 tsp per 500 g oils', async (id, name) => {
  const found = findColourant(id);
  expect(JSON.stringify(found)).toContain('"fullTspPerCup":1');
  const per500 = (TSP_PER_POUND * 500) / POUND_G;
  expect(Math.round(per500)).toBe(3);
  expect(await headlineOf('whats the ratio clay to oils again')).toContain('up to 3 for full colour');
  const dose = await asked(`how much ${name} for 500 g oils`);
  expect(JSON.stringify(dose.data)).toMatch(/"perPoundOfOils":2\.7/u);
});

test('a litre of mould holds some 690 g of oils, as /dose reckons it', async () => {
  expect(await headlineOf('how many grams oils for a 1L mould')).toContain('690 g of oils');
  expect(await headlineOf('cuántos gramos de aceite para un molde de 1 litro')).toContain('690 g de aceites');
  const { data } = await asked('how much ultramarine for 1 litre');
  const { portion } = data as { portion: { millilitres: number; oilsGrams: number } };
  expect(Math.round((portion.oilsGrams / portion.millilitres) * 100) * 10).toBe(690);
});

test('a pound of oils is 454 g, so a teaspoon a pound is 2.2 tsp in a kilo (NIST Handbook 44, appendix C)', async () => {
  const { headline, blocks } = await asked('what is ppo');
  expect((1000 / POUND_G).toFixed(1)).toBe('2.2');
  expect(headline + JSON.stringify(blocks)).toContain('1 tsp ppo in 1 kg of oils is 2.2 tsp');
  const spanish = await asked('que es ppo');
  expect(spanish.headline + JSON.stringify(spanish.blocks)).toContain('son 2,2 cdta');
});

test('first aid for a loaf that rises keeps the minutes of every other first aid (from memory: 20 on skin, 30 in an eye)', async () => {
  const english = JSON.stringify((await asked('soap is climbing out of the mold')).blocks);
  expect(english).toContain('On skin: running water for at least 20 minutes. In an eye: at least 30 minutes');
  const spanish = JSON.stringify((await asked('el jabón está subiendo del molde')).blocks);
  expect(spanish).toContain('En la piel: agua corriente al menos 20 minutos. En un ojo: al menos 30 minutos');
});

test('the violet that turns and the one that holds are named by the catalogue’s numbers', async () => {
  const { blocks } = await asked('purple mica went grey why');
  expect(findColourant('ultramarine violet').ci).toEqual(['77007']);
  expect(JSON.stringify(blocks)).toContain('ultramarine violet (CI 77007)');
  // EU Regulation 1223/2009, Annex IV: manganese violet is CI 77742.
  expect(JSON.stringify(blocks)).toContain('CI 77742');
});

test('the zap test tells the pH of every other answer, and batter is too warm from 40 °C, which is 104 °F', async () => {
  const tested = JSON.stringify((await asked('how do i do the zap test')).blocks);
  expect(tested).toContain('11 and over is suspect');
  expect(tested).toContain('leave the bar two weeks');
  expect((40 * 9) / 5 + 32).toBe(104);
  expect(JSON.stringify((await asked('mine traced in 30 secs')).blocks)).toContain(
    'over about 40 °C (104 °F)',
  );
});

test.each([
  [
    'welcome with fourteen words greets',
    'hola a todas, muchas gracias por aceptarme en el grupo, soy nueva por aquí',
  ],
])('%s', async (_, question) => {
  expect(await headlineOf(question)).toMatch(/^Hola\. Pregúntame/u);
});

describe('what a mould holds, when bars are made for a day, what a batch costs, what a label says', () => {
  test.each([
    ['how many ounces of oil does my 10 inch loaf mold hold', '690 g of oils'],
    ['mold takes how much oil? 8 inch silicone loaf', '690 g of oils'],
    ['cuántos gramos de aceite le caben a mi molde de 25 x 8 x 7 cm', '690 g de aceites'],
    ['wedding is 14 june, latest date to make the bars?', 'six weeks back'],
    ['la feria es en mayo, para cuando tengo que tener hechos los jabones', 'seis semanas hacia atrás'],
    ['how do i work out what a batch costs me to make', '/plan with prices'],
    ['cómo saco lo que me cuesta cada jabón en materiales', '/plan con prices'],
    // EU Regulation 1223/2009, article 19: name and address, content, batch number, ingredients.
    ['what has to go on the label if i sell bars at a market', 'name and address, a batch number'],
    ['qué tengo que poner en la etiqueta para vender', 'número de lote'],
  ])('%s', async (question, told) => {
    expect(await headlineOf(question)).toContain(told);
  });
  test.each([
    ['lye is weighed by its recipe', 'how much lye and oil for my 10 inch loaf mold'],
    ['a stall is no batch', 'how much does a stall cost to sell bars i make'],
    [
      'a label that is read out is no question of labels',
      'label says mica, do i need to write what ci it has',
    ],
  ])('not: %s', async (_, question) => {
    expect(await headlineOf(question)).not.toMatch(/690 g|six weeks back|with prices|batch number/u);
  });
  test('a litre and a mould in inches come to the same oils', () => {
    // NIST Handbook 44, appendix C: an inch is 2.54 cm, an ounce 28.35 g.
    const ounces = (690 * (2.54 ** 3 / 1000)) / 28.35;
    expect(ounces).toBeCloseTo(0.4, 2);
  });
});

test('how hot process is cooked is told to be another field, in both languages', async () => {
  expect(await headlineOf('how long on low in the slow cooker till hot process goes like mash')).toMatch(
    /^How hot process is cooked is outside my field/u,
  );
  expect(
    await headlineOf('en hot process, ¿a cuántos grados mantengo la olla y cada cuánto revuelvo?'),
  ).toMatch(/^Cómo se cuece el proceso en caliente está fuera de mi campo/u);
});

test('a label beside lye that asks of its colour is checked, and spots that smell of old oil are a flaw', async () => {
  expect(
    await headlineOf('en la etiqueta leo: mica, CI 77891, CI 77510. ¿sirve para jabón con sosa?'),
  ).toContain('Se pierde en jabón crudo');
  expect(
    await headlineOf(
      'me salieron unas pecas naranjas y huele a aceite viejo, el jabón tiene 5 meses. ¿qué fue?',
    ),
  ).toContain('rancidez');
  expect(
    await headlineOf('manchas naranjas y olor a aceite viejo, los hice en marzo. se salvan?'),
  ).not.toContain('rállalo');
});

test('a pair that is told in words, a plan of stripes and a dose are no palette and no matter of layers', async () => {
  expect(await headlineOf('ultramarine blue + yellow iron oxide, what comes out')).toContain('dull olive');
  const { data } = await asked(
    'tiger stripe, black and orange, 750 g batter, even split. work it out for me please',
  );
  expect(data).toMatchObject({ understood: { command: 'plan' } });
  const dose = await asked(
    'how many grams of yellow iron oxide would you go with in six hundred grams of soap batter',
  );
  expect(dose.data).toMatchObject({ understood: { command: 'dose' } });
});
