import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { diagnose } from '../../../../src/engine/flaws/diagnose.ts';
import {
  clearLanguageOf,
  EMERGENCY_IDS,
  helpFor,
  readEmergencies,
} from '../../../../src/engine/hazards/index.ts';
import { leastCpu } from '../../../cpu-time.ts';
import { HURT } from './learned-texts.ts';

type Told = { readonly text: string; readonly id: string; readonly language: string };
type Quiet = { readonly text: string; readonly why: string };

const here = import.meta.dirname;
const read = (file: string) => JSON.parse(readFileSync(join(here, file), 'utf8'));
/** Written by another hand, who saw the ids and nothing of the reading; tuned on. */
const theirs = read('emergencies-tune.json') as {
  emergencies: Told[];
  'no-alarm': Quiet[];
  'first-aid-questions': Told[];
};
const own = read('emergencies-own.json') as { emergencies: Told[]; 'no-alarm': Quiet[] };

/** Told by patterns alone; `reviewed.test.ts` asks after each. */
const reviewed = read('emergencies-reviewed.json') as { emergencies: Told[] };

const firstOf = (text: string) => readEmergencies(text)[0]?.id;

describe('emergencies in words', () => {
  test.each([...theirs.emergencies, ...theirs['first-aid-questions']])(
    'another hand, $id: $text',
    ({ text, id }) => {
      expect(firstOf(text)).toBe(id);
    },
  );

  test.each(own.emergencies)('our own, $id: $text', ({ text, id }) => {
    expect(firstOf(text)).toBe(id);
  });

  test('every emergency is told in both languages, at least three times each', () => {
    const all = [...theirs.emergencies, ...own.emergencies, ...reviewed.emergencies];
    for (const id of EMERGENCY_IDS)
      for (const language of ['en', 'es'])
        expect(all.filter(one => one.id === id && one.language === language).length).toBeGreaterThan(2);
  });

  test.each([...theirs['no-alarm'], ...own['no-alarm']])('no alarm, $why: $text', ({ text }) => {
    expect(readEmergencies(text)).toEqual([]);
  });
});

test('descriptions of flaws raise no alarm, but for those in which somebody is hurt', () => {
  const folder = join(here, '../../flaws/heldout');
  const texts = readdirSync(folder).flatMap(file =>
    (JSON.parse(readFileSync(join(folder, file), 'utf8')) as { text: string }[]).map(({ text }) => text),
  );
  expect(texts.length).toBeGreaterThan(450);
  const alarmed = texts.filter(text => readEmergencies(text).length > 0);
  expect(alarmed.filter(text => !HURT.test(text))).toEqual([]);
  expect(alarmed.length).toBeGreaterThanOrEqual(5);
});

describe('however it is typed', () => {
  // The same wordings as shouted, without accents and marks, and with two letters swapped in the middle of a long word.
  const swapped = (text: string) =>
    text.replace(/\p{L}{8,}/u, word => {
      const at = Math.floor(word.length / 2);
      return `${word.slice(0, at)}${word[at + 1]}${word[at]}${word.slice(at + 2)}`;
    });
  const ways: Readonly<Record<string, (text: string) => string>> = {
    'in capitals': text => text.toUpperCase(),
    'in small letters': text => text.toLowerCase(),
    'without accents': text => text.normalize('NFD').replaceAll(/\p{M}/gu, ''),
    'with a last line': text => `${text}\n\nthank you`,
  };
  test.each(Object.entries(ways))('%s it is read the same', (_, write) => {
    const changed = own.emergencies.filter(({ text, id }) => firstOf(write(text)) !== id);
    expect(changed).toEqual([]);
  });

  test('without punctuation and with a slip of the thumb nearly all are read the same', () => {
    const bare = (text: string) => text.replaceAll(/[.,;:!?¿¡+=]/gu, ' ');
    const told = own.emergencies.filter(({ text }) => firstOf(bare(text)) !== undefined);
    expect(told.length / own.emergencies.length).toBeGreaterThan(0.97);
    const slipped = own.emergencies.filter(({ text }) => firstOf(swapped(text)) !== undefined);
    expect(slipped.length / own.emergencies.length).toBeGreaterThan(0.9);
  });
});

test('what is denied, long past or taken back raises no alarm; what comes after does', () => {
  expect(readEmergencies('no lye in my eye, goggles on')).toEqual([]);
  expect(readEmergencies('three years ago lye splashed in my eye')).toEqual([]);
  expect(readEmergencies('lye splashed in my eye? false alarm')).toEqual([]);
  expect(firstOf('three years ago lye splashed in my eye and today it happened again, lye in eye')).toBe(
    'lye-eye',
  );
  expect(firstOf('last year was fine but now lye is burning my hand')).toBe('lye-skin');
});

test('several emergencies come most urgent first', () => {
  const ids = readEmergencies('the lye jug is boiling over, it splashed my hand and went in my eye').map(
    ({ id }) => id,
  );
  expect(ids[0]).toBe('lye-eye');
  expect(ids).toEqual(EMERGENCY_IDS.filter(id => ids.includes(id)));
  expect(ids).toContain('lye-eruption');
});

test('anything may be typed: empty, long, emoji, names of object members', async () => {
  for (const text of ['', ' ', '🧼🔥', 'constructor', '__proto__ toString', 'lye '.repeat(2_000)])
    expect(() => readEmergencies(text)).not.toThrow();
  const long = 'my eye my hand lye soap burn water splash '.repeat(120);
  expect(await leastCpu(() => readEmergencies(long), 2_000)).toBeLessThan(2_000);
});

