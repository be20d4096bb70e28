import { spaced } from '../../../engine/over-lines.ts';
import type { Portion } from '../../../engine/quantities/amount.ts';
import type { Outside } from '../../../engine/questions/fields/scope.ts';
import type { Job } from '../../../engine/questions/jobs/jobs.ts';
import type { Reckoned } from '../../../engine/questions/portion-line/settled.ts';
import { capital } from '../../../engine/text/capital.ts';
import { quoted } from '../../../engine/text/lines/option-line.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';
import { compared } from './compared.ts';
import { lawElsewhere } from './law-elsewhere.ts';

const { percent, plain } = numbersIn('en');
const list = (names: readonly string[]) => names.join(', ');

const THREE_TO_ONE = 'Three spoons of liquid to one of powder; a little more if it still clumps.';

const portion = (told: Portion): string =>
  `${told.measure === 'mass' ? `${plain(told.grams)} g` : `${plain(told.millilitres)} ml`}${told.of === 'oils' ? ' of oils' : ''}`;

/** What is said to a plain question. */
export const ask = {
  /** As much oil as makers reckon with, as they would type it. */
  usualBatch: '500 g oils',
  understood: (v: { line: string }) => `Understood as: ${v.line}`,
  comparing: (v: { names: readonly string[] }) =>
    `compare ${v.names.length > 1 ? v.names.join(' and ') : 'your jars'}`,
  target: (v: { name: string; hex: string }) => `The colour: ${v.name}, about ${v.hex}.`,
  corrected: (v: { from: string; to: string }) => `(“${v.from}” read as “${v.to}”)`,
  readAs: (v: { name: string }) => `Read as ${v.name}.`,
  sameForAll: (v: { text: string; names: readonly string[] }) =>
    `“${v.text}” can be several: ${list(v.names)}. The dose is the same for all of them; pick yours for what lye does to it.`,
  ...lawElsewhere,
  change: 'Ask it another way',
  changeLabel: 'The command, or your question in other words',
  severalJars: (v: { count: number }) => `${v.count} jars: shall I add them? One press for each.`,
  addJar: (v: { name: string }) => `Add “${v.name}”`,
  oilsWithoutShares: (v: { oils: readonly string[] }) =>
    `How much of each oil: ${list(v.oils)}? Give percents or weights that I plan with, such as oils:“olive 50%, coconut 30%, palm 20%”. I never guess a share.`,
  doIt: 'Do it',
  confirm: (v: { line: string }) => `Shall I do this? ${v.line}`,
  ratherThat: (v: { job: string }) => `I meant: ${v.job}`,
  /** `times` is what was told as a part of the most; what most begin with is half of it where that is `isMedium`. */
  toldAmount: (v: { told: string; times: number; most: string; usual: string; isMedium: boolean }) => {
    const usual = v.isMedium ? `Most begin with ${v.usual}, medium` : `Full colour: ${v.usual}`;
    const most = v.isMedium ? `full colour, the most, is ${v.most}` : `the most is ${v.most}`;
    return v.times > 1.05
      ? `Too much: ${most}; ${v.told} is ${plain(Number(v.times.toPrecision(2)))} times that. ${usual}`
      : `Not too much: ${most}; ${v.told} is ${percent(Math.min(1, v.times))} of that. ${usual}`;
  },
  portion,
  /** How a portion was reckoned, each figure as it was told. */
  reckoned: (v: Reckoned): string => {
    switch (v.by) {
      case 'count':
        return `${v.count} ${v.noun} of ${v.each} = ${portion(v.comes)}.`;
      case 'share':
        return `${v.share} of ${v.whole} = ${portion(v.comes)}.`;
      case 'lost':
        return `${v.whole} less ${v.lost} = ${portion(v.comes)}.`;
    }
  },
  /** Which of several portions is meant. */
  whichPortion: (v: { portions: readonly Portion[] }) =>
    `For ${v.portions.map(portion).join(', or for ')}? Your words fit each, so I ask before I tell an amount.`,
  /** Two colourants are named, and one is dosed. */
  oneOfTwo: (v: { first: string; second: string }) =>
    `This is for ${v.first} alone. ${capital(v.second)} in the same batter: half the dose of each. In a part of its own: ask for that part.`,
  byTheCup: 'You named no portion, so this is for 1 cup of batter.',
  hotProcess: spaced`
    You speak of hot process: doses are the same, but the paste is thick and hot, so wet the colour well
    and expect some heat-sensitive colours to shift more.
  `,
  lawOfSelling: spaced`
    What must stand on a label depends on where and as what you sell: look it up at your own authority. I
    can tell where a colour stands by law; name the colour.
  `,
  jobs: {
    dose: 'how much to use',
    'survives-lye': 'whether it survives lye',
    law: 'whether it is allowed',
    diagnose: 'what went wrong',
    mix: 'how to get a colour',
    preview: 'what it will look like',
    lye: 'lye and water',
    plan: 'plan the batch',
    compare: 'what tells two colours apart',
    wet: 'what to wet it in',
    'shelf-add': 'add to the shelf',
    'shelf-use': 'take off the shelf',
    'shelf-show': 'how much is left',
    challenge: 'colour challenges',
    doubt: 'how an answer came about',
    help: 'what I can do',
  } satisfies Record<Job, string>,
  lacks: {
    dose: 'Which colourant, and for how much batter? Such as “ultramarine blue for 2 cups”.',
    'survives-lye': 'Which colour or ingredient list? Such as “will mica, CI 45410 survive lye”.',
    law: 'Which colour? I can say where a colour stands by US and EU law, such as “is titanium dioxide allowed in Europe”.',
    diagnose: 'What do you see? Describe the bar, or send a picture with /diagnose.',
    mix: 'Which colour do you want? Name it, such as “how do I make dusty rose”, or give its hex.',
    preview: 'What goes in, and into how much? Such as “what does 1/4 tsp charcoal in 2 cups look like”.',
    lye: 'Which oils, and how much of each? Such as “how much lye for 500 g olive oil and 200 g coconut oil”. I never guess an oil.',
    plan: spaced`
      For a plan I need your oils with percents or weights, such as “olive 50%, coconut 30%, palm 20%”. Use
      /plan with oils, size and portions; /plan alone opens a form.
    `,
    compare: 'Which two colours? Such as “which is stronger, red oxide or red mica”.',
    wet: 'Which colourant do you want to wet?',
    'shelf-add': 'What shall I add, and how much? Such as “add 50 g titanium dioxide to my shelf”.',
    'shelf-use': 'What did you use, and how much? Such as “used 2 g gold mica, take it off my shelf”.',
    'shelf-show': 'Which item? /shelf list shows them all.',
    challenge: 'See /challenge list.',
    doubt: 'Which answer? Ask it again.',
    help: 'See /help.',
  } satisfies Record<Job, string>,
  mixWithoutTarget: (v: { mix: string }) =>
    `I can't list every colour these make. Name the colour you want (“how do I make sage”), or see one mix: /preview mix:${quoted(v.mix)}.`,
  doubted: {
    headline: 'Fair to ask: I can be wrong. Ask it again with the colour, the amount and the strength.',
    why: spaced`
      An answer of half or twice as much mostly hangs on one of these: grams of oils or of batter, another
      strength, another kind of the same colour, another size of spoon.
    `,
    how: 'Such as “ultramarine blue, 500 g batter, half strength”. “Understood as” shows what I read; “Why” and “All numbers” show how it came about.',
    lye: 'Was it about lye? Pour nothing until it is settled: weigh the oils again, run /plan, and compare with a second reckoning.',
  },
  hello: 'Hello. Ask me about colour in your soap in your own words, or pick a job.',
  welcome: 'You’re welcome. Ask the next one when it comes up.',
  /** To chat that asks nothing. */
  chat: {
    joke: 'What did the oil say to the lye? “Without you I would never have got this far.” I am better at colour.',
    taste:
      'I see no colours, so I have no favourite. Name yours and I say how it is made and whether it holds.',
    cannot:
      'That I cannot do: I only answer here. I can say which colour to get, how much of it, and whether it holds.',
    program:
      'I am a program, no person: I answer from tables and sums, and say so where I am not sure. Ask away.',
    remind:
      'I remind only of soap that was poured: /batch poured notes it, and says when to cut, turn and use it. For all else set an alarm.',
    draw: 'I draw no swirls. One colour, or a mix, I show before you pour: /preview. How a swirl is made I tell in words.',
    noHarm: 'No harm done.',
    night: 'Good night, and may it still be soap in the morning.',
    wellDone: 'Well done. Leave it covered, and cut it only when it is firm, in a day or two.',
    pictures:
      'Yes: attach the photo to /diagnose and say in a few words what you see. I look for flaws of the bar, not for taste.',
    here: 'Yes, ask away: which colour, how much oil, and which powders you have.',
    any: 'Here when you need me: ask about colour in your soap in your own words.',
  },
  trouble: {
    headline: 'What happened: in the pot, in the mould, or to a bar that is made?',
    why: spaced`
      Tap what fits, or tell me in a few words: which colour, how it looks, since when, what went in. A
      made bar: /diagnose, with a picture if you have one.
    `,
    hurt: 'Lye or batter on somebody',
    wantedOrTurned: (v: { colour: string }) => `Do you want ${v.colour}, or did something turn ${v.colour}?`,
    wanted: (v: { colour: string }) => `I want ${v.colour}`,
    turned: (v: { colour: string }) => `It turned ${v.colour}`,
    became: (v: { colour: string }) => `turned ${v.colour}`,
  },
  tellMore:
    'Tell me a little more: which colour, for how much batter or oils, or how it looks, since when, and what went in.',
  notUnderstood: 'I did not understand that as a question about soap colour, so I will not guess.',
  nearestFor: (v: { name: string }) =>
    `About ${v.name} I can say: how much (“how much ${v.name} for 2 cups”), whether it survives lye, what to wet it in, where the law stands.`,
  canDo: spaced`
    I can say how much colour and how to wet it, whether it survives lye and is allowed, what went wrong
    with a bar, how to get a colour, and lye and water for your oils. /help shows it all.
  `,
  outside: {
    'lye-elsewhere':
      'Lye for anything other than soap is outside my field: go by its label and by those who know that craft. No soap recipe fits there.',
    'hot-process':
      'How hot process is cooked is outside my field: hours and heat are those of its recipe and its pot. Colour in it, its lye and its drying I do know.',
    'melt-and-pour': 'Melt and pour is outside my field: my doses are for cold-process batter made with lye.',
    candles: 'Candles are outside my field: I know colour in cold-process soap only.',
    'bath-products': 'Bath products are outside my field: I know colour in cold-process soap only.',
    'body-care': 'Lotions, balms and creams are outside my field: I know colour in cold-process soap only.',
    medical:
      'That is a medical question, and I give no medical advice: ask a doctor or pharmacist. If lye or raw soap hurts somebody now: /first-aid.',
    food: 'Cooking is outside my field: I know colour in cold-process soap only.',
    textiles: 'Dyeing other things is outside my field: I know colour in cold-process soap only.',
    business: 'Prices, shops and advertising are outside my field: I know colour in cold-process soap only.',
    other: 'That is outside my field: I know colour in cold-process soap only.',
  } satisfies Record<Outside, string>,
  ...compared,
  /** Of a colourant that was asked for by its hue. */
  hueHolds: (v: { dose: string; light: 'holds' | 'fades-slowly' | 'fades' }) =>
    `${v.light === 'holds' ? 'Holds in lye and light' : 'Holds in lye, fades slowly in light'}: ${v.dose}`,
  trueRed:
    'The red nearest to true: this lake does not bleed. Red iron oxide never moves either, but is brick; plant reds go pink to brown.',
  /** A jar of so many grams beside what a batch takes. */
  isEnough: (v: { has: number; needs: number; dose: string }) =>
    v.has >= v.needs
      ? `Enough: it takes about ${plain(v.needs)} g of your ${plain(v.has)} g. ${v.dose}`
      : `Not enough: it takes about ${plain(v.needs)} g, you have ${plain(v.has)} g. ${v.dose}`,
  /** The weight of a bar was not told. */
  forBars: (v: { bars: number; each: number; dose: string }) =>
    `${v.dose}. Taken as ${v.bars} bars of ${v.each} g.`,
  /** What equal parts were asked of and gives no colour. */
  noColours: (v: { names: readonly string[]; dose: string }) =>
    `No part for ${list(v.names)}: no colourant of mine. ${v.dose}`,
  /** The parts of a batch are of the sizes that were told. */
  toldShares: (v: { grams: number; of: string; dose: string }) =>
    `${plain(v.grams)} g ${v.of}, shared as you told. ${v.dose}`,
  eachShare: (v: { parts: number; grams: number; of: string; dose: string }) =>
    `Each of ${v.parts}: ${plain(v.grams)} g ${v.of}. ${v.dose}`,
  planParts: (v: { parts: number; each: string; dose: string }) =>
    `${v.parts} parts, ${v.each} each. ${v.dose}`,
  planShares: (v: { whole: string; dose: string }) => `${v.whole}, shared as you told. ${v.dose}`,
  planPlain: (v: { part: string; colour: string }) => `${v.part} stay ${v.colour}.`,
  planTouch: (v: { part: string; colour: string }) =>
    `A touch of ${v.colour} is taken as a twentieth: ${v.part}.`,
  planNeedsOils:
    'Tell me your oils with their weights or percents too, and I reckon lye, water, order and heat: /plan opens a form.',
  wetIn: (v: { carrier: string; name: string }) => `Wet ${v.name} in ${v.carrier}`,
  /** Whether what was asked for wets it. */
  mayWetIn: (v: { carrier: string; name: string }) => `Yes: ${v.carrier} wets ${v.name}`,
  /** Liquid that so much powder is wetted in, both as they are told. */
  carrierAmount: (v: { amount: string; carrier: string; powder: string; name: string }) =>
    `${v.amount} of ${v.carrier} for ${v.powder} of ${v.name}`,
  /** How the liquid is reckoned, and where it comes from. */
  carrierRule: {
    oil: `${THREE_TO_ONE} Dip the oil out of your weighed oils before the lye goes in, and the recipe stays as it is.`,
    water: `${THREE_TO_ONE} Hold the same weight back from your lye water, never below the weight of the lye.`,
    glycerin: `${THREE_TO_ONE} Glycerin comes on top of the recipe: much of it makes a bar soft and hot.`,
  },
  /** A dose that was asked for by weight, grams. */
  byWeight: (v: { grams: number; dose: string }) => `About ${plain(v.grams)} g: ${v.dose}`,
  /** A dose with the most that does no harm. */
  atMost: (v: { dose: string; most: string }) =>
    `${v.dose}. At most ${v.most} in this portion: more colours lather and cloths, or spoils the bar`,
  /** Of a name that may be several, the one that is shown. */
  likeliestOf: (v: { text: string; name: string }) =>
    `“${v.text}” can be several: this is ${v.name}, which holds in lye. Yours is another? Press it.`,
  bothEnds: (v: { portion: string; doses: string }) => `For ${v.portion}: ${v.doses}`,
};

export const askRefusals: Pick<
  RefusalSentences,
  'question-empty' | 'line-forgotten' | 'powder-without-amount'
> = {
  'question-empty': () =>
    'There is nothing to answer: ask a question, such as “how much ultramarine for 2 cups?”.',
  'powder-without-amount': ({ text }) =>
    `“${text}” says no amount: write it like “2 tsp rose clay” or “5 g”.`,
  'line-forgotten': () => 'That question is too long ago. Please ask it again.',
};
