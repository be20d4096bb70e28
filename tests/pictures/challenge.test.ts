import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { drawChallengeBars } from '../../src/pictures/challenge-bars.ts';
import { drawChallengeCard } from '../../src/pictures/challenge-card.ts';
import { drawChallengeResults } from '../../src/pictures/challenge-results.ts';

/** How many pixels are of a colour, and the picture's size. */
async function looked(png: Uint8Array, hex: string) {
  const { data, info } = await sharp(png).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const wanted = [1, 3, 5].map(at => Number.parseInt(hex.slice(at, at + 2), 16));
  let pixels = 0;
  for (let at = 0; at < data.length; at += 3)
    if (wanted.every((value, channel) => data[at + channel] === value)) pixels += 1;
  return { pixels, width: info.width, height: info.height };
}

const card = {
  kicker: 'COLOUR CHALLENGE',
  title: 'Dusk over the lagoon',
  brief: '',
  palette: [{ hex: '#3f6fa8' }, { hex: '#e3b7b0' }],
  dates: [{ label: 'Enter until', value: 'Friday' }],
  rulesTitle: 'Rules',
  rules: ['one bar a member'],
};

describe('the card of a challenge', () => {
  test('shows every colour of the palette as it was asked for, large', async () => {
    const png = drawChallengeCard(card);
    for (const { hex } of card.palette) expect((await looked(png, hex)).pixels).toBeGreaterThan(50_000);
  });

  test('holds any title and brief: what is too long is cut, never drawn past the edge', async () => {
    const long = drawChallengeCard({ ...card, title: 'W'.repeat(80), brief: 'very long '.repeat(200) });
    const { width, height } = await looked(long, '#3f6fa8');
    expect(width).toBe(1440);
    expect(height).toBeLessThan(2_000);
    // Kerning may widen a line of capitals a little into the margin; its outer part stays paper.
    const { data } = await sharp(long)
      .extract({ left: 1_410, top: 0, width: 30, height })
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(new Set(data.toString('hex').match(/.{6}/g))).toEqual(new Set(['faf7f0']));
  });
});

describe('the board of results', () => {
  const row = (place: string, pairs: { target: string; bar: string | undefined }[]) => ({
    place,
    name: `Bar at ${place}`,
    lines: [],
    pairs,
  });
  const board = {
    kicker: 'RESULTS',
    title: 'Dusk',
    rows: [
      row('1', [{ target: '#3f6fa8', bar: '#40e0d0' }]),
      row('2', [{ target: '#3f6fa8', bar: undefined }]),
    ],
    swatchNote: 'above and below',
    why: ['The vote decided.'],
  };

  test('shows the colour asked for and the bar’s own, each where there is one', async () => {
    const png = drawChallengeResults(board);
    const asked = (await looked(png, '#3f6fa8')).pixels;
    const own = (await looked(png, '#40e0d0')).pixels;
    expect(own).toBeGreaterThan(3_000);
    expect(asked / own).toBeCloseTo(2, 0);
  });

  test('grows by its rows and by the table of pairs', async () => {
    const height = async (given: Parameters<typeof drawChallengeResults>[0]) =>
      (await looked(drawChallengeResults(given), '#000000')).height;
    const cells = [
      [undefined, { votes: 3, wins: true }],
      [{ votes: 1, wins: false }, undefined],
    ];
    const paired = { ...board, pairwise: { title: 'Pairs', numbers: ['1', '2'], cells } };
    expect(await height(paired)).toBeGreaterThan(await height(board));
    expect(await height({ ...board, rows: [...board.rows, ...board.rows] })).toBeGreaterThan(
      await height(board),
    );
  });
});

describe('the bars side by side', () => {
  test('have a frame even where a photo is missing', async () => {
    const bars = [1, 2, 3, 4].map(number => ({ number, name: `Bar ${number}`, below: 'ultramarine' }));
    const { pixels, height } = await looked(drawChallengeBars({ kicker: 'K', title: 'T', bars }), '#e9e3d6');
    expect(pixels).toBeGreaterThan(4 * 100_000);
    expect(height).toBeGreaterThan(1_000);
  });
});
