import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { findColourant } from '../../../src/engine/colourants/asked/find-colourant.ts';
import { colourants } from '../../../src/engine/colourants/catalogue.ts';
import { colourantsMeant } from '../../../src/engine/colourants/find.ts';
import { Refusal } from '../../../src/engine/refusal.ts';

type Refused = { readonly reason: string; readonly offered: readonly string[] };

/** The id found, or the refusal's id and the ids it offers. */
function asked(text: string): string | Refused {
  try {
    return findColourant(text).id;
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const values = error.values as { nearest?: { id: string }[]; candidates?: { id: string }[] };
    return { reason: error.id, offered: (values.candidates ?? values.nearest ?? []).map(({ id }) => id) };
  }
}

describe('a colourant is found', () => {
  test.each([
    ['ultramarine-blue', 'its id', 'ultramarine-blue'],
    ['Ultramarine Blue', 'its English name', 'ultramarine-blue'],
    ['azul ultramar', 'its Spanish name', 'ultramarine-blue'],
    ['blue ultramarine', 'another word order', 'ultramarine-blue'],
    ['Oxide, red', 'an inverted name', 'red-iron-oxide'],
    ['oxido de hierro rojo', 'a name without its accent', 'red-iron-oxide'],
    ['red oxides', 'the plural', 'red-iron-oxide'],
    ['CI 77288', 'a CI number', 'chromium-oxide-green'],
    ['77288', 'a bare number', 'chromium-oxide-green'],
    ['c.i. 77289', 'a dotted CI number', 'chromium-hydroxide-green'],
    ['CI 77891', 'a number that three grades share', 'titanium-dioxide'],
    ['CI 73360', 'the number of the true red', 'red-30-lake'],
    ['TD', 'the trade’s short name', 'titanium-dioxide'],
    ['Charcoal Powder', 'an INCI name', 'activated-charcoal'],
    ['gray mica', 'the US spelling of grey', 'silver-mica'],
    ['D&C Red No. 30 Aluminum Lake', 'a US listing name', 'red-30-lake'],
    ['neón rosa', 'Spanish with an accent', 'neon-pink'],
    ['cocoa', 'the kitchen word', 'cocoa-powder'],
    ['mica', 'the bare word', 'mica-unknown-coat'],
    ['gold', 'a colour only one mica has', 'gold-mica'],
  ])('%s (%s)', (text, _, id) => {
    expect(asked(text)).toBe(id);
  });

  test('by every name and synonym it has', () => {
    const lost = colourants.flatMap(({ id, names, synonyms }) =>
      [id, names.en, names.es, ...synonyms].filter(name => asked(name) !== id),
    );
    expect(lost).toEqual([]);
  });
});

describe('a colourant is not guessed', () => {
  test('CI 77007 is five ultramarines', () => {
    expect(asked('CI 77007')).toEqual({
      reason: 'colourant-ambiguous',
      offered: [
        'ultramarine-blue',
        'ultramarine-violet',
        'ultramarine-pink',
        'ultramarine-red',
        'ultramarine-green',
      ],
    });
  });

  test.each([
    'blue',
    'azul',
    'red',
    'blue mica',
    'purple mica',
    'mica verde',
    'Iron Oxides',
    'neon',
    'lake',
    'red lake',
  ])('%s names several candidates', text => {
    const answer = asked(text);
    expect(answer).toMatchObject({ reason: 'colourant-ambiguous' });
    expect((answer as Refused).offered.length).toBeGreaterThan(1);
  });

  test.each([
    ['ultramarin blu', 'ultramarine-blue'],
    ['charcol', 'activated-charcoal'],
    ['titanum dioxyde', 'titanium-dioxide'],
    ['chromium oxid gren', 'chromium-oxide-green'],
    ['cacoa', 'cocoa-powder'],
    ['óxido de yerro rojo', 'red-iron-oxide'],
  ])('%s is unknown, and the nearest of three is %s', (text, nearest) => {
    const answer = asked(text) as Refused;
    expect(answer.reason).toBe('colourant-unknown');
    expect(answer.offered).toHaveLength(3);
    expect(answer.offered[0]).toBe(nearest);
  });

  property.prop([fc.string({ unit: 'grapheme', maxLength: 300 })])(
    'any text gives a colourant or a refusal, never a fault',
    text => {
      const answer = asked(text);
      expect(typeof answer === 'string' || answer.reason.length > 0).toBe(true);
    },
  );
});

test('a text without a word means no colourant, not all of them', () => {
  for (const text of ['', ' ', '!?']) expect(colourantsMeant(text)).toEqual([]);
});
