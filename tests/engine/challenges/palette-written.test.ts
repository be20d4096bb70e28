import { describe, expect, test } from 'vitest';
import { readSeason, readTargets } from '../../../src/engine/challenges/palette-written.ts';
import { readPalette } from '../../../src/engine/palettes/read-palette.ts';

const refused = (id: string, values?: object) => expect.objectContaining({ id, ...(values && { values }) });

describe('the palette of a challenge', () => {
  test('is colours apart by commas, semicolons or lines', () => {
    expect(readTargets('#4b3f9e, #ffffff;#000000\n#ff0000').map(({ hex }) => hex)).toEqual([
      '#4b3f9e',
      '#ffffff',
      '#000000',
      '#ff0000',
    ]);
  });

  test('has no shares where none is told', () => {
    expect(readTargets('#4b3f9e, #ffffff').map(({ share }) => share)).toEqual([undefined, undefined]);
  });

  test('leaves to the others what those with a share leave', () => {
    const shares = readTargets('#4b3f9e 40%, #ffffff, #000000').map(({ share }) => share);
    expect(shares).toEqual([40, 30, 30]);
    expect(readTargets('#4b3f9e 60 %, #ffffff 40%').map(({ share }) => share)).toEqual([60, 40]);
  });

  test.each([
    ['#4b3f9e 60%, #ffffff 30%', 90],
    ['#4b3f9e 70%, #ffffff 40%', 110],
    ['#4b3f9e 100%, #ffffff', 100],
    ['#4b3f9e 0%, #ffffff', 0],
  ])('“%s” is refused: its shares make no whole', (text, sum) => {
    expect(() => readTargets(text)).toThrow(refused('challenge-shares-unfit', { sum }));
  });

  test('takes a colourant for its bar at full dose: ultramarine is bluer than it is red', () => {
    expect(readTargets('ultramarine blue')[0]?.lab.b).toBeLessThan(-10);
  });

  test('refuses what is neither colour nor colourant as a colour', () => {
    expect(() => readTargets('qwxz')).toThrow(refused('colour-unreadable'));
  });
});

describe('the colours of a season', () => {
  test('are two to six', () => {
    expect(readSeason('#4b3f9e, #ffffff')).toEqual(['#4b3f9e', '#ffffff']);
    expect(() => readSeason('#4b3f9e,')).toThrow(refused('season-colours-unfit', { least: 2, most: 6 }));
    const six = Array.from({ length: 6 }, () => '#4b3f9e');
    expect(readSeason(six.join(';'))).toHaveLength(6);
    expect(() => readSeason([...six, '#ffffff'].join(','))).toThrow(refused('season-colours-unfit'));
  });
});

test('a comma inside brackets parts no colours, in any of the lists', () => {
  const text = 'rgb(255, 255, 255), #000000';
  expect(readTargets(text).map(({ hex }) => hex)).toEqual(['#ffffff', '#000000']);
  expect(readSeason(text)).toEqual(['#ffffff', '#000000']);
  expect(readPalette(text).colours.map(({ hex }) => hex)).toEqual(['#ffffff', '#000000']);
});
