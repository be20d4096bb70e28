import { knownOil } from '../../../batch/oils/find-oil.ts';
import { type Amount, type Item, itemsOf, type Name } from './items.ts';
import { isMeasure, isName, isOil, type Measure, type Pair, type Part, pairsOf, partsOf } from './parts.ts';

/** What a line tells of its ingredients, before their units are settled. */
export type Told = {
  readonly pairs: readonly Pair[];
  /** Oils that share what there is in equal parts. */
  readonly even: readonly Name[];
  /** What all oils weigh together. */
  readonly whole: Amount | undefined;
  readonly isRescaled: boolean;
  readonly times: string | undefined;
  /** A bare percent by itself. */
  readonly percent: Amount | undefined;
  /** Liquids and additives without an amount. */
  readonly liquids: readonly Name[];
  /** The unit of every bare figure. */
  readonly unit: Amount['unit'];
  readonly items: readonly Item[];
  /** Alkalis that are named as those which are not used. */
  readonly notMeant: readonly Name[];
  /** Whether something was put right, left away, taken instead, scaled, or told of another's recipe. */
  readonly isTurned: boolean;
};
/** Percent; lye water is 25 to 50 % (common practice, no source). */
const WEAKEST = 12;
/** A bare figure from which it may be the grams of all oils, beside shares in percent. */
const LIKE_A_WEIGHT = 100;
/** What is unclear, and whether anything of the recipe was changed as it was told. */
export type Unclear = { readonly unclear: string; readonly isTurned?: boolean };

const oilOf = (name: Name) => knownOil(name.text);
const same = (a: Name, b: Name): boolean =>
  a.known === b.known &&
  (a.known === 'oil' ? oilOf(a) === oilOf(b) : a.known !== 'other' || a.text === b.text);

/** Reads who is how much in a line of `plainWords`. Pure. */
export function toldIn(line: string): Told | Unclear {
  const items = itemsOf(line);
  const reader = new Reader(items);
  return reader.read();
}

class Reader {
  private readonly items: readonly Item[];
  private pairs: Pair[] = [];
  private unpaired: Name[] = [];
  /** Sentences that name a part of the recipe. */
  private told: ReadonlySet<number> = new Set();
  private even = false;
  private each: Amount | undefined;
  private whole: Amount | undefined;
  private masses: Amount[] = [];
  private percents: Amount[] = [];
  private removed: Name[] = [];
  private times: string | undefined;
  private isRescaled = false;
  private isCorrecting = false;
  /** Whether the next figure without a name puts the last one right. */
  private awaitsFigure = false;
  /** Whether a correction has put an oil right yet: more oils may follow it. */
  private isCorrected = false;
  /** Alkalis that are named as those which are not used. */
  private readonly notMeant: Name[] = [];
  private denied: Name | undefined;
  private isTurned = false;
  private unit: Amount['unit'];
  private liquids: Name[] = [];
  /** Oils named by those who do not take them, and what is taken instead. */
  private swaps: { readonly by: Name; readonly of: Name | undefined }[] = [];

  constructor(items: readonly Item[]) {
    this.items = items;
  }

  read(): Told | Unclear {
    const { rest, ratio } = ratioIn(this.items);
    this.pairs.push(...ratio);
    const parts = partsOf(rest);
    this.told = new Set(parts.filter(part => part.items.some(isName)).map(({ sentence }) => sentence));
    for (const part of parts) {
      const unclear = this.part(part);
      if (unclear !== undefined) return { unclear, isTurned: this.isTurned };
    }
    const unclear = this.swap() ?? this.lone();
    if (unclear !== undefined) return { unclear, isTurned: this.isTurned };
    this.pairs = this.pairs.filter(({ name }) => !this.removed.some(one => same(one, name)));
    const bare = this.unpaired.filter(
      name => !this.pairs.some(pair => same(pair.name, name)) && !this.removed.some(one => same(one, name)),
    );
    if (this.each) {
      const measure = this.each;
      this.pairs.push(...bare.splice(0).map(name => ({ measure, name })));
    }
    if (bare.length > 0 && !this.even) return { unclear: bare[0]!.text, isTurned: this.isTurned };
    return {
      pairs: this.pairs,
      even: bare,
      whole: this.whole,
      isRescaled: this.isRescaled,
      times: this.times,
      percent: this.percents[0],
      liquids: this.liquids,
      unit: this.unit,
      items: this.items,
      notMeant: this.notMeant,
      isTurned: this.isTurned,
    };
  }

