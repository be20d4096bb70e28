import { describe, expect, test } from 'vitest';
import { choiceTyped } from '../../../src/conversation/typed/choice-typed.ts';

const market = {
  choices: [
    { value: 'us', label: { en: 'United States', es: 'Estados Unidos' } },
    { value: 'eu', label: { en: 'European Union', es: 'Unión Europea' } },
  ],
};
const mass = {
  choices: [
    { value: 'grams', label: { en: 'grams', es: 'gramos' } },
    { value: 'ounces', label: { en: 'ounces', es: 'onzas' } },
  ],
};

describe('a choice is meant however it is typed', () => {
  test.each([
    [market, 'EU', 'eu'],
    [market, ' eu ', 'eu'],
    [market, 'unión europea', 'eu'],
    [market, 'Estados Unidos', 'us'],
    [mass, 'oz', 'ounces'],
    [mass, 'OZ', 'ounces'],
    [mass, 'g', 'grams'],
    [mass, 'Onzas', 'ounces'],
  ])('%#: “%s”', (option, typed, value) => {
    expect(choiceTyped(option, typed)).toBe(value);
  });
  test.each(['', 'stones', 'constructor', '__proto__', '😀'])(
    '“%s” stays as it stands, to be refused',
    typed => {
      expect(choiceTyped(mass, typed)).toBe(typed);
    },
  );
});
