import type { Lack } from '../../../engine/questions/leaning/lean.ts';

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
  fine: 'Good. Ask the next one when it comes up.',
  stillAbout: (v: { line: string }) =>
    `Is that still about ${v.line}? Tell me in a few more words what you want to know of it.`,
  lacks: {
    'amount-of': (v: { told: string }) =>
      `For ${v.told}, of which colourant? If it is about lye: name every oil with its weight.`,
    'name-for': (v: { told: string }) =>
      `${v.told}: for how much batter or oils? Or do you want to know whether it holds in lye?`,
    'of-what': () =>
      'Of what? Nothing came before this that I still have: name the colourant and how much batter or oils.',
    'what-happened': () =>
      'What is it about: batter that went thick, colour with lumps, a bar that looks wrong? A few words are enough.',
    'whole-recipe': () =>
      'For lye I need the whole recipe anew: every oil with its weight, and the superfat.',
    'which-thing': () => 'Which colour or powder do you mean? Name it, such as “rose clay”.',
  } satisfies Record<Lack, (v: { told: string }) => string>,
  /** Over the first aid, told once more. */
  stillHurt: 'Not better, or in any doubt: get medical help now. Until then the same steps, once more:',
};
