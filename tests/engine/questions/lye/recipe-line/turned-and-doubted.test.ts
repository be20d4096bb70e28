import { expect, test } from 'vitest';
import { type Row, toldBy, whole } from './told-by.ts';

/*
 * What a recipe tells of its whole, of what was swapped, left out, doubled and put right, and in which pot it is (common practice; from memory).
 * Whatever leaves it open which weights are meant is asked.
 */

const WHOLE: readonly Row[] = [
  ['100 oz oils: 60 olive, 40 coconut. lye?', '60 oz olive, 40 oz coconut'],
  ['100 oz oils: 60 olive, 41 coconut. lye?', '60 oz olive, 41 oz coconut'],
  ['100 oz oils: 60 olive, 39 coconut, lye?', '60 oz olive, 39 oz coconut'],
  [
    'oliva, coco: 400, 250 en ese orden, gramos, sosa?',
    '400 g oliva, 250 g coco',
    { left: ['en ese orden'] },
  ],
  ['oliva, coco: 400, 250 en orden, gramos, sosa?', '400 g oliva, 250 g coco', { left: ['en orden'] }],
  ['olive, coconut: 400, 250 respectively, lye?', '400 g olive, 250 g coconut', { left: ['respectively'] }],
  ['was a 500 g batch: 300 g olive, 200 g coconut, lye?', '300 g olive, 200 g coconut'],
  ['500 g olive, 200 g coconut, sorry, 90, lye?', '500 g olive, 90 g coconut', { isTurned: true }],
  ['500 g olive, 200 g coconut, sorry, 2 oz, lye?', '500 g olive, 2 oz coconut', { isTurned: true }],
  ['500 g olive, 200 g coconut, so 200 lard, lye?', '500 g olive, 200 g coconut, 200 g lard'],
  ['400 g for olive and 200 g coconut, lye?', '400 g olive, 200 g coconut'],
  ['is 142 g lye too much for cottonseed 600 g?', '600 g cottonseed, 142 g lye'],
  ['142 g lye for 600 g cottonseed and 200 g coconut', '600 g cottonseed, 200 g coconut, 142 g lye'],
  ['superfat 5, superfat 5%, 500 g olive, lye?', '500 g olive ; superfat 5%', { left: ['superfat'] }],
  ['500 g olive, superfat 5, discount, lye?', '500 g olive ; superfat 5%', { left: ['discount'] }],
  ['not 500 g olive but 400 g, lye?', '400 g olive', { isTurned: true }],
  ['500 g olive not palm, lye?', '500 g olive', { isTurned: true }],
  ['500 g olive, no coconut oil, lye?', '500 g olive', { isTurned: true }],
  ['300 g lard instead of palm, 200 g olive, lye?', '300 g lard, 200 g olive', { isTurned: true }],
  ['replaced the water with milk, 500 g olive, lye?', '500 g olive ; milk'],
  ['800 g of all oils: 60% olive 40% coconut, lye?', '60% olive, 40% coconut ; 800 g oils'],
  ['olive 300 coconut 200 for 500 g of oils total, lye?', '300 g olive, 200 g coconut'],
  ['900 of oil: 60% olive 40% lard, lye?', '60% olive, 40% lard ; 900 g oils'],
  ['lye for 20 g olive?', '20 g olive'],
  ['500 g olive, 200 g coconut, the olive is old, lye?', '500 g olive, 200 g coconut'],
  ['500 g olive, 200 g coconut, the coconut smells nice, lye?', '500 g olive, 200 g coconut'],
  ['500 g olive, 200 g coconut, 1 tbsp sugar, lye?', '500 g olive, 200 g coconut ; sugar'],
  ['500 g olive, 200 g coconut, water 200 g, lye?', '500 g olive, 200 g coconut, 200 g water'],
  ['500 g olive, 200 g coconut, water 2 parts to 1 of lye, lye?', '500 g olive, 200 g coconut ; water 2:1'],
  ['500 g olive, 200 g coconut, half the water as milk, lye?', '500 g olive, 200 g coconut ; milk'],
  ['500 g olive, the other 200 g coconut, lye?', '500 g olive, 200 g coconut', { left: ['other'] }],
  ['500 g olive, twice as much lard, lye?', '500 g olive, 1000 g lard'],
  ['half lard, half olive, 1 kg, lye?', '50% lard, 50% olive ; 1 kg oils'],
  ['two thirds lard, one third olive, 900 g oils, lye?', '66.6667% lard, 33.3333% olive ; 900 g oils'],
  ['a quarter castor, the rest olive, 1 kg oils, lye?', '25% castor, 75% olive ; 1 kg oils'],
  ['10% castor, rest olive, 1 kg, lye?', '10% castor, 90% olive ; 1 kg oils'],
  ['10% castor, 89% olive, 1 kg oils, lye?', '10% castor, 89% olive ; 1 kg oils'],
  ['10% castor, 89.5% olive, 1 kg oils, lye?', '10% castor, 89.5% olive ; 1 kg oils'],
  [
    'triple: 500 g olive, 200 g coconut, lye?',
    '500 g olive, 200 g coconut ; 2100 g oils',
    { isTurned: true },
  ],
  [
    'triplica esto: 500 g oliva, 200 g coco, sosa?',
    '500 g oliva, 200 g coco ; 2100 g oils',
    { isTurned: true },
  ],
  ["double this: 14 oz olive, what's the lye doubled?", '14 oz olive ; 793.7866 g oils', { isTurned: true }],
  [
    '500 g de oliva mas 200 de coco, 60 de ricino, sosa al 5',
    '500 g oliva, 200 g coco, 60 g ricino ; superfat 5%',
  ],
  ['500 g de oliva, coco 200, agua 190, sosa?', '500 g oliva, 200 g coco, 190 g agua'],
  ['500 g de oliva, coco la mitad, sosa?', '500 g oliva, 250 g coco'],
  ['500 g de oliva, el resto coco, 800 g en total, sosa?', '500 g oliva, 300 g coco'],
  ['500 g de oliva, 200 g de coco, perdon 250, sosa?', '500 g oliva, 250 g coco', { isTurned: true }],
  ['500 g de oliva en vez de palma, 200 g de coco, sosa?', '500 g oliva, 200 g coco', { isTurned: true }],
  ['500 g de oliva sin coco, sosa?', '500 g oliva', { isTurned: true }],
];
test.each(whole(WHOLE))('“%s” is %s', (text, line, beside) => {
  expect(toldBy(text)).toEqual({ line, ...beside });
});

