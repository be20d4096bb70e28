import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openRoom } from '../../loopback/room.ts';

let room: Awaited<ReturnType<typeof openRoom>>;
beforeAll(async () => {
  room = await openRoom();
});
afterAll(() => room[Symbol.asyncDispose]());
const base = { oils: 'olive 70%, coconut 30%', size: '1000 g oils' };
const plan = async (given: Record<string, string>) =>
  (await room.member.run('/plan', { ...base, ...given })).text;
const spanish = () => room.group.addMember({ name: 'Inés', locale: 'es-ES' });

/* What scents do to batter: common practice (no source). On the face, which a phone shows. */
describe('what decides how a scented batch is worked stands on its face', () => {
  test('a scent that is said to speed up, and a swirl that wants time', async () => {
    const text = await plan({
      fragrance: '3% floral that accelerates',
      swirl: 'hanger',
      portions: '1/2 gold mica; 1/2 plain',
    });
    expect(text).toContain(
      'Your scent speeds up the batter. Mix by hand and a little cooler, colours first, scent last',
    );
    expect(text).toContain('a simple pour instead of a swirl');
  });

  test('a flower of which it is often so, in Spanish too', async () => {
    expect(await plan({ fragrance: '3% jasmine fragrance oil' })).toContain(
      'Scents such as “jasmine” often speed up the batter',
    );
    const text = (await spanish().run('/plan', { ...base, fragrance: '3% de jazmín' })).text;
    expect(text).toContain('Aromas como «jazmín» suelen acelerar la masa');
  });

  test('vanillin that browns, and no rounding of a tenth of a gram', async () => {
    const text = await plan({
      fragrance: '3% vanillin 8%',
      portions: '1/3 ultramarine violet; 1/3 gold mica; 1/3 titanium dioxide',
    });
    expect(text).toContain('Vanillin turns scented portions brown');
    expect(text).not.toContain('rounded down');
  });

  test('words of a scent that nothing is known of, and a superfat that is no longer the one asked for, are told in the whole answer', async () => {
    const whole = await openRoom({ whole: true });
    const { text } = await whole.member.run('/plan', { ...base, fragrance: '3% banana banana xyz' });
    const shifted = await whole.member.run('/plan', { ...base, portions: 'all gold mica', superfat: 5 });
    await whole[Symbol.asyncDispose]();
    expect(text).toContain('Of “banana xyz” I know nothing');
    expect(text).not.toContain('Superfat comes to');
    expect(shifted.text).toMatch(/Superfat comes to [\d.]+ %, not 5 %/u);
  });
});
