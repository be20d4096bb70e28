import { expect, test } from 'vitest';
import { checkIngredients } from '../../src/engine/stability/check.ts';
import { lawBlock, lawSummary } from '../../src/presenting/law.ts';
import { wordsIn } from '../../src/words/index.ts';

const say = wordsIn('en');
const textOf = (list: string): string => {
  const block = lawBlock(checkIngredients(list), say);
  return block.kind === 'text' ? block.text : '';
};

test('an iron oxide is named with its section of US law and its entry of EU law', () => {
  // 21 CFR 73.2250; Regulation (EC) 1223/2009, Annex IV, where iron oxides stand as CI 77489, 77491, 77492 and 77499.
  const text = textOf('CI 77491');
  expect(text).toContain('73.2250');
  expect(text).toMatch(/Annex IV/u);
});

test('what lye does comes first, what the law leaves to the maker last, each once', () => {
  const { permitted } = say.stability;
  const lines = textOf('CI 77491, CI 77492').split('\n');
  expect(lines[0]).toBe(permitted.lyeFirst);
  expect(lines.slice(-3)).toEqual([permitted.trueSoap, permitted.euResponsible, permitted.change]);
  expect(new Set(lines).size).toBe(lines.length);
});

test('a certified dye is told with its certificate; a lake of it as a lake', () => {
  // 21 CFR 74.2705, FD&C Yellow No. 5, is subject to certification.
  expect(textOf('FD&C Yellow 5')).toContain(say.stability.permitted.usCertified);
  expect(textOf('FD&C Yellow 5 lake')).toContain(say.stability.permitted.usLake);
});

test('both laws stand in a line each; of nothing there is nothing to say', () => {
  const report = checkIngredients('mica, CI 77891, CI 77491');
  const [block] = lawSummary(report, say);
  expect(block?.kind === 'rows' && block.rows).toHaveLength(2);
  expect(lawSummary({ ...report, components: [] }, say)).toEqual([]);
});