  /** One part of the line; what is unclear in it. */
  private part({ items, sentence }: Part): string | undefined {
    const content = this.turned(items, sentence);
    if (typeof content === 'string') return content;
    const unclear = this.units(content);
    if (unclear !== undefined) return unclear;
    const apart = this.wholes(content.filter(item => !(item.is === 'amount' && item.unit === 'other')));
    if (!apart.some(isName)) return this.nameless(apart, this.told.has(sentence));
    const read = pairsOf(apart, this.pairs[0]);
    if (!read) return apart.filter(isMeasure)[0]?.text ?? 'part';
    for (const name of read.left) this.leave(name);
    for (const pair of read.pairs) {
      const amiss = this.add(pair);
      if (amiss !== undefined) return amiss;
    }
    return undefined;
  }

  /** The unit of all bare figures, told once; that of the lye which is asked for is none of theirs. */
  private units(content: readonly Item[]): string | undefined {
    if (content.some(item => item.is === 'asks' || (isName(item) && item.known === 'lye'))) return undefined;
    for (const item of content) {
      const unit =
        item.is === 'units' ? item.unit : item.is === 'mark' && item.text === '%' ? '%' : undefined;
      if (unit === undefined) continue;
      if (this.unit !== undefined && this.unit !== unit) return item.text;
      this.unit = unit;
    }
    return undefined;
  }

  private leave(name: Name): void {
    if (name.known === 'oil') this.unpaired.push(name);
    else if (name.known === 'other') this.liquids.push(name);
  }

  private add(pair: Pair): string | undefined {
    if (pair.name.known === 'lye' && pair.measure.is === 'amount' && pair.measure.unit === '%') {
      // No lye water is so weak: it is the superfat, or the strength that is taken elsewhere.
      if (pair.measure.figure > WEAKEST) return pair.measure.text;
      this.percents.push(pair.measure);
      return undefined;
    }
    if (pair.name.known === 'any-oil') {
      if (pair.measure.is === 'amount') this.whole ??= pair.measure;
      return undefined;
    }
    const at = this.pairs.findIndex(({ name }) => same(name, pair.name));
    const before = this.pairs[at];
    this.awaitsFigure = false;
    if (this.isCorrecting && !before && !this.isCorrected && this.pairs.length > 0) return pair.measure.text;
    this.isCorrected ||= this.isCorrecting && before !== undefined;
    if (!before || pair.name.known === 'other') this.pairs.push(pair);
    else if (this.isCorrecting) this.pairs[at] = withUnit(pair, before);
    else if (before.measure.is !== 'amount' || pair.measure.is !== 'amount') this.pairs.push(pair);
    else if (before.measure.figure !== pair.measure.figure) return `${pair.measure.text} ${pair.name.text}`;
    return undefined;
  }

  /** A part without a name: the whole, the superfat, a figure put right, or nothing of the recipe. */
  private nameless(items: readonly Item[], isOfRecipe: boolean): string | undefined {
    for (const item of items) {
      if (item.is === 'fraction' && isOfRecipe) return item.text;
      if (item.is !== 'amount' || (item.unit === undefined && !isOfRecipe && !this.awaitsFigure)) continue;
      if (this.denied) {
        this.pairs.push({ measure: item, name: this.denied });
        this.denied = undefined;
      } else if (this.awaitsFigure) {
        this.awaitsFigure = false;
        const last = this.pairs.at(-1);
        if (!last) return item.text;
        this.pairs[this.pairs.length - 1] = withUnit({ ...last, measure: item }, last);
      } else if (item.unit === '%') this.percents.push(item);
      else this.masses.push(item);
    }
    return undefined;
  }

