import { expect, test } from 'vitest';
import { pastAside, smallTalkIn } from '../../../../src/engine/questions/fields/small-talk.ts';
import { heldWhateverIsMeant } from '../../../../src/engine/questions/fields/unsure.ts';
import { amountsIn } from '../../../../src/engine/questions/found/amounts.ts';
import { factsOf } from '../../../../src/engine/questions/found/facts.ts';
import { foundIn } from '../../../../src/engine/questions/found/found-in.ts';
import { jarsTold } from '../../../../src/engine/questions/found/jars/jars-told.ts';
import { thingsIn } from '../../../../src/engine/questions/found/names/entities.ts';
import { plantsBeside, unlistedIn } from '../../../../src/engine/questions/found/names/unlisted.ts';
import { oilsIn } from '../../../../src/engine/questions/found/oils-in.ts';
import { strengthIn } from '../../../../src/engine/questions/found/strength/strength-in.ts';
import { whiteBeside } from '../../../../src/engine/questions/found/strength/white-beside.ts';
import { targetIn } from '../../../../src/engine/questions/found/target-in.ts';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { plainJobOf } from '../../../../src/engine/questions/jobs/plain-job.ts';
import { asksWhatTwoMake } from '../../../../src/engine/questions/jobs/two-together.ts';
import { settled } from '../../../../src/engine/questions/settled.ts';

/*
 * What a maker's words tell, part by part (common practice, from memory): names that share one head, plants of no list, of what an amount is,
 * which colour is wished, what is talk. What one word too many makes unclear is not told.
 */

function read(text: string) {
  const words = wordsOf(text);
  return [words, thingsIn(words)] as const;
}
const amountsOf = (text: string) =>
  amountsIn(...read(text)).map(
    ({ text: amount, of, perPound }) => `${amount} ${of}${perPound ? ' ppo' : ''}`,
  );
const oilsOf = (text: string) => oilsIn(wordsOf(text), amountsIn(...read(text)));
function twoMake(text: string) {
  const { words, found } = foundIn(text);
  return asksWhatTwoMake(words, found);
}
/** What is no, and what is empty, is left out. */
function factsTold(text: string) {
  const [words, things] = read(text);
  const told = Object.entries(factsOf(text, words, { things, amounts: amountsIn(words, things) }));
  return Object.fromEntries(
    told.filter(
      ([, one]) =>
        one !== undefined && one !== false && one !== 0 && !(Array.isArray(one) && one.length === 0),
    ),
  );
}
function jarsOf(text: string) {
  const [told, names] = text.split(' // ');
  return jarsTold(told!, names!.split(','));
}

