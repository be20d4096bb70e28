import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { followUp } from '../../../src/conversation/command.ts';
import { open, seal } from '../../../src/conversation/follow-ups/follow.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { wordsIn } from '../../../src/words/index.ts';

const key = new Uint8Array(32).fill(1);
const noon = Date.UTC(2026, 4, 3, 12);
const hour = 3_600_000;
const odile = { group: 'g1', asker: 'odile' };
const bram = { group: 'g1', asker: 'bram' };

const made = (whom: 'asker' | 'group') =>
  followUp({
    for: whom,
    hours: 24,
    seenBy: 'asker',
    args: { item: z.string(), grams: z.string() },
    answer: () => ({ kind: 'reply', headline: '', data: {}, blocks: [], cautions: [] }),
  });

const sealed = (whom: 'asker' | 'group', holder = odile) =>
  seal(made(whom).with({ item: 'ultramarine', grams: 'g2-5' }), 'dose.take', { key, holder, at: noon });

describe('what a button carries', () => {
  test('comes back as it went out, for the one who asked', () => {
    const opened = open(sealed('asker'), { key, holder: odile, at: noon + hour });
    expect(opened).toMatchObject({ name: 'dose.take', args: ['ultramarine', 'g2-5'] });
  });

  test('signed with the key before is as good, while that is still accepted', () => {
    const newer = new Uint8Array(32).fill(2);
    const before = key;
    expect(open(sealed('asker'), { key: newer, before, holder: odile, at: noon })).toMatchObject({
      name: 'dose.take',
    });
    for (const keys of [{ key: newer }, { key: newer, before: new Uint8Array(32).fill(3) }])
      expect(() => open(sealed('asker'), { ...keys, holder: odile, at: noon })).toThrow(Refusal);
    // Nobody can tell such a button from somebody else's: both are said.
    const refused = new Refusal('follow-up-not-yours', {});
    expect(wordsIn('en').refusal(refused)).toBe(
      'That button is for somebody else, or from before my signing key was changed. Ask the question yourself to get your own.',
    );
    expect(wordsIn('es').refusal(refused)).toBe(
      'Ese botón es de otra persona, o de antes de que cambiara mi clave de firma. Haz tú la pregunta para tener el tuyo.',
    );
  });

  test('fits the platform’s hundred characters', () => {
    expect(sealed('asker').length).toBeLessThanOrEqual(100);
  });

  test('is different each time, so that its effect can be told from another press', () => {
    expect(sealed('asker')).not.toBe(sealed('asker'));
  });

  test.each([
    ['another member presses it', bram, noon, 'follow-up-not-yours'],
    ['it is pressed in another group', { ...odile, group: 'g2' }, noon, 'follow-up-not-yours'],
    ['it is pressed two days later', odile, noon + 48 * hour, 'follow-up-expired'],
  ])('is refused when %s', (_, holder, at, id) => {
    expect(() => open(sealed('asker'), { key, holder, at })).toThrow(expect.objectContaining({ id }));
  });

  test('works for anyone in the group when it was made for the group', () => {
    expect(open(sealed('group'), { key, holder: bram, at: noon }).name).toBe('dose.take');
  });

  test('is refused when a single character was changed, wherever it is', () => {
    const id = sealed('asker');
    for (let at = 0; at < id.length; at++) {
      const forged = `${id.slice(0, at)}${id[at] === 'A' ? 'B' : 'A'}${id.slice(at + 1)}`;
      // The last character of base64 holds bits that are not part of the signature's bytes.
      if (forged === id) continue;
      expect(() => open(forged, { key, holder: odile, at: noon })).toThrow(Refusal);
    }
  });

  test.each(['', 'x', '1~a~dose.take', '~~~~~', '🧼'.repeat(20)])('nonsense (%s) is refused', id => {
    expect(() => open(id, { key, holder: odile, at: noon })).toThrow(
      expect.objectContaining({ id: 'follow-up-not-yours' }),
    );
  });

  test('an argument that cannot travel is a fault of the command', () => {
    const follow = made('asker').with({ item: 'a~b', grams: '1' });
    expect(() => seal(follow, 'dose.take', { key, holder: odile, at: noon })).toThrow(/cannot travel/);
    // It is logged, and may be a member's own words.
    expect(() => seal(follow, 'dose.take', { key, holder: odile, at: noon })).not.toThrow(follow.args[0]!);
  });
});
