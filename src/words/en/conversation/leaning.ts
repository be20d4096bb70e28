import { spaced } from '../../../engine/over-lines.ts';
import type { Lack } from '../../../engine/questions/leaning/lean-kinds.ts';

/** What is said to a turn that leans on the one before. */
export const leaning = {
  asBefore: (v: { line: string }) => `Read as: ${v.line}, the rest as you asked before.`,
  again: (v: { line: string }) => `As you asked before: ${v.line}`,
  onBefore: 'This is about what you asked before.',
  /** `headline` tells lye and water: the whole recipe stands before it. */
  recipe: (v: { oils: string; superfat: string | undefined; headline: string }) =>
    `For ${v.oils}${v.superfat === undefined ? '' : ` at ${v.superfat} % superfat`}: ${v.headline}`,
  inGrams: (v: { weight: string; name: string; portion: string }) =>
    `${v.weight} of ${v.name} for ${v.portion}`,
  wetWith: (v: { liquid: string; dose: string }) => `Wet it in ${v.liquid}: ${v.dose}`,
  cups: (v: { spoons: string }) =>
    `${v.spoons}. /prefer spoons changes that. For colour another cup makes no odds; lye is always weighed.`,
  orThis: (v: { line: string }) => `I meant: ${v.line}`,
  /** Whether a colourant wanders into its neighbours and into cloth. */
  bleeds: (v: { name: string; does: boolean }) =>
    v.does
      ? `${v.name} bleeds: it runs into paler parts and can tint lather and cloth. Not beside white; little of it.`
      : `${v.name} does not bleed into other colours. Too much of it tints the lather and a pale cloth; at the usual dose it washes out.`,
  micaCoat: spaced`
    The mica flake holds in lye; the colour on it decides. Read its list: CI 77… mostly hold, but not iron
    blue (77510) or manganese violet (77742); then a test bar.
  `,
  light: (v: { name: string; light: 'holds' | 'fades-slowly' | 'fades' }) =>
    ({
      holds: `${v.name} does not fade in light.`,
      'fades-slowly': `${v.name} fades slowly in light: keep the bars in the dark.`,
      fades: `${v.name} fades in light within months: cure and keep it in the dark.`,
    })[v.light],
  /** Scent is weighed; `grams` of it for `oils` grams. */
  scentFor: (v: { grams: string; oils: string }) =>
    `About ${v.grams} g of fragrance for ${v.oils} g of oils (3 %), never above the limit on its own sheet.`,
  /** Behind it what `/challenge list` says. */
  contest: (v: { told: string }) =>
    `How many bars, by when, who won: a challenge says its own rules, else ask a steward. ${v.told}`,
  /** Lye on skin and on a bench; `told` is how the bench is cleaned. */
  skinThenSurface: (v: { told: string }) =>
    `Skin first: running water, 15 minutes or more. Then the surface: ${v.told}`,
  noVinegar: 'No vinegar, no lemon: only running water, and go on with it. Not better: medical help now.',
  fine: 'Good. Ask the next one when it comes up.',
  /** What is asked of the subject of a talk, where a short turn tells nothing that is understood. */
  aboutThing: (v: { name: string }) =>
    `About ${v.name}: how much of it, what it is wetted in, or whether it holds?`,
  aboutFlaw: (v: { words: string }) => `About “${v.words}”: what do you see, where, and since when?`,
  aboutMatter: (v: { words: string }) => `About “${v.words}”: what more do you want to know?`,
  lacks: {
    'amount-of': (v: { told: string }) =>
      `For ${v.told}, of which colourant? If it is about lye: name every oil with its weight.`,
    'name-for': (v: { told: string }) =>
      `${v.told}: for how much batter or oils? Or do you want to know whether it holds in lye?`,
    'of-what': () =>
      'Of what? Nothing came before this that I still have: name the colourant and how much batter or oils.',
    'what-happened': () =>
      'What is it about: batter that went thick, colour with lumps, a bar that looks wrong? A few words are enough.',
    'lye-over': () => spaced`
      Do not use it: lye that is over stays in the bar and burns. How far over it is I reckon from what
      went in: “I put 150 g lye in 800 g olive and 200 g coconut”.
    `,
    'whole-recipe': () =>
      'For lye I need the whole recipe anew: every oil with its weight, and the superfat.',
    'which-thing': () => 'Which colour or powder do you mean? Name it, such as “rose clay”.',
  } satisfies Record<Lack, (v: { told: string }) => string>,
  /** Beside the question for a recipe, where lye was told for one before. */
  figureBefore:
    'The lye that I told before is for the pot as it was told then: for any other pot do not use it.',
  /** Of soap with too much lye, whatever is asked of it next. */
  lyeHeavy:
    'Do not use it, give it away or wash with it: it has too much lye until it was put right. Waiting does not change that.',
  /** Over why a thing stays out of soap, to somebody who had no harm of it. */
  stillBarred: (v: { told: string }) =>
    `Still no. That it did one pair of hands no harm tells nothing of a wet bath or of another’s skin. ${v.told}`,
  lyeHeavyMended:
    'Once put right: four weeks, then its lather under pH 11 on paper, nothing hard, wet or stinging anywhere in it. One “no”: do not use it.',
  lyeHeavyColour:
    'Melted again a swirl becomes one dull colour. Oxides and ultramarine hold, plants and some micas do not.',
  /** Asked whether to go on after lye was on somebody. */
  goOn: 'The lye can wait: go on only when the skin has been rinsed for 20 minutes, is dry and does not sting.',
  goOnHow: spaced`
    Until then the jug stands open, labelled, where nobody goes; made an hour or a day later the soap is no
    worse. Tight goggles, long sleeves and dry gloves first. A blister, white or hard skin, pain that
    stays, or anything in an eye: no soap today, medical help.
  `,
  /** Over the first aid, told once more. */
  stillHurt: 'Not better, or in any doubt: get medical help now. Until then the same steps, once more:',
};
