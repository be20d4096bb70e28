import { expect, test } from 'vitest';
import type { Before } from '../../../../src/engine/questions/leaning/before.ts';
import { leanTold, ran } from './lean-told.ts';

/*
 * How a short turn goes on from what came before it (common practice of chat, no source): what it changes and nothing else, what it asks of it,
 * and where it is asked back. After a recipe whatever is unclear asks for the whole of it.
 */

type Row = readonly [turn: string, told: string | undefined];

const LYE = ran('plan', { oils: '800 g olive, 200 g coconut', superfat: '5' }, { job: 'lye' });
const ONE = ran('plan', { oils: '500 g olive' }, { job: 'lye' });
const OUNCES = ran('plan', { oils: '20 oz lard, 8 oz olive', superfat: '5' }, { job: 'lye' });
const POTASH = ran('plan', { oils: '500 g olive', lye: 'KOH 90%' }, { job: 'lye' });
const SHARES = ran('plan', { oils: '70% olive, 30% coconut', size: '1 kg oils' }, { job: 'lye' });
const ASKED: Before = { kind: 'recipe' };
const ASKED_AGAIN: Before = { kind: 'recipe', hadOne: true };
const MICA = ran('dose', { colourant: 'mica', portion: '1 kilo oils' }, { job: 'dose' });
const CHARCOAL = ran('dose', { colourant: 'charcoal', portion: '500 g oils' }, { job: 'dose' });
const BARE = ran('dose', { colourant: 'mica' }, { job: 'dose' });
const PASTEL = ran(
  'dose',
  { colourant: 'ultramarine blue', portion: '2 cups', strength: 'pastel' },
  { job: 'dose' },
);
const CHECK = ran('colourant check', { item: 'spirulina' }, { job: 'survives-lye', wish: 'green' });
const COFFEE = ran('colourant check', { item: 'coffee' }, { job: 'survives-lye' });
const COLOURS = ran('colourant check', { item: 'food colouring' }, { job: 'survives-lye' });
const TEAL = ran('match', { target: 'teal', portion: '3 cups' }, { job: 'mix' });
const LIGHT = ran('match', { target: 'light teal' }, { job: 'mix' });
const VERDE = ran('match', { target: 'verde oscuro' }, { job: 'mix' });
const PREVIEW = ran('preview', { mix: '2 tsp blue mica', portion: '500 g batter' }, { job: 'preview' });
const TWO = ran('preview', { mix: '1 tsp mica + 1 tsp kaolin' }, { job: 'preview' });
const SHELF = ran('shelf add', { item: 'rose clay', amount: '80 g' }, { job: 'shelf-add' });
const USED = ran('shelf use', { item: 'rose clay', amount: '5 g' });
const SHOWN = ran('shelf show', { item: 'rose clay' });
const FLAW = ran('diagnose', { words: 'it zaps' }, { job: 'diagnose' });
const LAYERS: Before = { kind: 'technique', id: 'layers-how' };
const LUMPS: Before = { kind: 'technique', id: 'no-lumps' };
const THICK: Before = { kind: 'technique', id: 'thick-now' };
const ASH: Before = { kind: 'technique', id: 'ash-avoid' };
const SODA_ASH: Before = { kind: 'matter', id: 'soda-ash-avoided' };
const STAY: Before = { kind: 'technique', id: 'colours-that-stay' };
const CLAYS: Before = { kind: 'technique', id: 'clays-colour' };
const MICAS: Before = { kind: 'technique', id: 'mica-settles' };
const SPLIT: Before = { kind: 'technique', id: 'riced-now', named: 'split-where' };
const LYE_CLOUDY: Before = { kind: 'technique', id: 'lye-cloudy' };
const CLOUDY: Before = { kind: 'matter', id: 'cloudy-lye' };
const WATER: Before = { kind: 'matter', id: 'water-amount' };
const INTO: Before = { kind: 'matter', id: 'lye-into-water' };
const MILK: Before = { kind: 'matter', id: 'milk-at-once' };
const JUG: Before = { kind: 'matter', id: 'glass-jug' };
const ALU: Before = { kind: 'matter', id: 'aluminium' };
const TOO_MUCH: Before = { kind: 'matter', id: 'too-much-in' };
const HURT: Before = { kind: 'emergency', ids: ['lye-skin'] };
const CONTEST: Before = { kind: 'contest' };
const OPEN: Before = { kind: 'open' };

