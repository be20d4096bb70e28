import type { BatchPart } from '../../../engine/hazards/index.ts';
import type { OtherUse } from '../../../engine/stability/legal-share.ts';
import type { Standing } from '../../../engine/stability/permitted-summary.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';
import { batchPart } from '../hazards/hazards.ts';

const { plain } = numbersIn('en');
const list = (names: readonly string[]) => names.join(', ');

const us: Readonly<Record<Standing, (names: string) => string>> = {
  listed: () => 'US: every colour in it is listed for use on skin.',
  limited: names => `US: listed with limits (${names}).`,
  check: names => `US: our copy of the lists has no row for ${names}: check before you sell.`,
  'other-use': names => `US: listed for another use only, not for soap (${names}).`,
  'not-listed': names => `US: not listed as a cosmetic colour (${names}).`,
  'no-colour': () => 'US: nothing in it counts as a colour.',
};
const eu: Readonly<Record<Standing, (names: string) => string>> = {
  listed: () => 'EU: every colour in it is in Annex IV.',
  limited: names => `EU: in Annex IV with limits (${names}).`,
  check: names => `EU: our copy of Annex IV has no row for ${names}: check before you sell.`,
  'other-use': names => `EU: listed for another use only, not for soap (${names}).`,
  'not-listed': names => `EU: not in Annex IV (${names}).`,
  'no-colour': () => 'EU: nothing in it counts as a colour.',
};

const uses: Readonly<Record<OtherUse, string>> = {
  teeth: 'toothpaste',
  hair: 'hair colour',
  nails: 'nail polish',
  'novelty-make-up': 'novelty make-up and nail polish',
  'make-up': 'eye, lip and face make-up and nails',
  eyes: 'eye make-up and face powder',
};

/** What a checked ingredient list and a label line say around the chemistry. */
export const checking = {
  /** The verdict with the name in front, where there is one. */
  named: (v: { name: string; verdict: string }) => `${v.name}: ${v.verdict}`,
  inNoList: (v: { name: string; verdict: string }) =>
    `Not for soap: no list of cosmetic colours, US or EU, holds ${v.name}. ${v.verdict}`,
  notForSoap: (v: { name: string; use: OtherUse; verdict: string }) =>
    `Not for soap: the US lists ${v.name} for ${uses[v.use]} only. ${v.verdict}`,
  /** Before spoons that may be used where another law lists it. */
  soapElsewhere: (v: { name: string; use: OtherUse }) =>
    `Not in soap sold in the US, which lists ${v.name} for ${uses[v.use]} only; where EU law holds:`,
  legalMost: (v: { law: 'us' | 'eu'; name: string; percent: number; verdict: string }) =>
    `At most ${plain(v.percent)} % of the bar (${v.law === 'us' ? 'US' : 'EU'} law, ${v.name}). ${v.verdict}`,
  holdsUnless: (v: { names: readonly string[] }) =>
    `Holds in raw soap, unless it contains ${new Intl.ListFormat('en', { type: 'disjunction' }).format(v.names)}.`,
  perhapsWorse: (v: { names: readonly string[] }) =>
    `Only if it is really in there (“may contain”): ${list(v.names)}. Ask your supplier.`,
  inside: 'What is in it',
  holds: (v: { names: readonly string[] }) =>
    `${list(v.names)}: ${v.names.length > 1 ? 'hold' : 'holds'} in raw soap.`,
  part: (v: { names: readonly string[]; verdict: string }) => `${list(v.names)}: ${v.verdict}`,
  kind: 'Kind',
  fullDose: 'Full colour',
  perCup: (v: { spoons: string }) => `${v.spoons} per cup of batter`,
  most: (v: { spoons: string }) => `At most ${v.spoons} per cup.`,
  wetIn: 'Wet it in',
  orList: (names: readonly string[]) => new Intl.ListFormat('en', { type: 'disjunction' }).format(names),
  neverWater: 'Not in water: it does not mix in.',
  doseInVain: 'No dose keeps its colour in raw soap.',
  noDose: 'No dose: this must not go into raw soap.',
  /** Of a list in which nothing is a colour. */
  coloursNothing: 'Nothing in it colours: I give no amount.',
  inBatch: (v: { name: string; part: BatchPart }) => `“${v.name}” ${batchPart[v.part]}.`,
  noDoseKnown: 'No dose known: start with 1/4 tsp per cup in a test bar.',
  sure: (v: { level: string }) => `How sure: ${v.level}.`,
  mayBeUsed: 'May it be used',
  us: (v: { standing: Standing; because: readonly string[] }) => us[v.standing](list(v.because)),
  eu: (v: { standing: Standing; because: readonly string[] }) => eu[v.standing](list(v.because)),
  lawOf: (v: { name: string; lines: readonly string[] }) => `${v.name}. ${v.lines.join(' ')}`,
  sources: (v: { lines: readonly string[] }) => `Where this is from: ${v.lines.join('; ')}.`,
  /** What a source says of itself, as the catalogue has it. */
  source: (v: { source: string }) => v.source,
  trust: {
    published: 'published',
    'common practice': 'common practice',
    'from memory': 'from memory',
    computed: 'computed',
  },
  doseSource: 'dose',
  carrierSource: 'carriers',
  labelLeftOut: (v: { names: readonly string[] }) =>
    `Not on the line, because I don't recognise it: ${v.names.join('; ')}.`,
  labelMost: (v: { law: 'us' | 'eu'; name: string; percent: number }) =>
    `${v.law === 'us' ? 'US' : 'EU'} law: at most ${plain(v.percent)} % of ${v.name} in the finished bar.`,
  labelShort: 'These are only the colours: your oils, lye, water and scent go before them.',
  labelByWeight: 'In order of weight in the bar, as near as the labels tell.',
  labelAsGiven: 'In the order you gave; a kept recipe lets me sort by weight.',
  /** When an item's list is kept on the shelf. */
  keptKind: (v: { kind: string }) => `By its ingredients it is ${v.kind}.`,
  countedAs: (v: { colourant: string }) => `Doses count it as ${v.colourant}.`,
};

export const checkingRefusals: Pick<
  RefusalSentences,
  'list-nothing-recognised' | 'colour-nothing-given' | 'label-nothing-named' | 'colour-not-for-soap'
> = {
  'colour-not-for-soap': ({ name, use }) =>
    use === 'none'
      ? `Not for soap: no list of cosmetic colours, US or EU, holds ${name}. So no dose; take a listed pigment or mica.`
      : `Not for soap: the US lists ${name} for ${uses[use]} only, and the EU does not list it as a colour. So no dose; take a listed pigment or mica.`,
  'list-nothing-recognised': ({ text }) =>
    text.trim() === ''
      ? 'Paste the ingredients from the label, such as: Mica (CI 77019), Titanium Dioxide (CI 77891).'
      : `I recognise nothing in “${text}”. Paste the ingredients from the label, such as: Mica (CI 77019), Titanium Dioxide (CI 77891).`,
  'colour-nothing-given': () =>
    'Give me one thing to check: paste the ingredients from the label, or name an item on your shelf.',
  'label-nothing-named': () =>
    'Name the colours in the bar, such as: ultramarine blue, gold mica; or one kept recipe that has colours.',
};
