import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { parsePremix } from '../../../../src/engine/dosing/parse-premix.ts';
import type { Portion } from '../../../../src/engine/quantities/amount.ts';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { sharesPhrase } from '../../../../src/engine/text/amounts/shares/share-phrases.ts';

const sizeOf = (portion: Portion | undefined): number =>
  portion === undefined
    ? Number.NaN
    : portion.measure === 'volume'
      ? portion.millilitres
      : portion.measure === 'mass'
        ? portion.grams
        : Number.NaN;
const told = (text: string): readonly number[] => {
  const { low, high } = parsePortionRange(text);
  return [low, ...(high ? [high] : [])].map(sizeOf);
};
const near = (got: readonly number[], wanted: readonly number[]) => {
  expect(got).toHaveLength(wanted.length);
  for (const [at, one] of wanted.entries()) expect(got[at]! / one).toBeCloseTo(1, 6);
};

/** Units of the SI, as their factors to grams and millilitres stand in its brochure (BIPM, ninth edition). */
const METRIC = [
  { en: 'kilo', es: 'kilo', size: 1000 },
  { en: 'litre', es: 'litro', size: 1000 },
] as const;
const PARTS = [
  { en: 'a half', es: 'medio', share: 1 / 2 },
  { en: 'a quarter', es: 'cuarto', share: 1 / 4 },
] as const;

const unit = fc.constantFrom(...METRIC);
const part = fc.constantFrom(...PARTS);
const count = fc.integer({ min: 2, max: 9 });
/** Whole steps, so that no figure has more digits than a scale shows. */
const tenths = fc.integer({ min: 1, max: 9 });

describe('amounts as they are spoken come to what their parts come to', () => {
  test.prop([count, unit, part])(
    'so many and a part of it',
    (whole, { en, es, size }, { share, ...said }) => {
      near(told(`${whole} and ${said.en} ${en}s`), [(whole + share) * size]);
      near(told(`${whole} ${es}s y ${said.es}`), [(whole + share) * size]);
    },
  );

  test.prop([unit, part])('one, uncounted, and a part of it', ({ en, es, size }, { share, ...said }) => {
    near(told(`a ${en} and ${said.en}`), [(1 + share) * size]);
    near(told(`${es} y ${said.es}`), [(1 + share) * size]);
  });

  test.prop([count, tenths, unit])(
    'a decimal with a comma is one with a point',
    (whole, tenth, { es, size }) => {
      near(told(`${whole},${tenth} ${es}s`), [(whole + tenth / 10) * size]);
      near(told(`${whole}.${tenth} ${es}s`), [(whole + tenth / 10) * size]);
    },
  );

  test.prop([count, tenths, unit])(
    'a range whose unit is told once, at either end',
    (low, tenth, { en, es, size }) => {
      const ends = [low * size, (low + tenth / 10) * size];
      for (const text of [
        `between ${low} and ${low}.${tenth} ${en}s`,
        `between ${low} ${en}s and ${low}.${tenth}`,
        `somewhere between ${low} ${en}s and ${low}.${tenth}`,
        `entre ${low} ${es}s y ${low},${tenth}`,
        `entre ${low} y ${low},${tenth} ${es}s`,
      ])
        near(told(text), ends);
    },
  );

  test.prop([fc.integer({ min: 1, max: 3 }), fc.integer({ min: 20, max: 200 })])(
    'dozens of pieces',
    (dozens, each) => {
      near(told(`${dozens} dozen bars of ${each} g`), [12 * dozens * each]);
      near(told(`${dozens} docenas de ${each} g`), [12 * dozens * each]);
    },
  );
});

test.prop([fc.integer({ min: 1, max: 2 }), fc.integer({ min: 3, max: 9 })])(
  'parts of powder to parts of oil, with a colon between the names',
  (powder, oil) => {
    const read = parsePremix(`${powder} powder: ${oil} castor oil`);
    const plain = parsePremix(`${powder} parts powder to ${oil} parts castor oil`);
    expect(read).toEqual(plain);
  },
);

const colour = fc.constantFrom('red', 'white', 'green', 'yellow', 'black');
const three = fc.uniqueArray(colour, { minLength: 3, maxLength: 3 });

test.prop([three, fc.integer({ min: 1, max: 9 })])(
  'what is left and split again comes to a whole',
  (names, tenths) => {
    const [one, two, last] = names as [string, string, string];
    const half = (100 - 10 * tenths) / 2;
    const wanted = `${10 * tenths}% ${one}; ${half}% ${two}; ${half}% ${last}`;
    const shares = (text: string) =>
      sharesPhrase(text)
        .replace(/(\.\d*?)0+%/gu, '$1%')
        .replaceAll('.%', '%');
    expect(shares(`${one} ${10 * tenths}% then split what's left same between ${two} and ${last}`)).toBe(
      wanted,
    );
    if (tenths === 5)
      expect(shares(`half of it's ${one}. split what's left between ${two} and ${last}, equal`)).toBe(wanted);
  },
);

test.prop([three])('layers that are told from the floor of the mould lie as they are told', names => {
  const [one, two, last] = names as [string, string, string];
  const wanted = [one, two, last].map(name => `1 parts ${name}`).join('; ');
  for (const text of [
    `${one}, ${two}, ${last}, starting at the floor of the mould`,
    `${one} on the bottom, then ${two}, then ${last} for sky`,
    `${one} first in the mould, then the ${two}, then ${last} again`,
    `el fondo ${one}, después ${two} como arena, después ${last} y ya`,
  ])
    expect(sharesPhrase(text)).toBe(wanted);
});