test.each<Row>([
  ["hang on, coconut's 250", 'plan: oils 800 g olive, 250 g coconut; superfat 5'],
  ['no the olive is 750 and coconut 250', 'plan: oils 750 g olive, 250 g coconut; superfat 5'],
  ['sorry, coconut 150, not 200', 'plan: oils 800 g olive, 150 g coconut; superfat 5'],
  ['no, 700 g olive', 'asks whole-recipe'],
  ['wait, 20 superfat', 'plan: oils 800 g olive, 200 g coconut; superfat 20'],
  ['wait, coconut 8 oz', 'asks whole-recipe'],
  ['perdón, el coco son 150', 'plan: oils 800 g olive, 150 g coconut; superfat 5'],
  ['oops lard is 100', 'asks whole-recipe'],
  ['no, coconut is 5 percent more', 'asks whole-recipe'],
  ['correction: coconut 150 and something 20', 'asks whole-recipe'],
  ['espera, el oliva es 750, el coco 250', 'plan: oils 750 g olive, 250 g coconut; superfat 5'],
  ['no, 700 g of olive and 300 g of coconut', 'plan: oils 700 g olive, 300 g coconut; superfat 5'],
  ['no, the olive 750 gravel 20', 'asks whole-recipe'],
  ['wait how much naoh for 800 olive', undefined],
  [
    'the mould only takes 900 of oils, so scale it',
    'plan: oils 720 g olive, 180 g coconut; superfat 5, scaled to-size',
  ],
  ['scale it to 500 g of oils', 'plan: oils 400 g olive, 100 g coconut; superfat 5, scaled to-size'],
  ['ajústalo a 600 g de aceites', 'plan: oils 480 g olive, 120 g coconut; superfat 5, scaled to-size'],
  ['scale it to 500 g of oils and 3 more', undefined],
  ['scale it', undefined],
  ['shrink it to 2 kg oils', undefined],
  ['swap the coconut for lard', 'plan: oils 800 g olive, 200 g lard; superfat 5'],
  ['use lard instead of coconut', 'plan: oils 800 g olive, 200 g lard; superfat 5'],
  ['change 100 of it for lard', 'asks whole-recipe'],
  ['swap 100 g olive for lard', 'plan: oils 700 g olive, 200 g coconut, 100 g lard; superfat 5'],
  ['swap the coconut for gravel', 'asks whole-recipe'],
  ['cambio el coco por manteca de cerdo', 'plan: oils 800 g olive, 200 g manteca de cerdo; superfat 5'],
  ['si saco el coco y pongo girasol', 'plan: oils 800 g olive, 200 g girasol; superfat 5'],
  [
    'and the water at 33%',
    'plan: oils 800 g olive, 200 g coconut; superfat 5; water 33% lye | plan: oils 800 g olive, 200 g coconut; superfat 5; water 33% of oils',
  ],
  [
    'water at 38%',
    'plan: oils 800 g olive, 200 g coconut; superfat 5; water 38% of oils | plan: oils 800 g olive, 200 g coconut; superfat 5; water 38% lye',
  ],
  ['el agua al 30', 'asks whole-recipe'],
  [
    'water 35 percent',
    'plan: oils 800 g olive, 200 g coconut; superfat 5; water 35% lye | plan: oils 800 g olive, 200 g coconut; superfat 5; water 35% of oils',
  ],
  [
    'water at 36%',
    'plan: oils 800 g olive, 200 g coconut; superfat 5; water 36% of oils | plan: oils 800 g olive, 200 g coconut; superfat 5; water 36% lye',
  ],
  ['i leave out the coconut', 'asks whole-recipe'],
  ['without coconut', 'asks whole-recipe'],
  ['sin coco', 'asks whole-recipe'],
  ['the coconut was 40 short in the end', 'asks whole-recipe'],
  ['el coco me quedo 20 corto', 'asks whole-recipe'],
  ['coconut stays out', 'asks whole-recipe'],
  ['leave out the mica', undefined],
  ['add 50 g castor', 'plan: oils 800 g olive, 200 g coconut, 50 g castor; superfat 5'],
  ['and 50 g castor', 'asks whole-recipe'],
  ['50 g castor too', 'plan: oils 800 g olive, 200 g coconut, 50 g castor; superfat 5'],
  ['añado 50 de ricino', 'plan: oils 800 g olive, 200 g coconut, 50 g ricino; superfat 5'],
  ['50 g castor', 'asks whole-recipe'],
  ['add 50 g gravel', undefined],
  ['add 20 g coconut', 'asks whole-recipe'],
  ["if it's potassium I've got", 'plan: oils 800 g olive, 200 g coconut; superfat 5; lye KOH'],
  ['same with NaOH at 8', 'plan: oils 800 g olive, 200 g coconut; superfat 8'],
  ['KOH at 40', 'asks whole-recipe'],
  ['con potasa', 'plan: oils 800 g olive, 200 g coconut; superfat 5; lye KOH'],
  ['sosa al 3', 'plan: oils 800 g olive, 200 g coconut; superfat 3'],
  ['koh', 'plan: oils 800 g olive, 200 g coconut; superfat 5; lye KOH'],
  ['my NaOH is 97%', 'plan: oils 800 g olive, 200 g coconut; superfat 5; purity 97'],
  ['la sosa es del 98', 'plan: oils 800 g olive, 200 g coconut; superfat 5; purity 98'],
  ['my KOH is 90%', 'asks whole-recipe'],
  ['pureza 95', undefined],
  ['95%', 'asks whole-recipe'],
  ['it is 95% pure', 'plan: oils 800 g olive, 200 g coconut; superfat 5; purity 95'],
  ['98 percent lye', undefined],
  ['so does the lye change?', 'asks whole-recipe'],
  ['cambia la sosa?', 'asks whole-recipe'],
  ['the lye still right?', undefined],
  ['i misread it, the coconut is 150', 'plan: oils 800 g olive, 150 g coconut; superfat 5'],
  ['actually coconut 150 olive 850', 'asks whole-recipe'],
  ['coconut 150 olive 850', undefined],
  ['olive was only 700', 'plan: oils 700 g olive, 200 g coconut; superfat 5'],
  ['olive weighed 750 in reality', 'plan: oils 750 g olive, 200 g coconut; superfat 5'],
  ['the palm is 100', 'asks whole-recipe'],
  ['al final el total en 750 g', 'plan: oils 600 g olive, 150 g coconut; superfat 5, scaled to-size'],
  ['make it 500 g total', 'plan: oils 400 g olive, 100 g coconut; superfat 5, scaled to-size'],
  ['total 2 kg', 'plan: oils 1600 g olive, 400 g coconut; superfat 5, scaled to-size'],
  ['mine at 8', 'plan: oils 800 g olive, 200 g coconut; superfat 8'],
  ['at 8', 'plan: oils 800 g olive, 200 g coconut; superfat 8'],
  ['mine is 7%', undefined],
  ['superfat 7', 'plan: oils 800 g olive, 200 g coconut; superfat 7'],
  ['7', 'plan: oils 800 g olive, 200 g coconut; superfat 7'],
  ['15 then', 'plan: oils 800 g olive, 200 g coconut; superfat 15'],
  ['double', 'plan: oils 1600 g olive, 400 g coconut; superfat 5, scaled 2'],
  ['half', 'plan: oils 400 g olive, 100 g coconut; superfat 5, scaled 0.5'],
  ['for 500 g', 'plan: oils 400 g olive, 100 g coconut; superfat 5, scaled to-size'],
  ['700', 'asks whole-recipe'],
  ['no, 700', 'asks whole-recipe'],
  ['less water', 'technique water-amount (less water)'],
  ['can i get away with less', 'technique water-amount (less water)'],
  ['with milk', 'matter liquid-instead'],
  ['milk instead of water', 'matter liquid-instead'],
  ['cerveza', 'matter liquid-instead'],
  ['how much lye', undefined],
  ['how much pink for that', 'dose: colourant ultramarine pink; portion 1000 g oils'],
  ['and rose clay', 'dose: colourant rose clay; portion 1000 g oils'],
  ['pink', 'dose: colourant ultramarine pink; portion 1000 g oils'],
  ['rose clay for 2 cups', undefined],
  ['blue and rose clay', undefined],
  ['8 cups', 'asks whole-recipe'],
  ['in oil', 'asks whole-recipe'],
  ['lighter', 'asks whole-recipe'],
  ['per kilo', 'plan: oils 800 g olive, 200 g coconut; superfat 5, scaled to-size'],
  ['of the lye', 'plan: oils 800 g olive, 200 g coconut; superfat 5'],
  ['de la sosa', 'plan: oils 800 g olive, 200 g coconut; superfat 5'],
  ['lye', undefined],
  ['what if it is beer', undefined],
  ['for 2 cups', 'asks whole-recipe'],
  ['500 g batter', 'asks whole-recipe'],
  ['500 g oils', 'plan: oils 400 g olive, 100 g coconut; superfat 5, scaled to-size'],
  ['in batter', 'asks whole-recipe'],
  ['30', 'plan: oils 800 g olive, 200 g coconut; superfat 30'],
  ['31', 'asks whole-recipe'],
  ['31 superfat', 'asks whole-recipe'],
  ['no, half', 'plan: oils 400 g olive, 100 g coconut; superfat 5, scaled 0.5'],
])('after two oils and their lye: “%s”', (turn, told) => {
  expect(leanTold(turn, LYE)).toBe(told);
});

