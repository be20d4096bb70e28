import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { parseColour } from '../../../src/engine/quantities/colour.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { refused } from './refused.ts';

describe('a colour is read from hex or a CSS name', () => {
  test.each([
    ['#4b3f9e', '#4b3f9e'],
    ['4B3F9E', '#4b3f9e'],
    ['#4bf', '#44bbff'],
    ['rebeccapurple', '#663399'],
    ['Dark Slate Grey', '#2f4f4f'],
    ['gray', '#808080'],
    ['grey', '#808080'],
    ['rgb(75, 63, 158)', '#4b3f9e'],
  ])('%s', (text, hex) => {
    expect(parseColour(text)).toBe(hex);
  });
  test.each(['', '#12345', '#12', 'soapy', '🎨', '#ggg', '#4b3f9e'.repeat(700)])('%s is none', text => {
    expect(refused(() => parseColour(text))).toBe('colour-unreadable');
  });
  test.prop([fc.integer({ min: 0, max: 0xff_ff_ff })])('any hex reads back as itself', value => {
    const hex = `#${value.toString(16).padStart(6, '0')}`;
    expect(parseColour(hex)).toBe(hex);
  });
  test.prop([fc.string({ unit: 'grapheme', maxLength: 70 })])('any text is a colour or a refusal', text => {
    try {
      expect(parseColour(text)).toMatch(/^#[\da-f]{6}$/u);
    } catch (problem) {
      expect(problem).toBeInstanceOf(Refusal);
    }
  });
});
