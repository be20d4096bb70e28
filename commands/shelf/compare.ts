import type { Context } from '../../src/conversation/context.ts';
import type { Reply } from '../../src/conversation/reply.ts';
import {
  type ComparedJar,
  compareJars,
  type JarComparison,
} from '../../src/engine/colour/jars/compare-jars.ts';
import { ceilingPerCup, pigmentPerTeaspoon } from '../../src/engine/colour/jars/jar-spoons.ts';
import { costOf, type Money } from '../../src/engine/cost/money.ts';
import { type Measures, US_CUP_ML } from '../../src/engine/quantities/units.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { colourJar, knownAs, spooned } from '../../src/presenting/colour/jars.ts';
import { tenth } from '../../src/presenting/colour/view.ts';
import { rough } from '../../src/presenting/dose.ts';
import { spoonedOut } from '../../src/presenting/spoons.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { findJar, type Jar } from '../../src/records/shelf/jars/jar.ts';
import type { Words } from '../../src/words/index.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'compare-with-itself': Record<never, never>;
    'compare-white-with-colour': Record<never, never>;
  }
}

/** Nearer than this, two jars are as strong: level spoons scatter by a tenth (common practice). */
const AS_STRONG = 1.1;

/** Strength, hue and cost of two jars for the same depth of colour. */
export async function compareReply(
  asked: { readonly one: string; readonly other: string },
  context: Context,
): Promise<Reply> {
  const { shelf, store, asker, say } = context;
  const measures = kitchenOf(await preferencesOf(store, asker.id));
  const jars = [await findJar(shelf, asked.one), await findJar(shelf, asked.other)] as const;
  if (idOf(jars[0]) === idOf(jars[1])) refuse('compare-with-itself', {});
  const compared = [
    await comparedJar(jars[0], measures, context),
    await comparedJar(jars[1], measures, context),
  ] as const;
  if (compared[0].white !== compared[1].white) refuse('compare-white-with-colour', {});
  const found = compareJars(compared[0], compared[1]);
  const names = [knownAs(jars[0], say), knownAs(jars[1], say)] as const;
  const costs = [costAt(jars[0], found.grams[0]), costAt(jars[1], found.grams[1])] as const;
  const cup = measures.cup / US_CUP_ML;
  const rows = [0, 1].map(at =>
    say.comparing.row({
      name: names[at]!,
      spoons: spoonedOut(found.teaspoons[at]! * cup, measures, say),
      grams: rough((found.grams[at]! * cup) / (jars[at]!.item?.pigmentFraction ?? 1)),
      hex: found.colours[at]!.hex,
    }),
  );
  return {
    kind: 'reply',
    headline: headlineOf(found, names, say),
    data: { ...found, jars: jars.map(idOf), costs },
    blocks: [
      { kind: 'rows', title: say.comparing.sameDepth, rows },
      { kind: 'text', text: notes(found, { names, costs, jars }, say).join('\n') },
    ],
    cautions: [],
  };
}

const idOf = ({ item, colourant }: Jar): string => item?.id ?? colourant.id;

async function comparedJar(jar: Jar, measures: Measures, context: Context): Promise<ComparedJar> {
  const spoon = spooned(jar, measures);
  const ceilingTspPerCup = ceilingPerCup(spoon, measures);
  const { dose, kind } = jar.colourant;
  return {
    jar: await colourJar(jar, context),
    gramsPerTeaspoon: pigmentPerTeaspoon(spoon, measures),
    fullTspPerCup: (ceilingTspPerCup * dose.fullTspPerCup) / dose.ceilingTspPerCup,
    ceilingTspPerCup,
    white: kind === 'white',
  };
}

/** What so much pigment of a jar costs; undefined without a price. */
function costAt({ item }: Jar, pigmentGrams: number): Money | undefined {
  return item?.price && costOf(item.price, pigmentGrams / (item.pigmentFraction ?? 1));
}

function headlineOf(
  { spoonsOfOther }: JarComparison,
  [one, other]: readonly [string, string],
  say: Words,
): string {
  const times = Math.max(spoonsOfOther, 1 / spoonsOfOther);
  if (times < AS_STRONG) return say.ask.asStrong({ one, other });
  const [stronger, weaker] = spoonsOfOther > 1 ? [one, other] : [other, one];
  return say.ask.stronger({ one: stronger, other: weaker, times: rough(times) });
}

function notes(
  { deltaE, turns, plusMinus, outOfReach }: JarComparison,
  {
    names: [one, other],
    costs: [first, second],
    jars,
  }: {
    readonly names: readonly [string, string];
    readonly costs: readonly [Money | undefined, Money | undefined];
    readonly jars: readonly [Jar, Jar];
  },
  say: Words,
): readonly string[] {
  const words = say.comparing;
  const untested = jars.some(({ item }) => !item?.lot.calibration);
  return [
    turns.length === 0
      ? words.sameHue({ deltaE: tenth(deltaE) })
      : words.turned({ other, one, turns, deltaE: tenth(deltaE) }),
    outOfReach ? words.outOfReach({ other }) : '',
    costNote(first, second, { one, other }, say),
    untested ? words.untested({ plusMinus: tenth(Math.max(...plusMinus)) }) : '',
  ].filter(Boolean);
}

function costNote(
  first: Money | undefined,
  second: Money | undefined,
  { one, other }: { readonly one: string; readonly other: string },
  say: Words,
): string {
  if (!first || !second)
    return first || second ? say.comparing.priceMissing({ name: first ? other : one }) : '';
  const [a, b] = [say.costs.money(first), say.costs.money(second)];
  if (first.currency !== second.currency) return say.comparing.twoCurrencies({ one, other, a, b });
  return say.comparing.cost(
    first.amount <= second.amount
      ? { cheaper: one, dearer: other, a, b }
      : { cheaper: other, dearer: one, a: b, b: a },
  );
}