test.each<Row>([
  ['no, the lard is 18', 'plan: oils 18 oz lard, 8 oz olive; superfat 5'],
  ['no, the lard is 500 g', 'asks whole-recipe'],
  ['hang on lard 19.5 oz', 'asks whole-recipe'],
  ['for 14 oz', 'plan: oils 10 oz lard, 4 oz olive; superfat 5, scaled to-size'],
  ['add 2 castor', 'plan: oils 20 oz lard, 8 oz olive, 2 oz castor; superfat 5'],
  ['swap 5 lard for coconut', 'plan: oils 15 oz lard, 8 oz olive, 5 oz coconut; superfat 5'],
  ['in grams', 'plan: oils 20 oz lard, 8 oz olive; superfat 5, in grams'],
  ['double', 'plan: oils 40 oz lard, 16 oz olive; superfat 5, scaled 2'],
])('after a recipe by ounces: “%s”', (turn, told) => {
  expect(leanTold(turn, OUNCES)).toBe(told);
});

test.each<Row>([
  ['es del 85 la potasa', 'plan: oils 500 g olive; lye KOH 85%'],
  ['my KOH is 85%', 'plan: oils 500 g olive; lye KOH 85%'],
  ['my NaOH is 85%', 'asks whole-recipe'],
  ['with naoh', 'plan: oils 500 g olive'],
  ['double', 'plan: oils 1000 g olive; lye KOH 90%, scaled 2'],
  ['no, 600', 'plan: oils 600 g olive; lye KOH 90%'],
])('after a recipe with potash: “%s”', (turn, told) => {
  expect(leanTold(turn, POTASH)).toBe(told);
});

test.each<Row>([
  ['no, 700', 'plan: oils 700 g olive'],
  ['700', 'asks whole-recipe'],
  ['7', 'asks whole-recipe'],
  ['600', 'asks whole-recipe'],
  ['no 20', 'asks whole-recipe'],
  ['15 then', 'asks whole-recipe'],
])('after one oil and its lye: “%s”', (turn, told) => {
  expect(leanTold(turn, ONE)).toBe(told);
});

