import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Conversation } from '../../src/conversation/conversation.ts';
import { textOf } from '../../src/conversation/faces/plain-text.ts';
import { readCommands } from '../../src/conversation/registry/registry.ts';
import { practicalSpoons, SPOON_PARTS, SPOONS, teaspoonsIn } from '../../src/engine/quantities/spoons.ts';
import { openStore } from '../../src/records/open.ts';
import { askLine } from '../../src/terminal/seat.ts';
import { wordsIn } from '../../src/words/index.ts';
import { numbersIn } from '../../src/words/numbers.ts';
import type { Language } from '../../src/words/sentence.ts';
import { sharedWorkers } from '../workers/shared.ts';

describe('numbers by CLDR: a point in English, a comma in Spanish, no grouping', () => {
  test.each([
    ['figure', 1234.567, '1234.57', '1234,57'],
    ['whole', 28.5, '29', '29'],
    ['whole', 1234.4, '1234', '1234'],
    ['whole', -0.4, '0', '0'],
    ['percent', 0.455, '46 %', '46 %'],
    ['percent', 1, '100 %', '100 %'],
    ['millilitres', 236.588, '237 ml', '237 ml'],
    ['one', 28.64, '28.6', '28,6'],
    ['two', 0.125, '0.13', '0,13'],
    ['tenths', 3, '3.0', '3,0'],
    ['plain', 0.03125, '0.0313', '0,0313'],
    ['plain', 28.64, '28.6', '28,6'],
    ['plain', 1534.4, '1534', '1534'],
    ['plain', 5e-7, '0.0000005', '0,0000005'],
    ['mixed', 1.5, '1 1/2', '1 1/2'],
    ['mixed', 0.333, '1/3', '1/3'],
    ['mixed', 2, '2', '2'],
    ['mixed', 0.45, '0.45', '0,45'],
  ] as const)('%s of %d', (how, value, english, spanish) => {
    const said = (language: Language) =>
      how === 'figure' ? numbersIn(language).figure(value, 2) : numbersIn(language)[how](value);
    expect([said('en'), said('es')]).toEqual([english, spanish]);
  });

  test('however many were written before it, a number is written as itself', () => {
    const fresh = new Intl.NumberFormat('en', { useGrouping: false, maximumFractionDigits: 2 });
    // More than are remembered, each twice, beside neighbours that round to the same whole number.
    const values = Array.from({ length: 1_400 }, (_, at) => at / 8);
    const twice = [...values, ...values.toReversed()];
    expect(twice.map(value => numbersIn('en').two(value))).toEqual(twice.map(value => fresh.format(value)));
    expect([numbersIn('en').two(-0.001), numbersIn('en').two(0), numbersIn('en').two(-0)]).toEqual([
      '0',
      '0',
      '0',
    ]);
  });

  test('what is on a shelf is never shown as more than is there', () => {
    expect(wordsIn('en').shelf.grams(18.845)).toBe('18.84 g');
    expect(wordsIn('es').shelf.grams(0.57)).toBe('0,57 g');
  });

  test('a hair below nothing is nothing', () => {
    expect([numbersIn('en').one(-0.01), numbersIn('es').tenths(-0.01), numbersIn('en').one(-0.2)]).toEqual([
      '0',
      '0,0',
      '-0.2',
    ]);
  });
});

describe('spoons are values until a language says them', () => {
  test.each([
    [0.75, '1/2 tsp + 1/4 tsp', '1/2 cdta + 1/4 cdta'],
    [2, '2 tsp', '2 cdta'],
    [6.25, '2 Tbsp + 1/4 tsp', '2 cda + 1/4 cdta'],
    [1 / 64, '1/8 of 1/8 tsp', '1/8 de 1/8 cdta'],
  ])('%d tsp', (teaspoons, english, spanish) => {
    const spoons = practicalSpoons(teaspoons);
    expect(wordsIn('en').quantities.measure(spoons)).toBe(english);
    expect(wordsIn('es').quantities.measure(spoons)).toBe(spanish);
  });

  test('several of one small spoon', () => {
    const spoons = [{ spoon: '1/4 tsp', count: 3 }] as const;
    expect(wordsIn('en').quantities.measure({ spoons })).toBe('3 x 1/4 tsp');
    expect(wordsIn('es').quantities.measure({ spoons })).toBe('3 x 1/4 cdta');
  });

  test('a tablespoon is three teaspoons, each other spoon one part of a teaspoon', () => {
    for (const spoon of SPOONS) {
      const { unit, part } = SPOON_PARTS[spoon];
      expect(teaspoonsIn([{ spoon, count: 2 }])).toBe((2 * (unit === 'tablespoon' ? 3 : 1)) / part);
    }
  });

  test.each([
    [{ by: 'name', name: 'full' }, 'full colour', 'pleno'],
    [{ by: 'share', ofFull: 0.25 }, '25 % of full colour', '25 % del color pleno'],
    [{ by: 'percent-of-oils', percent: 0.5 }, '0.5 % of oils', '0,5 % de los aceites'],
    [{ by: 'cup', tspPerCup: 1.5 }, '1 1/2 tsp per cup', '1 1/2 cdta por taza'],
    [
      { by: 'pound-of-oils', tspPerPound: 0.45 },
      '0.45 tsp per pound of oils',
      '0,45 cdta por libra de aceites',
    ],
  ] as const)('a strength: %o', (strength, english, spanish) => {
    expect(wordsIn('en').quantities.strength(strength)).toBe(english);
    expect(wordsIn('es').quantities.strength(strength)).toBe(spanish);
  });
});

