/** The spoons a maker owns, largest first, by what is engraved on them; words say them in each language. */
export const SPOONS = ['1 Tbsp', '1 tsp', '1/2 tsp', '1/4 tsp', '1/8 tsp', '1/16 tsp', '1/32 tsp'] as const;
export type Spoon = (typeof SPOONS)[number];

export type SpoonCount = { readonly spoon: Spoon; readonly count: number };

/** A paste made on purpose, because the dose itself is too small to spoon: wet `powder`, use one part in `parts`. */
export type DilutionPaste = {
  readonly powder: Spoon;
  /** Teaspoons of carrier to wet the powder in. */
  readonly carrierTeaspoons: number;
  /** The same in spoons that are owned. */
  readonly carrierSpoons: readonly SpoonCount[];
  /** Use one of this many equal parts. */
  readonly parts: number;
  /** One of those parts, in spoons that are owned. */
  readonly partSpoons: readonly SpoonCount[];
  /** Teaspoons of powder that one part holds. */
  readonly teaspoons: number;
};

/** What to measure out: spoons, or, where there are none, one part in `parts` of a paste made of `powder`. */
export type Measured = {
  readonly spoons: readonly SpoonCount[];
  readonly paste?: Pick<DilutionPaste, 'powder' | 'parts'>;
};

/** A dose as real spoons. */
export type PracticalSpoons = {
  /** Empty when the dose is below the smallest spoon. */
  readonly spoons: readonly SpoonCount[];
  /** What those spoons (or one part of the paste) hold, teaspoons. */
  readonly teaspoons: number;
  /** `(teaspoons - asked) / asked`. */
  readonly off: number;
  /** Present when spoons alone do not come within a tenth of the dose. */
  readonly paste?: DilutionPaste;
};

/** What each spoon is: a tablespoon, or one of so many parts of a teaspoon. */
export const SPOON_PARTS: Readonly<
  Record<Spoon, { readonly unit: 'tablespoon' | 'teaspoon'; readonly part: number }>
> = {
  '1 Tbsp': { unit: 'tablespoon', part: 1 },
  '1 tsp': { unit: 'teaspoon', part: 1 },
  '1/2 tsp': { unit: 'teaspoon', part: 2 },
  '1/4 tsp': { unit: 'teaspoon', part: 4 },
  '1/8 tsp': { unit: 'teaspoon', part: 8 },
  '1/16 tsp': { unit: 'teaspoon', part: 16 },
  '1/32 tsp': { unit: 'teaspoon', part: 32 },
};

/** Thirty-seconds of a teaspoon in each spoon; each divides the one above, so the fewest spoons is the greedy sum. */
const SIZES: readonly (readonly [Spoon, number])[] = SPOONS.map(spoon => {
  const { unit, part } = SPOON_PARTS[spoon];
  return [spoon, (unit === 'tablespoon' ? 96 : 32) / part];
});

type Sizes = typeof SIZES;
/** The sizes of the spoons somebody owns; each still divides those above it. */
const sizesOf = (owned: readonly Spoon[]): Sizes =>
  owned === SPOONS ? SIZES : SIZES.filter(([spoon]) => owned.includes(spoon));

/** A spoon reached by division or through millilitres must still count as that spoon. */
const ROUNDING = 1e-7;

/**
 * How far off a sum of one kind, two kinds, or more kinds of spoon may be before another kind is taken up. A level
 * spoon repeats to about a tenth, so a third spoon must earn its place (common practice).
 */
const GOOD_ENOUGH = [0.03, 0.065, 0.03] as const;
/** Beyond this share off, a paste is offered beside the spoons, and beyond the next it stands in their place: a third less is another colour. */
const TOO_COARSE = 0.1;
const TOO_FAR = 0.25;

/**
 * The sum of real spoons for a dose in teaspoons: the nearest sum of one kind of spoon if it is within 3 %, else of two
 * kinds within 6.5 %, else the nearest of more; never more than `atMost` teaspoons, and only in the spoons that are `owned`,
 * one at least. Below the smallest of them, a paste of which one part holds the dose.
 * Throws RangeError for a dose that is not positive and finite.
 * @example practicalSpoons(0.75).spoons // [{ spoon: '1/2 tsp', count: 1 }, { spoon: '1/4 tsp', count: 1 }]
 */
export function practicalSpoons(
  teaspoons: number,
  atMost = Number.POSITIVE_INFINITY,
  owned: readonly Spoon[] = SPOONS,
): PracticalSpoons {
  if (!(teaspoons > 0 && Number.isFinite(teaspoons))) throw new RangeError('a dose is positive and finite');
  const sizes = sizesOf(owned);
  const least = sizes.at(-1)![1];
  const most = Math.floor(atMost * 32 * (1 + ROUNDING));
  const target = settled(teaspoons * 32);
  if (target < least - ROUNDING || most < least) return { spoons: [], ...byPaste(teaspoons, sizes) };
  const thirtySeconds = fewest(Math.min(target, most), most, sizes);
  const spoons = spoonsOf(thirtySeconds, sizes);
  const held = thirtySeconds / 32;
  const off = (thirtySeconds - target) / target;
  if (Math.abs(off) > TOO_FAR && target <= most) return { spoons: [], ...byPaste(teaspoons, sizes) };
  const plain = { spoons, teaspoons: held, off };
  return Math.abs(off) > TOO_COARSE ? { ...plain, paste: pasteFor(teaspoons, sizes) } : plain;
}

/**
 * Halfway between two sums, millilitres and cups differ in the last digits: settled to a hundred-thousandth they
 * choose alike. Less than one thirty-second is left to pastes.
 */