test.each<Row>([
  ['for 3 cups', 'dose: colourant mica; portion 3 cups'],
  [
    'half',
    'dose: colourant mica; portion 0.5 kilo oils | dose: colourant mica; portion 1 kilo oils; strength 25% of full',
  ],
  ['split three ways', 'dose: colourant mica; portion 0.3333 kilo oils'],
  ['the blue one', 'dose: colourant blue mica; portion 1 kilo oils'],
  ['blue and green', 'match: target blue green; portion 1 kilo oils'],
  ['white', 'dose: colourant white mica; portion 1 kilo oils'],
  ['grey', 'dose: colourant grey mica; portion 1 kilo oils'],
  ['carmine', 'dose: colourant carmine; portion 1 kilo oils'],
  ['beetroot', 'colourant check: item beetroot'],
  ['same for carmine', 'dose: colourant carmine; portion 1 kilo oils'],
  ['lighter', 'dose: colourant mica; portion 1 kilo oils; strength pastel'],
  ['darker', 'dose: colourant mica; portion 1 kilo oils; strength full'],
  ['8%', undefined],
  ['more green in it', undefined],
  ['in the eu', undefined],
  ['mica and rose clay', undefined],
  ['with water', 'dose: colourant mica; portion 1 kilo oils; carrier water'],
  ['in grams', 'dose: colourant mica; portion 1 kilo oils, in grams'],
  ['rose clay for 500 g', undefined],
  ['500 g', 'dose: colourant mica; portion 500 g oils'],
  ['2 tsp', undefined],
  ['3 tsp of powder', undefined],
  ['its minty not green', 'technique darker-lighter'],
  ['will it fade', 'colourant check: item mica, asked fades'],
  ['why', 'part why'],
  ['thanks', undefined],
  ['no', undefined],
  ['in spanish', 'again'],
  ['lye', 'matter spooned-lye'],
  ['sosa', 'matter spooned-lye'],
  ['ok', 'fine'],
  ['great thanks', undefined],
  ['it came out lovely', 'fine'],
  ['naoh', 'matter spooned-lye'],
  ['of lye', 'asks whole-recipe'],
  ['de la sosa', 'asks whole-recipe'],
  ['add 50 g coconut', 'asks whole-recipe'],
  ['my koh is 90%', undefined],
])('after a dose: “%s”', (turn, told) => {
  expect(leanTold(turn, MICA)).toBe(told);
});

test.each<Row>([
  ['grey', 'dose: colourant charcoal; portion 500 g oils; strength pastel'],
  ['i want grey no black', 'dose: colourant charcoal; portion 500 g oils; strength pastel'],
  ['pink', 'match: target pink; portion 500 g oils'],
])('after a dose of black: “%s”', (turn, told) => {
  expect(leanTold(turn, CHARCOAL)).toBe(told);
});

test.each<Row>([
  ['half', undefined],
  ['lighter', 'dose: colourant mica; strength pastel'],
  ['darker', 'dose: colourant mica; strength full'],
  ['3', undefined],
  ['500 g', 'dose: colourant mica; portion 500 g'],
  ['3 cups', 'dose: colourant mica; portion 3 cups'],
])('after a dose of nothing told: “%s”', (turn, told) => {
  expect(leanTold(turn, BARE)).toBe(told);
});

test.each<Row>([
  ['lighter', 'dose: colourant ultramarine blue; portion 2 cups; strength tint'],
  ['darker', 'dose: colourant ultramarine blue; portion 2 cups; strength medium'],
  ['double', 'dose: colourant ultramarine blue; portion 4 cups; strength pastel'],
  ['half', 'dose: colourant ultramarine blue; portion 1 cups; strength pastel'],
  ['full', 'dose: colourant ultramarine blue; portion 2 cups; strength full'],
  ['2 cups', 'dose: colourant ultramarine blue; portion 2 cups; strength pastel'],
  ['pastel', 'dose: colourant ultramarine blue; portion 2 cups; strength pastel'],
])('after a pale dose: “%s”', (turn, told) => {
  expect(leanTold(turn, PASTEL)).toBe(told);
});

test.each<Row>([
  ['the pink one', undefined],
  ['rose clay', 'colourant check: item rose clay'],
  ['for 500 g', 'dose: colourant spirulina; portion 500 g'],
  ['in oil', 'dose: colourant spirulina; carrier oil'],
  ['in the eu', 'colourant check: item spirulina'],
  ['half', undefined],
  ['lighter', undefined],
  ['8%', undefined],
  ['turquoise', undefined],
  ['with water for 2 cups', 'dose: colourant spirulina; portion 2 cups; carrier water'],
  ['does it fade', 'colourant check: item spirulina, asked fades'],
  ['will it bleed in the bath', 'colourant check: item spirulina, asked bleeds'],
  ['a better one', 'dose: colourant chromium oxide green'],
  ['how much', 'dose: colourant spirulina'],
  ['do i wet it in oil or water', 'dose: colourant spirulina'],
  ['what colour will it be', 'preview: mix spirulina'],
  ['is it safe', 'colourant check: item spirulina'],
  ['why', 'part why'],
  ['does it change the lye?', 'matter takes-no-lye'],
  ['how much oil to steep it', 'technique steep-in-oil'],
  ['steep it', 'technique steep-in-oil'],
  ['in lye water', 'technique colour-in-lye-water'],
])('after what becomes of a green in lye: “%s”', (turn, told) => {
  expect(leanTold(turn, CHECK)).toBe(told);
});

test.each<Row>([
  ['in lye water', 'matter liquid-instead'],
  ['with the water', 'matter liquid-instead'],
  ['en agua con sosa', 'matter liquid-instead'],
])('after what becomes of coffee: “%s”', (turn, told) => {
  expect(leanTold(turn, COFFEE)).toBe(told);
});

