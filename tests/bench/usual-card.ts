import type { BatchCard } from '../../src/pictures/card/parts.ts';

const curve = Array.from({ length: 25 }, (_, at) => {
  const typical = 38 + 45 * Math.sin((at / 24) * 2);
  return { hours: at / 4, low: typical - at / 3, typical, high: typical + at / 3 };
});
const portion = (title: string, hex: string, rows: readonly string[]) => ({
  title,
  hex,
  rows,
  fact: 'Superfat 5.1 %, lye 32.8 % in there',
});
const DOSE = '1/2 tsp + 1/32 tsp gold mica (iron oxide), about 0.83 g, in 1 tsp + 1/2 tsp water; whisk it in';

/** A batch as most are: three colours and the rest. */
export const usualCard = {
  title: 'Lagoon',
  numbers: [
    { label: 'Lye (NaOH)', value: '143.1 g', other: '5.04 oz' },
    { label: 'Water in the lye jug', value: '283.3 g', other: '9.99 oz' },
    { label: 'Batter', value: '1421 ml', other: '6 cups' },
    { label: 'Superfat', value: '5.6 %' },
  ],
  weights: ['Coconut oil', 'Olive oil', 'Palm oil', 'Honey'].map(label => ({ label, value: '560.2 g' })),
  portions: [
    portion('Ultramarine blue: 473 ml (2 cups)', '#3c4ba8', [DOSE]),
    portion('Gold mica: 500 ml (2.1 cups)', '#cbac63', [DOSE]),
    portion('Titanium dioxide: 237 ml (1 cup)', '#f1f0dd', [DOSE]),
    portion('The rest: 343 ml (1.4 cups)', '#dedcb4', []),
  ],
  loaf: {
    title: 'Cut across the loaf',
    aspect: 9 / 7,
    round: false,
    layers: [
      { share: 0.3, hex: '#3c4ba8' },
      { share: 0.4, hex: '#cbac63' },
      { share: 0.1, hex: '#f1f0dd' },
      { share: 0.2, hex: '#dedcb4' },
    ],
    ring: undefined,
    note: 'By volume, without a swirl.',
  },
  heat: {
    title: 'Heat of the loaf (estimate)',
    note: 'I can’t tell whether it will gel. Measure the core of one loaf with a probe and I can do better.',
    points: curve,
    gel: { low: 62, high: 74 },
    gelLabel: 'gels from here',
    hours: [0, 1, 2, 3, 4, 5, 6].map(at => ({ at, label: `${at} h` })),
    degrees: [38, 83].map(at => ({ at, label: `${at}°` })),
  },
  care: 'Lye burns: strong draught, no aluminium, children and pets out, jug labelled, lye by scale. Sealed goggles, gloves, long sleeves, closed shoes. In the eyes: rinse at once for 30 minutes, get medical help. On skin: clothes off, rinse long. No vinegar.',
  warnings: [],
} satisfies BatchCard;
