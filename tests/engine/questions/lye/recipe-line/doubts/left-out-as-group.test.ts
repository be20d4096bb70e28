import { describe, expect, test } from 'vitest';
import type { Refusal } from '../../../../../../src/engine/refusal.ts';
import * as english from '../../../../../../src/words/en/index.ts';
import * as spanish from '../../../../../../src/words/es/index.ts';
import { isAskedBack, readInChat, refusalOf } from '../../../read-in-chat.ts';

const FOUR = {
  en: 'olive 500 g, coconut 200 g, shea 100 g, castor 50 g',
  es: 'oliva 500 g, coco 200 g, karité 100 g, ricino 50 g',
} as const;
const SURE = {
  en: 'olive 400 g, sunflower 220 g, cocoa butter 60 g, tallow 90 g',
  es: 'oliva 400 g, girasol 220 g, manteca de cacao 60 g, sebo 90 g',
} as const;

/** The oils that the one button of the question leaves out; undefined where it offers none. */
function leftOut(question: string): readonly string[] | undefined {
  const { id, values } = refusalOf(question) as Refusal<'oils-left-out'>;
  expect(id).toBe('oils-left-out');
  return values.ways?.length === 1 ? values.ways[0]!.without : undefined;
}

describe('an oil that is left out by its place in the list is asked, and the button leaves out that one', () => {
  test.each([
    [`${FOUR.en}. Not the last but one. lye at 5%`, ['shea']],
    [`${FOUR.en}. The second one is for tomorrow. lye at 5%`, ['coconut']],
    [`${FOUR.en}. Penultimate one's run out. lye at 5%`, ['shea']],
    [`${FOUR.en}. second to last can stay in the cupboard. lye at 5%`, ['shea']],
    [`${FOUR.en}. number 3 is off the menu. lye at 5%`, ['shea']],
    [`${FOUR.en}. The one before last was rancid. lye at 5%`, ['shea']],
    [`${FOUR.en}, but hold the final one. lye at 5%`, ['castor']],
    [`skip #2: ${FOUR.en}. lye at 5%`, ['coconut']],
    [`${FOUR.es}. el penúltimo no que no me queda. sosa al 5%`, ['karite']],
    [`${FOUR.es}. El antepenúltimo lo dejo para otro día. sosa al 5%`, ['coco']],
    [`${FOUR.es}. el que va tercero lo omito. sosa al 5%`, ['karite']],
    [`${FOUR.es}. los dos últimos no los encontré. sosa al 5%`, ['ricino', 'karite']],
    [`menos el cuarto: ${FOUR.es}. sosa al 5%`, ['ricino']],
    [`${FOUR.es}, quita el 3. sosa al 5%`, ['karite']],
  ])('%s', (question, names) => expect(leftOut(question)?.toSorted()).toEqual(names.toSorted()));

  test('of three the middle one; of four nobody knows which', () => {
    expect(leftOut('oliva 500 g, coco 200 g, karité 100 g. El del medio no va. ¿sosa al 5%?')).toEqual([
      'coco',
    ]);
    expect(leftOut(`${FOUR.es}. El de en medio me lo salto. ¿sosa al 5%?`)).toBeUndefined();
  });
  test('“only the first two” leaves out all others', () =>
    expect(leftOut(`${FOUR.en}. only the first two. lye at 5%`)).toEqual(['shea', 'castor']));
});

