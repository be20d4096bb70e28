import { describe, expect, test } from 'vitest';
import { plainWords } from '../../../../src/engine/questions/lye/amounts/words.ts';
import { eachPieceIn } from '../../../../src/engine/questions/lye/recipe-line/doubts/amounts/each-piece.ts';
import { superfatUnderOne } from '../../../../src/engine/questions/lye/recipe-line/doubts/amounts/superfat-under-one.ts';
import { lyeDampIn } from '../../../../src/engine/questions/lye/recipe-line/doubts/lye-damp.ts';
import { takenOutIn } from '../../../../src/engine/questions/lye/recipe-line/doubts/taken-out.ts';
import { vesselWeighedIn } from '../../../../src/engine/questions/lye/recipe-line/doubts/vessel-weighed.ts';
import { lyeAmissIn } from '../../../../src/engine/questions/lye/slips/amiss.ts';
import { toldAmounts } from '../../../../src/engine/questions/lye/slips/told-amounts.ts';
import * as inEnglish from '../../../../src/words/en/index.ts';
import * as inSpanish from '../../../../src/words/es/index.ts';
import { isAskedBack, readInChat, refusalOf } from '../read-in-chat.ts';

const words = (text: string) => plainWords(text, { clauses: true });
const OF = {
  en: '600 g olive oil, 300 g coconut oil, 5% superfat, how much lye?',
  es: '600 g de oliva, 300 g de coco, 5%, ¿cuánta sosa?',
};

// Common practice: lye is reckoned from the fat that is in the pot, so that fat which left it in no known amount is weighed anew.
describe('fat that left the pot in no known amount asks for its weight, whatever stands beside it', () => {
  test.each([
    'I did pour some back into the bottle when it looked too full, can’t remember if I looked at the scale after',
    'A bit of the olive went back in the tin since the pan was full',
    'I spooned a little out again because it was near the rim',
    'My son tipped a drop out on the floor',
    'Gave a cup of it to next door while it was warm',
    'had to ladle a bit off before it overflowed',
    'I returned a splash to the bottle',
    'My brother nicked some for his chain',
    'half of it got spilled',
    'Took two spoons of it out for lip balm',
  ])('%s', said => expect(refusalOf(`${OF.en} ${said}`).id).toBe('oil-lost'));
  test.each([
    'Eché un poco de vuelta a la botella porque se veía muy lleno, no recuerdo si miré la báscula después',
    'Devolví un chorrito a la garrafa',
    'Saqué un par de cucharadas porque rebosaba',
    'Se me fue un poco por el fregadero',
    'Le regalé un vasito a mi vecina',
    'Retiré algo cuando vi que se salía',
    'Un poco del coco se me cayó',
    'Quité dos cucharadas para un bálsamo',
    'Mi hermano cogió un vaso para freír',
    'Vertí algo de nuevo en la lata',
  ])('%s', said => expect(refusalOf(`${OF.es} ${said}`).id).toBe('oil-lost'));
  test.each([
    'I scooped some batter out for the colour',
    'I poured some water back into the jug',
    'I gave some soap to my sister',
    'I took a few photos off the shelf',
    'I spooned some out until the scale said 600',
    'I lost a bit of time',
    'she tipped most of the flour on the floor',
    'le di unas cucharadas de caldo a mi sobrino',
    'saqué un poco de masa para el color',
    'le regalé un jabón a mi vecina',
    'perdí un poco de tiempo',
    'se me fue un poco la mano con la mica',
    'saqué un poco hasta que marcó 600',
    'mi cuñada me dio la mitad',
  ])('what left is no fat of the pot, or was weighed: %s', said =>
    expect(takenOutIn(words(said))).toBeUndefined(),
  );
});

describe('who does not know whether the scale was read is asked', () => {
  test.each([
    `${OF.en} I can't remember if I looked at the scale after pouring.`,
    `${OF.en} Not sure I checked the display again`,
    `${OF.en} I forgot to weigh again`,
    `${OF.es} No me acuerdo si volví a pesar`,
    `${OF.es} No me fijé en la balanza luego`,
    `${OF.es} no sé si miré el peso`,
  ])('%s', question => expect(isAskedBack(question)).toBe(true));
  test.each([`${OF.en} I don't know how much lye to weigh.`, `${OF.es} No sé cuánta sosa pesar.`])(
    'who only asks for the lye is answered: %s',
    question => expect(readInChat(question).given.oils).toBeDefined(),
  );
});

