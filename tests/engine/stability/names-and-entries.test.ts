import { describe, expect, test } from 'vitest';
import { checkIngredients } from '../../../src/engine/stability/check.ts';
import { readEntries } from '../../../src/engine/stability/entries.ts';
import { identified, identitiesAlike, identityOf } from '../../../src/engine/stability/identity.ts';
import { alike } from '../../../src/engine/stability/like.ts';
import { substanceNamed, substanceNumbered, substanceWithE } from '../../../src/engine/stability/names.ts';
import { recognise } from '../../../src/engine/stability/recognise.ts';

/** What an entry tells, without what it does not. */
const told = (text: string) =>
  readEntries(text).map(({ name, numbers, eNumbers, brackets, percent, ifPresent }) =>
    [
      name,
      ...brackets.map(inside => `(${inside})`),
      ...numbers.map(number => `CI ${number}`),
      ...eNumbers.map(number => `E${number}`),
      ...(percent === undefined ? [] : [`${percent}%`]),
      ...(ifPresent ? ['perhaps'] : []),
    ]
      .filter(part => part !== '')
      .join(' '),
  );

// Lists as labels print them: Regulation (EC) No 1223/2009, article 19; 21 CFR 701.3 ("may contain", "+/-").
describe('an ingredient list is taken apart', () => {
  test.each([
    ['Mica, CI 77891. Tin oxide', ['Mica', 'CI 77891', 'Tin oxide']],
    ['Mica. Talc.', ['Mica', 'Talc']],
    ['Mica.Talc', ['Mica.Talc']],
    ['Mica.; Talc', ['Mica', 'Talc']],
    ['Red No. 40, Blue no. 1', ['Red No. 40', 'Blue no. 1']],
    ['Mica 12,5 %, 1,2-hexanediol', ['Mica 12.5%', '1,2-hexanediol']],
    ['Mica (CI 77019) 60-70%, Titanium Dioxide', ['Mica CI 77019 65%', 'Titanium Dioxide']],
    ['Iron Oxides (CI 77491, CI 77499) [and] Tin Oxide', ['Iron Oxides CI 77491 CI 77499', 'Tin Oxide']],
    ['Mica +/- Carmine, Talc', ['Mica', 'Carmine perhaps', 'Talc perhaps']],
    ['Mica [+/- Carmine (CI 75470)] Tin Oxide', ['Mica', 'Carmine CI 75470 perhaps', 'Tin Oxide']],
    ['Mica (may contain: Carmine), Talc', ['Mica', 'Carmine perhaps', 'Talc']],
    ['Mica, puede contener: carmín', ['Mica', 'carmín perhaps']],
    ['Ingredients: Mica\nTitanium Dioxide', ['Mica', 'Titanium Dioxide']],
    ['E172, E 171', ['E172', 'E171']],
    // A number of CAS and a share above all are none of these.
    ['Mica 7732-18-5', ['Mica']],
    ['150% mica', ['mica']],
    ['Mica (Titanium Dioxide)', ['Mica (Titanium Dioxide)']],
    ['Mica (), Talc', ['Mica', 'Talc']],
    ['Mica • Talc', ['Mica', 'Talc']],
    ['', []],
    [', ; .', []],
  ])('%s', (list, entries) => {
    expect(told(list)).toEqual(entries);
  });
});

describe('a name on a label', () => {
  // 21 CFR 74: certified colours by number; 82: their lakes.
  test.each([
    ['Red 40', 'red-40'],
    ['Red40', 'red-40'],
    ['FD&C Red No. 40 Aluminum Lake', 'red-40-lake'],
    ['Ext. D&C Violet No. 2', 'ext-violet-2'],
    ['D&C Black No. 2', 'carbon-black'],
    ['Black 2', 'carbon-black'],
    ['negro 2', 'carbon-black'],
    ['negro 3', 'bone-black'],
    ['D&C Black No. 3', 'bone-black'],
    ['Red 40 Blue 1', undefined],
    ['Red 40 banana', undefined],
    ['Red 400', undefined],
    ['dioxide titanium', 'titanium-dioxide'],
    ['non-nano titanium dioxide', 'titanium-dioxide'],
    ['red iron oxide cosmetic grade', 'iron-oxide-red'],
    ['annatto seed', 'annatto'],
    ['', undefined],
    ['powder', undefined],
    [Array.from({ length: 17 }, () => 'mica').join(' '), undefined],
  ])('%s is %s', (name, id) => {
    expect(substanceNamed(name)?.id).toBe(id);
  });

  // Annex IV of Regulation (EC) No 1223/2009, Regulation (EC) No 1333/2008 for the E numbers.
  test.each([
    ['77891', 'titanium-dioxide'],
    ['19140', 'yellow-5'],
    ['19140:1', 'yellow-5-lake'],
    ['42090:2', 'blue-1-lake'],
    ['77491', 'iron-oxide-red'],
    ['99999', undefined],
    ['99999:1', undefined],
  ])('CI %s is %s', (number, id) => {
    expect(substanceNumbered(number)?.id).toBe(id);
  });
  test.each([
    ['171', 'titanium-dioxide'],
    ['172', 'iron-oxides'],
    ['172i', 'iron-oxides'],
    ['120', 'carmine'],
    ['999', undefined],
  ])('E%s is %s', (number, id) => {
    expect(substanceWithE(number)?.id).toBe(id);
  });
});

