import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { inMillilitres } from '../../../src/engine/batch/portion-in-mould.ts';
import { findColourant } from '../../../src/engine/colourants/asked/find-colourant.ts';
import { answerDose } from '../../../src/engine/dosing/answer.ts';
import { parseStrength } from '../../../src/engine/quantities/strength.ts';
import { parsePortion } from '../../../src/engine/quantities/told/portion.ts';
import { openRoom } from '../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
});
afterAll(() => room[Symbol.asyncDispose]());
const dose = async (portion: string, colourant = 'ultramarine blue') =>
  (await room.member.run('/dose', { colourant, portion })).text;

describe('a portion that is told otherwise than by cups', () => {
  // 25 x 9 x 7 cm are 1575 ml; a US cup is 236.588 ml (NIST Handbook 44, appendix C): 6.66 cups at 1/4 tsp are 1.66 tsp.
  test.each(['mould 25x9x7 cm', 'molde 25x9x7 cm', '25x9x7 cm loaf'])(
    '%s is dosed by what it holds',
    async portion => {
      const text = await dose(portion);
      expect(text).toMatch(/1575 ml/u);
      expect(text).toMatch(/^## 1 tsp \+ 1\/2 tsp|^## 1 tsp \+ 5\/8|^## 1 tsp/u);
    },
  );

  test('one side of a mould is asked back with what is wanted', async () => {
    expect(await dose('a 10 inch loaf mould')).toContain('one side of a mould tells no amount.');
    expect(() => inMillilitres('molde de 25 cm')).toThrow(
      expect.objectContaining({ id: 'portion-mould-side' }),
    );
    // What is no mould is left as it is: the grammar of amounts reads it.
    expect(inMillilitres('2 cups for the loaf')).toBe('2 cups for the loaf');
  });

  test('oils by their German name are oils, as one writes whose phone is German', async () => {
    expect((await dose('1000 g Öl')).split('\n')[0]).toBe(
      (await dose('1000 g oils')).split('\n')[0]?.replace('oils', 'Öl'),
    );
  });
});

describe('a portion too small for spoons', () => {
  test.each(['1 ml', '2 tbsp'])('%s: a toothpick, and how much to colour instead', async portion => {
    const text = await dose(portion);
    expect(text).toMatch(/too little for spoons: take what clings to the tip of a toothpick/u);
    // A teaspoon of liquid in so little is a ruined pinch.
    expect(text).not.toMatch(/\b(?:1 tsp|1 Tbsp) \(\d+ ml\) of/u);
  });

  test('it is told from 50 ml on no more', () => {
    const ids = (portion: string) =>
      answerDose({
        portion: parsePortion(portion),
        colourants: [{ colourant: findColourant('ultramarine blue'), strength: parseStrength('full') }],
      }).cautions.map(({ id }) => id);
    expect(ids('49 ml')).toContain('portion-small');
    expect(ids('50 ml')).not.toContain('portion-small');
  });

  test('50 ml and more is dosed as ever', async () => {
    expect(await dose('50 ml')).not.toContain('toothpick');
  });
});
