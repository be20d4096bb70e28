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
};
/** Percent; lye water is 25 to 50 % (common practice, no source). */
const WEAKEST = 12;
export type Unclear = { readonly unclear: string };

const oilOf = (name: Name) => knownOil(name.text);
const same = (a: Name, b: Name): boolean =>
  a.known === b.known && (a.known === 'oil' ? oilOf(a) === oilOf(b) : a.known !== 'other' || a.text === b.text);

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
  private whole: Amount | undefined;
  private masses: Amount[] = [];
  private percents: Amount[] = [];
  private removed: Name[] = [];
  private times: string | undefined;
  private isRescaled = false;
  private isCorrecting = false;
  private denied: Name | undefined;
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
      if (unclear !== undefined) return { unclear };
    }
    const unclear = this.swap() ?? this.lone();
    if (unclear !== undefined) return { unclear };
    this.pairs = this.pairs.filter(({ name }) => !this.removed.some(one => same(one, name)));
    const bare = this.unpaired.filter(
      name =>
        !this.pairs.some(pair => same(pair.name, name)) && !this.removed.some(one => same(one, name)),
    );
    if (bare.length > 0 && !this.even) return { unclear: bare[0]!.text };
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
    };
  }

  /** One part of the line; what is unclear in it. */
  private part({ items, sentence }: Part): string | undefined {
    const content = this.turned(items, sentence);
    if (typeof content === 'string') return content;
    for (const item of content) {
      if (item.is === 'units') this.unit = item.unit;
      if (item.is === 'mark' && item.text === '%') this.unit = '%';
    }
    const apart = this.wholes(content.filter(item => !(item.is === 'amount' && item.unit === 'other')));
    if (!apart.some(isName)) return this.nameless(apart, this.told.has(sentence));
    const read = pairsOf(apart, this.pairs[0]);
    if (!read) return apart.filter(isMeasure)[0]?.text ?? 'part';
    for (const name of read.left) this.leave(name);
    for (const pair of read.pairs) {
      const unclear = this.add(pair);
      if (unclear !== undefined) return unclear;
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
    if (this.isCorrecting && !before && this.pairs.length > 0) return pair.measure.text;
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
      if (item.is !== 'amount' || (item.unit === undefined && !isOfRecipe && !this.isCorrecting)) continue;
      if (this.denied) {
        this.pairs.push({ measure: item, name: this.denied });
        this.denied = undefined;
      } else if (this.isCorrecting) {
        const last = this.pairs.at(-1);
        if (!last) return item.text;
        this.pairs[this.pairs.length - 1] = withUnit({ ...last, measure: item }, last);
      } else if (item.unit === '%') this.percents.push(item);
      else this.masses.push(item);
    }
    return undefined;
  }

  /** Weights of all oils out of a part: "40 ounces total", "36 oz together". */
  private wholes(items: readonly Item[]): readonly Item[] {
    return items.filter((item, at) => {
      const beside = [items[at - 1], items[at + 1]];
      const isWhole =
        item.is === 'amount' &&
        item.unit !== '%' &&
        beside.some(one => one?.is === 'whole' || one?.is === 'rescales') &&
        !(isOil(items[at + 1]) || items[at + 1]?.is === 'link' && isOil(items[at + 2]));
      if (isWhole) this.whole = item as Amount;
      return !isWhole;
    });
  }

  /** A part without what turns its sense, which is noted; a text where that is unclear. */
  private turned(items: readonly Item[], sentence: number): readonly Item[] | string {
    const kept: Item[] = [];
    for (let at = 0; at < items.length; at += 1) {
      const item = items[at]!;
      const after = items.slice(at + 1);
      if (item.is === 'fraction' && isWater(after.find(one => one.is !== 'link'))) {
        // "Buttermilk for half the water".
        at += after.findIndex(isName) + 1;
      } else if (item.is === 'even') this.even = true;
      else if (item.is === 'times') {
        if (this.times !== undefined) return item.text;
        this.times = item.text;
      } else if (item.is === 'rescales') {
        this.isRescaled ||= after.some(one => one.is === 'amount' && one.unit !== 'other' && one.unit !== '%');
        kept.push(item);
      } else if (item.is === 'corrects') {
        if (!speaksOfRecipe(after)) continue;
        if (kept.some(isMeasure)) {
          // What stands before is of the recipe; what follows puts it right.
          const unclear = this.part({ items: [...kept], sentence });
          if (unclear !== undefined) return unclear;
          kept.length = 0;
        }
        this.isCorrecting ||= this.pairs.length > 0;
      } else if (item.is === 'without' || item.is === 'not') {
        const skipped = this.left(item, after);
        if (typeof skipped === 'string') return skipped;
        at += skipped;
      } else if (item.is === 'instead') {
        const skipped = this.instead(kept, after);
        at += skipped;
      } else if (item.is === 'mine') {
        // Two recipes: the later one is the teller's own.
        if (after.some(isMeasure) && this.pairs.length > 0) this.pairs = [];
      } else kept.push(item);
    }
    return kept;
  }

  /** "Without the castor", "no eran 300 de coco": how many items of the part that takes. */
  private left(item: Item, after: readonly Item[]): number | string {
    const near = after.slice(0, Math.max(0, after.findIndex(one => one.is === 'word')) || undefined);
    const reach = after.findIndex(one => one.is === 'word') === 0 ? [] : near;
    const name = reach.findIndex(isName);
    const amount = reach.findIndex(one => one.is === 'amount');
    const isAmount = amount !== -1 && amount <= 2;
    const found = after[name];
    if (isName(found) && found.known === 'oil') {
      if (item.is === 'not' && isAmount) this.denied = found;
      else this.removed.push(found);
      return name + 1;
    }
    if (item.is === 'not' && isAmount) return after[amount]!.text;
    if (isName(found)) return name <= 1 ? name + 1 : 0;
    const [word] = after.filter(({ is }) => is === 'word');
    const named = word && this.pairs.find(pair => pair.name.text.split(' ').includes(word.text));
    if (named) this.removed.push(named.name);
    else if (word && /^(?:cera|wax|butter|manteca)$/u.test(word.text)) this.wordsRemoved.push(word.text);
    return 0;
  }
  private readonly wordsRemoved: string[] = [];

  private instead(before: Item[], after: readonly Item[]): number {
    const of = after.findIndex(isName);
    const name = after[of];
    const by = before.findLast(isName) ?? this.unpaired.at(-1);
    if (isName(name) && name.known !== 'oil') return of + 1;
    if (by?.known === 'oil') this.swaps.push({ by, of: isName(name) ? name : undefined });
    return isName(name) ? of + 1 : 0;
  }

  /** What is taken in place of an oil has its own amount, or that of the oil. */
  private swap(): string | undefined {
    for (const word of this.wordsRemoved) {
      const named = this.pairs.find(pair => pair.name.text.split(' ').includes(word));
      if (named) this.removed.push(named.name);
    }
    const lacking = this.removed.filter(one => this.pairs.some(({ name }) => same(name, one)));
    const waiting = this.unpaired.filter(name => !this.pairs.some(pair => same(pair.name, name)));
    const swaps = [...this.swaps];
    if (swaps.length === 0 && lacking.length === 1 && waiting.length === 1 && !this.even)
      swaps.push({ by: waiting[0]!, of: lacking[0] });
    for (const { by, of = lacking[0] } of swaps) {
      const old = of && this.pairs.find(({ name }) => same(name, of));
      if (!old) return by.text;
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
    const [mass, another] = this.masses;
    if (mass?.unit === undefined && mass) return mass.text;
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
function ratioIn(items: readonly Item[]): { readonly rest: readonly Item[]; readonly ratio: readonly Pair[] } {
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
  const names = namesFrom(items, last + 1, 1, figures.length) ?? namesFrom(items, first - 1, -1, figures.length);
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
    else if (!(item.is === 'joint' || item.is === 'link' || /^[,:]$/u.test(item.text) || item.text === 'al')) break;
  }
  if (names.length !== count) return undefined;
  return step === 1 ? names : names.toReversed();
}
