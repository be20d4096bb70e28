const MOST = 4;
const SLACK = 1e-12;
const MOST_ROUNDS = 8;

/**
 * The step that most lowers |residual + slopes * step|, with every amount staying at 0 or more and their sum at 1 or
 * less. With at most four unknowns the bounds that hold are found by trying: first none, then those that broke, and
 * only when the optimality conditions fail every set of them.
 */
export class ConstrainedLeastSquares {
  /** The step found. */
  readonly step = new Float64Array(MOST);
  /** By how much the step changes the squared residual, if slopes stay as they are. */
  change = 0;
  readonly #h = new Float64Array(MOST * MOST);
  readonly #g = new Float64Array(MOST);
  readonly #low = new Float64Array(MOST * MOST);
  readonly #trial = new Float64Array(MOST);
  readonly #right = new Float64Array(MOST);
  readonly #ones = new Float64Array(MOST);
  readonly #free = new Int32Array(MOST);
  #count = 0;
  #held = -1;
  #amounts: Float64Array = new Float64Array(MOST);
  #pressure = 0;

  /**
   * @param slopes three numbers an unknown
   * @param residual three numbers
   * @param amounts where the unknowns stand now, inside the bounds
   * @param count unknowns, 1 to 4
   * @param held an unknown that must not move, or -1
   */
  solve(slopes: Float64Array, residual: Float64Array, amounts: Float64Array, count: number, held = -1): void {
    this.#count = count;
    this.#held = held;
    this.#amounts = amounts;
    this.#setNormal(slopes, residual);
    if (!this.#tryLikelySets()) this.#tryEverySet();
  }

  /** Holds bounds that break and lets go of those that pull back; false when that does not settle soon. */
  #tryLikelySets(): boolean {
    const every = 1 << this.#count;
    let fixed = 0;
    let full = false;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      const broken = this.#attempt(fixed, full);
      if (broken !== 0) {
        fixed |= broken & (every - 1);
        full ||= (broken & every) !== 0;
        continue;
      }
      const loose = this.#looseBounds(fixed, full);
      if (loose === 0) {
        this.#accept();
        return true;
      }
      fixed &= ~loose;
      if ((loose & every) !== 0) full = false;
    }
    return false;
  }

  #accept(): void {
    this.step.set(this.#trial);
    this.change = 2 * this.#model();
  }

  #tryEverySet(): void {
    let best = Number.POSITIVE_INFINITY;
    this.step.fill(0);
    this.change = 0;
    for (let fixed = 0; fixed < 1 << this.#count; fixed++) {
      for (const full of [false, true]) {
        if (this.#attempt(fixed, full) !== 0) continue;
        const value = this.#model();
        if (value >= best) continue;
        best = value;
        this.#accept();
      }
    }
  }

  #setNormal(slopes: Float64Array, residual: Float64Array): void {
    const count = this.#count;
    let trace = 0;
    for (let i = 0; i < count; i++) {
      for (let j = 0; j <= i; j++) {
        const sum =
          slopes[3 * i]! * slopes[3 * j]! +
          slopes[3 * i + 1]! * slopes[3 * j + 1]! +
          slopes[3 * i + 2]! * slopes[3 * j + 2]!;
        this.#h[MOST * i + j] = sum;
        this.#h[MOST * j + i] = sum;
      }
      trace += this.#h[(MOST + 1) * i]!;
      this.#g[i] =
        slopes[3 * i]! * residual[0]! + slopes[3 * i + 1]! * residual[1]! + slopes[3 * i + 2]! * residual[2]!;
    }
    // A little of Tikhonov's regularisation: four unknowns, three equations; and two colourants may be alike.
    for (let i = 0; i < count; i++) this.#h[(MOST + 1) * i]! += 1e-6 * trace + 1e-9;
  }

  /**
   * Fills the trial step with the bounds of `fixed` (a bit an unknown) held at 0 and, when `full`, the sum at 1.
   * Returns the bounds that it breaks, the sum as the bit after the last unknown.
   */
  #attempt(fixed: number, full: boolean): number {
    const count = this.#count;
    const trial = this.#trial;
    let size = 0;
    let room = 1;
    for (let i = 0; i < count; i++) {
      room -= this.#amounts[i]!;
      trial[i] = 0;
      if (i === this.#held) continue;
      if ((fixed & (1 << i)) !== 0) {
        trial[i] = -this.#amounts[i]!;
        room += this.#amounts[i]!;
      } else this.#free[size++] = i;
    }
    if (full && size === 0) return 1 << count;
    this.#factor(size);
    for (let at = 0; at < size; at++) {
      const i = this.#free[at]!;
      let value = -this.#g[i]!;
      for (let j = 0; j < count; j++) value -= this.#h[MOST * i + j]! * trial[j]!;
      this.#right[at] = value;
      this.#ones[at] = 1;
    }
    this.#backSolve(this.#right, size);
    this.#pressure = 0;
    if (full) {
      this.#backSolve(this.#ones, size);
      let moved = 0;
      let yielding = 0;
      for (let at = 0; at < size; at++) {
        moved += this.#right[at]!;
        yielding += this.#ones[at]!;
      }
      this.#pressure = (moved - room) / yielding;
    }
    let broken = 0;
    for (let at = 0; at < size; at++) {
      const i = this.#free[at]!;
      const value = this.#right[at]! - this.#pressure * this.#ones[at]!;
      trial[i] = value;
      room -= value;
      if (this.#amounts[i]! + value < -SLACK) broken |= 1 << i;
    }
    return room < -1e-9 ? broken | (1 << count) : broken;
  }

  /** Bounds that are held although the residual would fall without them, as bits; the sum's comes last. */
  #looseBounds(fixed: number, full: boolean): number {
    let loose = full && this.#pressure < 0 ? 1 << this.#count : 0;
    for (let i = 0; i < this.#count; i++) {
      if ((fixed & (1 << i)) === 0 || i === this.#held) continue;
      let pull = this.#g[i]! + this.#pressure;
      for (let j = 0; j < this.#count; j++) pull += this.#h[MOST * i + j]! * this.#trial[j]!;
      if (pull < -SLACK) loose |= 1 << i;
    }
    return loose;
  }

  /** What the trial step makes of half the squared residual, up to a constant. */
  #model(): number {
    let value = 0;
    for (let i = 0; i < this.#count; i++) {
      let pull = this.#g[i]!;
      for (let j = 0; j < this.#count; j++) pull += 0.5 * this.#h[MOST * i + j]! * this.#trial[j]!;
      value += pull * this.#trial[i]!;
    }
    return value;
  }

  #factor(size: number): void {
    const low = this.#low;
    for (let i = 0; i < size; i++) {
      for (let j = 0; j <= i; j++) {
        let sum = this.#h[MOST * this.#free[i]! + this.#free[j]!]!;
        for (let k = 0; k < j; k++) sum -= low[MOST * i + k]! * low[MOST * j + k]!;
        low[MOST * i + j] = i === j ? Math.sqrt(Math.max(sum, 1e-30)) : sum / low[(MOST + 1) * j]!;
      }
    }
  }

  #backSolve(right: Float64Array, size: number): void {
    const low = this.#low;
    for (let i = 0; i < size; i++) {
      let value = right[i]!;
      for (let k = 0; k < i; k++) value -= low[MOST * i + k]! * right[k]!;
      right[i] = value / low[(MOST + 1) * i]!;
    }
    for (let i = size - 1; i >= 0; i--) {
      let value = right[i]!;
      for (let k = i + 1; k < size; k++) value -= low[MOST * k + i]! * right[k]!;
      right[i] = value / low[(MOST + 1) * i]!;
    }
  }
}