describe('oils that are left out by their kind are asked, and the button leaves out all of it', () => {
  test.each([
    [`todo menos las mantecas: oliva 400 g, karité 80 g, cacao 60 g. sosa 6%`, ['karite', 'cacao']],
    [
      `everything except the butters: olive 400 g, shea 80 g, cocoa butter 60 g. lye 6%`,
      ['shea', 'cocoa butter'],
    ],
    [`${SURE.en}. Nothing hard in it. lye 6%`, ['cocoa butter', 'tallow']],
    [`only the liquid ones: ${SURE.en}. lye 6%`, ['cocoa butter', 'tallow']],
    [`${SURE.en}. no animal fats though. lye 6%`, ['tallow']],
    [`make it vegan: ${SURE.en}. lye 6%`, ['tallow']],
    ['olive 400 g, coconut 220 g, beeswax 20 g. leave waxes out of it. lye 6%', ['beeswax']],
    [
      'olive 400 g, almond 100 g, hazelnut 60 g. nut oils are banned at school. lye 6%',
      ['almond', 'hazelnut'],
    ],
    [`${SURE.es}, sin los sólidos. sosa 6%`, ['manteca de cacao', 'sebo']],
    [`${SURE.es}. solo los vegetales. sosa 6%`, ['sebo']],
    [`${SURE.es}. vegano, por favor. sosa 6%`, ['sebo']],
    [
      'oliva 400 g, almendras 100 g, avellana 60 g. los frutos secos no. sosa 6%',
      ['aceite de almendras', 'avellana'],
    ],
  ])('%s', (question, names) => expect(leftOut(question)).toEqual(names));

  // Coconut melts at 24 °C (76 °F): solid in one kitchen, runny in the next (common practice).
  test.each([
    'sin los sólidos: oliva 400 g, coco 220 g, karité 80 g. sosa 6%',
    'only the liquid ones: olive 400 g, coconut 220 g, cocoa butter 60 g. lye 6%',
    'oliva 400 g, coco 220 g, palma 200 g. ningún aceite tropical. sosa 6%',
    'all but the dear ones: olive 400 g, coconut 220 g, shea 80 g. lye 6%',
  ])('and where it is not sure which they are, no button does: %s', question =>
    expect(leftOut(question)).toBeUndefined(),
  );

  test.each([
    '500 g olive, 250 g coconut, no animal fats, lye at 5%',
    'a nice hard bar for my vegan friend: 500 g olive, 250 g coconut, lye at 5%',
    '500 g olive, 250 g coconut, 80 g shea, lye at 5%? The butters are melted already.',
    'my last one came out soft. 500 g olive, 250 g coconut, 80 g shea, lye at 5%?',
    'jabón vegano: 500 g oliva, 250 g coco, ¿sosa al 5%?',
  ])('where none is listed, or none left out, it is answered: %s', question =>
    expect(isAskedBack(question)).toBe(false),
  );
});

test('the sentence that comes back, in both languages', () => {
  const one = refusalOf(`${FOUR.en}. Not the last but one. lye at 5%`);
  expect(english.refusals['oils-left-out'](one.values as never)).toContain(
    '“not the last but one”: I take it that “shea” stays out, and nothing else.',
  );
  expect(spanish.refusals['oils-left-out'](one.values as never)).toContain(
    '«shea» se queda fuera, y nada más',
  );
  const open = refusalOf('sin los sólidos: oliva 400 g, coco 220 g. sosa 6%');
  expect(english.refusals['oils-left-out'](open.values as never)).toContain(
    'which oils go in, and which do not?',
  );
  expect(spanish.refusals['oils-left-out'](open.values as never)).toContain('¿qué aceites van y cuáles no?');
  const may = refusalOf(`${FOUR.es}, el segundo es grande. sosa 5%`);
  expect(spanish.refusals['oils-left-out'](may.values as never)).toContain('¿va «coco» en la olla?');
  expect(english.refusals['oils-left-out'](may.values as never)).toContain('is “coco” in the pot?');
});

test('a stop behind a weight ends the sentence where no other oil follows', () => {
  expect(readInChat('olive 500 g. coconut 200 g. lye at 5%').given.oils).toBe('500 g olive, 200 g coconut');
  expect(readInChat('500 g. de oliva y 200 g. de coco, sosa al 5%').given.oils).toBe(
    '500 g oliva, 200 g coco',
  );
});
