import { test } from 'vitest';
import { diagnose } from '../../src/engine/flaws/diagnose.ts';
import { sayRatio } from './ratio.ts';

const warm = { time: 600, warmupTime: 200 };

/** Eight times the words, of the kinds that tempt a reader into quadratic work: near eight, or less, is linear. */
test.for(['orange spots and no ash, ', 'fine ', 'crumbel sotp whtie ', '2 tsp titanium per cup '])(
  'a description of %j over and over',
  async (phrase, { bench }) => {
    const of = (length: number) => phrase.repeat(Math.ceil(length / phrase.length)).slice(0, length);
    const [short, long] = [of(600), of(4800)];
    const one = await bench('600 characters', () => void diagnose(short)).run(warm);
    const eight = await bench('4,800 characters', () => void diagnose(long)).run(warm);
    sayRatio(`600 characters against 4,800 of ${JSON.stringify(phrase)}`, one, eight);
  },
);
