import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { colourants } from '../../../src/engine/colourants/catalogue.ts';
import type { Colourant } from '../../../src/engine/colourants/colourant.ts';
import { checkIngredients } from '../../../src/engine/stability/check.ts';
import * as en from '../../../src/words/en/colourants/stability.ts';
import { heldOut } from './lists/held-out.ts';
import { tuned } from './lists/tuned.ts';

/** As a list that held only this colourant would have them. */
const componentsOf = ({ names }: Colourant) => checkIngredients(names.en).components;

const idsIn = (list: string) => checkIngredients(list).components.map(({ id }) => id);
const one = (list: string) => checkIngredients(list).components[0];

describe('the weakest ingredient decides', () => {
  test.each([
    ['Mica, Titanium Dioxide', 'stable', undefined],
    ['Mica, Ferric Ferrocyanide, Iron Oxides', 'destroyed', 'rust'],
    ['Mica, Manganese Violet', 'destroyed', 'beige'],
    ['Mica, Carmine', 'shifts', 'purple-then-dull'],
    ['Carmine, Manganese Violet', 'destroyed', 'beige'],
    ['Mica, Acid Red 18', 'bleeds', undefined],
    ['Ultramarine Violet', 'conditional', 'bluer'],
    ['Mica, Aluminum Powder', 'never', undefined],
  ])('%s: %s, toward %s', (list, verdict, towards) => {
    expect(checkIngredients(list)).toMatchObject({ verdict, ...(towards === undefined ? {} : { towards }) });
  });

  test('an ingredient nobody knows takes the promise away, and is named', () => {
    expect(checkIngredients('Mica, Titanium Dioxide, Quorblite')).toMatchObject({
      verdict: 'unknown',
      unknown: ['Quorblite'],
      confidence: 'low',
    });
  });

  test('what a powder only may contain counts apart', () => {
    const report = checkIngredients('Mica, Titanium Dioxide (+/- Ferric Ferrocyanide)');
    expect(report).toMatchObject({ verdict: 'stable', verdictIfPresent: 'destroyed' });
    expect(report.components.map(({ id, ifPresent }) => [id, ifPresent])).toEqual([
      ['mica', false],
      ['titanium-dioxide', false],
      ['ferric-ferrocyanide', true],
    ]);
  });

  test('metal that only may be there still blocks the dose', () => {
    expect(checkIngredients('PET, +/- Aluminum')).toMatchObject({
      verdictIfPresent: 'never',
      dose: undefined,
    });
  });
});

describe('metal is told from its compounds', () => {
  test.each([
    'Aluminum',
    'CI 77000',
    'E173',
    'aluminised polyester film',
    'Copper Powder',
    'polvo de bronce',
    'Aluminm Powder',
  ])('%s never meets lye', list => {
    expect(checkIngredients(list)).toMatchObject({ verdict: 'never', dose: undefined, carriers: [] });
  });

  test.each([
    'Red 40 Aluminum Lake',
    'Alumina',
    'Aluminum Hydroxide',
    'Calcium Aluminum Borosilicate',
    'copper mica',
    'Copper Chlorophyllin',
    'Aluminum Starch Octenylsuccinate',
  ])('%s is no metal', list => {
    expect(checkIngredients(list).verdictIfPresent).not.toBe('never');
  });
});

describe('the kind decides dose and carrier', () => {
  test.each([
    ['Polyester-3, Basic Violet 11:1', 'neon', 0.5, ['oil', 'glycerin']],
    ['Polyamide Resin, Solvent Yellow 43', 'neon', 0.5, ['oil', 'glycerin']],
    ['Mica, Iron Oxides', 'mica', 1, ['oil', 'water', 'glycerin']],
    ['D&C Red 30 Aluminum Lake', 'lake', 1, ['oil', 'glycerin']],
    ['Red 40 Lake', 'lake', 0.25, ['oil', 'glycerin']],
    ['CI 77288', 'chromium', 0.25, ['oil', 'water', 'glycerin']],
  ])('%s is %s: %d tsp a cup in %j', (list, kind, fullTspPerCup, carriers) => {
    expect(checkIngredients(list)).toMatchObject({ kind, carriers, dose: { fullTspPerCup } });
  });

  test('polyethylene terephthalate is glitter, not a neon resin', () => {
    expect(checkIngredients('Polyethylene Terephthalate, Red 28')).toMatchObject({
      kind: 'glitter',
      dose: undefined,
    });
  });

  test('a colour in glycerin is a ready dispersion of unknown strength', () => {
    expect(checkIngredients('Glycerin, Chromium Oxide Green').predispersedIn).toBe('glycerin');
    expect(checkIngredients('Chromium Oxide Green').predispersedIn).toBeUndefined();
  });
});