describe('what an entry holds, by name, brackets and numbers together', () => {
  const held = (text: string) =>
    readEntries(text).map(entry => {
      const { substances, unknown } = recognise(entry);
      return [...substances.map(({ id }) => id), ...unknown.map(word => `?${word}`)].join(' ');
    });
  test.each([
    ['Ultramarines (Ultramarine Violet)', ['ultramarine-violet']],
    ['Mica (Titanium Dioxide)', ['mica titanium-dioxide']],
    ['Iron Oxides (CI 77491, CI 77492)', ['iron-oxides']],
    ['Iron Oxides CI 77491', ['iron-oxide-red']],
    ['Mica CI 77891', ['mica titanium-dioxide']],
    ['Iron Oxides (CI 77891)', ['iron-oxides titanium-dioxide']],
    ['CI 77491 CI 77492', ['iron-oxides']],
    ['CI 77491 CI 77891', ['iron-oxide-red titanium-dioxide']],
    ['CI 42090 Lake', ['blue-1-lake']],
    ['CI 42090', ['blue-1']],
    ['mica titanium dioxide tin oxide', ['mica titanium-dioxide tin-oxide']],
    ['mica powder with gold', ['mica ?gold']],
    ['Mica and Talc', ['mica talc']],
    ['Mica/Talc', ['mica talc']],
    ['Mica + Quorb', ['mica ?Quorb']],
    ['Base: Mica', ['mica']],
    ['jojoba oil', ['plant-oil']],
    ['metalized polyester', ['metal-flake']],
    ['copper powder', ['copper']],
    // A slip of the pen never hides a metal.
    ['Aluminm Powder', ['aluminium']],
    // A word of two or three letters is too short to be found among others.
    ['tin', ['?tin']],
    ['made in Spain', ['']],
    ['for external use only', ['']],
    ['jabón', ['?jabón']],
    ['Quorblite', ['?Quorblite']],
  ])('%s', (list, substances) => {
    expect(held(list)).toEqual(substances);
  });
});

test('lists in lists in lists are lists, and no deeper', () => {
  expect(told('Mica (+/- Talc (+/- Carmine))')).toEqual(['Mica', 'Talc perhaps', 'Carmine perhaps']);
  expect(told('Mica (+/- Talc (+/- Carmine (+/- Silica (+/- Tin oxide))))')).toHaveLength(4);
});