test.each<Row>([
  ['the gel ones', 'colourant check: item gel food colouring'],
  ['gel ones', 'colourant check: item gel food colouring'],
  ['the blue ones', undefined],
  ['los de repostería', 'colourant check: item food colouring de reposteria'],
  ['the bath bomb ones', 'technique cosmetic-grade'],
  ['el de bombas de baño', 'technique cosmetic-grade'],
  ['las de gel', 'colourant check: item food colouring de gel'],
  ['better ones', undefined],
])('after food colouring: “%s”', (turn, told) => {
  expect(leanTold(turn, COLOURS)).toBe(told);
});

test.each<Row>([
  ['lighter', 'match: target light teal; portion 3 cups'],
  ['darker', 'match: target dark teal; portion 3 cups'],
  ['more green in it', 'match: target teal but more green; portion 3 cups'],
  ['with water', undefined],
  ['blue', 'match: target blue; portion 3 cups'],
  ['blue and white', 'match: target blue white; portion 3 cups'],
  ['8%', undefined],
  ['rose clay', undefined],
  ['500 g', 'match: target teal; portion 500 g'],
  ['half', 'match: target teal; portion 1.5 cups'],
  ['how much', 'match: target teal; portion 3 cups'],
  ['what will it look like', 'match: target teal; portion 3 cups'],
  ['in grams', 'match: target teal; portion 3 cups, in grams'],
  ['same again', undefined],
])('after a wished colour: “%s”', (turn, told) => {
  expect(leanTold(turn, TEAL)).toBe(told);
});

test.each<Row>([
  ['lighter', 'match: target very light teal'],
  ['darker', 'match: target teal'],
  ['500 g', 'match: target light teal; portion 500 g'],
  ['3', 'match: target light teal; portion 3 cup'],
])('after a pale wish: “%s”', (turn, told) => {
  expect(leanTold(turn, LIGHT)).toBe(told);
});

test.each<Row>([
  ['mas oscuro', 'match: target verde muy oscuro'],
  ['mas claro', 'match: target verde'],
])('after a dark wish: “%s”', (turn, told) => {
  expect(leanTold(turn, VERDE)).toBe(told);
});

test.each<Row>([
  ['green mica', 'preview: mix 2 tsp green mica; portion 500 g batter'],
  ['the pink one', 'preview: mix 2 tsp pink mica; portion 500 g batter'],
  ['for 1 kg', 'preview: mix 2 tsp blue mica; portion 1 kg'],
  ['lighter', undefined],
  ['pastel', undefined],
  ['half', 'preview: mix 2 tsp blue mica; portion 250 g batter'],
  ['rose clay', 'preview: mix 2 tsp rose clay; portion 500 g batter'],
  ['8%', undefined],
])('after a look at a mix: “%s”', (turn, told) => {
  expect(leanTold(turn, PREVIEW)).toBe(told);
});

test.each<Row>([
  ['green mica', undefined],
  ['for 500 g', 'preview: mix 1 tsp mica + 1 tsp kaolin; portion 500 g'],
])('after a look at a mix of two: “%s”', (turn, told) => {
  expect(leanTold(turn, TWO)).toBe(told);
});

test.each<Row>([
  ['100 g', 'shelf add: item rose clay; amount 100 g'],
  ['50', 'shelf add: item rose clay; amount 50 g'],
  ['the pink one', 'shelf add: item pink clay; amount 80 g'],
  ['rose clay', 'shelf add: item rose clay; amount 80 g'],
  ['half', undefined],
  ['mica and kaolin', undefined],
  ['green and blue', undefined],
  ['0', undefined],
])('after a jar put on the shelf: “%s”', (turn, told) => {
  expect(leanTold(turn, SHELF)).toBe(told);
});

test.each<Row>([
  ['10 g', 'shelf use: item rose clay; amount 10 g'],
  ['6', 'shelf use: item rose clay; amount 6 g'],
  ['kaolin', 'shelf use: item kaolin; amount 5 g'],
])('after some of a jar used: “%s”', (turn, told) => {
  expect(leanTold(turn, USED)).toBe(told);
});

test.each<Row>([
  ['the blue one', 'shelf show: item blue'],
  ['and kaolin?', 'shelf show: item kaolin'],
  ['blue and green', undefined],
  ['3', undefined],
  ['half', undefined],
])('after a jar shown: “%s”', (turn, told) => {
  expect(leanTold(turn, SHOWN)).toBe(told);
});

test.each<Row>([
  ['3 weeks', 'part still'],
  ['its been two days', 'part still'],
  ['tres semanas', 'part still'],
  ['next time', 'part next-time'],
  ['why', 'part why'],
  ['how much', 'part how-much'],
  ['is it safe', 'part safe'],
  ['the blue one', undefined],
  ['3 cups', undefined],
])('after a flaw: “%s”', (turn, told) => {
  expect(leanTold(turn, FLAW)).toBe(told);
});

test.each<Row>([
  ['they came apart when i cut it', 'diagnose: words my layers came apart when i cut it'],
  ['las capas se despegaron al cortar', 'diagnose: words mis capas se despegaron al cortar'],
  ['my layers split', 'diagnose: words my layers split'],
  ['and clay?', undefined],
  ['why', 'part why'],
  ['how long', 'part how-long'],
  ['more', 'part more'],
  ['the blue one', undefined],
  ['for 500 g', 'asks amount-of'],
  ['steep it', 'technique steep-in-oil'],
  ['alcohol', undefined],
  ['lye', 'matter spooned-lye'],
  ['in spanish', 'again'],
  ['ok', 'fine'],
])('after layers: “%s”', (turn, told) => {
  expect(leanTold(turn, LAYERS)).toBe(told);
});