const ASKED: readonly Row[] = [
  ['60 oz of lard is three quarters, coconut a quarter, lye?', '60 oz'],
  ['600 g lard, three quarters lard, a quarter coconut, lye?', '600 g, three quarters, a quarter'],
  [
    '600 g lard, 200 g olive, three quarters lard, a quarter coconut, lye?',
    '600 g, 200 g, three quarters, a quarter',
  ],
  ['600 g lard, half lard, a quarter coconut, lye?', '600 g, half, a quarter'],
  ['olive, coconut and lard: 400, 250 in that order, lye?', '250'],
  [
    'resize this: was a 500 g batch, now 2 kg of oils: 300 g olive, 200 g coconut, lye?',
    '2 kg',
    { isTurned: true },
  ],
  ['500 g olive, 200 g coconut, sorry, 1100, lye?', '1100', { isTurned: true }],
  ['i only have 14 oz in the jar, so 14 oz coconut, 20 oz olive, lye?', '14 oz'],
  ['olive 400 g 200 g coconut, lye?', '400 g'],
  ['olive 400 g coconut 200 g 100 g lard, lye?', '400 g'],
  [
    '500 g olive, superfat 5, 6% lye discount too, lye?',
    '5% superfat',
    { why: 'fats', fats: { one: '6%', other: '5% superfat' } },
  ],
  ['500 g olive, superfat 5, 5% lye discount, lye?', '5'],
  ['palm swapped with lard, 300 g palm, 200 g olive, lye?', 'lard'],
  ['olive 300 coconut 200 lard 100 700 g oil, lye?', '300, 200, 100'],
  ['each of olive, coconut, lard, lye?', 'olive'],
  [
    'how much lye for 500 g of each of olive and coconut with both lyes?',
    'both lyes',
    { why: 'words', ways: ['500 g olive, 500 g coconut'] },
  ],
  ['what lye for olive, coconut and lard, 300 g each? koh and naoh', 'NaOH, KOH', { why: 'alkalis' }],
  [
    '500 g olive (my mum uses 400), 200 g coconut, lye?',
    '500 g olive my mum uses 400 , 200 g coconut, lye ;',
    { isTurned: true, why: 'planned' },
  ],
  [
    '500 g olive, 200 g coconut: my neighbour does 300 g lard, lye?',
    '500 g olive, 200 g coconut: my neighbour does 300 g lard, ly',
    { isTurned: true, why: 'planned' },
  ],
  [
    '500 g olive and 200 g coconut in one pot, 300 g lard in the other, lye?',
    'in the other one',
    {
      why: 'doubt',
      doubt: ['lard', 'coconut'],
      ways: [
        '500 g olive, 200 g coconut, 300 g lard',
        '500 g olive, 200 g coconut',
        '500 g olive, 300 g lard',
        '500 g olive',
      ],
    },
  ],
  [
    '500 g olive in the pot, 200 g coconut in a jug, lye?',
    'jug',
    { why: 'doubt', doubt: ['coconut'], ways: ['500 g olive, 200 g coconut', '500 g olive'] },
  ],
  [
    'a jug of 500 g olive, another jug of 300 g lard, lye?',
    'another jug',
    { why: 'doubt', doubt: ['lard'], ways: ['500 g olive, 300 g lard', '500 g olive'] },
  ],
  [
    '500 g olive, and 200 g coconut i poured away, lye?',
    'away',
    { why: 'doubt', doubt: ['coconut'], ways: ['500 g olive, 200 g coconut', '500 g olive'] },
  ],
  [
    '500 g olive, 200 g coconut, i forgot the coconut, lye?',
    'coconut',
    { why: 'doubt', isTurned: true, doubt: ['coconut'], ways: ['500 g olive, 200 g coconut', '500 g olive'] },
  ],
  [
    '500 g olive, 200 g coconut, actually no coconut, lye?',
    'coconut',
    { why: 'doubt', isTurned: true, doubt: ['coconut'], ways: ['500 g olive, 200 g coconut', '500 g olive'] },
  ],
  [
    '500 g olive, 200 g coconut, take back the olive, lye?',
    'olive',
    { why: 'doubt', isTurned: true, doubt: ['olive'], ways: ['500 g olive, 200 g coconut', '200 g coconut'] },
  ],
  ['500 g olive, some coconut, lye?', 'coconut'],
  ['500 g olive, a splash of castor, lye?', 'castor'],
  ['500 g olive, 200 g coconut, 20 g lavender, lye?', '20 g'],
  ['500 g olive, same of coconut, double of lard, lye?', 'lard', { isTurned: true }],
  ['500 g olive, coconut half of that, lye?', 'coconut', { isTurned: true }],
  ['500 g olive, a third as much castor, lye?', 'as much'],
  ['10% castor, 95% olive, 1 kg oils, lye?', '10%, 95%', { why: 'sum', sum: 105 }],
  ['make it three times: 500 g olive, 200 g coconut, lye?', '3', { isTurned: true }],
  ['two thirds of this: 600 g olive, 300 g coconut, lye?', 'two thirds', { isTurned: true }],
  ['a third of this: 600 g olive, 300 g coconut, lye?', 'a third', { isTurned: true }],
  ['a quarter of: 600 g olive, 300 g coconut, lye?', 'a quarter', { isTurned: true }],
  ['x4 500 g olive 200 g coconut, lye?', 'x4', { isTurned: true }],
  ['500 g olive x 2, 200 g coconut, lye?', 'x 2', { isTurned: true }],
  ['i doubled it: 14 oz olive, double, lye?', 'double', { isTurned: true }],
  [
    '500 g de oliva y otros 200 de coco, sosa?',
    'otros',
    { why: 'doubt', doubt: ['coco'], ways: ['500 g oliva, 200 g coco', '500 g oliva'] },
  ],
  [
    '500 g de oliva, 200 g de coco, no, 250 de coco, sosa?',
    '250 coco',
    { why: 'twice', twice: { name: 'coco', one: '200 g', other: '250' } },
  ],
  ['500 g de oliva, coco no, sosa?', 'coco'],
  ['500 g de oliva y un poco de coco, sosa?', 'coco'],
];
test.each(whole(ASKED))('“%s” is asked: %s', (text, unclear, beside) => {
  expect(toldBy(text)).toEqual({ why: 'place', unclear, ...beside });
});
