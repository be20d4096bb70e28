import { expect, test } from 'vitest';
import { tellAsked } from '../../src/conversation/answering/asked.ts';
import { noted } from '../given.ts';
import { neverGiven } from '../never-given.ts';

test('a command that no test asked and an option that none gave are told, each under its own command', () => {
  const option = (name: string) => ({ name });
  const declared = new Map([
    ['pour line', { options: [option('mould'), option('lines')] }],
    ['pour swirl', { options: [option('mould')] }],
    ['help', { options: [] }],
  ]);
  const notes = '/pour line\n/pour line mould:\n/help\n/pour swirl depth:\n';
  expect(neverGiven(declared, notes)).toEqual(['/pour line lines:', '/pour swirl', '/pour swirl mould:']);
  expect(neverGiven(declared, `${notes}/pour swirl\n/pour swirl mould:\n/pour line lines:\n`)).toEqual([]);
});

test('what is asked is noted by our own names alone', () => {
  const before = new Set(noted);
  tellAsked('level spoons', { amount: 'what a member wrote' });
  expect([...noted].filter(line => !before.has(line))).toEqual(['/level spoons', '/level spoons amount:']);
});
