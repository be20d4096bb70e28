import { test } from 'vitest';
import { diagnose } from '../../src/engine/flaws/diagnose.ts';
import { hold, timesAsMany } from './figures.ts';

const warm = { time: 600, warmupTime: 200 };
/** Eight where reading is linear; the square of it where it is not. */
const MOST_TIMES = 16;

/** Eight times the words, of the kinds that tempt a reader into quadratic work: near eight, or less, is linear. */
test.for(['orange spots and no ash, ', 'fine ', 'crumbel sotp whtie ', '2 tsp titanium per cup '])(
  'a description of %j over and over',
  async (phrase, { bench, task }) => {
    const of = (length: number) => phrase.repeat(Math.ceil(length / phrase.length)).slice(0, length);
    const [short, long] = [of(600), of(4800)];
    const one = await bench('600 characters', () => void diagnose(short)).run(warm);
    const eight = await bench('4,800 characters', () => void diagnose(long)).run(warm);
    hold(task, [
      {
        what: `4,800 characters of ${JSON.stringify(phrase)} against 600`,
        seen: timesAsMany(one, eight),
        most: MOST_TIMES,
        unit: 'times',
      },
    ]);
  },
);
