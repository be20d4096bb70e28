import { afterAll, beforeAll, expect, test } from 'vitest';
import { openRoom } from '../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom({ whole: true });
});
afterAll(() => room[Symbol.asyncDispose]());

test('metal powder beside a mica is refused with its reason, in both languages, and nothing is dosed', async () => {
  room.member.grant({ locale: 'en-US' });
  const english = await room.member.run('/ask', {
    question: 'silver mica with a bit of aluminium powder, 500 g oils',
  });
  expect(english.text).toContain('Aluminium makes hydrogen gas and heat with lye');
  expect(english.text).not.toContain('tsp');
  const tin = await room.member.run('/ask', { question: 'tin powder for shine in 500 g oils' });
  expect(tin.text).toContain('Tin makes hydrogen gas with lye');
  room.member.grant({ locale: 'es-ES' });
  const spanish = await room.member.run('/ask', {
    question: 'mica dorada y purpurina de bronce, 500 g de aceites',
  });
  expect(spanish.text).toContain('El bronce es cobre con otros metales y se corroe en la sosa');
  expect(spanish.text).not.toContain('cdta');
  const estano = await room.member.run('/ask', { question: 'polvo de estaño con mica, 500 g de aceites' });
  expect(estano.text).toContain('El estaño desprende hidrógeno con la sosa');
});

test('lye that was spilt while a dog is near is swept up, and the dog kept away, in both languages', async () => {
  room.member.grant({ locale: 'en-US' });
  const english = await room.member.run('/ask', { question: 'lye beads spilt, the dog is about' });
  expect(english.text).toContain('sweep dry lye up');
  expect(english.text).toContain('Keep every animal and child out until the place is rinsed and dry');
  expect(english.text).not.toContain('call a vet now');
  room.member.grant({ locale: 'es-ES' });
  const spanish = await room.member.run('/ask', {
    question: 'se me cayeron perlas de sosa al suelo y anda la perra por ahí',
  });
  expect(spanish.text).toContain('barre la sosa seca');
  expect(spanish.text).toContain('Que no entre ningún animal ni niño hasta que esté aclarado y seco');
});

test('a pot that was told otherwise is asked for, and the lye before is not to be used, in both languages', async () => {
  room.member.grant({ locale: 'en-US' });
  await room.member.run('/ask', { question: '24 oz olive 8 oz coconut lye at 5' });
  const english = await room.member.run('/ask', { question: 'sorry, grams not oz' });
  expect(english.text).toContain('I need the whole recipe anew');
  expect(english.text).toContain('for any other pot do not use it');
  room.member.grant({ locale: 'es-ES' });
  await room.member.run('/ask', { question: '400 g de girasol y 400 g de oliva, sosa al 5%' });
  const spanish = await room.member.run('/ask', { question: 'no es girasol, es ricino el que puse' });
  expect(spanish.text).toContain('necesito la receta entera otra vez');
  expect(spanish.text).toContain('para otra olla no la uses');
});

test('a rate of lye is told as what it comes to in the oils that are weighed, in both languages', async () => {
  room.member.grant({ locale: 'en-US' });
  const english = await room.member.run('/ask', {
    question: '300 g olive, 200 g coconut, my friend says 160 g lye per kilo, right?',
  });
  // 160 × 0.5; these oils take 77 g at no superfat (saponification values of olive 0.1355 and coconut 0.183, from memory).
  expect(english.text).toContain('160 g lye per 1000 g oil come to 80 g in yours');
  expect(english.text).toContain('lye-heavy');
  const none = await room.member.run('/ask', { question: 'is 160 g lye per kilo of oils right' });
  expect(none.text).toContain('No one rate fits every oil: coconut takes about a third more lye');
  room.member.grant({ locale: 'es-ES' });
  const spanish = await room.member.run('/ask', {
    question: 'tengo 300 g de oliva y 200 g de coco. mi amiga dice 160 g de sosa por cada kilo, ¿vale?',
  });
  expect(spanish.text).toContain('160 g de sosa por 1000 g de aceite son 80 g en los tuyos');
  expect(spanish.text).toContain('sobra sosa');
});
