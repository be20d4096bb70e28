import { describe, expect, test } from 'vitest';
import { isAskedBack, readInChat, refusalOf } from '../../../read-in-chat.ts';

/* How a maker puts a figure right further on in the message (from memory; the words are our own). */

describe('a superfat that is plainly put right later is the last of the two, whatever stands between', () => {
  test.each([
    ['lye for 1 kg tallow with 0% superfat... sorry no, that’s my laundry soap. It’s salt bars so 20', '20'],
    ['lye for 1 kg tallow with 20% superfat... sorry no, thats my salt bars. its laundry soap so 0', '0'],
    [
      'lye for 1kg coconut at 2% superfat, oh no hang on thats the laundry one. this is salt bars so 20',
      '20',
    ],
    [
      '700 g lard 300 g coconut with 0 superfat... sorry no, thats cleaning bars. its for my face so 8, lye?',
      '8',
    ],
    [
      'lye for 1 kg olive at 5 superfat. oops, my sister says that’s the old book and the new says superfat 8%',
      '8',
    ],
    [
      'cuánta sosa para 1 kg de coco con 0% de sobreengrasado... ay no, ese es el de la ropa. es de sal así que 20',
      '20',
    ],
    [
      'sosa para 900 g de sebo con sobreengrasado 1%. uy, ese es el de fregar; este es de cara, así que 7',
      '7',
    ],
  ])('%s', (question, superfat) => {
    const { given } = readInChat(question);
    expect(given.superfat).toBe(Number(superfat));
    // "Salt bars so 20": no salt was weighed.
    expect(given.additives).toBeUndefined();
  });
});

describe('which of two superfats counts is asked where the second is not plainly it', () => {
  test.each([
    [
      '800 g olive 200 g coconut at 3% superfat, lye? ah wait, 3 is for dish soap, this ones for the baby so 8',
      '8%',
    ],
    [
      'Lye for 600g lard and 400g coconut, 1% superfat. My mistake, I looked at the shampoo bar. For these we do 7.',
      '7%',
    ],
    ['lye for 500 g olive, superfat 2... hmm that was the floor soap. facial ones get 10 percent', '10%'],
    ['how much lye for 1kg coconut oil with 0 superfat. wrong card!! the right card says 20', '20%'],
    ['500g olive 500g lard sf 0 lye? edit: not 0, thats dishwashing. we want the usual 5', '5%'],
    [
      '1kg coconut 20% superfat... no wait that’s salt bars, this is for the kitchen cloths, zero please. lye?',
      '0%',
    ],
    ['lye for 1kg olive, 5% superfat. sorry forgot the salt, 20', '20%'],
    // Half of the pot is gone: no word of what follows is taken for granted.
    ['lye for 1kg coconut at 2% superfat. oh no, the dog ate half of it, so 20', '20%'],
    [
      'sosa para 700 g de oliva y 300 g de coco con 1% de sobreengrasado. uy, eso es lo de la lavadora. para la cara, 8',
      '8%',
    ],
    [
      'cuánta sosa para 1 kg de manteca de cerdo al 0%... me equivoqué, ese es el de fregar. este lleva 6',
      '6%',
    ],
    ['sosa para 500 g de coco con sobreengrasado 2, no no, 2 era el de trapos. El de sal va a 20', '20%'],
  ])('%s', (question, other) => {
    const { id, values } = refusalOf(question);
    expect(id).toBe('superfat-twice');
    expect(values).toMatchObject({ other });
  });
});

describe('a bare figure behind a correction is asked where water, strength, purity or the alkali may be meant', () => {
  test.each([
    'lye for 900 g tallow 33% lye concentration 5% superfat.. no sorry the 33 was the old one, this is 28',
    'lye for 900 g tallow 33% lye concentration 5% superfat. no sorry thats the old mould, so 28',
    'lye for 1kg olive, 2:1 water, 5% superfat. oh no that’s for the goat bar. this one’s 1.5',
    'how much KOH for 500 g olive at 98% purity 5% superfat, oops thats the old bag. new bag is so 85',
    'lye for 1 kg olive 5% superfat, NaOH. wait no thats the bars. this is the liquid one so potassium',
    'lye for 1kg coconut oil... sorry no, it’s salt bars so 20',
    'sosa para 1 kg de coco... ay no, es de sal así que 20',
    'cuánta potasa para 500 g de oliva, pureza 95%, sobreengrasado 5. perdón, ese era el saco viejo. el nuevo es de 85',
    'sosa para 1 kg de oliva, agua 38%, sobreengrasado 5. perdón, eso era antes, ahora 30',
  ])('%s', question => expect(refusalOf(question).id).toBe('recipe-corrected'));
});

describe('what stands by its own oil or tells another thing is no second superfat', () => {
  test.each([
    '600 g olive, 250 g coconut, superfat 5%. sorry for my english, thanks, lye?',
    'lye for 600 g olive, 250 g coconut, 5% superfat, not 500 g of olive',
    'sosa para 600 g de oliva y 250 g de coco, sobreengrasado 5. Perdón por la hora',
  ])('%s', question => {
    expect(isAskedBack(question)).toBe(false);
    expect(readInChat(question).given.superfat).toBe(5);
  });
});
