import { describe, expect, test } from 'vitest';
import { likelyLaw } from '../../../../src/engine/questions/places/likely-law.ts';
import { meantByText } from '../../../../src/records/shelf/meant.ts';
import { wordsIn } from '../../../../src/words/index.ts';

const componentsOf = (text: string) => meantByText(text).report.components;

/*
 * Annex IV of Regulation (EC) No 1223/2009 has ultramarines under CI 77007, carmine under CI 75470, chromium oxide green under CI 77288
 * (published); what each country goes by is from memory.
 */
describe('what a law most likely says whose list is not held', () => {
  test.each([
    ['GB', 'CI 77007', 'annex', 'yes', 'eu'],
    ['PY', 'CI 75470', 'annex', 'yes', 'eu'],
    ['BR', 'CI 77288', 'annex', 'yes', 'eu'],
    ['MX', 'CI 77007', 'annex', 'yes', 'eu'],
    ['CA', 'CI 77288', 'barred-only', 'yes', 'both'],
    ['AU', 'CI 77491', 'barred-only', 'yes', 'both'],
    ['PE', 'CI 75470', 'either', 'yes', 'both'],
    ['KE', 'CI 77491', 'unknown', 'yes', 'both'],
  ])('%s, %s: by %s, %s', (country, ci, basis, verdict, by) => {
    const law = likelyLaw(country, componentsOf(ci));
    expect(law).toMatchObject({ basis, verdict, by });
    expect(law.ci).toContain(ci.slice('CI '.length));
  });

  test('what no list that is held names stays open', () => {
    // Spirulina stands in neither list that is held.
    expect(likelyLaw('GB', componentsOf('spirulina')).verdict).toBe('unsure');
    expect(likelyLaw('CA', componentsOf('spirulina')).verdict).toBe('unsure');
  });

  test('a yes or a no stands first, and the law there decides', () => {
    const law = likelyLaw('GB', componentsOf('CI 77007'));
    expect(wordsIn('en').ask.likelyLaw({ country: 'GB', law })).toBe(
      'Very likely yes: allowed by the EU’s Annex IV. The UK’s own list is the EU’s as it was carried over, and may have changed since. ' +
        'The law there decides: look up CI 77007 before you sell.',
    );
    expect(
      wordsIn('es').ask.likelyLaw({ country: 'KE', law: likelyLaw('KE', componentsOf('CI 77007')) }),
    ).toBe(
      'Probablemente sí: según EE. UU. y la UE se puede. No tengo la lista propia de Kenia. Decide la ley de allí: busca CI 77007 antes de vender.',
    );
  });
});
