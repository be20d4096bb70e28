import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { plain } from '../../src/discord/render.ts';
import { spansOf } from '../../src/page/browser/markup.ts';
import { instantMark, roleMark } from '../../src/words/marks.ts';

describe('bold and escapes', () => {
  test('two stars make bold, a backslash takes the meaning away', () => {
    expect(spansOf('**Gold mica:** 1/2 tsp \\*\\*now\\*\\*', 'en')).toEqual([
      { text: 'Gold mica:', bold: true },
      { text: ' 1/2 tsp **now**', bold: false },
    ]);
  });

  test('an instant is read by the clock of the reader, a role by its number; what a member wrote stays', () => {
    const at = Date.UTC(2026, 11, 16, 10);
    const [shown] = spansOf(plain(`Until ${instantMark(at, 'Wed 10:00 UTC')}, ${roleMark('77')}`), 'en');
    const local = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' }).format(at);
    expect(shown?.text).toBe(`Until ${local}, @77`);
    expect(spansOf(plain('<t:1:f>'), 'en')[0]?.text).toBe('<t:1:f>');
  });

  // Day, month, year and 24 hours as Spanish writes them. Source: Unicode CLDR, es, medium date and short time.
  test('an instant is written in the reader’s language, whatever the browser speaks', () => {
    const noon = new Date(2026, 10, 26, 17, 30).getTime();
    const [shown] = spansOf(plain(instantMark(noon, 'jue')), 'es');
    expect(shown?.text).toBe('26 nov 2026, 17:30');
    expect(spansOf(plain(instantMark(noon, 'Thu')), 'en')[0]?.text).toBe('26 Nov 2026, 17:30');
  });

  test('stars that never close are stars', () => {
    expect(spansOf('5 ** 2', 'en')).toEqual([{ text: '5 ** 2', bold: false }]);
  });

  property.prop([fc.string({ unit: 'grapheme' })])('what a member wrote is shown as written: %s', words => {
    const line = words.replaceAll(/[\r\n]/g, ' ');
    const shown = spansOf(plain(line), 'en');
    expect(shown.map(({ text }) => text).join('')).toBe(line);
    expect(shown.some(({ bold }) => bold)).toBe(false);
  });
});
