import { spaced } from '../../../engine/over-lines.ts';
import { stockDecimals } from '../../../engine/quantities/told/stock.ts';
import { cut } from '../../../engine/text/excerpt.ts';
import { quoted as asValue } from '../../../engine/text/lines/option-line.ts';
import type { LedgerLine, Outcome } from '../../../records/shelf/shelf.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const { figure, one } = numbersIn('en');
/** Grams as a scale shows them: no digit that nobody can weigh. */
const g = (grams: number) => `${figure(grams, stockDecimals(grams))} g`;
/** What is left, half down: with what was taken, half up, it adds up to what was there. Stock is in whole milligrams. */
const leftG = (grams: number) => g(Math.max(0, grams - 1e-4));

const clip = (name: string) => cut(name, 40);
const quoted = (names: readonly string[]) => names.map(name => `“${name}”`);
const orList = new Intl.ListFormat('en', { type: 'disjunction' });

const movements: Record<LedgerLine['action'], string> = {
  add: 'put on the shelf',
  use: 'used',
  restock: 'restocked',
  'new-lot': 'new lot',
};

/** Where a pinch went in the dish, and what follows from it. */
const dishTests = {
  water: 'swirls into water',
  oil: 'goes into oil, not water',
  neither: 'goes into neither water nor oil: try glycerin',
};

export const shelf = {
  grams: leftG,
  dishTests,
  movements,
  added: (v: { name: string; grams?: number | undefined }) =>
    v.grams === undefined
      ? `“${v.name}” is on your shelf.`
      : `${leftG(v.grams)} of “${v.name}” on your shelf.`,
  used: (v: { name: string; taken: number; left: number }) =>
    `${leftG(v.left)} of “${v.name}” left after taking ${g(v.taken)}.`,
  /** On a button of a dose: it has to fit 80 characters. */
  take: (v: { name: string; grams: number }) => `Take ${g(v.grams)} of “${clip(v.name)}” off my shelf`,
  taken: ({ name, change = 0, left = 0 }: Outcome): string => shelf.used({ name, taken: -change, left }),
  restocked: (v: { name: string; put: number; left: number }) =>
    `${leftG(v.left)} of “${v.name}” now, ${g(v.put)} of it new.`,
  removed: (v: { name: string }) => `“${v.name}” is off your shelf, with its history.`,
  dishTested: (v: { name: string; result: keyof typeof dishTests }) =>
    `Noted: this lot of “${v.name}” ${dishTests[v.result]}.`,
  weighed: (v: { name: string; grams: number }) =>
    `${g(v.grams)} a level teaspoon of “${v.name}”: doses now use it.`,
  oddSpoon: (v: { name: string; grams: number }) => spaced`
    The teaspoon you once weighed of “${v.name}” (${g(v.grams)}) cannot be right, so it is counted as its
    kind usually weighs. Weigh a level one again: /shelf weigh item:${asValue(v.name)} grams:…
  `,
  lotStarted: (v: { name: string; left?: number | undefined }) => spaced`
    New lot of “${v.name}”${v.left === undefined ? '' : `, ${leftG(v.left)} in all`}. Do its dish test and
    weigh a level teaspoon: the last lot’s no longer count.
  `,
  lowMarkSet: (v: { name: string; grams: number }) =>
    `I’ll tell you when “${v.name}” is down to ${g(v.grams)}.`,
  ingredientsKept: (v: { name: string }) => `The ingredients of “${v.name}” are noted.`,
  calibrated: (v: { name: string }) => `This lot of “${v.name}” is calibrated: predictions now use it.`,
  described: (v: { name: string }) => `Noted what “${v.name}” is: doses now use it.`,
  /** How the new item was understood. */
  identified: (v: { colourant: string }) =>
    `I count it as ${v.colourant}. If that is wrong, say what it is with /shelf describe.`,
  unidentified: (v: { name: string }) =>
    `I don’t know what “${v.name}” is made of: say it with /shelf describe, and I can dose it.`,
  low: (v: { name: string; left: number }) =>
    v.left === 0 ? `“${v.name}” is used up.` : `Running low: ${leftG(v.left)} of “${v.name}” left.`,
  undone: (v: { name: string; left: number }) => `Taken back: ${leftG(v.left)} of “${v.name}” now.`,
  takenAlready: (v: { name: string; left?: number | undefined }) =>
    `Already taken: ${leftG(v.left ?? 0)} of “${v.name}” left.`,
  removeSure: (v: { name: string; lines: number }) =>
    `Remove “${v.name}” and the ${v.lines} lines of its history?`,
  removeYes: (v: { name: string }) => `Remove “${clip(v.name)}”`,
  repeated: 'I had already noted that, so nothing was counted twice.',
  empty: 'Your shelf is empty. Add your first colourant with /shelf add.',
  count: (v: { items: number; low: number }) =>
    `${v.items} on your shelf${v.low > 0 ? `, ${v.low} running low` : ''}.`,
  amountUnknown: 'amount not noted',
  lot: (v: { number: number; label?: string | undefined }) =>
    v.label === undefined ? `lot ${v.number}` : `lot ${v.label}`,
  spoon: (v: { grams: number }) => `${g(v.grams)} a level teaspoon`,
  pigment: (v: { percent: number }) => `${one(v.percent)} % pigment`,
  line: (v: Pick<LedgerLine, 'action' | 'change' | 'left' | 'undoes'> & { date: string }) =>
    `${v.date}: ${v.undoes ? 'taken back' : movements[v.action]} ${g(Math.abs(v.change))}, ${leftG(v.left)} left`,
};