test('numbers are those of the country in the locale, and none are guessed', () => {
  // poison.org; poisons.co.nz; poisonsinfo.health.qld.gov.au: read there.
  expect(helpFor('en-US')).toMatchObject({ country: 'US', emergency: '911', poison: '1-800-222-1222' });
  expect(helpFor('en-NZ')).toMatchObject({ emergency: '111', poison: '0800 764 766' });
  expect(helpFor('es-ES')).toMatchObject({ country: 'ES', emergency: '112' });
  expect(helpFor('en-GB')?.emergency).toBe('999');
  for (const locale of [undefined, '', 'en', 'es', 'es-419', 'en-XX', 'fr', 'constructor'])
    expect(helpFor(locale)).toBeUndefined();
});

test('the flaws keep their own reading beside it', () => {
  expect(diagnose('blue specks all over, no zap').causes.length).toBeGreaterThan(0);
});

describe('a third set by another hand, mended on after its one first run', () => {
  const third = read('emergencies-third.json') as typeof theirs;

  test('first aid is shown for every emergency and every question about first aid', () => {
    const all = [...third.emergencies, ...third['first-aid-questions']];
    expect(all).toHaveLength(105);
    expect(all.filter(({ text }) => firstOf(text) === undefined)).toEqual([]);
  });

  test('the right one comes first in nearly all', () => {
    const wrong = third.emergencies.filter(({ text, id }) => firstOf(text) !== id);
    expect(wrong.length).toBeLessThanOrEqual(2);
  });

  test('at most two of seventy others raise an alarm', () => {
    expect(third['no-alarm']).toHaveLength(70);
    expect(third['no-alarm'].filter(({ text }) => firstOf(text) !== undefined).length).toBeLessThan(3);
  });
});

describe('what is only spoken of', () => {
  test.each([
    [
      'not opened yet',
      'bought my lye today, still sealed, where do I store the caustic soda so no damp gets in',
    ],
    ['a question of chemistry', 'just curious, why is galvanised metal still not acceptable with NaOH'],
    ['a poster', 'para un cartel: por qué no se puede usar zinc con la sosa'],
    ['the distant past', 'back then my aunt burned her arm with lye, I want her recipe'],
    ['a shape', 'soap shaped like a big eye and a hand for halloween, how much red in melt and pour'],
    ['a dictated pronoun', 'is there a lye chart eye always lose mine so eye use the old one'],
  ])('%s raises no alarm', (_, text) => {
    expect(readEmergencies(text)).toEqual([]);
  });

  test.each([
    ['lye-skin', 'still sealed I thought but the lye leaked on my hand and it burns'],
    [
      'hydrogen-from-metal',
      'just curious, I put the lye in an aluminium pan and it is fizzing and hissing, is that ok',
    ],
    ['lye-skin', 'en teoría iba con guantes, la sosa me salpicó la mano y me quema'],
    ['lye-eye', 'back then it went well but now the lye splashed in my eye'],
    ['lye-eye', 'lye in eye had goggles off help'],
    ['lye-eye', 'lye splash eye use water or what'],
    ['lye-skin', 'soap shaped like a star, the raw batter splashed my arm and it burns'],
  ])('beside it, harm is still read: %s in %s', (id, text) => {
    expect(firstOf(text)).toBe(id);
  });

  test('whatever animal it is, its own first aid comes first', () => {
    for (const text of [
      'our canary is wheezing since I mixed the lye beside the cage',
      'my terrier has swallowed raw soap batter and is drooling',
      'the tortoise walked through the soda spill and its legs look raw',
      'la marrana metió la trompa en la soda disuelta y está chillando',
    ])
      expect(firstOf(text)).toBe('animal-exposed');
  });
});

describe('the language of the words', () => {
  const sets = ['tune', 'second', 'third', 'own'].map(name => read(`emergencies-${name}.json`));
  const all: Told[] = sets.flatMap(set => [...set.emergencies, ...(set['first-aid-questions'] ?? [])]);

  test('it is never taken for the other one, and mostly clear', () => {
    for (const language of ['en', 'es']) {
      const written = all.filter(one => one.language === language);
      const clear = written.map(({ text }) => clearLanguageOf(text)).filter(one => one !== undefined);
      expect(new Set(clear)).toEqual(new Set([language]));
      expect(clear.length / written.length).toBeGreaterThan(0.85);
    }
  });

  test.each([
    ['bebí lejía', 'es'],
    ['el jabón huele a huevo podrido', 'es'],
    ['sosa en el ojo, ¡ayuda!', 'es'],
    ['lye in my eye help', 'en'],
    ['the café purée got into my eye', 'en'],
    ["don't, I'm", 'en'],
    ['mi lejía', 'es'],
  ])('%s is in %s', (text, language) => {
    expect(clearLanguageOf(text)).toBe(language);
  });

  test('letters that only Spanish writes tell as a word does', () => {
    expect(clearLanguageOf('tragó algún líquido así')).toBeUndefined();
    expect(clearLanguageOf('se tragó algún líquido')).toBe('es');
    expect(clearLanguageOf('el líquido')).toBe('es');
    expect(clearLanguageOf('el liquido')).toBeUndefined();
  });

  test('a word or two, or both languages at once, are not clear', () => {
    for (const text of ['', 'lye', 'sosa ojo', '🧼', 'constructor', 'the eye, el ojo, my hand, mi mano'])
      expect(clearLanguageOf(text)).toBeUndefined();
  });
});