// Common practice: a scale is set to nothing with the vessel on it.
describe('a vessel whose weight is told may be in that of the oils', () => {
  test.each([
    'I always weigh in the jars because I hate washing up. The jars are 90 g each empty.',
    'My glass jug weighs 410 g.',
    'The bowl on its own is 210 g.',
    'Each tub weighs 35 g',
    'Empty tins come to 60 g apiece.',
    'All on the scale with the pot, which weighs 1.2 kg by itself',
    'Siempre peso en los tarros. Los tarros son 90 g cada uno vacíos.',
    'El bol solo son 210 g.',
    'La jarra vacía pesa 400 g.',
    'cada frasco 120 g',
    'La báscula la puse a cero menos la primera vez, que se me olvidó. El cuenco pesa 210.',
    'la pesé en su garrafa, el plástico serán 110 g',
  ])('%s', said => expect(refusalOf(`${OF.en} ${said}`).id).toBe('vessel-weighed'));
  test.each([
    'the bowl weighs 210 g, I tared it',
    'I zeroed the scale with the jar on. The jar weighs 90 g',
    'el bol pesa 210 g y ya lo puse a cero',
    'the tin of lard is 500 g',
    'my lye jug weighs 200 g',
    'the mould weighs 300 g',
    'a jar of 500 g coconut oil',
    'I weighed it in the bowl',
  ])('and is not where it was taken off, or holds no oil: %s', said =>
    expect(vesselWeighedIn(words(said))).toBeUndefined(),
  );
});

// Textbook arithmetic: lye × 0.95 leaves 5 % of the fat, and 0.95 % is next to none.
describe('a superfat under one is a share as often as a percent', () => {
  test.each([
    ['I want a 0.95 superfat on 1000 g olive oil', '0.95', 5],
    ['1000 g olive oil, superfat .93, lye?', '.93', 7],
    ['1 kg de oliva, sobreengrasado 0,95, cuánta sosa?', '0,95', 5],
    ['500 g oliva sobreengrasado ,9 sosa?', ',9', 10],
    ['olive 700 g, superfat 0.05, lye?', '0.05', 5],
    ['oliva 700 g, factor 0,95 de sobreengrasado', '0,95', 5],
    ['olive 700 g, 0.5% superfat', '0.5', undefined],
  ])('%s', (text, told, percent) => {
    expect(superfatUnderOne(words(text))).toEqual({ text: told, percent });
    expect(refusalOf(`${text} 100 g coconut`).id).toBe('superfat-under-one');
  });
  test.each([
    'superfat 0',
    'superfat 5',
    'superfat 0%',
    'superfat 10.5',
    'olive 1.2, castor 0.1 superfat 5',
    'mica 0.5 g, superfat 5',
    'sobreengrasado 0,0',
  ])('and this is none: %s', text => expect(superfatUnderOne(words(text))).toBeUndefined());
});

describe('oils of one bar of several are multiplied before their lye is asked for', () => {
  test.each([
    ['Recipe for 12 bars. Each bar is 70 g olive, 25 g coconut, 5 g castor.', 'each bar'],
    ["I'm making ten bars. In each bar there's 80 g lard and 20 g coconut.", 'in each bar'],
    ["Per bar it's 70 g olive, 30 g coconut. 20 bars.", 'per bar'],
    ['70 g olive and 30 g coconut a bar, 8 bars, 5% superfat', 'a bar'],
    ['I want 15 bars and each one takes 65 g olive and 35 g palm.', 'each one'],
    ['Receta para 12 pastillas. Cada pastilla lleva 70 g de oliva, 25 g de coco.', 'cada pastilla'],
    ['por barra 70 g de oliva y 30 g de coco, hago 8 barras', 'por barra'],
    ['Cada molde lleva 200 g de oliva y 100 g de coco, tengo 4 moldes.', 'cada molde'],
  ])('%s', (text, each) => {
    expect(eachPieceIn(words(text))).toBe(each);
    expect(refusalOf(`${text} 5% superfat, how much lye?`)).toMatchObject({
      id: 'recipe-scaled',
      values: { text: each },
    });
  });
  test.each([
    '500 g olive, 200 g coconut for 10 bars, each bar is 100 g',
    '500 g olive, 200 g coconut for a bar soap, 8 bars',
    '500 g olive, 200 g coconut, 4 moldes',
  ])('and what is told of the whole is not: %s', text => expect(eachPieceIn(words(text))).toBeUndefined());
});