test.each<readonly [text: string, told: unknown]>([
  ['óxido rojo y amarillo', ['oxido rojo', 'oxido amarillo']],
  ['red, yellow and black oxide', ['red oxide', 'yellow oxide', 'black oxide']],
  ['red and yellow oxide', ['red oxide', 'yellow oxide']],
  ['the red and the yellow oxide', ['red oxide', 'yellow oxide']],
  ['oxido negro, rojo y verde', ['oxido negro', 'oxido rojo', 'oxido verde']],
  ['mica dorada y azul', ['mica dorada', 'mica azul']],
  ['arcilla rosa, verde', ['arcilla rosa']],
  ['blue and pink clay', ['pink clay']],
  ['red or yellow oxide', ['yellow oxide']],
  ['with oxides? the yellow and the black', ['yellow iron oxide', 'black iron oxide']],
  [
    'oxidos: negro, rojo y amarillo',
    ['oxido de hierro negro', 'oxido de hierro rojo', 'oxido de hierro amarillo'],
  ],
  ['oxides are nice, red', []],
  ['to wet oxide? the red one', ['red iron oxide']],
  ['clay: slurried? 15 g of french green', ['green clay']],
  ['clay, red is nice', []],
  ['oxide and clay, the red one', []],
  ['el óxido de cromo o el hidratado', ['oxido de cromo', 'hydrated chromium oxide']],
  ['the hydrated one', []],
  ['chromium oxide or hydrated?', ['chromium oxide', 'hydrated chromium oxide']],
  ['oxides and clay: red and yellow', ['red iron oxide', 'yellow iron oxide']],
  ['purple and green oxide', ['green oxide']],
])('“%s” names %j', (text, told) => {
  expect(thingsIn(wordsOf(text)).map(thing => thing.text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['does zobo leaf stay red', 'zobo leaf'],
  ['raíz de ratania', 'raiz de ratania'],
  ['cempasúchil molido', 'cempasuchil molido'],
  ['ground sorrel petals', 'sorrel petals'],
  ['en polvo', undefined],
  ['hojas de jamaica en polvo', 'jamaica'],
  ['infused oil of calendula', 'calendula'],
  ['olive powder', undefined],
  ['mica powder', undefined],
  ['polvo de betabel', 'betabel'],
  ['dried hibiscus', 'hibiscus'],
  ['lavender oil', undefined],
])('“%s” names %s, which no list of ours holds', (text, told) => {
  expect(unlistedIn(wordsOf(text))?.text).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['spirulina and chlorella', ['chlorella']],
  ['spirulina stays but chlorella fades', []],
  ['chlorella oil and spirulina', []],
  ['cuánta espirulina y cuánta clorela', ['clorela']],
  ['beetroot', []],
])('“%s” names %j beside a colourant', (text, told) => {
  expect(plantsBeside(...read(text))).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['batter 500 g, rose clay 5 g', ['500 g batter', '5 g powder']],
  ['500 g batter and 5 g rose clay', ['500 g batter', '5 g powder']],
  ['2 cups in olive oil', ['2 cups batter']],
  ['500 g olive oil', ['500 g oil']],
  ['2 tsp of madder for every pound', ['2 tsp powder ppo']],
  ['1 tsp ppo', ['1 tsp powder ppo']],
  ['a 1.5 kg batch (oils)', ['1.5 kg oils']],
  ['900 g loaf, oils that is', ['900 g oils']],
  ['2 lb o, barely pink', ['2 lb oils']],
  ['1 g per 400 g oils', ['1 g powder', '400 g oils']],
  ['4 gramos por kilo de masa', ['4 gramos powder']],
  ['my oils are 640 g', ['640 g oils']],
  ['los aceites pesan 640 g', ['640 g oils']],
  ["oils are 100 and that's 900 g", ['900 g oils']],
  ['60 g mica', ['60 g powder']],
  ['61 g mica', ['61 g unsaid']],
  ['60 g of cocoa', ['60 g powder']],
  ['4 tbsp of cocoa', ['4 tbsp powder']],
  ['rose clay 5 g, mica 3 g', ['5 g unsaid', '3 g unsaid']],
  ['12 bars', []],
  ['2 cups', ['2 cups batter']],
  ['500 g', ['500 g unsaid']],
  ['1 tsp', ['1 tsp powder']],
  ['1 tbsp oil', ['1 tbsp oils']],
  ['oil 1 tbsp, mica 1 tsp', ['1 tbsp oil', '1 tsp powder']],
  ['20 oz oils and 1 oz mica', ['20 oz oils', '1 oz powder']],
  ['800 g in coconut oil', ['800 g unsaid']],
  ['500 g de aceite de coco', ['500 g oil']],
])('“%s” tells %j', (text, told) => {
  expect(amountsOf(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['720 oliva, 80 coco', '720 g oliva , 80 g coco'],
  ['500 g olive, 200 g coconut, superfat 5', '500 g olive , 200 g coconut'],
  ['olive 500 g coconut 200 g', 'olive 500 g coconut 200 g'],
  ['500 de olive, 200 of coconut', '500 g de olive , 200 g of coconut'],
  ['olive and coconut', undefined],
  ['60 olive 40 coconut', '60 olive 40 coconut'],
  ['20 olive 9 coconut', undefined],
  ['500 g olive with lavender', '500 g olive'],
  ['lye for 500 g olive please', '500 g olive'],
  ['how much for 30 g of palm', '30 g of palm'],
])('the oils of “%s” are %s', (text, told) => {
  expect(oilsOf(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['how do I get #7fa37a', '#7fa37a'],
  ['hex 808000', '#808000'],
  ['rgb(120, 80, 90)', '#78505a'],
  ['#fff', '#fff'],
  ['to make olive green', 'olive green'],
  ['quiero un verde oliva', 'verde oliva'],
  ['what teal can i make', 'teal'],
  ['azul y rosa da lila?', 'lila'],
  ['azul + rosa da lila', 'lila'],
  ['verde oliva cómo lo saco, tengo azul', 'verde oliva'],
  ['how do I mix titanium dioxide', undefined],
  ['para que el azul no quede gris', undefined],
  ['a recipe of maize cakes', undefined],
  ['a recipe for a maize colour', 'maize color'],
  ['to get dusty rose with my micas', 'dusty rose'],
  ['mix a light teal for 500 g', 'light teal'],
  ['make 500 g', undefined],
  ['make a very long phrase of many words that is no colour', undefined],
  ['like cement but not cement', undefined],
  ['rosa palo con blanco', undefined],
  ['yellow to get lime', 'lime'],
])('“%s” wishes %s', (text, told) => {
  expect(targetIn(text, ...read(text))?.text).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['how much ultramarine', { job: 'dose', of: 'ultramarine' }],
  ['achiote cuánto', { job: 'dose', of: 'achiote' }],
  ['best green', { job: 'mix', of: 'green' }],
  ['clay how much', { job: 'dose', of: 'clay' }],
  ['how much mica left', undefined],
  ['how much does mica cost', undefined],
  ['is oxide green toxic', { job: 'survives-lye', of: 'oxide green' }],
  ['avocado green', { job: 'mix', of: 'avocado green' }],
  ['verde aguacate?', { job: 'mix', of: 'verde aguacate' }],
  ['orange spots', undefined],
  ['how much ultramarine and mica', undefined],
  ['mejor verde', { job: 'mix', of: 'verde' }],
  ['how much ultramarine blue for 500 g oils please', { job: 'dose', of: 'ultramarine blue' }],
  ['how much ultramarine blue for my sister and her dog', undefined],
  ['does turmeric stay', { job: 'survives-lye', of: 'turmeric' }],
  ['is it safe', undefined],
  ['green', undefined],
  ['how much arcilla', { job: 'dose', of: 'arcilla' }],
])('“%s” plainly asks for %j', (text, told) => {
  expect(plainJobOf(...read(text))).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['what do I get if I put yellow oxide and ultramarine together', true],
  ['does yellow oxide and ultramarine make green or just mud', true],
  ['yellow oxide + ultramarine = ?', true],
  ['swirl yellow oxide and ultramarine, what colour do they make', false],
  ['how do I make green from yellow oxide and ultramarine', false],
  ['1 tsp yellow oxide and 1 tsp ultramarine, what do i get', false],
  ['1:1 yellow oxide and ultramarine, what do i get', true],
  ['yellow oxide, ultramarine and kaolin, what do i get', false],
  ['yellow oxide and a bit of ultramarine gives green?', true],
  ['yellow oxide and ultramarine at the weekend made what colour', false],
  ['yellow oxide beside my nice new jar of ultramarine, what do they make', false],
  ['yellow oxide and ultramarine, gives a nice feel', false],
  ['will yellow oxide and ultramarine last', false],
])('“%s” asks what two make: %s', (text, told) => {
  expect(twoMake(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['50% strength', 'half'],
  ['a 30% mica', undefined],
  ['pastel mica', 'pastel'],
  ['deep red mica, not pale', 'full'],
  ['what would full strength be, barely lilac', 'full'],
  ['cuánto carbón para un gris', 'tint'],
  ['twice as strong', 'double'],
  ['bright', 'full'],
  ['half strength', 'half'],
  ['red mica', undefined],
])('the strength of “%s” is %s', (text, told) => {
  expect(strengthIn(...read(text))).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['ultramarine and a bit of white', 'titanium dioxide pastel'],
  ['blue with lots of white', 'titanium dioxide full'],
  ['azul con un poco de blanco', 'titanium dioxide pastel'],
  ['blue and white', 'titanium dioxide medium'],
  ['blue and white clay', undefined],
  ['white soap', undefined],
  ['azul, blanco', 'titanium dioxide medium'],
  ['blue plus a touch of white', 'titanium dioxide pastel'],
])('the white of “%s” is %s', (text, told) => {
  expect(whiteBeside(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['500 g olive, 200 g coconut', { portion: '700 g oils', oils: '500 g olive , 200 g coconut' }],
  [
    'ultramarine blue and a bit of white',
    {
      named: ['ultramarine blue'],
      mix: 'ultramarine blue + titanium dioxide pastel',
      subject: 'ultramarine blue',
    },
  ],
  ['5% superfat', { superfat: 5, percent: 5 }],
  ['sobreengrasado del 5', { superfat: 5 }],
  ['lye concentration 33%', { percent: 33, concentration: 33 }],
  ['33% lye', { percent: 33, concentration: 33 }],
  ['mica from my shelf', { named: ['mica'], mix: 'mica', fromShelf: true, subject: 'mica' }],
  ['mica on the shelf', { named: ['mica'], mix: 'mica', subject: 'mica' }],
  [
    '2 tsp ppo of mica',
    { named: ['mica'], powder: '2 tsp', strength: '2 tsp ppo', mix: 'mica', subject: 'mica' },
  ],
  ['can i use glitter in soap', { subject: 'glitter' }],
  ['legal en méxico', { country: 'MX' }],
  [
    '300 g batter and 1 tsp mica in oil',
    {
      named: ['mica'],
      portion: '300 g batter',
      size: '300 g batter',
      powder: '1 tsp',
      carrier: 'oil',
      mix: '1 tsp mica',
      subject: 'mica',
    },
  ],
])('“%s” tells %j', (text, told) => {
  expect(factsTold(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  [
    'gold mica 20 g and rose clay 5 g // gold mica,rose clay',
    [
      { item: 'gold mica', amount: '20 g' },
      { item: 'rose clay', amount: '5 g' },
    ],
  ],
  [
    '20 g gold mica, 5 g rose clay // gold mica,rose clay',
    [
      { item: 'gold mica', amount: '20 g' },
      { item: 'rose clay', amount: '5 g' },
    ],
  ],
  [
    'gold mica and rose clay 5 g // gold mica,rose clay',
    [{ item: 'gold mica' }, { item: 'rose clay', amount: '5 g' }],
  ],
  ['gold mica 20 g 5 g rose clay // gold mica,rose clay', [{ item: 'gold mica' }, { item: 'rose clay' }]],
  ['gold mica // gold mica', [{ item: 'gold mica' }]],
  [
    '20 g of gold mica // gold mica,rose clay',
    [{ item: 'gold mica', amount: '20 g' }, { item: 'rose clay' }],
  ],
])('“%s” puts by jars %j', (text, told) => {
  expect(jarsOf(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['do you know any jokes about soap', 'joke'],
  ['whats your favourite colour', 'taste'],
  ['wrong chat sorry', 'wrongChat'],
  ['good night all', 'night'],
  ['are you a bot', 'program'],
  ['remind me tomorrow', 'remind'],
  ['can you draw me a picture', 'draw'],
  ['youre the best', 'praise'],
  ['hello', 'greets'],
  ['hello, how much mica', undefined],
  ['hola buenas', 'greets'],
  ['remind me at 5', undefined],
  ['cuéntame un chiste', 'joke'],
  ['te gusta el rosa', 'taste'],
  ['grupo equivocado', 'wrongChat'],
  ['dile a ana que venga', 'cannot'],
  ['eres un robot', 'program'],
  ['recuérdame mañana', 'remind'],
  ['hazme un dibujo', 'draw'],
  ['eres un sol', 'praise'],
  ['help, a joke', undefined],
  ['joke about lye', undefined],
  ['soap', undefined],
])('“%s” is talk: %s', (text, told) => {
  expect(smallTalkIn(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ["himself says it's cheaper in the shop. Anyway, how do I swirl this", 'how do I swirl this'],
  [
    'my skin burns from it a lot. Anyway, how do I swirl this',
    'my skin burns from it a lot. Anyway, how do I swirl this',
  ],
  ['short. Anyway, how do I swirl this', 'short. Anyway, how do I swirl this'],
  ['la vecina dice que no vale la pena. En fin, cómo hago remolinos', 'cómo hago remolinos'],
  ['no aside at all here', 'no aside at all here'],
])('of “%s” is asked %s', (text, told) => {
  expect(pastAside(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['how do soaps cure', undefined],
  ['is raw soap ok', 'unsure'],
  ['gift ideas for christmas', undefined],
  ['my dog ate a bar', 'unsure'],
  ['why is soap called soap', 'soap-at-large'],
  ['lye', 'unsure'],
  ['the weather', undefined],
  ['soap gifts', undefined],
  ['batter', 'unsure'],
  ['sosa', 'unsure'],
])('of “%s”, not understood, is said %s', (text, told) => {
  expect(heldWhateverIsMeant(text)).toEqual(told);
});

test.each<readonly [text: string, told: unknown]>([
  ['how much mcia for 2 cups', 'how much mica for 2 cups'],
  ['how much ultramarin', 'how much ultramarine'],
  ['stonger please', 'stronger please'],
  ['5 gms', '5 g'],
  ['3 tblsp', '3 tblsp'],
  ['olvie oil 500 g', 'olive oil 500 g'],
  ['tel me somthing', 'tel me somthing'],
  ['verdr', 'verde'],
  ['2 cusp', '2 cups'],
])('“%s” is meant as “%s”', (text, told) => {
  expect(settled(...read(text)).text).toEqual(told);
});
