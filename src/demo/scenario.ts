import type { Language } from '../words/sentence.ts';
import type { Bar } from './bar-photo.ts';

/** Somebody of the invented group. */
export type Maker = 'odile' | 'bram' | 'ilse' | 'tomas';

/** Everybody of the invented group. */
export const makers: Readonly<
  Record<Maker, { readonly name: string; readonly steward: boolean; readonly language: Language }>
> = {
  odile: { name: 'Odile', steward: true, language: 'en' },
  bram: { name: 'Bram', steward: false, language: 'en' },
  ilse: { name: 'Ilse', steward: false, language: 'en' },
  tomas: { name: 'Tomás', steward: false, language: 'es' },
};

export const groupName = 'Harbour suds';

/** Something a maker does, `daysAgo` before the demo is opened. `photo` is drawn for its option of that name. */
export type Step = {
  readonly daysAgo: number;
  readonly by: Maker;
  readonly command: string;
  readonly options: Readonly<Record<string, string | number | boolean>>;
  readonly photo?: Bar;
};

const shelf = (by: Maker, item: string, amount: string, colourant: string): Step => ({
  daysAgo: 6,
  by,
  command: '/shelf add',
  options: { item, amount, colourant },
});

const entry = (by: Maker, title: string, colourants: string, photo: Bar): Step => ({
  daysAgo: 3,
  by,
  command: '/challenge enter',
  options: { title, colourants },
  photo,
});

const specked: Bar = { colours: ['#c3d3e6', '#1f3f8a'], design: 'specks', seed: 42 };

/** A week in the life of the group, oldest first, all of it through the commands that members use. */
export const scenario: readonly Step[] = [
  shelf('odile', 'Deep blue', '60 g', 'ultramarine blue'),
  shelf('odile', 'Snow', '120 g', 'titanium dioxide'),
  shelf('odile', 'Gold dust', '25 g', 'gold mica'),
  shelf('bram', 'Brick', '40 g', 'red iron oxide'),
  shelf('bram', 'Harbour blue', '30 g', 'ultramarine blue'),
  shelf('bram', 'White', '80 g', 'titanium dioxide'),
  shelf('ilse', 'Moss', '35 g', 'chromium oxide green'),
  shelf('ilse', 'Sun', '20 g', 'yellow iron oxide'),
  shelf('ilse', 'Sea', '15 g', 'ultramarine blue'),
  shelf('tomas', 'Azul de mar', '45 g', 'ultramarine blue'),
  shelf('tomas', 'Nieve', '90 g', 'titanium dioxide'),
  {
    daysAgo: 5,
    by: 'odile',
    command: '/plan',
    options: {
      oils: 'coconut 30%, olive 50%, palm 20%',
      size: '1000 g oils',
      superfat: 5,
      lye: 'NaOH',
      water: '33% lye',
      portions: '2 cups ultramarine blue pastel in 1 Tbsp olive; rest plain unscented',
      'save-as': 'Harbour loaf',
    },
  },
  { daysAgo: 5, by: 'odile', command: '/recipe share', options: { recipe: 'Harbour loaf' } },
  {
    daysAgo: 4.5,
    by: 'bram',
    command: '/dose',
    options: { colourant: 'Brick', portion: '1 cup', strength: 'medium' },
  },
  {
    daysAgo: 4,
    by: 'odile',
    command: '/challenge open',
    options: {
      title: 'Winter sea',
      brief: 'The harbour in December: what is left of the colour when the light is low.',
      palette: '#3f6f9f, #ece4d2',
      'entries-until': 'in 2 days',
      'votes-until': 'in 9 days',
    },
  },
  entry('bram', 'Breakwater', 'Harbour blue, White', {
    colours: ['#ece4d2', '#3f6a98'],
    design: 'swirl',
    seed: 5,
  }),
  entry('ilse', 'Kelp line', 'Sea, Moss', { colours: ['#c9d2bb', '#4c7f86'], design: 'layers', seed: 11 }),
  entry('tomas', 'Bajamar', 'Azul de mar, Nieve', {
    colours: ['#e9e4da', '#5b86b3', '#33587f'],
    design: 'swirl',
    seed: 23,
  }),
  { daysAgo: 1, by: 'ilse', command: '/challenge vote', options: { ranking: '3,1' } },
  {
    daysAgo: 0.5,
    by: 'bram',
    command: '/diagnose',
    options: { words: 'blue specks all over, no zap, I put the powder in dry' },
    photo: specked,
  },
];

/** A photo to try things with: put on the bench as a note. */
export const loosePhoto = {
  by: 'ilse',
  text: 'A bar with a stripe I like. Save the picture, then attach it to /match or /diagnose.',
  name: 'stripe.png',
  bar: { colours: ['#efe6d2', '#7c6aa8', '#efe6d2'], design: 'layers', seed: 42 },
} as const satisfies { by: Maker; text: string; name: string; bar: Bar };
