import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readEmergencies } from '../../../../../src/engine/hazards/index.ts';
import {
  byLitreIn,
  heldUpIn,
  OIL_KG_PER_LITRE,
} from '../../../../../src/engine/questions/lye/amounts/by-litre.ts';
import { isAskedGenerally } from '../../../../../src/engine/questions/lye/topics/asked-generally.ts';
import { CARE_TOPIC_ORIGINS } from '../../../../../src/engine/questions/lye/topics/care-topic.ts';
import { careTopicIn, lyeTopicIn } from '../../../../../src/engine/questions/lye/topics/topics.ts';

/** Our own wordings, ten in each language, under the matter each is about. */
function wordings(): ReadonlyMap<string, readonly string[]> {
  const lines = readFileSync(new URL('care-wordings.txt', import.meta.url), 'utf8').split('\n');
  const told = new Map<string, string[]>();
  let heading = '';
  for (const line of lines) {
    const next = /^\[(.+)\]$/u.exec(line)?.[1];
    if (next !== undefined) heading = next;
    else if (line !== '') told.set(heading, [...(told.get(heading) ?? []), line]);
  }
  return told;
}

const told = wordings();

/** "Spilled oil" stands near spilled lye, and lye that is weighed by eye near a failing scale: either answer holds there. */
const NEAR: ReadonlyMap<string, string> = new Map([['oil-spilled', 'clean-up']]);

describe.each(Object.keys(CARE_TOPIC_ORIGINS))('%s', topic => {
  const lines = told.get(topic) ?? [];

  test('has twenty wordings, and nearly all of them are found by what they say', () => {
    expect(lines.length).toBeGreaterThanOrEqual(20);
    const missed = lines.filter(line => lyeTopicIn(line) !== topic);
    expect(missed.length).toBeLessThanOrEqual(3);
    const astray = missed.filter(line => {
      const found = lyeTopicIn(line);
      return found !== undefined && found !== NEAR.get(topic);
    });
    expect(astray).toEqual([]);
  });
});

describe('a recipe, a colour and a name are none of these matters', () => {
  test.each([
    'how much lye for 16 fl oz olive oil',
    'olive 500 g coconut 200 g water 230 g',
    'how much lye for 500 g olive and 200 g coconut',
    'can i put mica in a jam jar',
    'which colours for a workshop for adults',
    'i need a round mould 20 cm',
    'my swirl went grey and there are bubbles',
    'the honey soap is brown',
    'a vanilla candle scent for soap',
    'cuánta sosa para 700 g de oliva',
    'qué color queda con miel',
  ])('%s', question => {
    expect(careTopicIn(question)).toBeUndefined();
  });
});

describe('told in the words of an accident', () => {
  test.each([
    'i only have an aluminium pot, its non stick coated so should be fine right?',
    'i have asthma and my kitchen has no window',
    'i added water to the lye instead, nothing happened, ok to use?',
    'contact lenses with lye',
    'i spilled some oil after measuring lye, about a cup from 800 g, lye 103 g',
    'tengo jabon de mi abuela de hace 20 años lo uso?',
    'mi perro esta en la cocina mientras mezclo',
    'la batidora echa humo',
    'se me quemo la leche con la sosa y esta marron y gorda, sigo?',
    'why no vinegar on burns it neutralises it no?',
  ])('and nothing happened to anybody: %s', text => {
    expect(isAskedGenerally(text)).toBe(true);
  });

  test.each([
    'i only have an aluminium pot, its non stick coated and it fizzes',
    'i have asthma and my kitchen has no window and i cough',
    'i added water to the lye instead, nothing happened, my hand burns',
    'contact lenses with lye under them',
    'i spilled some oil and lye on my foot after measuring lye',
    'mi perro esta en la cocina mientras mezclo y ha lamido la cuchara',
    'la batidora echa humo y hay llamas',
    'why no vinegar on burns, i just burned my hand',
    'se me quemo la leche con la sosa y me quemo la mano',
    'i am a bit drunk and drank from the jug',
  ])('and somebody is hurt or something burns: %s', text => {
    expect(isAskedGenerally(text)).toBe(false);
  });

  test.each([
    ['the lye water is grey and there are bubbles and it smells', 'hydrogen-from-metal'],
    ['my lye solution turned grey and it is fizzing', 'hydrogen-from-metal'],
    ['el agua de sosa está gris y echa burbujas', 'hydrogen-from-metal'],
    ['esta saliendose del molde como un volcan', 'lye-eruption'],
    ['se sale del molde, parece un volcan', 'lye-eruption'],
  ])('is first aid where it goes on: %s', (text, id) => {
    expect(readEmergencies(text)[0]?.id).toBe(id);
  });
});

