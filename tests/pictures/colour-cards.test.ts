import { describe, expect, test } from 'vitest';
import { drawFitPlot } from '../../src/pictures/fit-plot.ts';
import { matchLaidOut } from '../../src/pictures/match-card.ts';
import { drawPhotoPalette } from '../../src/pictures/photo-palette.ts';
import { laidOut } from '../../src/pictures/swatch-card.ts';
import { decoded } from './colours-in.ts';

const rowOf = (title: string, one: string, other: string) => ({
  title,
  measures: ['1/4 tsp ultramarine violet', '1/8 tsp titanium dioxide'],
  fields: [
    { hex: one, label: 'lilac' },
    { hex: other, label: 'a colour with a very long name that needs two lines' },
  ] as const,
});

describe('a swatch card', () => {
  const card = {
    title: 'A mix of five colourants with long names, one beside the other, and more of them still '.repeat(
      2,
    ),
    subtitle: 'Cream base, for 2 cups',
    mix: { hex: '#a694c5', title: 'Your mix', label: 'Lilac, #a694c5', note: 'give or take 8' },
    plain: { hex: '#ece3cb', title: 'No colour', label: 'cream, #ece3cb' },
    columns: ['Not gelled', 'Gelled'] as const,
    rows: [rowOf('Tint', '#b7a8cd', '#b4a4ca'), rowOf('Full', '#816bab', '#7d67a8')],
    note: 'Predicted cured colour.',
  };

  test('shows every colour as it is, in rows by strength and columns by gel', async () => {
    const { png, places } = laidOut(card);
    const picture = await decoded(png);
    const at = ({ x, y }: { x: number; y: number }) => picture.at(x, y);
    expect(at(places.mix)).toBe('#a694c5');
    expect(at(places.plain)).toBe('#ece3cb');
    expect(places.fields.map(row => row.map(at))).toEqual([
      ['#b7a8cd', '#b4a4ca'],
      ['#816bab', '#7d67a8'],
    ]);
  });

  test('grows with what is written in it and stays as wide', async () => {
    const short = await decoded(laidOut({ ...card, title: 'Violet' }).png);
    const long = await decoded(laidOut(card).png);
    expect(long.width).toBe(short.width);
    expect(long.height).toBeGreaterThan(short.height);
  });
});

test('a match card sets the wanted colour against each recipe', async () => {
  const recipe = (hex: string) => ({ hex, title: '1: very near', label: hex, doses: ['1/2 tsp violet'] });
  const { png, places } = matchLaidOut({
    title: 'You want: violet',
    subtitle: '2 cups',
    target: { hex: '#6b3fa0', label: 'violet #6b3fa0' },
    recipes: [recipe('#69419b'), recipe('#3b3fa0')],
    note: 'Left half: the colour you want.',
  });
  const picture = await decoded(png);
  expect(places.map(row => row.map(({ x, y }) => picture.at(x, y)))).toEqual([
    ['#6b3fa0', '#69419b'],
    ['#6b3fa0', '#3b3fa0'],
  ]);
});

test('the colours of a photo are shown as they are, each as large as the next', async () => {
  const picture = await decoded(
    drawPhotoPalette({
      title: 'Pick a colour',
      colours: ['#2a7090', '#f2e9d8'].map(hex => ({ hex, label: hex, note: '50 %' })),
    }),
  );
  const [one, other] = ['#2a7090', '#f2e9d8'].map(hex => picture.count(hex));
  expect(one).toBeGreaterThan(50_000);
  expect(other).toBeGreaterThan(50_000);
});

test('a plot of test bars fills each ring with the bar’s own colour, in both panels, and shows the pairs', async () => {
  const at = (dose: number, lightness: number, chroma: number) => ({ dose, lightness, chroma });
  const picture = await decoded(
    drawFitPlot({
      title: 'Test bars',
      lightness: 'Lightness',
      chroma: 'Colourfulness',
      dose: 'Teaspoons per cup',
      legend: { measured: 'yours', usual: 'usual', fitted: 'now' },
      usual: [at(0, 90, 10), at(0.25, 40, 50)],
      fitted: [at(0, 90, 10), at(0.25, 45, 45)],
      bars: [{ ...at(0.2, 48, 40), hex: '#7a68a8' }],
      pairsTitle: 'Each bar',
      pairs: [{ measured: '#7a68a8', predicted: '#836dac', label: '1/4 tsp' }],
    }),
  );
  const pair = 110 * 62 * 1.5 ** 2;
  expect(picture.count('#836dac')).toBeGreaterThan(0.95 * pair);
  expect(picture.count('#7a68a8')).toBeGreaterThan(0.95 * pair + 800);
});
