import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { colourants } from '../../src/engine/colourants/catalogue.ts';
import { euListings, usListings } from '../../src/engine/stability/listings.ts';
import { substances } from '../../src/engine/stability/substances/index.ts';

const number = z.string().regex(/^\d{5}(:\d)?$/);
const origin = z.object({ trust: z.enum(['published', 'from memory']), source: z.string().min(5) });
const area = z.enum([
  'yes',
  'no',
  'limited-products',
  'listed-products-only',
  'up-to-3-percent',
  'up-to-5-percent',
  'dye-and-aluminium-lake',
]);
const usRow = z.strictObject({
  section: z.string().regex(/^7[34]\.\d{4}a?$/),
  name: z.string().min(3),
  ci: z.array(number),
  external: area,
  lips: area,
  eye: area,
  terms: z.string(),
  certified: z.boolean(),
  asOf: z.string().regex(/^(20\d\d(-\d\d-\d\d)?)?$/),
  origin,
});
const euRow = z.strictObject({
  entry: z.string().regex(/^\d{1,3}a?$/),
  ci: z.array(number),
  names: z.array(z.string().min(3)),
  e: z.array(z.string().regex(/^\d{3}[a-g]?$/)),
  chemical: z.string().min(3),
  colour: z.string().min(3),
  restriction: z.enum(['none', 'rinse-off-only', 'not-on-mucous-membranes', 'not-in-eye-products']),
  most: z.string(),
  conditions: z.string(),
  asOf: z.string().regex(/^20\d\d-\d\d$/),
  origin,
});

const usOf = (section: string) => usListings.find(listing => listing.section === section);
const euOf = (entry: string) => euListings.find(listing => listing.entry === entry);

describe('the tables are well formed', () => {
  test('21 CFR parts 73 and 74', () => {
    z.array(usRow).min(50).parse(usListings);
    expect(new Set(usListings.map(({ section }) => section)).size).toBe(usListings.length);
  });

  test('Annex IV has its 153 entries, 126 in two forms', () => {
    z.array(euRow).length(154).parse(euListings);
    expect(new Set(euListings.map(({ entry }) => entry)).size).toBe(154);
  });

  test('certified colours are those of part 74', () => {
    expect(usListings.filter(({ section, certified }) => certified !== section.startsWith('74.'))).toEqual(
      [],
    );
  });
});

/** Page texts of 21 CFR (eCFR of 2026-04-05, CFR of 2002, FDA table of 2019). */
describe('sections of 21 CFR say what we say', () => {
  test.each([
    ['73.2250', 'Iron oxides', 'yes', 'yes'],
    ['73.2725', 'Ultramarines (blue, green, pink, red, violet)', 'no', 'yes'],
    ['73.2327', 'Chromium oxide greens', 'no', 'yes'],
    ['73.2326', 'Chromium hydroxide green', 'no', 'yes'],
    ['73.2575', 'Titanium dioxide', 'yes', 'yes'],
    ['73.2299', 'Ferric ferrocyanide', 'no', 'yes'],
    ['73.2087', 'Carmine', 'yes', 'yes'],
    ['74.2330', 'D&C Red No. 30', 'yes', 'no'],
    ['74.2333', 'D&C Red No. 33', 'up-to-3-percent', 'no'],
    ['74.2052', 'D&C Black No. 2', 'listed-products-only', 'listed-products-only'],
  ])('%s: %s, lips %s, eye area %s', (section, name, lips, eye) => {
    expect(usOf(section)).toMatchObject({ name, lips, eye, origin: { trust: 'published' } });
  });
});

/** Regulation (EC) No 1223/2009, Annex IV, CosIng export of May 2024. */
describe('entries of Annex IV say what we say', () => {
  test.each([
    ['10', '12120', 'rinse-off-only'],
    ['26', '15800', 'not-on-mucous-membranes'],
    ['21', '15510', 'not-in-eye-products'],
    ['100', '73360', 'none'],
    ['107', '74260', 'not-in-eye-products'],
    ['120', '77007', 'none'],
    ['138', '77510', 'none'],
    ['143', '77891', 'none'],
  ])('entry %s is CI %s: %s', (entry, ci, restriction) => {
    expect(euOf(entry)).toMatchObject({ ci: [ci], restriction });
  });
});

describe('our numbers are those of the listings', () => {
  const base = (ci: string) => (ci === '77268:1' ? ci : (ci.split(':')[0] ?? ''));
  const listed = new Set([...usListings, ...euListings].flatMap(({ ci }) => ci.map(base)));
  /** Colour Index numbers that neither list holds as a colour: mica's tin oxide and talc, alkanet, madder, safflower, chlorophyll's second. */
  const elsewhere = new Set(['77861', '77718', '75530', '75330', '75140', '75815']);

  test.each([
    ['substance', substances],
    ['catalogue entry', colourants],
  ] as const)('every CI number of a %s', (_, rows) => {
    const lost = rows.flatMap(({ id, ci }) =>
      ci
        .map(base)
        .filter(one => !listed.has(one) && !elsewhere.has(one))
        .map(one => `${id} ${one}`),
    );
    expect(lost).toEqual([]);
  });

  test('a substance has the numbers of the US section that lists it', () => {
    const wrong = substances.filter(({ us, ci }) => {
      const sections = typeof us === 'string' || us === undefined ? [] : us;
      const theirs = sections.flatMap(section => usOf(section)?.ci ?? []).map(base);
      return theirs.length > 0 && !ci.some(own => theirs.includes(base(own)));
    });
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });

  test('every entry of Annex IV with a number is recognised by it', () => {
    const known = new Set(substances.flatMap(({ ci }) => ci));
    expect(euListings.flatMap(({ ci }) => ci.filter(one => !known.has(one)))).toEqual([]);
  });
});
