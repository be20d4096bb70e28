import type { CuredBar } from '../../../src/engine/colour/calibration/joint/learn-jars.ts';
import { fullDose, opticsOf } from '../../../src/engine/colour/jars/colourant-optics.ts';
import { barLab } from '../../../src/engine/colour/mixing/bar.ts';
import { baseSoap } from '../../../src/engine/colour/mixing/base-soap.ts';
import type { BaseOptics, Optics } from '../../../src/engine/colour/mixing/optics.ts';
import type { Lab } from '../../../src/engine/colour/spectra/cielab.ts';
import { colourantById } from '../../../src/engine/colourants/catalogue.ts';

/** Numbers that look drawn at random, the same on every run. */
export type Chance = {
  readonly uniform: () => number;
  readonly normal: () => number;
  readonly below: (most: number) => number;
};

const chanceOf = (uniform: () => number): Chance => ({
  uniform,
  normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
  below: most => Math.floor(uniform() * most),
});

/** For makers on whom the priors were chosen (T. Ettinger's mulberry32, public domain). */
export function fitting(seed: number): Chance {
  let state = seed;
  return chanceOf(() => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  });
}

/** For makers who only judge (G. Marsaglia, J. Statistical Software 8 (2003) 14: xorshift, 32 bits). */
export function judging(seed: number): Chance {
  let state = Math.imul(seed, 2_654_435_761) | 1;
  return chanceOf(() => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 4_294_967_296;
  });
}

/** How much dirt is in a jar, by the share of a full dose of it that comes with a full dose of the jar. */
export const DUST_CLASSES = ['clean', 'some', 'dusty'] as const;
export type DustClass = (typeof DUST_CLASSES)[number];
const DUSTINESS: Readonly<Record<DustClass, readonly [least: number, most: number]>> = {
  clean: [0, 0.05],
  some: [0.05, 0.15],
  dusty: [0.15, 0.35],
};

export const KINDS = [
  'ultramarine-violet',
  'ultramarine-blue',
  'red-iron-oxide',
  'yellow-iron-oxide',
  'chromium-oxide-green',
  'black-iron-oxide',
  'gold-mica',
] as const;

export const kindOf = (id: string): Optics => opticsOf(colourantById(id)!);
export const full = (id: string): number => fullDose(colourantById(id)!);

/** A jar of a kind with shares of a full dose of other colourants in it, by their own spectra. */
function adulterated(
  id: string,
  added: readonly { readonly other: string; readonly share: number }[],
  [times, covers]: readonly [number, number],
): Optics {
  const kind = kindOf(id);
  const mixed = (what: 'k' | 's') =>
    kind[what].map((value, band) =>
      added.reduce(
        (sum, { other, share }) => sum + (share * kindOf(other)[what][band]! * full(other)) / full(id),
        value,
      ),
    );
  return { ...kind, k: mixed('k').map(v => v * times), s: mixed('s').map(v => v * covers) };
}

/** Jars as they might be bought, none of them of the family that the fit believes in. */
export type Market = {
  readonly drawn: (seed: number) => Chance;
  readonly jar: (id: string, dust: DustClass, chance: Chance) => Optics;
};

const FIT_DIRT = ['black-iron-oxide', 'red-iron-oxide', 'yellow-iron-oxide'];

/** Normal spreads: the market on which priors may be chosen. */
export const FIT_MARKET: Market = {
  drawn: fitting,
  jar(id, dust, { normal, uniform, below }) {
    const scales = [Math.exp(0.35 * normal()), Math.exp(0.35 * normal())] as const;
    const [least, most] = DUSTINESS[dust];
    return adulterated(
      id,
      [
        { other: KINDS[below(KINDS.length)]!, share: Math.min(0.12, Math.abs(normal()) * 0.04) },
        { other: FIT_DIRT[below(FIT_DIRT.length)]!, share: least + (most - least) * uniform() },
      ],
      scales,
    );
  },
};

const JUDGE_DIRT = ['black-iron-oxide', 'brown-iron-oxide', 'activated-charcoal', 'red-iron-oxide'];

/** Strength log-uniform within twice, dust beta within its class, other dirt: the market that only judges. */
export const JUDGE_MARKET: Market = {
  drawn: judging,
  jar(id, dust, { uniform, below }) {
    const within = (times: number) => times ** (2 * uniform() - 1);
    // Beta(2, 3): the second smallest of four uniforms.
    const beta = [uniform(), uniform(), uniform(), uniform()].toSorted((a, b) => a - b)[1]!;
    const [least, most] = DUSTINESS[dust];
    return adulterated(
      id,
      [
        { other: KINDS[below(KINDS.length)]!, share: 0.12 * uniform() ** 2 },
        { other: JUDGE_DIRT[below(JUDGE_DIRT.length)]!, share: least + (most - least) * beta },
      ],
      [within(2), within(1.8)],
    );
  },
};

/** A maker's own soap: one of the usual ones, somewhat darker or lighter. */
export function soapOf({ normal, uniform, below }: Chance) {
  const shades = [{ shade: (['white', 'cream', 'yellow'] as const)[below(3)]!, share: 1 }];
  const gelled = uniform() < 0.4;
  const usual = baseSoap(shades, gelled);
  const darker = Math.exp(0.2 * normal());
  const soap: BaseOptics = { ...usual, k: usual.k.map(value => value * darker) };
  return { shades, gelled, usual, soap };
}

/** A maker with three jars and a soap of their own, ten cured batches, and four more that are foretold. */
export function maker(market: Market, chance: Chance, dust: readonly DustClass[]) {
  const { normal, uniform, below } = chance;
  const ids = [...KINDS]
    .map(id => ({ id, at: uniform() }))
    .sort((a, b) => a.at - b.at)
    .slice(0, 3)
    .map(({ id }) => id);
  const jars = ids.map((id, at) => market.jar(id, dust[at] ?? 'clean', chance));
  const { shades, gelled, usual, soap } = soapOf(chance);
  const mix = () => {
    const many = uniform() < 0.5 ? 1 : 2;
    const first = below(3);
    const places = many === 1 ? [first] : [first, (first + 1 + below(2)) % 3];
    return places.map(jar => ({ jar, grams: (full(ids[jar]!) * [0.25, 0.5, 1][below(3)]!) / many }));
  };
  const truth = (of: ReturnType<typeof mix>) =>
    barLab(
      of.map(({ jar, grams }) => ({ optics: jars[jar]!, grams })),
      soap,
    );
  const read = ({ l, a, b }: Lab, error: number): Lab => ({
    l: l + error * normal(),
    a: a + error * normal(),
    b: b + error * normal(),
  });
  const bars = Array.from({ length: 10 }, (): CuredBar => {
    const made = mix();
    // One photo in twenty is a bad one.
    return { mix: made, shades, gelled, lab: read(truth(made), uniform() < 0.05 ? 8 : 1.6), plusMinus: 4 };
  });
  const next = Array.from({ length: 4 }, () => {
    const made = mix();
    return { made, real: truth(made) };
  });
  return { ids, usual, bars, next };
}
