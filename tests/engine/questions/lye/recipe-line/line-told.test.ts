import { describe, expect, test } from 'vitest';
import { type Row, toldBy, whole } from './told-by.ts';

/*
 * How makers tell whose each weight is, and what of a recipe is its rest, its half, its whole (common practice; from memory). A row that is
 * told whole is the recipe in plain words, beside what was passed by, spelt amiss or changed as it was told; one that is asked is what is
 * unclear of it, and the recipes that it may be.
 */

const WHOLE: readonly Row[] = [
  ['70 20 10 lard coconut olive, 2 lb altogether. lye?', '70% lard, 20% coconut, 10% olive ; 2 lb oils'],
  ['olive and coconut 80:20, 1 kg of oils, lye at 5%', '80% olive, 20% coconut ; 1 kg oils ; superfat 5%'],
  ['lard 2:1 with coconut, 900 g of oils, lye?', '66.6667% lard, 33.3333% coconut ; 900 g oils'],
  [
    'lard, coconut, olive: 400, 250, 350 in that order, grams. lye?',
    '400 g lard, 250 g coconut, 350 g olive',
    { left: ['that order'] },
  ],
  ['lard, olive, coconut = 400, 300, 250 grams. lye?', '400 g lard, 300 g olive, 250 g coconut'],
  [
    'oliva, coco y ricino: 500, 300 y 80 en ese orden, gramos. sosa?',
    '500 g oliva, 300 g coco, 80 g ricino',
    { left: ['en ese orden'] },
  ],
  ['50/30/20 olive coconut palm, 1200 g oils. lye?', '50% olive, 30% coconut, 20% palm ; 1200 g oils'],
  [
    'equal parts olive, coconut and lard, 900 g in all. lye?',
    '33.33% olive, 33.33% coconut, 33.33% lard ; 900 g oils',
  ],
  [
    'a partes iguales oliva y coco, 1 kg en total. sosa al 6',
    '50% oliva, 50% coco ; 1 kg oils ; superfat 6%',
  ],
  ['half tallow half lard, 2 lb altogether. lye?', '50% tallow, 50% lard ; 2 lb oils'],
  [
    '60% olive, 30% coconut, the rest castor, 1 kg oils. lye?',
    '60% olive, 30% coconut, 10% castor ; 1 kg oils',
  ],
  [
    '60% of it olive, a quarter of it coconut, the rest castor, 800 g oils. lye?',
    '60% olive, 25% coconut, 15% castor ; 800 g oils',
  ],
  ['1 kg of oils: 650 olive, 250 coconut, the rest castor. lye?', '650 g olive, 250 g coconut, 100 g castor'],
  ['1 kg de aceites: 650 oliva, 250 coco, lo demás ricino. sosa?', '650 g oliva, 250 g coco, 100 g ricino'],
  [
    'olive the rest, 300 g coconut, 100 g castor, 1 kg oils. lye?',
    '300 g coconut, 100 g castor, 600 g olive',
  ],
  ['32 oz oils: 20 olive, 8 coconut, 4 shea. lye?', '20 oz olive, 8 oz coconut, 4 oz shea'],
  [
    'Coconut 0.30, olive 0.45, tallow 0.25, 1000 g oils. lye?',
    '30% coconut, 45% olive, 25% tallow ; 1000 g oils',
  ],
  ['olive 3 parts, coconut 1 part, 800 g oils. lye?', '75% olive, 25% coconut ; 800 g oils'],
  ['tres partes de oliva, una de coco, 800 g de aceites. sosa?', '75% oliva, 25% coco ; 800 g oils'],
  ['2 lb lard, 1 coconut, 1 olive. lye?', '2 lb lard, 1 lb coconut, 1 lb olive'],
  ['1 kg olive, 300 coconut, 50 castor. lye?', '1 kg olive, 300 g coconut, 50 g castor'],
  ['1.5 kg olive, 500 g coconut, 100 castor. lye?', '1.5 kg olive, 500 g coconut, 100 g castor'],
  ['16 oz olive, 8 coconut, 4 shea. lye?', '16 oz olive, 8 oz coconut, 4 oz shea'],
  ['a pound of lard, twelve ounces coconut, four of castor. lye?', '1 lb lard, 12 oz coconut, 4 oz castor'],
  ['medio kilo de manteca de cerdo, medio de sebo. sosa?', '0.5 kg manteca de cerdo, 0.5 kg sebo'],
  ['500 g olive, half as much coconut. lye?', '500 g olive, 250 g coconut'],
  ['500 g olive, 200 g coconut, as much castor as coconut. lye?', '500 g olive, 200 g coconut, 200 g castor'],
  [
    '400 g olive, 200 g coconut, and as much lard as those two together. lye?',
    '400 g olive, 200 g coconut, 600 g lard',
  ],
  ['300 de oliva, otro tanto de coco, gramos. sosa?', '300 g oliva, 300 g coco'],
  ['olive 400, coconut 200, castor 50, all in grams. lye?', '400 g olive, 200 g coconut, 50 g castor'],
  ['weights are ounces: olive 20, coconut 8, castor 2. lye?', '20 oz olive, 8 oz coconut, 2 oz castor'],
  ['todo en gramos: oliva 400, coco 200. sosa?', '400 g oliva, 200 g coco'],
  ['500 g each of olive, coconut and lard. lye?', '500 g olive, 500 g coconut, 500 g lard'],
  ['200 g de cada uno: oliva, coco, ricino. sosa?', '200 g oliva, 200 g coco, 200 g ricino'],
  [
    '400 g olive, 200 g coconut. no wait, 250 coconut. lye?',
    '400 g olive, 250 g coconut',
    { isTurned: true },
  ],
  ['400 g olive, 200 g coconut. Sorry, 450 olive. lye?', '450 g olive, 200 g coconut', { isTurned: true }],
  ['10 oz coconut instead of 8, 20 oz olive. lye?', '10 oz coconut, 20 oz olive'],
  [
    '400 g olive, 200 g coconut, 60 g castor. Leave out the castor. lye?',
    '400 g olive, 200 g coconut',
    { isTurned: true },
  ],
  [
    '400 g oliva, 200 g coco, 60 g ricino. Sin el ricino. sosa?',
    '400 g oliva, 200 g coco',
    { isTurned: true },
  ],
  [
    '400 g olive, 200 g coconut, swap the coconut for babassu. lye?',
    '400 g olive, 200 g babassu',
    { isTurned: true },
  ],
  ['No palm; tallow in its place, 300 g; 500 g olive. lye?', '500 g olive, 300 g tallow', { isTurned: true }],
  ['400 g olive, 200 g palm, lard instead of the palm. lye?', '400 g olive, 200 g lard', { isTurned: true }],
  [
    'en vez de palma le pongo sebo: 400 g oliva, 200 g palma. sosa?',
    '400 g oliva, 200 g sebo',
    { left: ['le pongo'], isTurned: true },
  ],
  [
    'Double this: 400 g olive, 200 g coconut. lye?',
    '400 g olive, 200 g coconut ; 1200 g oils',
    { isTurned: true },
  ],
  [
    'half of this: 400 g olive, 200 g coconut. lye for the half?',
    '400 g olive, 200 g coconut ; 300 g oils',
    { isTurned: true },
  ],
  [
    'el doble de esto: 400 g oliva, 200 g coco. sosa para el doble?',
    '400 g oliva, 200 g coco ; 1200 g oils',
    { isTurned: true },
  ],
  [
    '400 g olive, 200 g coconut, scale it to 900 g. lye?',
    '400 g olive, 200 g coconut ; 900 g oils',
    { isTurned: true },
  ],
  [
    '400 g oliva y 200 g coco, pero quiero hacer 1,2 kg de aceites. sosa?',
    '400 g oliva, 200 g coco ; 1.2 kg oils',
    { left: ['pero'], isTurned: true },
  ],
  [
    '400 g olive, 200 g coconut, 228 g water, so 828 g all together. lye?',
    '400 g olive, 200 g coconut, 228 g water',
  ],
  ['400 g olive and 200 g coconut, 600 g in all. lye?', '400 g olive, 200 g coconut'],
  [
    '400 g olive, 200 g coconut, 180 g water, 85 g lye. is it right?',
    '400 g olive, 200 g coconut, 180 g water, 85 g lye',
  ],
  [
    '400 g olive, 200 g coconut, superfat 5, no make that 8. lye?',
    '400 g olive, 200 g coconut ; superfat 8%',
  ],
  ['400 g olive, 200 g coconut, superfat 20, yes 20. lye?', '400 g olive, 200 g coconut ; superfat 20%'],
  ['400 g olive, 200 g coconut, no superfat. lye?', '400 g olive, 200 g coconut ; superfat 0%'],
  ['400 g oliva, 200 g coco, sobreengrasado 7. sosa?', '400 g oliva, 200 g coco ; superfat 7%'],
  ['400 g oliva, 200 g coco, sosa al 5', '400 g oliva, 200 g coco ; superfat 5%'],
  ['400 g olive, 200 g coconut, lye at 33% solution. lye?', '400 g olive, 200 g coconut ; 33% solution'],
  ['400 g olive, 200 g coconut, water 2:1. lye?', '400 g olive, 200 g coconut ; water 2:1'],
  ['400 g olive, 200 g coconut, water twice the lye. lye?', '400 g olive, 200 g coconut ; water 2:1'],
  ['400 g olive, 200 g coconut, KOH 90% pure. how much?', '400 g olive, 200 g coconut ; 90% pure ; koh'],
  ['400 g olive, 200 g coconut with pure KOH. how much?', '400 g olive, 200 g coconut ; koh purity 100%'],
  ['400 g olive, 200 g coconut, 100 g milk instead of water. lye?', '400 g olive, 200 g coconut, 100 g milk'],
  [
    '400 g olive, 200 g coconut, 200 g goat milk, 5% superfat. lye?',
    '400 g olive, 200 g coconut, 200 g goat milk ; superfat 5%',
  ],
  ['500 g olive, 200 g coconut, 10 g honey. lye?', '500 g olive, 200 g coconut, 10 g honey'],
  [
    '400 g olive, 200 g coconut, half the water as buttermilk. lye?',
    '400 g olive, 200 g coconut ; buttermilk',
  ],
  [
    '400 g olive, 200 g cocnut. lye?',
    '400 g olive, 200 g coconut',
    { respelt: [{ typed: 'cocnut', read: 'coconut' }] },
  ],
  ['two oils: 400 g olive, 200 g coconut. lye?', '400 g olive, 200 g coconut'],
  ['400 g olive, 200 g coconut, the olive smells lovely. lye?', '400 g olive, 200 g coconut'],
  ['A 100% coconut bar, 24 oz coconut oil, superfat 20. lye?', '24 oz coconut oil ; superfat 20%'],
  ['900 g of oils, all olive. lye?', '100% olive ; 900 g oils'],
  ['for 1 kg 70 olive 30 coconut. lye?', '70% olive, 30% coconut ; 1 kg oils'],
  ['1 kilo de manteca. sosa?', '1 kg manteca', { respelt: [{ typed: 'manteca', read: 'manteca de cerdo' }] }],
  [
    '400 g olive, 200 g coconut, triple it. lye?',
    '400 g olive, 200 g coconut ; 1800 g oils',
    { isTurned: true },
  ],
  [
    'a twentieth of the fats left over, 400 g olive 200 g coconut. lye?',
    '400 g olive, 200 g coconut ; superfat 5%',
  ],
  [
    '95% of the lye it needs, 400 g olive 200 g coconut. how much?',
    '400 g olive, 200 g coconut ; superfat 5%',
  ],
  ['400 g olive, 200 g coconut, 20 g lavender essential oil. lye?', '400 g olive, 200 g coconut'],
  ['400 g de oliva, 200 g de coco, 15 g de aceite esencial de romero. sosa?', '400 g oliva, 200 g coco'],
  ['500g olive/200g coconut/50g castor sf5', '500 g olive, 200 g coconut, 50 g castor ; superfat 5%'],
  ['500g olive+200g coconut+50g castor @5%', '500 g olive, 200 g coconut, 50 g castor ; superfat 5%'],
  ['olive 500 coconut 200 castor 50 g lye', '500 g olive, 200 g coconut, 50 g castor'],
  ['I mixed 250 g rice bran with 500 g olive. lye?', '250 g rice bran, 500 g olive', { left: ['i mixed'] }],
  ['400 g olive, 200 g coconut from the butcher. lye?', '400 g olive, 200 g coconut', { left: ['butcher'] }],
  ['400 g olive, 200 g lard from the butcher. lye?', '400 g olive, 200 g lard', { left: ['butcher'] }],
];

