import { describe, expect, test } from 'vitest';
import { portionColours } from '../../../../src/engine/colour/measuring/portion-colours.ts';
import { parsePortionColours } from '../../../../src/engine/colour/reading/portion-colours-text.ts';
import { hexOfLab, type Lab, labOfHex } from '../../../../src/engine/colour/spectra/cielab.ts';
import { Refusal } from '../../../../src/engine/refusal.ts';

const sought = (hex: string, share: number) => ({ predicted: { lab: labOfHex(hex), plusMinus: 10 }, share });
const seen = (hex: string, share: number) => ({ lab: labOfHex(hex), share, plusMinus: 4 });

describe('the colours of a cured bar', () => {
  test('go to the portions they are nearest to', () => {
    const found = portionColours(
      [sought('#5f4c88', 0.4), sought('#ccae69', 0.3), sought('#ece3cb', 0.3)],
      [seen('#d8c080', 0.35), seen('#efe8d4', 0.25), seen('#6c5a94', 0.4)],
    );
    expect(found.map(({ portion, lab, unsure }) => [portion, hexOfLab(lab as Lab), unsure])).toEqual([
      [0, '#6c5a94', false],
      [1, '#d8c080', false],
      [2, '#efe8d4', false],
    ]);
  });

  test('are unsure where another reading is as likely', () => {
    const found = portionColours(
      [sought('#806070', 0.5), sought('#7e6272', 0.5)],
      [seen('#907080', 0.5), seen('#705060', 0.5)],
    );
    expect(found.every(({ unsure }) => unsure)).toBe(true);
    const lone = portionColours([sought('#5f4c88', 1)], [seen('#5f4c88', 0.6), seen('#ccae69', 0.4)]);
    expect(lone).toMatchObject([{ portion: 0, unsure: true }]);
  });

  test('too few leave a portion out, none leave all out', () => {
    expect(
      portionColours([sought('#5f4c88', 0.5), sought('#ccae69', 0.5)], [seen('#ccae69', 1)]),
    ).toMatchObject([{ portion: 1 }]);
    expect(portionColours([sought('#5f4c88', 1)], [])).toEqual([]);
  });
});

describe('what portions became, in words', () => {
  const portions = [{ names: ['Sky', 'Dusk'] }, { names: ['Old gold'] }, { names: ['rest'] }];
  const read = (text: string) =>
    parsePortionColours(text, portions).map(({ portion, lab }) => [portion, hexOfLab(lab)]);

  test.each([
    [
      'sky #6b5aa8; old gold #c9a24b',
      [
        [0, '#6b5aa8'],
        [1, '#c9a24b'],
      ],
    ],
    ['Dusk: #6b5aa8', [[0, '#6b5aa8']]],
    ['3 = #efe6cf', [[2, '#efe6cf']]],
    ['gold #c9a24b', [[1, '#c9a24b']]],
    [
      'sky #6b5aa8, old gold #c9a24b',
      [
        [0, '#6b5aa8'],
        [1, '#c9a24b'],
      ],
    ],
  ])('“%s”', (text, wanted) => {
    expect(read(text)).toEqual(wanted);
  });

  test.each(['#6b5aa8', 'indigo #6b5aa8', '4 #6b5aa8', '0 #6b5aa8', 'sky', 'sky lab(120 0 0)', '🧼'])(
    '“%s” is asked back',
    text => {
      expect(() => read(text)).toThrow(Refusal);
    },
  );

  test('needs no name where there is one portion', () => {
    expect(parsePortionColours('#6b5aa8', [{ names: ['Sky'] }])).toHaveLength(1);
  });
});
