import { describe, expect, it } from 'vitest';
import type { ReasonId, Reasons } from '../../../src/engine/refusal.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { wordsIn } from '../../../src/words/index.ts';
import type { Language } from '../../../src/words/sentence.ts';

const refused = <Id extends ReasonId>(language: Language, id: Id, values: Reasons[Id]) =>
  wordsIn(language).refusal(new Refusal(id, values) as unknown as Refusal);

describe('a shelf speaks', () => {
  it('with the number first, and no digit that no scale shows', () => {
    const { shelf } = wordsIn('en');
    expect(shelf.used({ name: 'Blue', taken: 1.25, left: 0.1 + 0.2 })).toBe(
      '0.3 g of “Blue” left after taking 1.25 g.',
    );
    expect(shelf.added({ name: 'Blue', grams: 1234.567 })).toBe('1234.6 g of “Blue” on your shelf.');
    expect(wordsIn('es').shelf.used({ name: 'Azul', taken: 1.25, left: 0.3 })).toBe(
      'Quedan 0,3 g de «Azul» tras sacar 1,25 g.',
    );
  });

  it('of an empty jar otherwise than of one that runs low', () => {
    for (const language of ['en', 'es'] as const) {
      const { shelf } = wordsIn(language);
      expect(shelf.low({ name: 'Blue', left: 0 })).not.toMatch(/\d/);
      expect(shelf.low({ name: 'Blue', left: 2.5 })).toMatch(/2[.,]5 g/);
    }
  });

  it('fits a button, however long the name', () => {
    for (const language of ['en', 'es'] as const) {
      const label = wordsIn(language).shelf.take({ name: 'x'.repeat(80), grams: 99_999.9 });
      expect(label.length).toBeLessThanOrEqual(80);
    }
  });
});

describe('why not', () => {
  it.each(['en', 'es'] as const)('says what is left, and what to do (%s)', language => {
    expect(refused(language, 'shelf-not-enough', { name: 'Blue', asked: 5, left: 3.2 })).toMatch(/3[.,]2 g/);
    const none = refused(language, 'shelf-not-enough', { name: 'Blue', asked: 5, left: 0 });
    expect(none).not.toMatch(/\d/);
  });

  it.each(['en', 'es'] as const)('names what may be meant (%s)', language => {
    const ambiguous = refused(language, 'shelf-item-ambiguous', {
      asked: 'blu',
      candidates: ['Blue', 'Blue mica'],
    });
    const unknown = refused(language, 'shelf-item-unknown', { asked: 'grn', nearest: ['Green'] });
    for (const word of ['blu', 'Blue', 'Blue mica']) expect(ambiguous).toContain(word);
    for (const word of ['grn', 'Green']) expect(unknown).toContain(word);
    expect(refused(language, 'shelf-item-unknown', { asked: 'grn', nearest: [] })).toContain('/shelf add');
  });

  it.each(['en', 'es'] as const)('names the addresses that work (%s)', language => {
    const sentence = refused(language, 'store-scheme-unknown', {
      address: 'mongo',
      known: ['sqlite:PATH', 'redis://HOST'],
    });
    for (const word of ['mongo', 'sqlite:PATH', 'redis://HOST']) expect(sentence).toContain(word);
  });
});
