import { afterAll, beforeAll, expect, test } from 'vitest';
import { openRoom } from '../../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
});
afterAll(() => room[Symbol.asyncDispose]());

test('the lye of a shaving soap is told, with the heat at which it pours, in both languages', async () => {
  room.member.grant({ locale: 'en-US' });
  const english = await room.member.run('/ask', {
    question: 'stearic acid 200 g, coconut 80 g, castor 40 g, with KOH, superfat 4. how much KOH?',
  });
  expect(english.text).toMatch(/^## \d+(?:\.\d)? g KOH/u);
  expect(english.text).toContain(
    'it pours only above 56 °C (133 °F): its heat is counted from there, the lye is the same',
  );
  room.member.grant({ locale: 'es-ES' });
  const spanish = await room.member.run('/ask', {
    question:
      'ácido esteárico 200 g, coco 80 g, ricino 40 g, todo con potasa KOH, sobreengrasado 4. cuánta potasa pongo',
  });
  expect(spanish.text).toMatch(/^## \d+(?:,\d)? g de KOH/u);
  expect(spanish.text).toContain('solo se vierte por encima de 56 °C (133 °F)');
});