  /** Weights of all oils out of a part: "40 ounces total", "lote de 600 g". */
  private wholes(items: readonly Item[]): readonly Item[] {
    const taken = new Set<Item>();
    for (const [at, item] of items.entries()) {
      if (item.is !== 'whole' && item.is !== 'rescales') continue;
      const next = items[at + 1]?.is === 'link' ? at + 2 : at + 1;
      const amount = [next, at - 1].find(
        one =>
          isWeight(items[one]) && !taken.has(items[one]!) && !(one === next && isOil(afterLink(items, one))),
      );
      if (amount === undefined) continue;
      taken.add(items[amount]!);
      this.whole = items[amount] as Amount;
    }
    return items.filter(item => !taken.has(item));
  }

  /** A part without what turns its sense, which is noted; a text where that is unclear. */
  private turned(items: readonly Item[], sentence: number): readonly Item[] | string {
    const kept: Item[] = [];
    for (let at = 0; at < items.length; at += 1) {
      const item = items[at]!;
      const after = items.slice(at + 1);
      if (item.is === 'aside') continue;
      if (item.is === 'fraction' && isWater(after.find(one => one.is !== 'link'))) {
        // "Buttermilk for half the water".
        at += after.findIndex(isName) + 1;
      } else if (item.is === 'even') this.even = true;
      else if (item.is === 'times') {
        if (this.times !== undefined) return item.text;
        this.isTurned = true;
        this.times = item.text;
      } else if (item.is === 'rescales') {
        this.isRescaled ||=
          !/hacer|make|do$/u.test(item.text) ||
          after.some(one => one.is === 'amount' && one.unit !== 'other' && one.unit !== '%');
        this.isTurned ||= this.isRescaled;
        kept.push(item);
      } else if (item.is === 'corrects') {
        if (!speaksOfRecipe(after)) continue;
        this.isTurned = true;
        // "100, no, 150 of cocoa butter": a figure that had no name yet.
        const isNameless = kept.some(isMeasure) && !kept.some(isName);
        if (isNameless || this.masses.pop() !== undefined) {
          if (isNameless) kept.length = 0;
          continue;
        }
        if (kept.some(isMeasure)) {
          // What stands before is of the recipe; what follows puts it right.
          const unclear = this.part({ items: [...kept], sentence });
          if (unclear !== undefined) return unclear;
          kept.length = 0;
        }
        this.isCorrecting ||= this.pairs.length > 0;
        this.awaitsFigure = this.isCorrecting;
      } else if (item.is === 'each') {
        const amount = kept.findLastIndex(one => one.is === 'amount');
        if (amount === -1) continue;
        this.each = kept.splice(amount, 1)[0] as Amount;
      } else if (item.is === 'swaps') {
        const skipped = this.swapped(after);
        if (typeof skipped === 'string') return skipped;
        at += skipped;
      } else if (item.is === 'not' && kept.length === 0 && /^(?:was|were|is|are)/u.test(item.text)) {
        // "Wasn't 6 oz lye too much": who asks so means it.
      } else if (item.is === 'without' || item.is === 'not') {
        const skipped = this.left(item, after);
        if (typeof skipped === 'string') return skipped;
        at += skipped;
      } else if (item.is === 'instead') {
        const skipped = this.instead(kept, after);
        at += skipped;
      } else if (item.is === 'mine') {
        // Two recipes: the later one is the teller's own.
        if (after.some(isMeasure) && this.pairs.length > 0) {
          this.pairs = [];
          this.isTurned = true;
        }
      } else kept.push(item);
    }
    return kept;
  }