test.each<Row>([
  ['and clay?', 'dose: colourant clay'],
  ['rose clay', 'dose: colourant rose clay'],
  ['rose clay and kaolin', undefined],
  ['rose clay for 500 g', undefined],
  ['in oil', 'technique no-lumps'],
  ['with glycerin', 'technique no-lumps'],
  ['3 cups', 'asks amount-of'],
  ['does it change the lye', 'matter takes-no-lye'],
  ['half', undefined],
])('after wetting: “%s”', (turn, told) => {
  expect(leanTold(turn, LUMPS)).toBe(told);
});

test.each<Row>([
  ['in oil', 'technique no-lumps'],
  ['3 cups', 'dose: colourant mica; portion 3 cups'],
  ['lighter', 'dose: colourant mica; portion 1 kilo oils; strength pastel'],
  ['next time', 'part next-time'],
  ['why', 'part why'],
])('after wetting, and a dose before: “%s”', (turn, told) => {
  expect(leanTold(turn, LUMPS, { behind: MICA })).toBe(told);
});

test.each<Row>([
  ['with glycerin', 'technique no-lumps'],
  ['rose clay', undefined],
])('after mica that settles: “%s”', (turn, told) => {
  expect(leanTold(turn, MICAS)).toBe(told);
});

test.each<Row>([['with glycerin', 'technique no-lumps']])(
  'after mica that settles, and two oils and their lye before: “%s”',
  (turn, told) => {
    expect(leanTold(turn, MICAS, { behind: LYE })).toBe(told);
  },
);

test.each<Row>([
  ['and spirulina?', 'colourant check: item spirulina'],
  ['spirulina', 'colourant check: item spirulina'],
  ['in oil', undefined],
  ['pink', undefined],
])('after colours that stay: “%s”', (turn, told) => {
  expect(leanTold(turn, STAY)).toBe(told);
});

test.each<Row>([
  ['does it take more lye', 'matter takes-no-lye'],
  ['cambia la sosa', 'matter takes-no-lye'],
  ['in oil', undefined],
])('after clays: “%s”', (turn, told) => {
  expect(leanTold(turn, CLAYS)).toBe(told);
});

test.each<Row>([
  ['it had clove in it', 'technique scent-speeds'],
  ['rose', 'technique scent-speeds'],
  ['canela', 'technique scent-speeds'],
  ['floral fragrance', 'technique scent-speeds'],
  ['lavender', undefined],
  ['mica', undefined],
])('after thick batter: “%s”', (turn, told) => {
  expect(leanTold(turn, THICK)).toBe(told);
});

test.each<Row>([
  ['alcohol', 'technique ash-avoid (alcohol)'],
  ['would spraying alcohol help', 'technique ash-avoid (alcohol)'],
  ['con alcohol', 'technique ash-avoid (alcohol)'],
  ['salt', undefined],
])('after ash avoided: “%s”', (turn, told) => {
  expect(leanTold(turn, ASH)).toBe(told);
});

test.each<Row>([
  ['isopropyl', 'technique ash-avoid (alcohol)'],
  ['rubbing alcohol', 'technique ash-avoid (alcohol)'],
])('after soda ash: “%s”', (turn, told) => {
  expect(leanTold(turn, SODA_ASH)).toBe(told);
});

test.each<Row>([
  ['still in the pot', 'technique riced-now (split)'],
  ['in a bowl', 'technique riced-now (split)'],
  ['in the mould', undefined],
])('after batter that split: “%s”', (turn, told) => {
  expect(leanTold(turn, SPLIT)).toBe(told);
});

test.each<Row>([
  ['it has grains in it', 'matter undissolved-lye'],
  ['hay grumos', 'matter undissolved-lye'],
])('after cloudy lye water asked as colour: “%s”', (turn, told) => {
  expect(leanTold(turn, LYE_CLOUDY)).toBe(told);
});

test.each<Row>([
  ['lumps at the bottom', 'matter undissolved-lye'],
  ['tiene granitos', 'matter undissolved-lye'],
])('after cloudy lye: “%s”', (turn, told) => {
  expect(leanTold(turn, CLOUDY)).toBe(told);
});

test.each<Row>([
  ['less water', 'technique water-amount (less water)'],
  ['menos agua', 'technique water-amount (less water)'],
  ['a bit less, i want it to set sooner', 'technique water-amount (less water)'],
  ['more water', undefined],
  ['milk', 'matter milk-at-once'],
  ['beer', 'matter liquid-instead'],
  ['con leche', 'matter milk-at-once'],
  ['orange', undefined],
  ['500 g', 'asks whole-recipe'],
  ['coconut', 'asks whole-recipe'],
])('after how much water: “%s”', (turn, told) => {
  expect(leanTold(turn, WATER)).toBe(told);
});

test.each<Row>([
  ['milk', 'matter milk-at-once'],
  ['beer', 'matter liquid-instead'],
  ['jugo', 'matter liquid-instead'],
])('after lye into water: “%s”', (turn, told) => {
  expect(leanTold(turn, INTO)).toBe(told);
});

test.each<Row>([
  ['it went orange', 'matter scorched-milk'],
  ['me quedo marron', 'matter scorched-milk'],
  ['brown', 'matter scorched-milk'],
  ['orange', 'matter scorched-milk'],
])('after milk: “%s”', (turn, told) => {
  expect(leanTold(turn, MILK)).toBe(told);
});

