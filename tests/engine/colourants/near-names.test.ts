import { describe, expect, test } from 'vitest';
import { findColourant } from '../../../src/engine/colourants/asked/find-colourant.ts';
import { colourants } from '../../../src/engine/colourants/catalogue.ts';
import { colourantsMeant, colourantsNamed } from '../../../src/engine/colourants/find.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { fold, foldedWords } from '../../../src/engine/text/fold.ts';
import { hazardRefusals as en } from '../../../src/words/en/hazards/hazards.ts';
import { hazardRefusals as es } from '../../../src/words/es/hazards/hazards.ts';

function asked(text: string): { readonly id: string; readonly values: object } {
  try {
    return { id: findColourant(text).id, values: {} };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { id: error.id, values: error.values };
  }
}

describe('names near others', () => {
  // Mars pigments are synthetic iron oxides (Colour Index: pigment red 101, yellow 42, black 11, brown 6).
  test.each([
    ['Mars red', 'red-iron-oxide'],
    ['rojo Marte', 'red-iron-oxide'],
    ['rojo de Marte', 'red-iron-oxide'],
    ['Mars yellow', 'yellow-iron-oxide'],
    ['amarillo de Marte', 'yellow-iron-oxide'],
    ['Mars black', 'black-iron-oxide'],
    ['Mars violet', 'violet-iron-oxide'],
    ['Venetian red', 'red-iron-oxide'],
    ['rojo inglés', 'red-iron-oxide'],
    ['caput mortuum', 'violet-iron-oxide'],
    ['bismuth pearl', 'bismuth-pearl'],
    ['perla de bismuto', 'bismuth-pearl'],
    ['bismuth oxychloride', 'bismuth-pearl'],
    ['pearl white', 'pearl-white-mica'],
    ['mother of pearl', 'pearl-white-mica'],
    ['nácar', 'pearl-white-mica'],
  ])('%s is %s', (text, id) => {
    expect(asked(text).id).toBe(id);
  });

  test.each([
    'talc',
    'Talco',
    'talcum powder',
    'steatite',
    'soapstone powder',
    'French chalk',
    'chalk',
    'maicena',
    'baking soda',
    'silica',
    'tierra de diatomeas',
  ])('%s is no colour', text => {
    const { id, values } = asked(text);
    expect(id).toBe('no-colour');
    expect((en['no-colour'] as (v: unknown) => string)(values)).toMatch(/mask/);
    expect((es['no-colour'] as (v: unknown) => string)(values)).toMatch(/mascarilla/);
  });

  test.each([
    'glow in the dark powder',
    'glow pigment',
    'polvo fosforescente',
    'brilla en la oscuridad',
    'strontium aluminate',
    'luminescent zinc sulfide',
    'aluminato de estroncio',
  ])('%s is not for soap', text => {
    const { id, values } = asked(text);
    expect([id, (values as { kind?: string }).kind]).toEqual(['no-colour', 'glow']);
    expect((en['no-colour'] as (v: unknown) => string)(values)).toMatch(/not for soap/);
    expect((es['no-colour'] as (v: unknown) => string)(values)).toMatch(/no es para jabón/);
  });

  test.each(['diamantina', 'polvo de diamantina', 'brillantina', 'escarcha dorada'])(
    '%s is glitter: its label is asked for',
    text => {
      expect(asked(text).id).toMatch(/^(?:glitter-read-label|metal-never-in-lye)$/);
    },
  );

  test('Paris green is the arsenic; a mica of that shade is asked back', () => {
    for (const text of [
      'Paris green',
      'verde París',
      'verde de París',
      'polvo verde París',
      'Schweinfurt green',
    ])
      expect(asked(text)).toMatchObject({ id: 'colour-barred', values: { reason: 'arsenic', hue: false } });
    for (const text of ['Paris green mica', 'mica verde París'])
      expect(asked(text).id).toMatch(/^colourant-(?:unknown|ambiguous)$/);
  });
});

describe('the sweep', () => {
  test('words of two names of one colour do not make a third name of it', () => {
    const strays = colourants.flatMap(({ id, names, synonyms }) => {
      const all = [names.en, names.es, ...synonyms].map(name => foldedWords(name));
      const known = new Set(all.map(words => words.join(' ')));
      return all.flatMap(one =>
        all.flatMap(other => {
          const text = `${one[0]} ${other.at(-1)}`;
          const isWithin = all.some(words => words.includes(one[0]!) && words.includes(other.at(-1)!));
          // By its words in another order, but for "pigment" and the like, it is the same name.
          if (isWithin || known.has(text) || colourantsNamed(text).length > 0) return [];
          const found = colourantsMeant(text);
          return found.length === 1 && found[0]?.id === id ? [`${id}: ${text}`] : [];
        }),
      );
    });
    expect(strays).toEqual([]);
  });

  test('what a lake stands on, or a label says beside it, is no colour by itself', () => {
    for (const text of ['talc', 'talc lake', 'aluminium hydroxide', 'alumina', 'barium'])
      expect(asked(text).id).not.toMatch(/-lake$/);
  });

  test('no name of a colour is taken for a filler or for what glows', () => {
    for (const { id, names, synonyms } of colourants)
      for (const name of [id, names.en, names.es, ...synonyms])
        expect(`${fold(name)}: ${asked(name).id}`).not.toContain('no-colour');
  });
});