describe('a report', () => {
  test.each([
    ['Mica, Titanium Dioxide', { confidence: 'high', like: 'pearl-white-mica', light: 'holds' }],
    ['Mica, Quorblite', { confidence: 'low', verdict: 'unknown' }],
    ['Chromium Oxide Greens, Ultramarines', { confidence: 'medium', kind: 'chromium' }],
    ['Mica, Carmine', { light: 'fades-slowly', towards: 'purple-then-dull' }],
    ['Turmeric', { light: 'fades', kind: 'botanical', like: 'turmeric' }],
    ['Ultramarines, citric acid', { verdict: 'destroyed', towards: 'paler', acidMeetsUltramarine: true }],
    ['Titanium Dioxide, Glycerin', { kind: 'white', predispersedIn: 'glycerin' }],
    ['PET', { kind: 'glitter' }],
    ['Iron Oxides, Mica', { kind: 'mica', like: 'bronze-mica' }],
    ['Titanium Dioxide, Iron Oxides', { kind: 'oxide' }],
    // Metal that is in it, or only may be, is neither dosed nor wetted.
    ['Mica, Aluminum Powder', { kind: 'metal', carriers: [], dose: undefined, verdict: 'never' }],
    [
      'Mica, may contain Aluminum',
      { kind: 'mica', carriers: [], dose: undefined, verdict: 'stable', verdictIfPresent: 'never' },
    ],
    ['Silica', { kind: 'plain', verdict: 'stable' }],
    ['', { kind: 'unknown', verdict: 'unknown', confidence: 'low', components: [] }],
  ])('of %s', (list, report) => {
    expect(checkIngredients(list)).toMatchObject(report);
  });
  test('of a carrier alone is no dispersion of anything', () => {
    expect(checkIngredients('Glycerin').predispersedIn).toBeUndefined();
    expect(checkIngredients('Glycerin').confidence).toBe('high');
  });
  test('doses by the ingredient that takes least, in liquids that suit every one', () => {
    // Titanium dioxide takes half a teaspoon a cup, zinc oxide as much or more (common practice).
    const one = checkIngredients('Titanium Dioxide');
    const both = checkIngredients('Zinc Oxide, Titanium Dioxide');
    const other = checkIngredients('Zinc Oxide');
    expect(both.dose?.fullTspPerCup).toBe(Math.min(one.dose!.fullTspPerCup, other.dose!.fullTspPerCup));
    for (const carrier of both.carriers) {
      expect(one.carriers).toContain(carrier);
      expect(other.carriers).toContain(carrier);
    }
    expect(both.carriers.length).toBeGreaterThan(0);
    expect(checkIngredients('Iron Oxide Red, Titanium Dioxide').dose).toEqual(
      checkIngredients('Iron Oxide Red').dose,
    );
  });
  test('names each substance once, and for certain where one entry says so', () => {
    const { components } = checkIngredients('Mica, Mica, may contain Mica, Talc');
    expect(components.map(({ id, ifPresent }) => [id, ifPresent])).toEqual([
      ['mica', false],
      ['talc', true],
    ]);
    expect(checkIngredients('Quorblite, Mica, Quorblite').unknown).toEqual(['Quorblite']);
  });
});

describe('what a powder is most like', () => {
  test.each([
    ['mica', ['mica', 'titanium-dioxide'], ['pearl-white-mica']],
    ['mica', ['mica', 'iron-oxide-red'], ['bronze-mica']],
    ['mica', ['mica', 'carmine'], ['mica-unknown-coat']],
    ['neon', [], ['neon-pink']],
    ['oxide', [], ['red-iron-oxide']],
    ['lake', [], ['red-40-lake']],
    ['dye', [], ['red-40-dye']],
    ['clay', [], ['kaolin']],
    ['botanical', [], ['nettle']],
    ['plain', [], []],
    ['white', ['titanium-dioxide', 'zinc-oxide'], ['titanium-dioxide', 'zinc-oxide']],
  ] as const)('%s of %o', (kind, ids, like) => {
    expect(alike(kind, ids).map(({ id }) => id)).toEqual(like);
  });
});

describe('what reports are filed under', () => {
  test.each([
    ['Glycerin, Xyzzyol', undefined],
    ['Silica', undefined],
    ['Mica', 'mica-unknown-coat'],
    // Six entries of the catalogue are made of these two, so it is none of them.
    ['Mica, Titanium Dioxide', 'of:mica+titanium-dioxide'],
    ['Titanium Dioxide, Mica, Xyzzyol', 'of:mica+titanium-dioxide+?xyzzyol'],
    ['may contain Mica, Carmine', 'of:carmine+mica'],
    ['Mica, may contain Carmine', 'mica-unknown-coat'],
  ])('%s: %s', (list, identity) => {
    expect(identityOf(checkIngredients(list))).toBe(identity);
  });
  test('and which of them speak of one another', () => {
    const ofBoth = identitiesAlike('of:mica+titanium-dioxide');
    expect(ofBoth[0]).toBe('of:mica+titanium-dioxide');
    expect(ofBoth).toContain('pearl-white-mica');
    expect(ofBoth).not.toContain('gold-mica');
    expect(identitiesAlike('gold-mica')).toEqual(['gold-mica', 'of:iron-oxides+mica+titanium-dioxide']);
    expect(identitiesAlike('of:nothing')).toEqual(['of:nothing']);
    expect(identitiesAlike('zork')).toEqual(['zork']);
    expect(identified('of:mica+zork')).toEqual({ names: ['Mica', 'zork'], unknown: '' });
  });
});