test.each<Row>([
  ['brass', 'matter vessel'],
  ['what about copper', 'matter vessel'],
  ['cast iron pan', 'matter vessel'],
  ['cobre', 'matter vessel'],
  ['plastic', undefined],
  ['lye', undefined],
  ['95% pure naoh', undefined],
  ['my koh is 90%', 'asks whole-recipe'],
  ['add 50 g coconut', 'asks whole-recipe'],
])('after a glass jug: “%s”', (turn, told) => {
  expect(leanTold(turn, JUG)).toBe(told);
});

test.each<Row>([
  ['zinc', 'matter vessel'],
  ['laton', 'matter vessel'],
])('after aluminium: “%s”', (turn, told) => {
  expect(leanTold(turn, ALU)).toBe(told);
});

test.each<Row>([
  ['by 10 g in 1 kg', 'asks lye-over'],
  ['unos 20 g de mas', 'asks lye-over'],
  ['15 g over', 'asks lye-over'],
  ['a lot', 'part too-much'],
  ['why', 'part why'],
  ['500 g', 'asks lye-over'],
  ['coconut', 'asks whole-recipe'],
  ['in grams', undefined],
])('after too much lye: “%s”', (turn, told) => {
  expect(leanTold(turn, TOO_MUCH)).toBe(told);
});

test.each<Row>([
  ['vinegar', undefined],
  ['3 cups', undefined],
  ['500 g', undefined],
  ['why', 'part why'],
  ['lye', undefined],
  ['pink', undefined],
])('after first aid: “%s”', (turn, told) => {
  expect(leanTold(turn, HURT)).toBe(told);
});

test.each<Row>([
  ['when does it close', 'contest'],
  ['can i put in two bars', 'contest'],
  ['and the theme?', 'contest'],
  ['cuándo cierra', 'contest'],
  ['pink', undefined],
  ['why', undefined],
  ['how long', undefined],
  ['lye', 'matter spooned-lye'],
])('after the contest: “%s”', (turn, told) => {
  expect(leanTold(turn, CONTEST)).toBe(told);
});

test.each<Row>([
  ['why', 'asks of-what'],
  ['3 cups', 'asks amount-of'],
  ['lighter', 'asks of-what'],
  ['the blue one', 'asks name-for'],
  ['how much', 'asks which-thing'],
])('after what nobody understood: “%s”', (turn, told) => {
  expect(leanTold(turn, OPEN)).toBe(told);
});

test.each<Row>([
  ['why', undefined],
  ['3 cups', 'dose: colourant mica; portion 3 cups'],
  ['lighter', 'dose: colourant mica; strength pastel'],
  ['how much', 'dose: colourant mica'],
  ['will it bleed', 'colourant check: item mica, asked bleeds'],
  ['in oil', undefined],
  ['500 g', 'dose: colourant mica; portion 500 g'],
  ['is it legal', 'colourant check: item mica'],
  ['what will it look like', 'preview: mix mica'],
  ['how do i wet it', 'dose: colourant mica'],
  ['3 tsp', undefined],
  ['pink', undefined],
])('after what nobody understood, in a talk of mica: “%s”', (turn, told) => {
  expect(leanTold(turn, OPEN, { subject: { named: 'mica', isFresh: true } })).toBe(told);
});

test.each<Row>([
  ['how much', undefined],
  ['3 cups', undefined],
])('after what nobody understood, in a talk of mica a while ago: “%s”', (turn, told) => {
  expect(leanTold(turn, OPEN, { subject: { named: 'mica', isFresh: false } })).toBe(told);
});

test.each<Row>([
  ['how much', 'dose: colourant ultramarine pink; portion 500 g oils'],
  ['a better one', 'dose: colourant ultramarine pink; portion 500 g oils'],
  ['will it fade', 'colourant check: item ultramarine pink, asked fades'],
  ['pastel', undefined],
  ['half', undefined],
  ['blue', undefined],
])('after what nobody understood, in a talk of pink: “%s”', (turn, told) => {
  expect(leanTold(turn, OPEN, { subject: { hue: 'pink', portion: '500 g oils', isFresh: true } })).toBe(told);
});

test.each<Row>([
  ['500 g oils', 'scent for 500 g'],
  ['for 800', 'scent for 800 g'],
  ['for 99', undefined],
  ['for 100', 'scent for 100 g'],
  ['2 cups', undefined],
  ['pink', undefined],
  ['1 kg of oils', 'scent for 1000 g'],
  ['800 g de aceite', 'scent for 800 g'],
])('after what nobody understood, in a talk of scent: “%s”', (turn, told) => {
  expect(leanTold(turn, OPEN, { subject: { isScent: true, isFresh: true } })).toBe(told);
});

test.each<Row>([
  ['how much', 'dose: colourant mica; portion 1 kilo oils'],
  ['3 cups', 'dose: colourant mica; portion 3 cups'],
  ['will it fade', 'colourant check: item mica, asked fades'],
])('after a dose, in a talk of kaolin: “%s”', (turn, told) => {
  expect(leanTold(turn, MICA, { subject: { named: 'kaolin', isFresh: true } })).toBe(told);
});

test.each<Row>([
  ['how much', 'dose: colourant kaolin'],
  ['3 cups', undefined],
  ['will it fade', 'colourant check: item kaolin, asked fades'],
  ['lighter', undefined],
])('after a flaw, in a talk of kaolin: “%s”', (turn, told) => {
  expect(leanTold(turn, FLAW, { subject: { named: 'kaolin', isFresh: true } })).toBe(told);
});

