import { describe, expect, test } from 'vitest';
import { instantMark, plainThroughout, replaceMarks, roleMark, withoutMarks } from '../../src/words/marks.ts';

const noon = Date.UTC(2026, 11, 1, 12);

describe('a mark', () => {
  test('says what the platform writes between angle brackets, and what others read', () => {
    const line = `Until ${instantMark(noon, 'noon')} for ${roleMark('7')}.`;
    // Style f is "short date/time". Source: platform documentation, Reference > Message Formatting > Timestamp Styles.
    expect(replaceMarks(line, meant => `<${meant}>`)).toBe(`Until <t:${noon / 1000}:f> for <@&7>.`);
    expect(withoutMarks(line)).toBe('Until noon for 7.');
  });

  test('is taken out of every text of an answer, and nothing else is touched', () => {
    const bytes = new Uint8Array([1, 2]);
    const answer = { a: [instantMark(noon, 'noon'), 5, { b: roleMark('7') }], bytes, none: undefined };
    expect(plainThroughout(answer)).toEqual({ a: ['noon', 5, { b: '7' }], bytes, none: undefined });
    expect(plainThroughout(answer).bytes).toBe(bytes);
  });

  test('that is broken off is left as it stands', () => {
    const broken = instantMark(noon, 'noon').slice(0, -1);
    expect(withoutMarks(broken)).toBe(broken);
  });
});