describe('a weight that somebody read off a scale is the oil’s of which they speak', () => {
  test.each([
    'My husband put the coconut in for me, he read 10.5 off the scale and I think it was on ounces. Olive is 600 grams. 5% superfat how much lye for the lot',
    'Mum tipped in the shea, it said 4 on the scale. The olive is 600 g. How much lye at 5%?',
    'Mi marido echó el coco, leyó 10,5 en la báscula y era en onzas. Oliva son 600 gramos. 5%, ¿cuánta sosa para todo?',
    'mi madre puso el karité, decía 40 en la balanza. La oliva son 600 g. cuánta sosa al 5%?',
  ])('no lye went in: %s', question => {
    expect(lyeAmissIn(question)).toBeUndefined();
    expect(isAskedBack(question)).toBe(true);
  });
  test('and the figure is nobody knows what of, the next one of its own oil', () => {
    const told = toldAmounts(words('He put the coconut in, he read 10.5 off the scale. Olive is 600 grams.'));
    expect(told.map(({ role, oil }) => [role, oil?.id])).toEqual([
      ['unknown', undefined],
      ['oil', 'olive'],
    ]);
  });
  test('lye that is said to have gone in still did', () => {
    expect(lyeAmissIn('I put in 180 g of lye, the recipe said 130 g, 1 kg olive oil')?.putGrams).toBe(180);
    expect(lyeAmissIn('puse 180 g de sosa y la receta decía 130 g')?.putGrams).toBe(180);
  });
});

describe('a year is no weight', () => {
  test.each([
    'olive 700 g, coconut 300 g, superfat 5. My lye dates from 1998, how much do I use?',
    'lye for 700 g olive and 300 g coconut at 5%. I bought the lye in 2015.',
    'olive 700 g, coconut 300 g, 5%, how much lye? the caustic soda is a 2012 tin',
    'compré la sosa en 2009. 700 g de oliva y 300 g de coco al 5 % cuanta pongo?',
    'La sosa la tengo desde 1999. 700 g de oliva y 300 g de coco, 5%. cuánta?',
  ])('%s', question => {
    const { given, weighed } = readInChat(question);
    expect(given.oils).toMatch(/^700 g oliv[ea](?: oil)?, 300 g coco(?:nut)?$/u);
    expect(weighed).toBeUndefined();
  });
  test('and a weight is no year', () => {
    expect(words('a batch of 2000 g in 1980 g water')).toBe('a batch of 2000 g in 1980 g water');
    expect(words('de 2010 g de aceite')).toBe('de 2010 g de aceite');
    expect(words('en 1990 ml de agua')).toBe('en 1990 ml de agua');
  });
});

// From memory: sodium hydroxide is deliquescent and takes carbon dioxide, safety data sheets of it, section 10.
describe('lye that drew water is no lye to weigh', () => {
  test.each([
    'the lye is from a bag that’s been open and it’s gone to one wet lump',
    'the lye tub got damp',
    'the caustic soda went into a solid block',
    'la sosa está hecha piedra',
    'la sosa se me quedó húmeda',
    'la sosa es la del año pasado, el bote se quedó mal cerrado y está como mojada',
  ])('%s', said => expect(refusalOf(`${OF.en} ${said}`).id).toBe('lye-damp'));
  test.each([
    'my batter goes lumpy',
    'how much lye? the shea is lumpy',
    'the lye is dry',
    'my hands are damp',
  ])('and this is none: %s', said => expect(lyeDampIn(words(said))).toBeUndefined());
});

