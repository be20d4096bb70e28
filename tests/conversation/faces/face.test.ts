import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { faceOf, faceWords, foldsOf, shortened, wholeOf } from '../../../src/conversation/faces/face.ts';
import type { Block, Caution, Reply } from '../../../src/conversation/reply.ts';

const reply = (blocks: readonly Block[], cautions: readonly Caution[] = [], most = 20): Reply => ({
  kind: 'reply',
  headline: 'one two three',
  data: {},
  blocks,
  cautions,
  most,
});
const text = (words: number, word = 'w'): string => Array.from({ length: words }, () => word).join(' ');

const unfolded = (one: Block) => {
  const { fold: _, ...block } = one;
  return block;
};

describe('a face', () => {
  test('that fits is left as it is', () => {
    const short = reply([{ kind: 'text', text: text(17) }]);
    expect(shortened(short)).toBe(short);
    expect(faceWords(short)).toBe(20);
  });

  test('that does not fit loses its parts from the end, and the whole loses nothing', () => {
    const long = reply([
      { kind: 'text', text: text(10, 'first') },
      { kind: 'text', text: text(10, 'second') },
    ]);
    const short = shortened(long);
    expect(faceOf(short).blocks).toEqual([{ kind: 'text', text: text(10, 'first') }]);
    expect(foldsOf(short).map(({ id }) => id)).toEqual(['more']);
    expect(wholeOf(short).blocks.map(unfolded)).toEqual(long.blocks);
  });

  test('keeps the first rows of a list, and the fold has all of them', () => {
    const rows = Array.from({ length: 10 }, () => text(4));
    const short = shortened(reply([{ kind: 'rows', rows }]));
    const [shown] = faceOf(short).blocks;
    expect(shown).toMatchObject({ kind: 'rows', rows: rows.slice(0, 3) });
    expect(foldsOf(short)[0]?.blocks).toMatchObject([{ kind: 'rows', rows }]);
  });

  test('never loses what is firm, however long it is', () => {
    const firm: Block = { kind: 'text', text: text(50), firm: true };
    const caution: Caution = { id: 'lye', text: text(30), firm: true };
    const short = shortened(reply([firm, { kind: 'text', text: text(5) }], [caution]));
    expect(faceOf(short).blocks).toEqual([firm]);
    expect(faceOf(short).cautions).toEqual([caution]);
  });

  test('folds the cautions after the second', () => {
    const cautions = (['lye', 'gloves', 'dust'] as const).map(id => ({ id, text: text(8) }));
    const short = shortened(reply([], cautions, 25));
    expect(faceOf(short).cautions.map(({ id }) => id)).toEqual(['lye', 'gloves']);
    expect(foldsOf(short)).toMatchObject([{ id: 'safety', cautions: [{ id: 'dust' }] }]);
  });

  test('folds even the first cautions where the headline leaves them no room', () => {
    const cautions = (['lye', 'gloves'] as const).map(id => ({ id, text: text(8) }));
    const short = shortened(reply([], cautions, 15));
    expect(faceOf(short).cautions.map(({ id }) => id)).toEqual(['lye']);
    expect(wholeOf(short).cautions.map(({ id }) => id)).toEqual(['lye', 'gloves']);
    expect(faceWords(short)).toBeLessThanOrEqual(15);
  });

  test('does not count what is said in full because it is new', () => {
    const fresh: Caution = { id: 'dust', text: text(40), brief: 'No dust.' };
    const one = reply([{ kind: 'text', text: text(14) }], [fresh]);
    expect(shortened(one)).toBe(one);
  });
});

const block = fc.oneof(
  fc.record({ kind: fc.constant('text' as const), text: fc.string({ maxLength: 400 }) }),
  fc.record({
    kind: fc.constant('rows' as const),
    rows: fc.array(fc.string({ maxLength: 80 }), { maxLength: 30 }),
  }),
  fc.record({
    kind: fc.constant('measures' as const),
    measures: fc.array(
      fc.record({ label: fc.string(), value: fc.string(), note: fc.string({ maxLength: 120 }) }),
      { maxLength: 8 },
    ),
  }),
);

property.prop([fc.array(block, { maxLength: 12 }), fc.integer({ min: 4, max: 140 })])(
  'whatever a reply says, its face fits and its whole is what it was',
  (blocks, most) => {
    const long = reply(blocks, [], most);
    const short = shortened(long);
    expect(faceWords(short)).toBeLessThanOrEqual(Math.max(most, 3));
    expect(wholeOf(short).blocks.map(unfolded)).toEqual(blocks);
  },
);