export const shelfRefusals: Pick<
  RefusalSentences,
  | 'records-maybe-saved'
  | 'records-not-read'
  | 'records-not-saved'
  | 'shelf-amount-unknown'
  | 'shelf-full'
  | 'shelf-grams-unfit'
  | 'shelf-item-ambiguous'
  | 'shelf-item-unknown'
  | 'shelf-name-taken'
  | 'shelf-name-unfit'
  | 'shelf-not-enough'
  | 'shelf-pigment-unfit'
  | 'shelf-spoon-unfit'
  | 'store-scheme-unknown'
  | 'jar-unidentified'
  | 'spoon-weight-unreadable'
  | 'spoons-not-weighed'
  | 'shelf-undo-not-enough'
> = {
  'shelf-undo-not-enough': ({ name, left }) =>
    `Only ${leftG(left)} of “${name}” left, less than was put there: put it right with /shelf use.`,
  'records-not-read': () =>
    'I can’t reach my records just now. Nothing was changed: please try again in a minute.',
  'records-not-saved': () =>
    'That was not saved: my records can’t be written just now. Please try again in a minute.',
  'records-maybe-saved': () =>
    'I lost touch with my records halfway, so I can’t say whether that was saved. Look before you try again.',
  'shelf-amount-unknown': ({ name }) =>
    `I don’t know how much “${name}” you have: say it once with /shelf restock, then I can count down.`,
  'shelf-full': ({ most }) =>
    `Your shelf holds ${most} items, the most it takes: remove one you no longer have.`,
  'shelf-grams-unfit': ({ least, most }) => `Say between ${figure(least, 3)} g and ${one(most / 1000)} kg.`,
  'shelf-item-ambiguous': ({ asked, candidates }) =>
    `“${asked}” could be ${orList.format(quoted(candidates))}: which one?`,
  'shelf-item-unknown': ({ asked, nearest }) =>
    nearest.length === 0
      ? `“${asked}” is not on your shelf, and nothing else is yet: add it with /shelf add.`
      : `“${asked}” is not on your shelf. Nearest there: ${orList.format(quoted(nearest))}.`,
  'shelf-name-taken': ({ name }) =>
    `“${name}” is already on your shelf: restock it, start a new lot of it, or add this one under another name.`,
  'shelf-name-unfit': ({ most }) =>
    `A name needs at least one letter or digit and at most ${most} characters.`,
  'shelf-not-enough': ({ name, left }) =>
    left === 0
      ? `None of “${name}” is left: restock it first.`
      : `Only ${leftG(left)} of “${name}” left: take that much or less, or restock it first.`,
  'shelf-pigment-unfit': () => 'The pigment in it is more than 0 and at most 100 percent of its weight.',
  'shelf-spoon-unfit': ({ least, most }) =>
    `A level spoon like that holds between ${g(least)} and ${g(most)}: weigh several and divide.`,
  'jar-unidentified': ({ name }) =>
    `I don’t know what “${name}” is made of: say it once with /shelf describe, such as colourant: gold mica.`,
  'spoon-weight-unreadable': ({ text }) => `“${text}” is no weight of a spoon: write grams, such as “2.4 g”.`,
  'spoons-not-weighed': ({ name }) =>
    `I don’t know what a spoon of “${name}” weighs: give grams, or weigh a level teaspoon with /shelf weigh.`,
  'store-scheme-unknown': ({ address, known }) =>
    `I can’t keep records in “${address}”: use ${orList.format(known)}.`,
};
