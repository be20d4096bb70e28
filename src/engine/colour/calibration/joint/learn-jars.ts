import { inverse, Matrix } from 'ml-matrix';
import { colourantById } from '../../../colourants/catalogue.ts';
import { fullDose, opticsOf } from '../../jars/colourant-optics.ts';
import { targetMetric } from '../../matching/target-metric.ts';
import { barLab, predictBar } from '../../mixing/bar.ts';
import { baseSoap, plainBase, type ShadeShare } from '../../mixing/base-soap.ts';
import type { Optics } from '../../mixing/optics.ts';
import { colourDifference, type Lab } from '../../spectra/cielab.ts';
import { darkened } from '../darker-base.ts';
import type { Belief, ScaleBelief } from '../test-bar.ts';
import { believedOptics, jarOptics, LEAST_STATED } from './jar-model.ts';
import {
  independent,
  type JarBelief,
  type JarParameters,
  PARAMETERS,
  USUAL_SPREAD,
} from './jar-parameters.ts';
import { type Prior, pooledPrior } from './pooled-prior.ts';
import { type NormalPrior, type RobustUpdate, robustUpdate } from './robust-update.ts';
import { axisSpread, offsetOf } from './stated-error.ts';

/** A jar that bars speak of: its kind, and what others found of the same product. */
export type TaughtJar = { readonly colourant: string; readonly pool?: readonly ScaleBelief[] };

/** A cured bar: which jars are in it (by their place in the list), grams of pigment per 100 g of batter, and its colour. */
export type CuredBar = {
  readonly mix: readonly { readonly jar: number; readonly grams: number }[];
  readonly shades: readonly ShadeShare[];
  readonly gelled: boolean;
  /** How much darker its soap is than its kind, as plain bars showed: `darkerBy`. */
  readonly darker?: number;
  readonly lab: Lab;
  /** Of the reading, CIEDE2000. */
  readonly plusMinus: number;
};

export type LearnAsk = { readonly jars: readonly TaughtJar[]; readonly bars: readonly CuredBar[] };

/** What is known of a jar after its bars. */
export type LearntJar = JarBelief & {
  /** As it was believed before any bar: of its kind, or of what others found. */
  readonly usual: JarParameters;
  /** What the bars alone say of strength and covering, without any prior: goes into the group's pool. */
  readonly evidence: ScaleBelief;
  /** Stated CIEDE2000 at full dose in a white bar: of a jar nobody tried, and now. */
  readonly plusMinus: { readonly before: number; readonly after: number };
};

/** How a bar agrees: CIEDE2000 as foretold of the kinds and after learning, and how much it counted, 0 to 1. */
export type LearntBar = {
  readonly before: number;
  readonly after: number;
  readonly weight: number;
  /** Its colour as it is foretold after learning. */
  readonly predicted: Lab;
};

export type Learnt = { readonly jars: readonly LearntJar[]; readonly bars: readonly LearntBar[] };

/** Beyond so many standard errors a bar counts less and less: photos go wrong (the usual choice for Huber's losses). */
const OUTLIER = 1.5;
/** Nothing is learnt about a scale from bars that do not depend on it. */
const WIDEST = 3;

/**
 * Learns all jars of some bars at once: each jar's strength, covering, hue and dust from the bars it is in, several jars
 * in one bar together. Pure. Throws an Error for a colourant that the catalogue does not have.
 */
export function learnJars({ jars, bars }: LearnAsk): Learnt {
  const kinds = jars.map(({ colourant }) => opticsOf(known(colourant)));
  const priors = jars.map(({ pool }) => pooledPrior(pool));
  const bases = bars.map(({ shades, gelled, darker }) => darkened(baseSoap(shades, gelled), darker));
  const predict = (bar: CuredBar, at: number, parameters: readonly number[]): Lab =>
    barLab(
      bar.mix.map(({ jar, grams }) => ({ optics: jarOptics(kinds[jar]!, sliceOf(parameters, jar)), grams })),
      bases[at]!,
    );
  const metrics = bars.map(({ lab }) => targetMetric(lab));
  const errors = bars.map(({ plusMinus }) => axisSpread(Math.hypot(plusMinus, LEAST_STATED)));
  const residuals = bars.map((bar, at) => {
    const involved = new Set(bar.mix.map(({ jar }) => jar));
    let last: { readonly key: string; readonly value: readonly number[] } | undefined;
    return (parameters: readonly number[]) => {
      // A step along another jar's parameters changes nothing here.
      const key = [...involved].map(jar => sliceOf(parameters, jar).join()).join(';');
      if (last?.key !== key) {
        const offset = offsetOf(metrics[at]!, predict(bar, at, parameters), bar.lab);
        last = { key, value: offset.map(value => value / errors[at]!) };
      }
      return last.value;
    };
  });
  const found = robustUpdate(normalPrior(priors), residuals, OUTLIER);
  const fits = residuals.map(residual => Math.hypot(...residual(found.mean)));
  const mean = priors.flatMap(prior => prior.mean);
  return {
    jars: jars.map((_, jar) =>
      learntJar(jar, found, {
        kind: kinds[jar]!,
        unexplained: unexplainedOf(
          bars.flatMap((bar, at) =>
            bar.mix.some(one => one.jar === jar) ? [{ misfit: fits[at]!, error: errors[at]! }] : [],
          ),
        ),
        prior: priors[jar]!,
        pooled: (jars[jar]!.pool ?? []).length > 0,
      }),
    ),
    bars: bars.map((bar, at) => {
      const predicted = predict(bar, at, found.mean);
      return {
        before: colourDifference(predict(bar, at, mean), bar.lab),
        after: colourDifference(predicted, bar.lab),
        weight: found.weights[at]!,
        predicted,
      };
    }),
  };
}

