import { describe, expect, test } from 'vitest';
import { thingsIn } from '../../../../../src/engine/questions/found/names/entities.ts';
import { plantsBeside, unlistedIn } from '../../../../../src/engine/questions/found/names/unlisted.ts';
import { wordsOf } from '../../../../../src/engine/questions/found/words-of.ts';

/*
 * What a maker names, as makers write it (from memory): a kind that is said once for several hues, colours by their Colour Index number or
 * as labels have them (21 CFR 74: FD&C Red No. 40), what stays out of soap by its name; a bare hue names nothing that colours.
 */

describe('what is named', () => {
  test.each<readonly [string, readonly string[]]>([
    ['how much red iron oxide', ['red iron oxide']],
    ['red, yellow and black oxide for 2 lb', ['red oxide', 'yellow oxide', 'black oxide']],
    ['óxido rojo y amarillo para 500 g', ['oxido rojo', 'oxido amarillo']],
    ['óxido rojo, amarillo y negro', ['oxido rojo', 'oxido amarillo', 'oxido negro']],
    ['red and green oxide', ['red oxide', 'green oxide']],
    ['mica roja y azul', ['mica roja', 'mica azul']],
    ['yellow oxide chrome green', ['yellow oxide', 'chrome green']],
    ['red oxide and brown oxide', ['red oxide', 'brown oxide']],
    ['red oxide yellow oxide', ['red oxide', 'yellow oxide']],
    ['gold mica in the olive one', ['gold mica']],
    ['with oxides? the yellow and the black', ['yellow iron oxide', 'black iron oxide']],
    ['oxides: red black yellow', ['red iron oxide', 'black iron oxide', 'yellow iron oxide']],
    [
      'los óxidos, negro, rojo y amarillo',
      ['oxido de hierro negro', 'oxido de hierro rojo', 'oxido de hierro amarillo'],
    ],
    ['to wet oxide? the red one', ['red iron oxide']],
    ['clay: slurried? 15 g of french green', ['green clay']],
    ['arcilla, la verde', ['arcilla verde']],
    ['oxide, red or blue', []],
    ['el óxido de cromo o el hidratado', ['oxido de cromo', 'hydrated chromium oxide']],
    ['hydrated one', []],
    ['chromium oxide, the hydrated one', ['chromium oxide', 'hydrated chromium oxide']],
    ['red 40 in soap', ['red 40']],
    ['blue 1 lake', ['blue 1 lake']],
    ['rojo 40', ['rojo 40']],
    ['CI 77491', ['ci 77491']],
    ['77007', ['77007']],
    ['ci 12345', []],
    ['e999', []],
    ['neon pigments for 500 g', ['neon pigments']],
    ['neon', []],
    ['pastel yellow', []],
    ['oil pastel', []],
    ['soft pastel', []],
    ['soft pastels', ['soft pastels']],
    ['1 lb oils pastel', []],
    ['crayons in soap', ['crayons']],
    ['food colouring', ['food colouring']],
    ['food coloring gel', ['food colouring']],
    ['white white', []],
    ['white', []],
    ['red', []],
    ['a red soap', []],
    ['titanium dioxide', ['titanium dioxide']],
    ['zinc oxide and titanium dioxide', ['zinc oxide', 'titanium dioxide']],
    ['mica', ['mica']],
    ['the gold mica and the silver mica', ['gold mica', 'silver mica']],
    ['activated charcoal and rose clay', ['activated charcoal', 'rose clay']],
    ['cocoa for brown', ['cocoa']],
    ['cocoa powder', ['cocoa']],
    ['turmeric in oil', ['turmeric']],
    ['spirulina or chlorella', ['spirulina']],
    ['madder root powder and alkanet', ['madder root', 'alkanet']],
    ['indigo powder, 1 tsp', ['indigo']],
    ['annatto seeds infused in olive oil', ['annatto seeds']],
    ['achiote y cúrcuma', ['achiote', 'curcuma']],
    ['carbón activado', ['carbon activado']],
    ['dióxido de titanio y óxido de zinc', ['dioxido de titanio', 'oxido de zinc']],
    ['lavender', []],
    ['kaolin', ['kaolin']],
    ['pink clay, red clay', ['pink clay', 'red clay']],
    ['ultramarine pink', ['ultramarine pink']],
    ['pink ultramarine or violet ultramarine', ['pink ultramarine', 'violet ultramarine']],
    ['green chrome oxide + 2 g titanium dioxide', ['green chrome oxide', 'titanium dioxide']],
    ['iron oxide', ['iron oxide']],
    ['oxido de hierro', ['oxido de hierro']],
    ['black iron oxide, brown', ['black iron oxide']],
    ['brazilian clay', ['brazilian clay']],
    ['clay', []],
    ['sea clay', ['sea clay']],
    ['rhassoul', ['rhassoul']],
    ['coffee grounds', ['coffee grounds']],
    ['paprika', ['paprika']],
    ['cinnamon', []],
    ['henna powder', ['henna']],
    ['beetroot powder', ['beetroot']],
    ['woad', ['woad']],
    ['walnut hulls', ['walnut hulls']],
    ['butterfly pea', ['butterfly pea']],
    ['blue spirulina', ['blue spirulina']],
  ])('%s', (text, names) => {
    expect(thingsIn(wordsOf(text)).map(one => one.text)).toEqual(names);
  });

  test('a pigment that the catalogue holds is found there, what stays out of soap is not', () => {
    const found = (text: string) =>
      thingsIn(wordsOf(text)).map(({ colourants }) => colourants.map(({ id }) => id).length > 0);
    expect(found('red iron oxide, crayons, CI 77491, food colouring, madder')).toEqual([
      true,
      false,
      false,
      false,
      true,
    ]);
  });

  test('each stands where it is written, and none over another', () => {
    const words = wordsOf('red, yellow and black oxide with gold mica');
    const things = thingsIn(words);
    expect(things.map(({ from, to }) => words.words.slice(from, to).join(' '))).toEqual([
      'red',
      'yellow',
      'black oxide',
      'gold mica',
    ]);
  });
});

