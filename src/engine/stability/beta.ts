/** Coefficients of the Lanczos approximation, g = 7, n = 9 (Numerical Recipes, 3rd edition, section 6.1, same form). */
const lanczos = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;

/** Natural logarithm of the gamma function, x > 0; good to about 1e-14. */
function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const shifted = x - 1;
  const series = lanczos.slice(1).reduce<number>((sum, c, k) => sum + c / (shifted + k + 1), lanczos[0]);
  const t = shifted + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(t) - t + Math.log(series);
}

/** Continued fraction of the incomplete beta function by Lentz's method (Numerical Recipes, section 6.4). */
function continuedFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const held = (value: number): number => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / held(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m <= 500; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / held(1 + even * d);
    c = held(1 + even / c);
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / held(1 + odd * d);
    c = held(1 + odd / c);
    const step = d * c;
    fraction *= step;
    if (Math.abs(step - 1) < 1e-15) break;
  }
  return fraction;
}

/** The regularised incomplete beta function I_x(a, b): the chance that a Beta(a, b) share is at most x. a, b > 0. */
export function betaShareAtMost(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2)
    ? (front * continuedFraction(x, a, b)) / a
    : 1 - (front * continuedFraction(1 - x, b, a)) / b;
}

/** The share below which a Beta(a, b) variable lies with probability p, by bisection to the last bit. 0 < p < 1. */
export function betaQuantile(p: number, a: number, b: number): number {
  let low = 0;
  let high = 1;
  for (let step = 0; step < 200; step += 1) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (betaShareAtMost(middle, a, b) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
