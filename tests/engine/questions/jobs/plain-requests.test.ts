import { describe, expect, test } from 'vitest';
import { plainRequest } from '../../../../src/engine/questions/jobs/plain-requests.ts';

/* Requests that can mean one thing only; the wordings are makers' and testers' own. */

test.each([
  ['what is trace?', 'trace'],
  ["What's the gel phase in soap making?", 'gel'],
  ['what does ricing mean', 'ricing'],
  ['Explain superfat please', 'superfat'],
  ['what are lakes', 'lake'],
  ['meaning of water discount', 'waterDiscount'],
  ['¿Qué es la traza?', 'trace'],
  ['¿qué significa sobreengrasado?', 'superfat'],
  ['qué es el curado en el jabón', 'cure'],
  ['¿qué es la ceniza de sosa?', 'ash'],
])('“%s” asks for the meaning of %s', (question, term) => {
  expect(plainRequest(question)).toEqual({ kind: 'term', term });
});

test.each([
  ['what can I make today', 'today'],
  ['What colours can we make today?', 'today'],
  ['¿qué puedo hacer hoy?', 'today'],
  ['undo', 'undo'],
  ['Undo that, please', 'undo'],
  ['deshaz lo último', 'undo'],
  ['what is my next batch date', 'dates'],
  ['when are my bars cured?', 'dates'],
  ['¿cuándo están listos mis jabones?', 'dates'],
  ['hello', 'greeting'],
  ['Hi there!', 'greeting'],
  ['¡Hola, buenas tardes!', 'greeting'],
  ['buenas', 'greeting'],
  ['what can you do?', 'help'],
  ['So, what can you help me with?', 'help'],
  ['¿en qué me puedes ayudar?', 'help'],
  ['y vos qué sabés hacer además de pesar la sosa', 'help'],
  ['Buenas tardes. ¿En qué temas puede usted asistirme?', 'help'],
  ['thanks', 'thanks'],
  ['ok thank you so much!!', 'thanks'],
  ['mil gracias por la ayuda', 'thanks'],
])('“%s” asks for %s', (question, kind) => {
  expect(plainRequest(question)).toEqual({ kind });
});

test.each([
  ['double my last recipe', 2],
  ['please halve my latest recipe', 0.5],
  ['triplica mi última receta', 3],
])('“%s” makes it %s times as big', (question, times) => {
  expect(plainRequest(question)).toEqual({ kind: 'rescale', times });
});

describe('what asks for more than one thing, or tells of harm, is read in the usual way', () => {
  test.each([
    'what is trace doing in my pot, it burns',
    'why is there soda ash on my soap',
    'what can I do now, lye is on my hand',
    'what can I do today about the lye in my eye',
    'undo the burn of lye on my arm',
    'how much mica for 2 cups',
    'double the ultramarine in my recipe',
    'will this lake bleed',
    'hi, how much mica for 2 cups',
    'thanks, and how much lye',
    'hello my batter is going solid',
    '',
    'constructor',
    'what is constructor',
  ])('“%s”', question => {
    expect(plainRequest(question)).toBeUndefined();
  });
});
