import { fc, test as property } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { parsePortionRange } from '../../../../src/engine/quantities/told/portion.ts';
import { portionsIn } from '../portions-in.ts';

/* Whatever stands around the figures: their product, share or the last of them, or a question; never another number. */

const sizeOf = (text: string): number => {
  const { low } = parsePortionRange(text);
  return low.measure === 'mass' ? low.grams : low.millilitres;
};

/** The portion that is read, or undefined where it is asked for and the right one is among the readings. */
function expectOrAsked(question: string, size: number): void {
  const { part, unclear } = portionsIn(question);
  const near = expect.closeTo(size, 1);
  if (unclear.length > 1)
    expect({ question, sizes: unclear.map(sizeOf) }).toEqual({
      question,
      sizes: expect.arrayContaining([near]),
    });
  else
    expect({ question, size: part === undefined ? undefined : sizeOf(part) }).toEqual({
      question,
      size: near,
    });
}

const before = fc.constantFrom(
  '',
  'hiya, ',
  'so my silicone mould: ',
  'quick one before work, ',
  'buenas, ',
  'mira, mi molde nuevo: ',
  'i forgot my glasses. ',
  'para el mercado del sábado, ',
);
const after = fc.constantFrom(
  '',
  ', how much charcoal?',
  '. charcoal, pastel please',
  ' n i want it with charcoal lol',
  ', carbón, ¿cuánto le pongo?',
  ' con carbón, tono medio',
  '. my scale is rubbish',
);
const count = fc.integer({ min: 2, max: 24 });
const unit = fc.constantFrom('ml', 'g');
const each = fc.integer({ min: 30, max: 140 });

describe('a count of vessels or bars and what each takes', () => {
  const wording = fc.constantFrom(
    (n: number, of: string) => `${n} wells of ${of}`,
    (n: number, of: string) => `${n} wells, ${of} each`,
    (n: number, of: string) => `${n} bars at ${of} apiece`,
    (n: number, of: string) => `${n} cavities n theyre ${of} each`,
    (n: number, of: string) => `mould wi ${n} holes, each hole takes ${of}`,
    (n: number, of: string) => `${n} x ${of} bars`,
    (n: number, of: string) => `${n} wee soaps (${of} each)`,
    (n: number, of: string) => `${n} moldecitos de ${of} cada uno`,
    (n: number, of: string) => `${n} huecos, a cada uno le caben ${of}`,
    (n: number, of: string) => `${n} pastillas de ${of}`,
    (n: number, of: string) => `${n} jaboncitos a ${of} cada uno`,
  );
  property.prop([before, wording, count, each, unit, after])(
    'are multiplied',
    (lead, said, many, size, of, tail) =>
      expectOrAsked(`${lead}${said(many, `${size} ${of}`)}${tail}`, many * size),
  );

  const some = fc.constantFrom(
    (m: number) => `, in ${m} of them`,
    (m: number) => `, only ${m} of em get it`,
    (m: number) => `, en ${m} de ellos`,
    (m: number) => ` y solo ${m} de ellas van pintadas`,
  );
  property.prop([before, wording, fc.integer({ min: 3, max: 24 }), each, unit, some, after])(
    'and of some of them so many are',
    (lead, said, many, size, of, ofThem, tail) => {
      const meant = Math.max(2, Math.floor(many / 2));
      expectOrAsked(`${lead}${said(many, `${size} ${of}`)}${ofThem(meant)}${tail}`, meant * size);
    },
  );
});

describe('a share of a whole', () => {
  const part = fc.constantFrom(
    ['a third', 1 / 3] as const,
    ['a 3rd', 1 / 3] as const,
    ['one quarter', 1 / 4] as const,
    ['half', 1 / 2] as const,
    ['two thirds', 2 / 3] as const,
    ['1/5', 1 / 5] as const,
  );
  const parte = fc.constantFrom(
    ['un tercio', 1 / 3] as const,
    ['la mitad', 1 / 2] as const,
    ['un cuarto', 1 / 4] as const,
    ['la quinta parte', 1 / 5] as const,
    ['tres cuartos', 3 / 4] as const,
  );
  const whole = fc.integer({ min: 20, max: 300 }).map(tens => 10 * tens);
  const ofWhole = fc.constantFrom('g oils', 'g of batter', 'oils', 'ml');
  const deTodo = fc.constantFrom('g de aceites', 'de aceites', 'de masa', 'ml');
  const wanted = fc.constantFrom(
    (share: string, all: string) => `${share} of my ${all} gets charcoal`,
    (share: string, all: string) => `batch is ${all}, takin ${share} of it for the charcoal`,
    (share: string, all: string) => `${all}, ${share} of the batch is for charcoal`,
    (share: string, all: string) => `${all}, i pull ${share} for charcoal`,
  );
  const querida = fc.constantFrom(
    (share: string, all: string) => `${all}, saco ${share} para el carbón`,
    (share: string, all: string) => `tengo ${all} y ${share} va con carbón`,
    (share: string, all: string) => `${all}, ${share} de la masa con carbón`,
  );
  property.prop([before, part, whole, ofWhole, wanted])(
    'is reckoned',
    (lead, [share, value], size, of, said) =>
      expectOrAsked(`${lead}${said(share, `${size} ${of}`)}`, size * value),
  );
  property.prop([before, parte, whole, deTodo, querida])(
    'se calcula',
    (lead, [share, value], size, of, said) =>
      expectOrAsked(`${lead}${said(share, `${size} ${of}`)}`, size * value),
  );
});

describe('an amount that is put right', () => {
  const [first, last] = [fc.integer({ min: 100, max: 900 }), fc.integer({ min: 100, max: 900 })];
  const turn = fc.constantFrom(
    (a: string, b: string, of: string) => `${a} ${of}... no sorry, ${b} ${of}`,
    (a: string, b: string, of: string) => `${a} ${of}, wait no, ${b} ${of}`,
    (a: string, b: string, of: string) => `${a} ${of}, i mean ${b}`,
    (a: string, b: string, of: string) => `${a} ${of} (oops, ${b})`,
    (a: string, b: string, of: string) => `${b} ${of}, not ${a} ${of}`,
    (a: string, b: string, of: string) => `last time ${a} ${of} but now ${b} ${of}`,
    (a: string, b: string, of: string) => `${a} ${of}, ah no, perdón, son ${b}`,
    (a: string, b: string, of: string) => `${a} ${of}, digo ${b} ${of}`,
    (a: string, b: string, of: string) => `${a} ${of}, mejor dicho ${b} ${of}`,
    (a: string, b: string, of: string) => `la vez pasada ${a} ${of}, ahora ${b} ${of}`,
  );
  property.prop([before, turn, first, last, fc.constantFrom('g of batter', 'g oils', 'ml'), after])(
    'is the last that is meant',
    (lead, said, wrong, right, of, tail) =>
      expectOrAsked(`${lead}${said(String(wrong), String(right), of)}${tail}`, right),
  );
});
