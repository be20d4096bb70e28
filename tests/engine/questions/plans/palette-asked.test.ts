import { expect, test } from 'vitest';
import { paletteAsked } from '../../../../src/engine/questions/plans/palette-asked.ts';

/* The moods and their colours are our own (src/engine/palettes/themes.ts). */
test('a palette is asked for by its mood or beside a colour', () => {
  expect(paletteAsked('colours for a sunset soap')?.hexes).toHaveLength(4);
  expect(paletteAsked('paleta de atardecer')?.hexes).toEqual(
    paletteAsked('colours for a sunset soap')?.hexes,
  );
  expect(paletteAsked('what goes with lilac')).toMatchObject({ beside: 'lilac' });
  expect(paletteAsked('que color combina con lavanda')).toMatchObject({ beside: 'lavanda' });
  expect(paletteAsked('we watched the sunset')).toBeUndefined();
  expect(paletteAsked('what goes with my oven')).toBeUndefined();
});
