import { expect, test } from 'vitest';
import { foundIn } from '../../../../src/engine/questions/found/found-in.ts';
import { wishIn, wishOfThing } from '../../../../src/engine/questions/found/target-in.ts';

/* Which colour is wished, and which oils are weighed, in makers' own words (from memory). */

test.each<
  readonly [text: string, target: string | undefined, wish: string | undefined, ofThing: string | undefined]
>([
  ['how do I get sage green', 'sage green', 'sage green', 'sage green'],
  ['I want a dusty rose', 'dusty rose', 'dusty rose', 'dusty rose'],
  ['I want a dusty pale rose', 'dusty pale rose', 'pale rose', 'pale rose'],
  ['match #a1b2c3', '#a1b2c3', undefined, undefined],
  ['a colour like #ff8800 please', '#ff8800', undefined, undefined],
  ['quiero un verde salvia', 'verde salvia', 'verde salvia', 'verde salvia'],
  ['quiero un verde salvia clarito', 'verde salvia clarito', 'verde salvia clarito', 'verde salvia clarito'],
  ['busco un azul cielo', 'azul cielo', 'azul cielo', 'azul cielo'],
  ['azul oscuro', undefined, 'azul oscuro', 'azul oscuro'],
  ['que no parezca cemento, gris perla', undefined, 'gris perla', 'gris perla'],
  ['not like asphalt, a soft grey', undefined, 'soft grey', 'soft grey'],
  ['olive green', undefined, 'olive green', 'olive green'],
  ['teal or navy', undefined, 'teal', 'teal'],
  ['calipso', undefined, undefined, 'calipso'],
  ['como las orquídeas', undefined, undefined, 'orquideas'],
  ['midnight blue', undefined, 'midnight blue', 'midnight blue'],
  ['burnt orange', undefined, 'burnt orange', 'burnt orange'],
  ['a very deep burgundy, almost black', undefined, 'almost black', 'almost black'],
  ['how would I make terracotta', 'terracotta', 'terracotta', 'terracotta'],
  ['mauve, how', 'mauve', 'mauve', 'mauve'],
  ['forest green mica', undefined, undefined, undefined],
  ['gold', undefined, 'gold', 'gold'],
  ['gold mica', undefined, undefined, undefined],
  ['what goes into lilac', undefined, 'lilac', 'lilac'],
  ['olive', undefined, 'olive', 'olive'],
  ['half olive half lard', undefined, 'olive', 'olive'],
])('a colour that is wished: %s', (text, target, wish, ofThing) => {
  const { words, found } = foundIn(text);
  expect(found.facts.target?.text).toBe(target);
  expect(wishIn(words, found.things)?.text).toBe(wish);
  expect(wishOfThing(words, found.things)?.text).toBe(ofThing);
});

test.each<readonly [text: string, oils: string | undefined]>([
  ['olive green for 500 g olive oil', undefined],
  ['that dark green olive oil', undefined],
  ['olive green', undefined],
  ['500 g olive, 200 g coconut', '500 g olive , 200 g coconut'],
  ['720 oliva, 80 coco', '720 g oliva , 80 g coco'],
  ['720 oliva, 80 coco, superfat 5', '720 g oliva , 80 g coco'],
  ['olive 500 g and coconut 200 g with 5% superfat', 'olive 500 g and coconut 200 g'],
  ['olive 500 g, coconut 200 g, mica 5 g', 'olive 500 g , coconut 200 g'],
  ['500 g de oliva y 200 g de coco con arcilla', '500 g de oliva y 200 g de coco'],
  ['500 g olive', '500 g olive'],
  ['olive', undefined],
  ['60 olive 40 coconut', '60 olive 40 coconut'],
  ['500 g olive, 200 g of something', '500 g olive'],
  ['lard 16 oz, coconut 8 oz', 'lard 16 oz , coconut 8 oz'],
  ['16 oz lard + 8 oz coconut', '16 oz lard + 8 oz coconut'],
  ['olive and coconut, 500 g', undefined],
  ['1 kg de manteca', '1 kg de manteca'],
  ['half olive half lard', undefined],
])('oils: %s', (text, oils) => {
  expect(foundIn(text).found.facts.oils).toBe(oils);
});