  /** "Without the castor", "no eran 300 de coco": how many items of the part that takes. */
  private left(item: Item, after: readonly Item[]): number | string {
    const near = after.slice(
      0,
      Math.max(
        0,
        after.findIndex(one => one.is === 'word'),
      ) || undefined,
    );
    const reach = after.findIndex(one => one.is === 'word') === 0 ? [] : near;
    const name = reach.findIndex(isName);
    const amount = reach.findIndex(one => one.is === 'amount');
    const isAmount = amount !== -1 && amount <= 2;
    const found = after[name];
    if (isName(found) && found.known === 'oil') {
      this.isTurned = true;
      if (item.is === 'not' && isAmount) this.denied = found;
      else this.removed.push(found);
      return name + 1;
    }
    if (isName(found) && found.known === 'lye') this.notMeant.push(found);
    if (item.is === 'not' && isAmount) return after[amount]!.text;
    if (isName(found)) return name <= 1 ? name + 1 : 0;
    const [word] = after.filter(({ is }) => is === 'word');
    const named = word && this.pairs.find(pair => pair.name.text.split(' ').includes(word.text));
    this.isTurned ||= named !== undefined;
    if (named) this.removed.push(named.name);
    else if (word && /^(?:cera|wax|butter|manteca)$/u.test(word.text)) this.wordsRemoved.push(word.text);
    return 0;
  }
  private readonly wordsRemoved: string[] = [];

  /** "Swap the coconut for babassu", "la cambio por sebo". */
  private swapped(after: readonly Item[]): number | string {
    const names = after.flatMap((one, at) => (isOil(one) ? [at] : []));
    const by = after.findIndex(({ text }) => /^(?:for|with|por|con|to)$/u.test(text));
    if (by === -1 || names.length === 0) return after[0]?.text ?? 'swap';
    const behind = names.find(at => at > by);
    const before = names.find(at => at < by);
    if (behind === undefined || after.slice(0, behind).some(isMeasure)) return after[names[0]!]!.text;
    const of = before === undefined ? undefined : (after[before] as Name);
    this.isTurned = true;
    this.swaps.push({ by: after[behind] as Name, of });
    return behind + 1;
  }

  private instead(before: Item[], after: readonly Item[]): number {
    const of = after.findIndex(isName);
    const name = after[of];
    const by = before.findLast(isName) ?? this.unpaired.at(-1);
    if (isName(name) && name.known === 'lye') this.notMeant.push(name);
    if (isName(name) && name.known !== 'oil') return of + 1;
    this.isTurned ||= by?.known === 'oil';
    if (by?.known === 'oil') this.swaps.push({ by, of: isName(name) ? name : undefined });
    return isName(name) ? of + 1 : 0;
  }

  /** What is taken in place of an oil has its own amount, or that of the oil. */
  private swap(): string | undefined {
    for (const word of this.wordsRemoved) {
      const named = this.pairs.find(pair => pair.name.text.split(' ').includes(word));
      this.isTurned = true;
      if (named) this.removed.push(named.name);
    }
    const lacking = this.removed.filter(one => this.pairs.some(({ name }) => same(name, one)));
    const waiting = this.unpaired.filter(name => !this.pairs.some(pair => same(pair.name, name)));
    const swaps = [...this.swaps];
    if (swaps.length === 0 && lacking.length === 1 && waiting.length === 1 && !this.even)
      swaps.push({ by: waiting[0]!, of: lacking[0] });
    for (const { by, of = lacking[0] } of swaps) {
      const old = of && this.pairs.find(({ name }) => same(name, of));
      if (!old) {
        // "I have tallow in place of the lard, 300 g of it": the recipe is told as it is now.
        const own = this.masses.length === 1 ? this.masses.pop() : undefined;
        if (!of) return by.text;
        const isTold = this.pairs.some(({ name }) => same(name, by));
        if (!own && !isTold) return by.text;
        if (own) this.pairs.push({ measure: own, name: by });
        continue;
      }
      this.pairs = this.pairs.filter(pair => pair !== old);
      this.removed = this.removed.filter(one => !same(one, old.name));
      if (this.pairs.some(({ name }) => same(name, by))) continue;
      const own = this.masses.length === 1 ? this.masses.pop() : undefined;
      const measure: Measure = own ?? old.measure;
      this.pairs.push(withUnit({ measure, name: by }, old));
    }
    return undefined;
  }