describe('a number makes a group precise', () => {
  test.each([
    ['Iron Oxides (CI 77491)', ['iron-oxide-red']],
    ['Iron Oxides (CI 77491, CI 77499)', ['iron-oxides']],
    ['Iron Oxides', ['iron-oxides']],
    ['CI 19140:1', ['yellow-5-lake']],
    ['CI 42090 Lake', ['blue-1-lake']],
    ['Titanium Dioxide (CI 77491)', ['titanium-dioxide', 'iron-oxide-red']],
    ['CI 12120', ['ci-12120']],
    ['E 163', ['anthocyanins']],
  ])('%s: %j', (list, ids) => {
    expect(idsIn(list)).toEqual(ids);
  });

  test.each([
    ['Mica 62 %', 62],
    ['Mica 12,5 %', 12.5],
    ['Mica 40-60%', 50],
    ['Tin Oxide <1%', 1],
    ['Mica', undefined],
  ])('%s holds %s percent', (list, percent) => {
    expect(one(list)?.percent).toBe(percent);
  });
});

describe('what does not change the answer', () => {
  const ids = fc.constantFrom(...heldOut, ...tuned.filter(({ list }) => /^[\w\s(),&;.-]+$/.test(list)));

  property.prop([ids])('case and blanks', ({ list }) => {
    const loose = list.toUpperCase().replace(/,/g, ' ,  ');
    expect(idsIn(loose)).toEqual(idsIn(list.replace(/,/g, ' ,  ')));
  });

  test.each([
    ['Ferric Ferrocyanide', 'Feric Ferrocyanide'],
    ['Titanium Dioxide', 'Titanum Dioxde'],
    ['Chromium Hydroxide Green', 'Chromium Hidroxide Green'],
    ['Manganese Violet', 'Manganeze Violet'],
    ['Synthetic Fluorphlogopite', 'Synthetic Flourphlogopite'],
    ['Bismuth Oxychloride', 'Bismuth Oxichloride'],
  ])('a slip in %s', (right, wrong) => {
    expect(idsIn(wrong)).toEqual(idsIn(right));
  });
});

describe('the catalogue and the list reader agree', () => {
  const described = colourants.filter(({ id }) => id !== 'mica-unknown-coat');

  test.each(described.map(colourant => [colourant.id, colourant] as const))('%s', (_, colourant) => {
    const { verdict, light, unknown } = checkIngredients(colourant.names.en);
    expect({ verdict, light, unknown }).toEqual({
      verdict: colourant.alkali.behaviour,
      light: colourant.light,
      unknown: [],
    });
    expect(componentsOf(colourant).length).toBeGreaterThan(0);
  });

  test('every direction and condition has words', () => {
    const { towards, on } = en.stability;
    const all = [...heldOut, ...tuned].flatMap(({ list }) => checkIngredients(list).components);
    const components = [
      ...all,
      ...colourants.flatMap(componentsOf),
      ...colourants.map(({ alkali }) => alkali),
    ];
    const mute = components.filter(
      part => (part.towards && !(part.towards in towards)) || (part.on && !(part.on in on)),
    );
    expect(mute).toEqual([]);
  });
});

describe('any text is read', () => {
  const listLike = fc
    .array(
      fc.constantFrom(
        'mica',
        '(',
        ')',
        '[',
        ']',
        ',',
        '+/-',
        '%',
        '77491',
        'CI ',
        'E1',
        '. ',
        '/',
        '\n',
        'lake',
        'red 4',
        'é',
        ' ',
        '•',
      ),
      {
        maxLength: 400,
      },
    )
    .map(parts => parts.join(''));

  property.prop([fc.oneof(fc.string({ unit: 'binary', maxLength: 2000 }), listLike)])(
    'and never throws',
    text => {
      const report = checkIngredients(text);
      expect(report.components.every(({ as }) => as.length <= text.length)).toBe(true);
    },
  );

  test.each([
    '(',
    ')',
    '(+/- ',
    '[',
    '([',
    'a,',
    'abcdef,',
    '1',
    ' ',
    '+/-',
    'mica ',
    '/',
    'CI ',
    '77491 ',
    '1,2-',
    '.',
    'é',
    'x.',
  ])('even 10,000 characters of %j', piece => {
    expect(checkIngredients(piece.repeat(10_000 / piece.length)).unknown).toBeDefined();
  });
});

test('a list is as sure as the least sure of its colours, and not sure where a part is unknown', () => {
  const sure = (list: string) => checkIngredients(list).confidence;
  const of = (list: string) => one(list)!.confidence;
  expect([of('Titanium Dioxide'), sure('Titanium Dioxide'), sure('Mica, Titanium Dioxide')]).toEqual([
    'high',
    'high',
    'high',
  ]);
  expect(sure('Titanium Dioxide, Quorblite')).toBe('low');
});