function known(id: string) {
  const colourant = colourantById(id);
  if (!colourant) throw new Error(`no colourant has the id ${id}`);
  return colourant;
}

/** Independent normal beliefs of all jars in turn. */
function normalPrior(priors: readonly Prior[]): NormalPrior {
  const mean = priors.flatMap(prior => prior.mean);
  return { mean, precision: Matrix.diag(priors.flatMap(({ spread }) => spread.map(one => one ** -2))) };
}

/** What is believed of one of the jars. */
function beliefIn({ mean, covariance }: RobustUpdate, jar: number): JarBelief {
  const places = Array.from({ length: PARAMETERS }, (_, at) => jar * PARAMETERS + at);
  return {
    parameters: sliceOf(mean, jar),
    covariance: places.map(row => places.map(column => covariance.get(row, column))),
  };
}

const sliceOf = (parameters: readonly number[], jar: number): JarParameters =>
  parameters.slice(jar * PARAMETERS, (jar + 1) * PARAMETERS) as unknown as JarParameters;

/**
 * What is left between a jar and its bars beyond the error of reading them, stated CIEDE2000, by the median so that one bad
 * photo does not count. `misfit`: in standard errors; `error`: one standard error along each axis.
 */
function unexplainedOf(bars: readonly { readonly misfit: number; readonly error: number }[]): number {
  const beyond = bars
    .map(({ misfit, error }) => error * Math.sqrt(Math.max(0, misfit ** 2 - AXES)))
    .toSorted((a, b) => a - b);
  const half = beyond.length / 2;
  return beyond.length === 0 ? 0 : (beyond[Math.floor(half)]! + beyond[Math.ceil(half) - 1]!) / 2;
}
/** Mean square of a misfit that is all error: one for each axis of colour. */
const AXES = 3;

/** What one jar was learnt from. */
type LearntOf = {
  readonly kind: Optics;
  readonly unexplained: number;
  readonly prior: Prior;
  readonly pooled: boolean;
};

function learntJar(
  jar: number,
  found: RobustUpdate,
  { kind, unexplained, prior, pooled }: LearntOf,
): LearntJar {
  const places = Array.from({ length: PARAMETERS }, (_, at) => jar * PARAMETERS + at);
  const belief: JarBelief = { ...beliefIn(found, jar), ...(unexplained > 0 && { unexplained }) };
  const white = plainBase('white', false);
  const colourant = known(kind.id);
  const usual = prior.mean;
  const stated = (optics: Optics) => predictBar([{ optics, grams: fullDose(colourant) }], white).plusMinus;
  return {
    ...belief,
    usual,
    evidence: evidenceOf(belief.parameters, blockOf(found.information, places)),
    plusMinus: {
      before: stated(
        pooled
          ? believedOptics(kind, { parameters: usual, covariance: independent(prior.spread) }, kind.plusMinus)
          : kind,
      ),
      after: stated(believedOptics(kind, belief)),
    },
  };
}

const blockOf = (matrix: Matrix, places: readonly number[]): Matrix =>
  new Matrix(places.map(row => places.map(column => matrix.get(row, column))));

/** The likelihood of strength and covering, with hue and dust as wide as they usually are. */
function evidenceOf([strength, covering]: JarParameters, information: Matrix): ScaleBelief {
  const loose = information.clone();
  for (let at = 0; at < PARAMETERS; at += 1) {
    const own = at < 2 ? WIDEST : USUAL_SPREAD[at]!;
    loose.set(at, at, loose.get(at, at) + own ** -2);
  }
  const covariance = inverse(loose);
  const belief = (ln: number, at: number): Belief => ({
    ln,
    spread: Math.min(WIDEST, Math.sqrt(covariance.get(at, at))),
  });
  return { k: belief(strength, 0), s: belief(covering, 1) };
}