// General chemistry: a carbonate does not saponify fat.
describe('a carbonate that is offered in the place of lye is refused', () => {
  test.each([
    'La sosa que uso es en perlas pero mi vecina me ha dado carbonato de sosa, que dice que es lo mismo. 1 kg de oliva al 5%. ¿Cuánta pongo?',
    'My shop only had soda ash. 700 g lard, 300 g coconut, 5%. how much lye?',
    'mi tía dice que bicarbonato sirve igual que la sosa. 500 g coco, 5%, cuánta sosa pongo?',
    'I have washing soda, my gran says that’s the same as lye. 500 g lard, 5%, how much?',
    'solo hay carbonato de sodio en la tienda, y sosa no. 500 g coco, 5%, cuánta?',
  ])('%s', question => expect(refusalOf(question).id).toBe('lye-not-hydroxide'));
  test.each([
    '500 g olive, 200 g coconut, 5% superfat, how much lye? I got soda ash on my last bars',
    '500 g olive, 200 g coconut, how much lye? washing soda is not the same as lye, I know',
  ])('a film on a bar, or one that knows, is answered: %s', question =>
    expect(readInChat(question).given.oils).toBeDefined(),
  );
});

test('what is asked is said in both languages', () => {
  const [en, es] = [inEnglish.refusals, inSpanish.refusals];
  expect(en['vessel-weighed']({ text: 'jars are 90 g' })).toContain('is that in the weights of the oils?');
  expect(es['vessel-weighed']({ text: 'tarros' })).toContain('¿está eso en los pesos de los aceites?');
  expect(en['superfat-under-one']({ text: '0.95', percent: 5 })).toContain(
    'a superfat of 5 %, told as a share of one',
  );
  expect(es['superfat-under-one']({ text: '0,95', percent: 5 })).toContain(
    'un sobreengrasado del 5 %, dicho como parte de uno',
  );
  expect(en['lye-damp']({ text: 'lye got damp' })).toContain('nobody knows how much');
  expect(es['lye-damp']({ text: 'sosa húmeda' })).toContain('nadie sabe cuánta');
});

// Which of two weights is in the pot is never guessed.
describe('a weight of an oil that is denied asks for the recipe anew', () => {
  test.each([
    '350 coconut and 650 olive, correction, 650 coconut no, I mean 350 is fine, the olive is 560. lye at 5',
    '300 g coconut and 700 g olive, correction, 500 g coconut no. how much lye at 5%',
    'puse 350 de coco y 650 de oliva, corrijo, 650 de coco no, digo 350 está bien, el de oliva son 560. sosa al 5',
    '300 de manteca de cerdo y 700 de oliva, corrijo: 700 de manteca no, digo 300 está bien. sosa al 5%',
  ])('%s', text => expect(isAskedBack(text)).toBe(true));

  test.each([
    '500 g olive, 200 g coconut, no palm. 5% superfat, how much lye',
    '800 g sunflower + 200 g beeswax no sorry 20 g beeswax, superfat 5%, how much lye',
  ])('%s is read', text => expect(isAskedBack(text)).toBe(false));
});

describe('what a message says of its own recipe that leaves it open is asked', () => {
  test.each([
    '16 oz olive and 8 oz coconut, superfat 5. I did it in the glass jug, the side that says oz. Lye?',
    '12 oz de oliva y 6 oz de coco, los medí con el biberón que trae las rayitas. sobreengrasado 5, ¿sosa?',
    'olive 500 g, coconut 200 g, then the page is torn. superfat 5, how much lye',
    'Oliva 500 g, coco 200 g, Pal... (aquí la hoja está rota), sobreengrasado 5, ¿me dices la sosa?',
    '1200 g soap altogether, thats with the water and the lye in. half olive half coconut, 5%. how much lye',
    '1200 g en total, con el agua y la sosa. mitad oliva mitad coco, 5%, ¿cuánta sosa?',
    '3 libras de sebo y 1 libra de coco, la báscula que me prestaron dice lb y da otra cosa. ¿Cuánta soda al 5?',
    'manteca de puerco, kilo y trescientos gramos, y más nada. ¿Qué cantidad de sosa le pongo?',
    'liquid or bar, havent decided. olive 700g coconut 300g, sf 3, how much lye',
  ])('%s', text => expect(isAskedBack(text)).toBe(true));

  test.each([
    '500 g olive, 200 g coconut with 230 g water, superfat 5%, how much lye',
    '16 oz olive, 8 oz coconut on the scale, superfat 5%, how much lye',
    'kilo y medio de manteca de puerco, sosa al 5%',
  ])('%s is read', text => expect(isAskedBack(text)).toBe(false));
});
