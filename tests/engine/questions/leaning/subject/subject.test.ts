import { describe, expect, test } from 'vitest';
import {
  colourantOf,
  holderNamed,
  subjectAfter,
} from '../../../../../src/engine/questions/leaning/subject/subject.ts';

describe('what a talk is about', () => {
  const spoken = (text: string, earlier?: ReturnType<typeof subjectAfter>) =>
    subjectAfter(earlier, { text, ran: undefined });

  test('is the colour that a question names, whatever became of the question', () => {
    expect(spoken('do you like blue on a bar')).toEqual({ hue: 'blue', isFresh: true });
    expect(spoken('is rose clay nice')).toEqual({ named: 'rose clay', isFresh: true });
    expect(spoken('blue or green or what')).toBeUndefined();
  });

  test('stays while nothing else is named, and is not what the last turn spoke of', () => {
    const blue = spoken('do you like blue on a bar');
    expect(spoken('hmm let me think', blue)).toEqual({ hue: 'blue', isFresh: false });
    expect(spoken('and rose clay', blue)).toEqual({ named: 'rose clay', isFresh: true });
  });

  test('takes along how much was told', () => {
    const dosed = subjectAfter(undefined, {
      text: '',
      ran: { command: 'dose', given: { colourant: 'mica', portion: '1 kg oils' } },
    });
    expect(dosed).toEqual({ named: 'mica', portion: '1 kg oils', isFresh: true });
    expect(spoken('and pink', dosed)).toEqual({ hue: 'pink', portion: '1 kg oils', isFresh: true });
  });

  test('may be a scent, which no colourant stands for', () => {
    const scent = spoken('can i mix two fragrances');
    expect(scent).toEqual({ isScent: true, isFresh: true });
    expect(colourantOf(scent)).toBeUndefined();
  });

  test('a hue stands for the colourant of it that holds, in the language of the hue', () => {
    expect([holderNamed('green'), holderNamed('verde'), holderNamed('soap')]).toEqual([
      'chromium oxide green',
      'verde óxido de cromo',
      undefined,
    ]);
  });
});