  /** Amounts that stand by themselves. */
  private lone(): string | undefined {
    const oils = this.pairs.filter(({ name }) => name.known === 'oil');
    const areShares =
      oils.length > 0 && oils.every(({ measure }) => measure.is !== 'amount' || measure.unit === '%');
    const again = (one: Amount) => one.figure === this.whole?.figure && one.unit === this.whole.unit;
    const [mass, another] = this.masses.filter(one => !again(one));
    if (mass && mass.unit === undefined && !(areShares && mass.figure >= LIKE_A_WEIGHT)) return mass.text;
    const alone = this.unpaired.filter(name => !this.pairs.some(pair => same(pair.name, name)));
    const isOne = new Set(alone.map(oilOf)).size === 1 && oils.length === 0 && !this.even;
    if (isOne && mass && !another) {
      this.pairs.push({ measure: mass, name: alone[0]! });
      return undefined;
    }
    const isWeighed = oils.some(
      ({ measure }) => measure.is === 'amount' && measure.unit !== '%' && measure.unit !== undefined,
    );
    if (mass && (another || this.whole || (isWeighed && !oils.some(({ measure }) => measure.is === 'rest'))))
      return mass.text;
    this.whole ??= mass;
    if (this.percents.length > 1) return this.percents[1]!.text;
    return undefined;
  }
}

const isWeight = (item: Item | undefined): boolean => item?.is === 'amount' && item.unit !== '%';
const afterLink = (items: readonly Item[], at: number): Item | undefined =>
  items[at + 1]?.is === 'link' ? items[at + 2] : items[at + 1];
const isWater = (item: Item | undefined): boolean => isName(item) && item.known === 'water';

/** A figure that is put right keeps the unit it had. */
const withUnit = (pair: Pair, before: Pair): Pair =>
  pair.measure.is === 'amount' && pair.measure.unit === undefined && before.measure.is === 'amount'
    ? { ...pair, measure: { ...pair.measure, unit: before.measure.unit } }
    : pair;

/** Whether what follows a correction is of the recipe, and no courtesy. */
const speaksOfRecipe = (after: readonly Item[]): boolean =>
  after.slice(0, 5).some(item => isMeasure(item) || isOil(item)) && after.some(isMeasure);

/** "70 20 10 lard coconut olive", "olive and coconut 80:20": figures in a row and as many oils in a row. */
function ratioIn(items: readonly Item[]): {
  readonly rest: readonly Item[];
  readonly ratio: readonly Pair[];
} {
  const none = { rest: items, ratio: [] };
  const figures: number[] = [];
  for (let at = 0; at < items.length; at += 1) {
    if (isBare(items[at])) figures.push(at);
    else if (figures.length === 1) figures.length = 0;
    else if (figures.length > 1 && !/^[:/–-]$/u.test(items[at]!.text)) break;
    if (figures.length === 1 && /^[:/–-]$/u.test(items[at + 1]?.text ?? '') && isBare(items[at + 2])) at += 1;
  }
  if (figures.length < 2) return none;
  const [first, last] = [figures[0]!, figures.at(-1)!];
  const sum = figures.reduce((all, at) => all + (items[at] as Amount).figure, 0);
  const unit = Math.abs(sum - 100) < 1.01 ? '%' : sum <= 20 ? 'part' : undefined;
  const names =
    namesFrom(items, last + 1, 1, figures.length) ?? namesFrom(items, first - 1, -1, figures.length);
  if (unit === undefined || !names) return none;
  const used = new Set<Item>([...items.slice(first, last + 1), ...names]);
  return {
    rest: items.filter(item => !used.has(item)),
    ratio: names.map((name, at) => ({ name, measure: { ...(items[figures[at]!] as Amount), unit } })),
  };
}

const isBare = (item: Item | undefined): item is Amount => item?.is === 'amount' && item.unit === undefined;

/** So many oils in a row from there, in the order in which they stand. */
function namesFrom(
  items: readonly Item[],
  from: number,
  step: 1 | -1,
  count: number,
): readonly Name[] | undefined {
  const names: Name[] = [];
  for (let at = from; at >= 0 && at < items.length; at += step) {
    const item = items[at]!;
    if (isOil(item)) names.push(item);
    else if (
      !(item.is === 'joint' || item.is === 'link' || /^[,:/;]$/u.test(item.text) || item.text === 'al')
    )
      break;
  }
  if (names.length !== count) return undefined;
  return step === 1 ? names : names.toReversed();
}
