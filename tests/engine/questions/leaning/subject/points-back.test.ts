import { expect, test } from 'vitest';
import { isSkinStillHurt } from '../../../../../src/engine/questions/leaning/subject/points-back.ts';

test.each(['its still a bit red', 'feels soapy even now', 'sigue roja'])(
  'skin that met lye is not well: %s',
  turn => expect(isSkinStillHurt(turn)).toBe(true),
);
test.each(['ok thanks', 'and how much red oxide for 500 g of oils', 'cuánto óxido rojo para 500 g'])(
  'a turn of something else: %s',
  turn => expect(isSkinStillHurt(turn)).toBe(false),
);