test.each<Row>([
  ['how much', 'part how-much'],
  ['3 cups', undefined],
])('after first aid, in a talk of kaolin: “%s”', (turn, told) => {
  expect(leanTold(turn, HURT, { subject: { named: 'kaolin', isFresh: true } })).toBe(told);
});

test.each<Row>([
  ['next time', 'part next-time behind diagnose'],
  ['still lumpy', 'part still behind diagnose'],
  ['why', 'part why'],
])('after wetting, and a flaw before: “%s”', (turn, told) => {
  expect(leanTold(turn, LUMPS, { behind: FLAW })).toBe(told);
});

test.each<Row>([
  ['how much', 'plan: oils 800 g olive, 200 g coconut; superfat 5'],
  ['will it fade', 'part holds'],
])('after two oils and their lye, in a talk of kaolin: “%s”', (turn, told) => {
  expect(leanTold(turn, LYE, { subject: { named: 'kaolin', isFresh: true } })).toBe(told);
});

test.each<Row>([
  ['why', 'asks of-what'],
  ['lighter', 'asks of-what'],
  ['3 cups', 'asks amount-of'],
  ['8%', 'asks of-what'],
  ['in spanish', 'asks of-what'],
  ['and in english please', 'asks of-what'],
  ['the blue one', 'asks name-for'],
  ['so the blue then', 'asks name-for'],
  ['el azul', 'asks name-for'],
  ['rose clay', undefined],
  ['no rose clay', 'asks name-for'],
  ['how hot', undefined],
  ['will it fade', undefined],
  ['does this fade', 'asks which-thing'],
  ['what now', 'asks what-happened'],
  ['still lumpy', 'asks what-happened'],
  ['next time', 'asks what-happened'],
  ['how long', 'asks of-what'],
  ['same again', 'asks of-what'],
  ['what did i ask you yesterday', 'asks of-what'],
  ['the purple you said', 'asks of-what'],
  ['in the eu', undefined],
  ['half', 'asks of-what'],
  ['lye', undefined],
  ['thanks', undefined],
  ['/dose mica', undefined],
  ['my black is grey', undefined],
  ['is it safe', 'asks which-thing'],
  ['500 g olive', undefined],
  ['add 50 g coconut', 'asks whole-recipe'],
  ['and 50 g coconut too', 'asks whole-recipe'],
  ['of lye', undefined],
  ['in grams', 'asks of-what'],
  ['mica for 500 g', undefined],
  ['el rojo entonces', 'asks name-for'],
])('after nothing: “%s”', (turn, told) => {
  expect(leanTold(turn, undefined)).toBe(told);
});

test.each<Row>([
  ['500 g olive', 'plan: oils 500 g olive'],
  ['500 g olive and 200 coconut', 'plan: oils 500 g olive, 200 g coconut'],
  ['500 g olive only', 'plan: oils 500 g olive'],
  ['add 50 g coconut', 'asks whole-recipe'],
  ['and 50 g coconut too', 'asks whole-recipe'],
  ['without coconut', 'asks whole-recipe'],
  ['my naoh is 97%', 'asks whole-recipe'],
  ['i saved 90 g of it', 'asks whole-recipe'],
  ['lo peso y son 40', 'asks whole-recipe'],
  ['how much water', 'asks whole-recipe'],
  ['how much', 'asks whole-recipe'],
  ['500 g', 'asks whole-recipe'],
  ['olive', 'asks whole-recipe'],
  ['50 castor', 'plan: oils 50 g castor'],
  ['pink', undefined],
  ['rose clay', undefined],
  ['why', undefined],
  ['with milk', 'matter liquid-instead'],
  ['the olive was 40 short', 'asks whole-recipe'],
  ['does the lye change', 'asks whole-recipe'],
  ['the mica', undefined],
  ['of the lye', 'asks whole-recipe'],
  ['3 cups', 'asks whole-recipe'],
  ['is it safe', undefined],
  ['gravel', undefined],
])('after the question which recipe it is: “%s”', (turn, told) => {
  expect(leanTold(turn, ASKED)).toBe(told);
});

test.each<Row>([
  ['500 g olive', 'asks whole-recipe'],
  ['500 g olive only', 'plan: oils 500 g olive'],
  ['500 g olive and 200 coconut', 'plan: oils 500 g olive, 200 g coconut'],
  ['500 g', 'asks whole-recipe'],
])('after that question once more: “%s”', (turn, told) => {
  expect(leanTold(turn, ASKED_AGAIN)).toBe(told);
});

test.each<Row>([
  ['for 500 g', 'plan: oils 70% olive, 30% coconut; size 500 g oils, scaled to-size'],
  ['half', 'plan: oils 70% olive, 30% coconut; size 500 g oils, scaled 0.5'],
  ['double', 'plan: oils 70% olive, 30% coconut; size 2000 g oils, scaled 2'],
  ['for 2 cups', 'asks whole-recipe'],
  ['500 g batter', 'asks whole-recipe'],
  ['for 800 g of oils', 'plan: oils 70% olive, 30% coconut; size 800 g oils, scaled to-size'],
  ['7', 'asks whole-recipe'],
  ['at 8', 'plan: oils 70% olive, 30% coconut; size 1 kg oils; superfat 8'],
])('after a recipe by shares: “%s”', (turn, told) => {
  expect(leanTold(turn, SHARES)).toBe(told);
});