describe('one decimal sign in an answer', () => {
  const DECIMAL: Readonly<Record<Language, RegExp>> = {
    en: /\d,\d+(?![\d,]*\d{3}\b)(?! ?[#\d])/u,
    es: /(?<![\d.])\d+\.\d+(?![.\d])/u,
  };
  let conversation: Conversation;
  beforeAll(async () => {
    const registry = await readCommands(new URL('../../commands/', import.meta.url));
    const services = { store: await openStore('sqlite::memory:'), workers: sharedWorkers() };
    const onFault = (fault: unknown) => {
      throw fault;
    };
    conversation = { registry, services, key: new Uint8Array(32), onFault };
    for (const line of SHELF) await ask(line, 'en');
  }, 60_000);
  afterAll(async () => {
    await conversation.services.workers.close();
    await conversation.services.store.close();
  });

  const SHELF = [
    '/shelf add item:"Evening sky" colourant:"ultramarine blue" amount:"30.5 g"',
    '/shelf add item:"Amber" colourant:"yellow iron oxide" amount:"12.25 g"',
    '/shelf weigh item:Amber amount:2.35',
  ];
  const ANSWERED = [
    '/dose colourant:"ultramarine blue" portion:"3 cups" strength:pastel',
    '/dose colourant:"red iron oxide" portion:"1 cup" strength:"3 tsp per cup"',
    '/dose colourant:"titanium dioxide" portion:"500 g" strength:"1 % of oils"',
    '/dose colourant:"gold mica" portion:"1 lb oils" with:"titanium dioxide"',
    '/dose colourant:"red iron oxide" portion:"1 cup" premix:"30%"',
    '/dose colourant:Amber portion:"1 cup" strength:tint',
    '/dose colourant:"red 40 lake" portion:"1 cup"',
    '/match target:"#6b3fa0" portion:"2 cups"',
    '/preview mix:"ultramarine violet pastel + titanium dioxide" portion:"2 cups"',
    '/calibrate bars item:"Evening sky" bar-1:"1/8 tsp per cup #8b93bd" bar-2:"1/2 tsp per cup #4d5aa0"',
    '/plan oils:"olive 50%, coconut 30%, palm 20%" size:"900 g oils" portions:"1 cup ultramarine blue; 1 cup titanium dioxide pastel; rest plain" fragrance:"3%" additives:"honey 10 g"',
    '/shelf list',
    '/shelf use item:Amber amount:"1/2 g"',
    '/shelf show item:Amber',
    '/colourant check item:"ultramarine blue"',
    '/colourant check ingredients:"Mica (CI 77019), Tin Oxide, Titanium Dioxide"',
    'red oxide vs gold mica, stronger',
  ];
  const REFUSED = [
    '/dose colourant:"gold mica" portion:"1 cup" strength:"99%"',
    '/dose colourant:"gold mica" portion:"0.01 ml"',
    '/dose colourant:"gold mica" portion:"900 kg oils"',
    '/dose colourant:"gold mica" portion:"190 kg oils"',
    '/shelf add item:Rust amount:"9000 kg"',
    '/plan oils:"olive 100%" water:"33%"',
  ];
  const ask = async (line: string, language: Language) =>
    (
      await askLine(
        line,
        { member: '1', group: '2', language, manages: true, roles: [], at: Date.parse('2026-12-01T10:00Z') },
        conversation,
      )
    ).answer;

  /** Of what is measured: an address or a section of a law has points of its own, and so has what was written. */
  const measured = (text: string) =>
    text.replace(/[“«][^”»]*[”»]|https?:\S+|\d+(?:\.\d+){2,}|21 CFR [\d.]+/gu, '');

  test.each(ANSWERED)('%s', async line => {
    const read: string[] = [];
    for (const language of ['en', 'es'] as const) {
      const answer = await ask(line, language);
      if (answer.kind !== 'reply') throw new Error(answer.kind === 'problem' ? answer.text : answer.kind);
      const text = measured(textOf(answer, wordsIn(language)));
      expect(DECIMAL[language].exec(text)?.[0]).toBeUndefined();
      read.push(text);
    }
    expect(read[0]).not.toBe(read[1]);
  });

  test.each(REFUSED)('%s', async line => {
    for (const language of ['en', 'es'] as const) {
      const answer = await ask(line, language);
      if (answer.kind !== 'problem') throw new Error('that should have been refused');
      expect(DECIMAL[language].exec(measured(answer.text))?.[0]).toBeUndefined();
    }
  });

  test('decimals do occur in what is told', async () => {
    const answer = await ask(ANSWERED[0]!, 'es');
    expect(answer.kind === 'reply' && textOf(answer, wordsIn('es'))).toMatch(/unos 0,\d+ g/u);
  });
});
