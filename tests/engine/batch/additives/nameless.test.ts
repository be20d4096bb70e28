import { expect, test } from 'vitest';
import { requireNames } from '../../../../src/engine/batch/additives/nameless.ts';

test.each(['3%', '10 g', 'honey 10 g, 3%', '2,5 ml', 'sugar 5 g; 1 tsp', '1 cda | sal 2%'])(
  '“%s” has an amount of nothing',
  text => {
    expect(() => requireNames(text)).toThrow(expect.objectContaining({ id: 'additive-without-name' }));
  },
);

test.each([undefined, '', 'honey 10 g', 'honey 2,5 g, salt 3%', 'salt'])('“%s” has none', text => {
  expect(() => requireNames(text)).not.toThrow();
});
