import { describe, expect, test } from 'vitest';
import { portionsMade } from '../../../../src/engine/batch/made/portions-made.ts';
import { colourantsNamed } from '../../../../src/engine/colourants/find.ts';
import { MEASURES, US_CUP_ML } from '../../../../src/engine/quantities/units.ts';

const isName = (text: string) => text === 'Of the sea' || text === 'Solo' || colourantsNamed(text).length > 0;
const read = (text: string) => portionsMade(text, { measures: MEASURES.us, isName });
const refused = (id: string, values?: object) => expect.objectContaining({ id, ...(values && { values }) });

describe('what was made', () => {
  test('is portions apart by semicolons or lines, each its batter and its mix', () => {
    const [violet, plain] = read('2 cups ultramarine violet 1/2 tsp + gold mica pastel; 300 g plain');
    expect(violet?.millilitres).toBeCloseTo(2 * US_CUP_ML, 6);
    expect(violet?.parts).toEqual([
      {
        name: 'ultramarine violet',
        dose: { by: 'amount', amount: expect.objectContaining({ measure: 'volume' }) },
      },
      { name: 'gold mica', dose: { by: 'name', name: 'pastel' } },
    ]);
    expect(plain).toMatchObject({ name: undefined, grams: 300, parts: [] });
    expect(read('1 cup plain\n2 cups plain')).toHaveLength(2);
  });

  test('may have names', () => {
    expect(read('wedge 2: 1 cup gold mica')[0]).toMatchObject({
      name: 'wedge 2',
      parts: [{ name: 'gold mica' }],
    });
  });

  test.each(['plain', 'uncoloured', 'uncolored', 'natural', 'no colour', 'bare', 'sin color', 'sola', ''])(
    '“%s” is no colour',
    text => {
      expect(read(`1 cup ${text}`)[0]?.parts).toEqual([]);
    },
  );

  test('takes a jar by its name, whatever that says', () => {
    expect(read('1 cup Of the sea')[0]?.parts).toEqual([expect.objectContaining({ name: 'Of the sea' })]);
    expect(read('1 cup Solo')[0]?.parts).toEqual([expect.objectContaining({ name: 'Solo' })]);
  });

  test('is refused where a portion has no size', () => {
    expect(() => read('gold mica')).toThrow(refused('batch-portion-unsized', { text: 'gold mica' }));
    expect(() => read('1 cup plain; red')).toThrow(refused('batch-portion-unsized', { text: 'red' }));
    expect(() => read('0.5 g gold mica')).toThrow(refused('batch-portion-unsized'));
    expect(() => read(' ; ')).toThrow(refused('batch-portion-unsized'));
  });

  test('is twelve portions at most', () => {
    const twelve = Array.from({ length: 12 }, () => '1 cup plain');
    expect(read(twelve.join(';'))).toHaveLength(12);
    expect(() => read([...twelve, '1 cup plain'].join(';'))).toThrow(
      refused('batch-portions-many', { most: 12 }),
    );
  });
});
