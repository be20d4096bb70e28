import { expect, test } from 'vitest';
import { outsideField } from '../../../../src/engine/questions/fields/scope.ts';
import { smallTalkIn } from '../../../../src/engine/questions/fields/small-talk.ts';

/* What is said in passing, and what is another craft's (from memory of how makers write): soap that is melted and a skin's illness stay other fields whatever soap is named beside them. */

test.each([
  ['hello', 'greets'],
  ['hola', 'greets'],
  ['hello everyone in this lovely group of soap makers today', 'greets'],
  ['are you a robot', 'program'],
  ['are you a bot or a real person writing to me from somewhere far away', 'program'],
  ['tell me a joke', 'joke'],
  ['my bars came out lovely thanks', 'praise'],
  ['hello lye', undefined],
])('%s: %s', (text, talk) => expect(smallTalkIn(text)).toBe(talk));

test.each([
  ['melt and pour base, how much mica for my soap', 'melt-and-pour'],
  ['what colour for melt and pour', 'melt-and-pour'],
  ['is it safe for eczema, my soap', 'medical'],
  ['how do i dye candles', 'candles'],
  ['cake icing on my soap', undefined],
])('%s: %s', (text, field) => expect(outsideField(text)).toBe(field));
