import { describe, expect, test } from 'vitest';
import { emergenciesOf, inTalk } from '../../../src/conversation/first-aid/in-talk.ts';
import type { Emergency, EmergencyId } from '../../../src/engine/hazards/index.ts';
import { readEmergencies } from '../../../src/engine/hazards/index.ts';

const told = (id: EmergencyId, inDoubt: boolean): Emergency => ({ id, from: 'words', inDoubt });
const ids = (all: readonly Emergency[]) => all.map(({ id }) => id);

/* Nobody who swallowed lye is made to vomit: safety data sheets of sodium hydroxide, section 4 (from memory). */
describe('lye that was swallowed', () => {
  test('stays before what the next turn is only in doubt taken for', () => {
    const [first, ...others] = inTalk([told('fumes-inhaled', true)], ['lye-swallowed']);
    expect(first).toMatchObject({ id: 'lye-swallowed', inDoubt: false });
    expect(ids(others)).toEqual(['fumes-inhaled']);
  });
  test('stands once, where the turn too tells of it', () => {
    const all = inTalk([told('fumes-inhaled', true), told('lye-swallowed', true)], ['lye-swallowed']);
    expect(ids(all)).toEqual(['lye-swallowed', 'fumes-inhaled']);
  });
  test('gives way to what the next turn tells outright, and is not told where nothing is', () => {
    expect(ids(inTalk([told('lye-eye', false)], ['lye-swallowed']))).toEqual(['lye-eye']);
    expect(ids(inTalk([told('fumes-inhaled', true), told('lye-eye', false)], ['lye-swallowed']))).toEqual([
      'fumes-inhaled',
      'lye-eye',
    ]);
    expect(inTalk([], ['lye-swallowed'])).toEqual([]);
  });
  test('is not put before others by a talk of something else', () => {
    expect(ids(inTalk([told('fumes-inhaled', true)], ['lye-skin']))).toEqual(['fumes-inhaled']);
    expect(emergenciesOf(undefined)).toEqual([]);
  });
});

test.each([
  'the fumes are making me sick',
  'does breathing the mica dust make me sick',
  'will it make my mum sick if she washes with it',
  'this bright green will make my husband sick lol',
])('what makes somebody sick was not swallowed: %s', words =>
  expect(ids(readEmergencies(words))).not.toContain('lye-swallowed'),
);