describe('what no list holds', () => {
  test.each([
    ['does zobo leaf stay red', 'zobo leaf'],
    ['zobo leaf powder dried', 'zobo leaf powder'],
    ['cempasúchil molido', 'cempasuchil molido'],
    ['raíz de ratania', 'raiz de ratania'],
    ['hojas de guayusa', 'hojas de guayusa'],
    ['guayusa en polvo', 'guayusa en polvo'],
    ['ground guayusa', 'ground guayusa'],
    ['purple corn for soap', 'purple corn'],
    ['cinnamon', 'cinnamon'],
    ['cinnamon oil', undefined],
    ['aceite de canela', undefined],
    ['mica powder', undefined],
    ['olive leaf', undefined],
    ['the powder', undefined],
    ['ab powder', undefined],
    ['how much for 2 cups', undefined],
  ])('%s: %s', (text, name) => {
    const words = wordsOf(text);
    const found = unlistedIn(words);
    expect(found?.text).toBe(name);
    const place = found && words.words.slice(found.from, found.to).join(' ');
    expect(place).toBe(name);
  });

  test.each<readonly [string, readonly string[]]>([
    ['spirulina and chlorella', ['chlorella']],
    ['chlorella or spirulina', ['chlorella']],
    ['cuánta espirulina y cuánta clorela', ['clorela']],
    ['spirulina then after a good while chlorella', []],
    ['spirulina chlorella', []],
    ['chlorella and ube', []],
  ])('a plant beside a colourant and a word that joins them: %s', (text, plants) => {
    const words = wordsOf(text);
    expect(plantsBeside(words, thingsIn(words))).toEqual(plants);
  });
});