const ASKED: readonly Row[] = [
  [
    '60 oz of lard, three quarters of the batch, coconut the other quarter. lye?',
    'three quarters of the batch',
    { isTurned: true },
  ],
  ['400 g olive, 200 g coconut, half that of castor. lye?', 'half that of'],
  ['400 g olive, not 500. 200 g coconut. lye?', '500'],
  ['400 g de oliva, 200 g de coco; cambia el coco por babasú. sosa?', 'babasu'],
  ['400 g olive and 200 g coconut, 700 g in all. lye?', '400 g, 200 g'],
  [
    '400 g olive 200 g coconut superfat 5%, also 3% superfat on top. lye?',
    '5% superfat',
    { why: 'fats', fats: { one: '3%', other: '5% superfat' } },
  ],
  ['400 g olive, 200 g coconut, koh not naoh. lye?', 'NaOH, KOH', { why: 'alkalis' }],
  ['400 g olive, 200 g coconut, sosa y potasa. lye?', 'NaOH, KOH', { why: 'alkalis' }],
  [
    'My sister uses 300 g tallow; I use 500 g olive and 200 g coconut. lye?',
    'my sister uses 300 g tallow; i use 500 g olive and 200 g coc',
    { why: 'planned', isTurned: true },
  ],
  [
    'the book says 500 g olive, 200 g coconut. I poured 520 olive. lye?',
    '520 olive',
    { why: 'twice', twice: { name: 'olive', one: '500 g', other: '520' } },
  ],
  ['400 g olive, 200 g coconut, 100. lye?', '100'],
  ['olive, 200 g coconut. lye?', 'olive'],
  ['400 g olive or 400 g canola. lye?', 'olive or 400 g canola'],
  ['400 g olive, 200 g palmiche. lye?', '200 g'],
  ['three oils: 400 g olive, 200 g coconut. lye?', '3'],
  [
    '400 g olive, 200 g coconut and 400 g olive again. lye?',
    '400 g olive',
    { why: 'twice', twice: { name: 'olive', one: '400 g', other: '400 g' } },
  ],
  [
    '400 g olive, 200 g coconut, 450 g olive. lye?',
    '450 g olive',
    { why: 'twice', twice: { name: 'olive', one: '400 g', other: '450 g' } },
  ],
  [
    '400 g olive, 200 g coconut, the olive is still in the car. lye?',
    'olive',
    { why: 'doubt', doubt: ['olive'], ways: ['400 g olive, 200 g coconut', '200 g coconut'], isTurned: true },
  ],
  ['lard, 700 g. coconut, 220. lye?', '220'],
  ['400 g olive, 200 g coconut, 50 g oat oil. lye?', 'oat oil'],
  [
    '400 g olive, 200 g coconut, another spoon of lye. ok?',
    'another spoon',
    { why: 'words', ways: ['400 g olive, 200 g coconut'] },
  ],
  ['70% olive, 40% coconut, 1 kg. lye?', '70%, 40%', { why: 'sum', sum: 110 }],
  ['400 g olive, 30% coconut. lye?', '400 g, 30%'],
  ['400 ml olive, 200 g coconut. lye?', '400 ml, 200 g'],
  ['400 g olive, 200 g coconut, two thirds of that. lye?', 'two thirds', { isTurned: true }],
  [
    '400 g olive, 200 g coconut, leave the coconut out and no castor. lye?',
    'coconut',
    { why: 'doubt', doubt: ['coconut'], ways: ['400 g olive, 200 g coconut', '400 g olive'], isTurned: true },
  ],
  [
    'tengo 400 g de oliva y 200 de coco pero el coco no lo uso. sosa?',
    'coco',
    { why: 'doubt', doubt: ['coco'], ways: ['400 g oliva, 200 g coco', '400 g oliva'], isTurned: true },
  ],
  [
    'I had 500 g olive, gave 100 away, so 400 olive and 200 coconut, grams. lye?',
    '400 olive',
    { why: 'twice', twice: { name: 'olive', one: '500 g', other: '400' } },
  ],
  ['400 g olive 200 g coconut, 2% lavender. lye?', '2%'],
  ['500 g of oil and 200 g coconut. lye?', '200 g'],
  ['500 g de aceite para jabon, 200 g de coco. sosa?', '200 g'],
];

describe('a recipe told in chat', () => {
  test.each(whole(WHOLE))('is whole where every weight has its oil: %s', (text, line, beside) => {
    expect(toldBy(text)).toEqual({ line, ...beside });
  });

  test.each(whole(ASKED))(
    'is asked where a weight may be of another, or of nothing: %s',
    (text, unclear, beside) => {
      expect(toldBy(text)).toEqual({ why: 'place', unclear, ...beside });
    },
  );
});