describe('oil by the litre beside lye by weight', () => {
  // Relative density at 20 C: olive 0.910 to 0.916 (Codex CXS 33), sunflower 0.918 to 0.923 (CXS 210).
  test('a litre of kitchen oil weighs what the standards say', () => {
    expect(OIL_KG_PER_LITRE).toBeGreaterThanOrEqual(0.91);
    expect(OIL_KG_PER_LITRE).toBeLessThanOrEqual(0.925);
  });

  test.each([
    ['6 l de aceite 1 kg sosa 6 litros agua receta de toda la vida', 6, 1000],
    ['5 litros de aceite de freir y 1 kg de sosa es mucho?', 5, 1000],
    ['mi abuela hacia jabon con 3 litros de aceite usado 3 litros agua y medio kilo sosa', 3, 500],
    ['receta de internet 1 litro aceite 250 g sosa 1 litro agua', 1, 250],
    ['1 kg sosa 5 litros aceite 5 agua harina y suavizante', 5, 1000],
    ['grandma used 6 litres of oil and 1 kg of lye', 6, 1000],
  ])('is lye-heavy: %s', (question, litres, lye) => {
    const read = byLitreIn(question);
    expect(read?.litres).toBe(litres);
    expect(read?.check.lye.grams).toBe(lye);
    expect(read?.check.verdict).toBe('lye-heavy');
    // Sunflower, 188 to 194 mg KOH a gram (Codex CXS 210), as NaOH at 5 % superfat.
    const perGram = (value: number) => ((value / 1000) * 39.997 * 0.95) / 56.1056;
    const grams = read?.check.usualGrams ?? 0;
    expect(grams).toBeGreaterThan(litres * 910 * perGram(186));
    expect(grams).toBeLessThan(litres * 925 * perGram(196));
  });

  test('lye that the oil takes is not called heavy, and no litre no answer', () => {
    expect(byLitreIn('5 l de aceite y 550 g de sosa')?.check.verdict).not.toBe('lye-heavy');
    expect(byLitreIn('500 g de aceite de oliva y 64 g de sosa')).toBeUndefined();
    expect(byLitreIn('500 g olive, 64 g lye, 1 l water')).toBeUndefined();
  });
});

describe('a figure that is held up once more', () => {
  test('is too much for any oil, or checked for the oil that is named', () => {
    // Coconut, the hungriest of the kitchen: at most 265 mg KOH a gram (Codex CXS 210), 94.5 g NaOH for 500 g.
    expect(heldUpIn('so 100 g for 500 g is fine right')?.kind).toBe('too-much');
    expect(heldUpIn('entonces 100 g para 500 g esta bien no?')?.kind).toBe('too-much');
    expect(heldUpIn('so 60 g for 500 g is fine right')).toBeUndefined();
    const slip = heldUpIn('ok i trust you, lye 644 g for 500 g olive right?');
    expect(slip?.kind === 'check' && slip.check.verdict).toBe('lye-heavy');
    expect(heldUpIn('so 5 g for 500 g is fine right')).toBeUndefined();
    expect(heldUpIn('how much mica for 500 g, is 5 g fine')).toBeUndefined();
  });
});

test.each([
  ['can i wear wool gloves', 'gear'],
  ['can i wear shorts', 'weak-gear'],
])('what is worn: %s', (question, topic) => {
  expect(careTopicIn(question)).toBe(topic);
});

test.each([
  ['i used 150 g naoh instead of 115 in the batter', 'too-much-in'],
  ['i used 100 g naoh instead of 115 in the batter', 'too-little-in'],
  ['water 20 g for 100 g lye', 'too-little-water'],
  ['superfat -5 for laundry', 'extra-lye'],
])('told by its own figures: %s', (question, topic) => {
  expect(careTopicIn(question)).toBe(topic);
});

test.each(['water 200 g for 100 g lye', 'superfat 5', 'i used 115 g naoh instead of 115'])(
  'figures that are in order tell no matter: %s',
  question => {
    expect(careTopicIn(question)).toBeUndefined();
  },
);
