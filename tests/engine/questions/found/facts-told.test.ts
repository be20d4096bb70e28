import { expect, test } from 'vitest';
import type { Facts } from '../../../../src/engine/questions/found/facts.ts';
import { foundIn } from '../../../../src/engine/questions/found/found-in.ts';

/* What a question tells beside names: portions, powders, shares, strengths, a shelf, a place with a law; as a careful reader takes it. */

const told = (text: string): Partial<Facts> =>
  Object.fromEntries(
    Object.entries(foundIn(text).found.facts).filter(
      ([name, one]) =>
        one !== undefined &&
        one !== false &&
        !['named', 'findings', 'unclear', 'target', 'reckoned'].includes(name),
    ),
  );

test.each<readonly [string, Partial<Facts>]>([
  [
    '1 tsp green chrome oxide + 2 g titanium dioxide in 500 g',
    {
      portion: '500 g',
      powder: '1 tsp',
      mix: '1 tsp green chrome oxide + 2 g titanium dioxide',
      size: '500 g',
      subject: 'green chrome oxide',
    },
  ],
  [
    '2 g titanium dioxide and mica with white',
    { powder: '2 g', mix: '2 g titanium dioxide + mica', subject: 'titanium dioxide' },
  ],
  ['mica with white', { mix: 'mica + titanium dioxide medium', subject: 'mica' }],
  ['mica and a bit of white', { mix: 'mica + titanium dioxide pastel', subject: 'mica' }],
  ['titanium dioxide and white', { mix: 'titanium dioxide', subject: 'titanium dioxide' }],
  [
    '500 g olive, 200 g coconut, gold mica',
    { portion: '700 g oils', mix: 'gold mica', oils: '500 g olive , 200 g coconut', subject: 'gold mica' },
  ],
  [
    '500 g olive, gold mica',
    { portion: '500 g oils', mix: 'gold mica', oils: '500 g olive', subject: 'gold mica' },
  ],
  ['80 g olive, gold mica', { mix: 'gold mica', oils: '80 g olive', subject: 'gold mica' }],
  [
    '500 g olive and 200 g coconut, gold mica for 2 cups of batter',
    {
      portion: '2 cups',
      mix: 'gold mica',
      oils: '500 g olive and 200 g coconut',
      size: '2 cups',
      subject: 'gold mica',
    },
  ],
  ['5% superfat', { superfat: 5, percent: 5 }],
  ['superfat of 7,5', { superfat: 7.5 }],
  ['sobreengrasado del 5', { superfat: 5 }],
  ['8 sf', { superfat: 8 }],
  ['4% of it', { percent: 4 }],
  ['4,5 por ciento', { percent: 4.5 }],
  ['lye concentration 33', { concentration: 33 }],
  ['33% lye', { percent: 33, concentration: 33 }],
  ['50% solution', { percent: 50, concentration: 50 }],
  ['concentración del 30%', { percent: 30, concentration: 30 }],
  ['from my shelf', { fromShelf: true }],
  ['de mi estante', { fromShelf: true }],
  ['with my micas', { mix: 'micas', fromShelf: true, subject: 'micas' }],
  ['can I use walnut husks in it', { mix: 'walnut husks', subject: 'walnut husks' }],
  ['what about the bark', { subject: 'bark' }],
  ['will these petals stay', { subject: 'these petals' }],
  ['puedo usar pétalos de mi jardín', { subject: 'petalos de mi jardin' }],
  ['le puedo echar tierra', { subject: 'tierra' }],
  ['is the mud from my pond ok', { subject: 'mud from my pond' }],
  ['1 tsp ppo mica and 2 tsp ppo clay', { powder: '1 tsp', mix: 'mica', subject: 'mica' }],
  ['1 tsp ppo mica', { powder: '1 tsp', strength: '1 tsp ppo', mix: 'mica', subject: 'mica' }],
  ['mica en agua', { carrier: 'agua', mix: 'mica', subject: 'mica' }],
  ['in the USA', { region: 'US' }],
  ['in Japan', { country: 'JP' }],
  ['en España', { region: 'EU' }],
  ['half strength mica', { strength: 'half', mix: 'mica', subject: 'mica' }],
  ['very pale mica', { strength: 'tint', mix: 'mica', subject: 'mica' }],
  ['mica at 3%', { mix: 'mica', percent: 3, subject: 'mica' }],
  ['mica, double', { strength: 'double', mix: 'mica', subject: 'mica' }],
  ['la mica bien fuerte', { strength: 'full', mix: 'mica', subject: 'mica' }],
])('%s', (text, facts) => {
  expect(told(text)).toEqual(facts);
});