const settled = (thirtySeconds: number): number =>
  thirtySeconds < 1 ? thirtySeconds : Math.round(thirtySeconds * 1e5) / 1e5;

/** Teaspoons that a number of spoons hold; a tablespoon is three. */
export function teaspoonsIn(spoons: readonly SpoonCount[]): number {
  const sizes = new Map(SIZES);
  return spoons.reduce((sum, { spoon, count }) => sum + (count * sizes.get(spoon)!) / 32, 0);
}

/** So many times the same spoons, in the fewest that hold just as much. */
export function timesSpoons(
  spoons: readonly SpoonCount[],
  times: number,
  owned: readonly Spoon[] = SPOONS,
): readonly SpoonCount[] {
  return spoonsOf(Math.round(teaspoonsIn(spoons) * times * 32), sizesOf(owned));
}

/** Thirty-seconds of a teaspoon nearest the target with the fewest kinds of spoon that come near enough. */
function fewest(target: number, most: number, sizes: Sizes): number {
  let best = sizes.at(-1)![1];
  for (let kinds = 1; kinds <= sizes.length; kinds += 1) {
    best = nearest(target, most, { kinds, sizes });
    if (Math.abs(best - target) <= GOOD_ENOUGH[Math.min(kinds, 3) - 1]! * target) return best;
  }
  return best;
}

/** The nearest sum of at most `kinds` kinds of spoon, not above `most`; of two as near the one that takes larger spoons first. */
function nearest(
  target: number,
  most: number,
  { kinds, sizes }: { readonly kinds: number; readonly sizes: Sizes },
): number {
  let best = sizes.at(-1)![1];
  let off = Math.abs(best - target);
  const add = (rest: number, held: number, from: number, left: number): void => {
    const far = Math.abs(held - target);
    if (held > 0 && far < off && held <= most && kindsIn(held, sizes) <= kinds) {
      best = held;
      off = far;
    }
    if (left === 0) return;
    for (let at = from; at < sizes.length; at += 1) {
      const size = sizes[at]![1];
      const below = Math.floor(rest / size);
      if (below > 0) add(rest - below * size, held + below * size, at + 1, left - 1);
      add(Math.max(0, rest - (below + 1) * size), held + (below + 1) * size, at + 1, left - 1);
    }
  };
  add(target, 0, 0, kinds);
  return best;
}

/** Asked for every sum that is tried. */
function kindsIn(thirtySeconds: number, sizes: Sizes): number {
  let rest = thirtySeconds;
  let kinds = 0;
  for (let at = 0; at < sizes.length && rest > 0; at += 1) {
    const size = sizes[at]![1];
    if (rest >= size) kinds += 1;
    rest %= size;
  }
  return kinds;
}

function spoonsOf(thirtySeconds: number, sizes: Sizes): SpoonCount[] {
  let rest = thirtySeconds;
  const counted: SpoonCount[] = [];
  for (let at = 0; at < sizes.length && rest > 0; at += 1) {
    const [spoon, size] = sizes[at]!;
    const count = Math.floor(rest / size);
    rest -= count * size;
    if (count > 0) counted.push({ spoon, count });
  }
  return counted;
}

function byPaste(teaspoons: number, owned: Sizes) {
  const paste = pasteFor(teaspoons, owned);
  return { teaspoons: paste.teaspoons, off: (paste.teaspoons - teaspoons) / teaspoons, paste };
}

/** The smallest paste, from 1/8 tsp of powder up where such a spoon is owned, whose whole number of parts comes within 5 % and not above the dose. */
function pasteFor(teaspoons: number, owned: Sizes): DilutionPaste {
  const spooned = owned.filter(([, size]) => size >= 4);
  const sizes = (spooned.length > 0 ? spooned : owned).toReversed();
  const fits = ([, size]: readonly [Spoon, number]) => {
    const parts = size / 32 / teaspoons;
    return (
      Math.ceil(parts * (1 - ROUNDING)) >= 2 &&
      Math.ceil(parts * (1 - ROUNDING)) <= parts * 1.05 * (1 + ROUNDING)
    );
  };
  const [powder, size] = sizes.find(fits) ?? sizes.at(-1)!;
  const parts = Math.max(1, Math.ceil((size / 32 / teaspoons) * (1 - ROUNDING)));
  const part = partOf(parts, size, sizes);
  return {
    powder,
    carrierTeaspoons: (part * parts) / 32,
    carrierSpoons: spoonsOf(part * parts, owned),
    parts,
    partSpoons: spoonsOf(part, owned),
    teaspoons: size / 32 / parts,
  };
}

/** A tablespoon, in thirty-seconds of a teaspoon: less does not wet. */
const LEAST_CARRIER = 96;
/** Carrier to powder (common practice). */
const CARRIER_PER_POWDER = 3;

/**
 * One part of a paste, thirty-seconds of a teaspoon: the least of which the parts hold enough carrier to wet the powder, and
 * that can be spooned, as can all of them together, with two kinds of spoon. Of so thin a paste the powder is no volume.
 */
function partOf(parts: number, powder: number, sizes: Sizes): number {
  const largestFirst = sizes.toReversed();
  const least = sizes[0]![1];
  const most = sizes.at(-1)![1];
  const enough = Math.max(LEAST_CARRIER, CARRIER_PER_POWDER * powder) / parts;
  const isSpooned = (size: number) => kindsIn(size, largestFirst) <= 2;
  let part = Math.ceil((enough / least) * (1 - ROUNDING)) * least;
  // A multiple of the largest spoon is one kind alone, and so are all its parts.
  while (part % most !== 0 && !(isSpooned(part) && isSpooned(part * parts))) part += least;
  return part;
}
