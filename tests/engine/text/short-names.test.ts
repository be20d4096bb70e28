import { expect, test } from 'vitest';
import { withNamesWhole } from '../../../src/engine/text/short-names.ts';

test.each([
  ['3 partes óx. amarillo + 1 parte óx. rojo', '3 partes óxido amarillo + 1 parte óxido rojo'],
  ['tengo óx. cromo y óx negro', 'tengo óxido de cromo y óxido negro'],
  ['2 g of red ox. in 1 kg', '2 g of red oxide in 1 kg'],
  ['how much yellow ox for 2 cups', 'how much yellow oxide for 2 cups'],
  ['diox. titanio y ultram. azul', 'dióxido de titanio y ultramar azul'],
  ['ultram. violet, act. charcoal', 'ultramarine violet, activated charcoal'],
  ['arc. rosa y carbón act.', 'arcilla rosa y carbón activado'],
])('a name that is cut off is whole: %s', (text, whole) => {
  expect(withNamesWhole(text)).toBe(whole);
});

test.each(['an ox pulls a cart', 'two oxen', 'cosas de aprox. 2 kg', 'the red oxen', 'el acto. Luego'])(
  'what is none stays: %s',
  text => {
    expect(withNamesWhole(text)).toBe(text);
  },
);
