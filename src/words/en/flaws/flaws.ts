import { spaced } from '../../../engine/over-lines.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';
import { colourantsRefusals } from '../colourants/colourants.ts';
import { flawCauses } from './causes.ts';
import { flawFindings } from './findings.ts';
import { flawNumbers } from './numbers.ts';
import { flawQuestions } from './questions.ts';
import { flawRemedies } from './remedies.ts';

const { tenths } = numbersIn('en');
/** Everything said about a flaw. Percentages come as whole numbers. */
export const flaws = {
  form: {
    title: 'Why did my bar do that?',
    seen: 'Tick what you see',
    words: 'What else you see, feel and did',
    photo: 'A photo of the whole bar',
  },
  causes: flawCauses,
  findings: flawFindings,
  questions: flawQuestions,
  remedies: flawRemedies,
  numbers: flawNumbers,
  ranked: (v: { name: string; percent: number }) => `${v.percent} %: ${v.name}`,
  together: (v: { first: string; second: string; percent: number }) =>
    `${v.percent} %: two things at once, ${v.first} and ${v.second}`,
  dontUse: 'Don’t use it.',
  dontUseYet: 'Don’t use it yet.',
  because: 'For',
  against: 'Against',
  thisBatch: 'This batch',
  nextBatch: 'Next time',
  doNotUse: 'Do not use this soap: it may hold free lye.',
  crumbly: spaced`
    A bar that crumbles can hold too much lye: gloves and goggles while you cut or grate, no breathing of
    its dust, and pH paper on a wet bar before anybody uses it. Well above 10: do not use it.
  `,
  lyeFirst: (v: { percent: number }) => `Don’t use it: free lye, ${v.percent} % sure. Gloves on.`,
  mayHoldLye: (v: { percent: number }) =>
    `It may hold free lye (${v.percent} %). Until you know: do not use it, and gloves on.`,
  notThere: (v: { finding: string }) => `no sign of ${v.finding}`,
  seenBy: (v: { findings: string; witnesses: string }) => `${v.findings} (${v.witnesses})`,
  via: { words: 'your words', photo: 'picture', answer: 'your answer', plan: 'your plan' },
  firstAid: {
    skin: spaced`
      If it burns or stings: put the soap away, rinse the skin with plenty of running water now, take off
      what it touched, and get medical help if it does not ease. No vinegar on skin.
    `,
    eye: 'Soap or lye in the eye: rinse at once with plenty of running water, for at least 30 minutes, and get medical help now.',
  },
  cantTell: {
    'nothing-known': 'I can’t tell yet: I found nothing in that I know about.',
    'too-little': 'I can’t tell yet: that fits many causes.',
    'evenly-matched': 'I can’t tell yet: two causes fit about equally well.',
  },
  maybe: 'So far',
  lookAt: 'Look at these first',
  cut: 'I read the first 5,000 characters only.',
  firstPicture: (v: { count: number }) => `I looked at the first of ${v.count} pictures.`,
  question: (v: { at: number; most: number; text: string }) => `Question ${v.at} of ${v.most}: ${v.text}`,
  answers: { yes: 'Yes', no: 'No', unsure: 'I don’t know' },
  answered: (v: { text: string; answer: string }) => `${v.text} ${v.answer}.`,
  /** A colour on the photo of a bar, where its colour is what went wrong. */
  seenColour: (v: { word: string }) => `On the photo: ${v.word}`,
  seenHex: (v: { hex: string; plusMinus: number }) => `${v.hex}, give or take ${v.plusMinus}`,
  yourAnswers: 'You answered',
  notIt: 'That’s not it: take back something I noticed',
  turnedOut: 'What did it turn out to be?',
  somethingElse: 'something else',
  noted: (v: { name: string }) => `Noted: it was ${v.name}. Thank you.`,
  notedNote: (v: { count: number }) =>
    v.count === 1
      ? 'The first here. I weigh it in a little when members of this group ask.'
      : `${v.count} such here so far. I weigh them in a little when members of this group ask.`,
  pictures: {
    offer: spaced`
      Is there a picture of that bar? If you like, I keep it with what it turned out to be, so that my
      reading of pictures can be measured on real ones. Kept: the picture at 1,024 pixels, without its
      place and time, and the cause. The stewards of this group can export it, without your name. /flaws
      given takes it back.
    `,
    give: 'Yes, keep my picture',
    formTitle: 'Keep a picture of this bar',
    formPhoto: 'The bar, with what it turned out to be in view',
    given: (v: { name: string }) => `Kept, as ${v.name}. Thank you.`,
    givenNote:
      'It stays until you take it back, erase what I keep of you, or leave this group. A steward who has exported it keeps what they have.',
    takeBack: 'Take it back',
    takenBack: (v: { count: number }) =>
      v.count === 0
        ? 'There was no picture of yours here.'
        : v.count === 1
          ? 'Taken back: the picture is erased.'
          : `Taken back: ${v.count} pictures are erased.`,
    own: (v: { count: number }) =>
      v.count === 0
        ? 'I keep no picture of yours for this group.'
        : v.count === 1
          ? 'I keep 1 picture of yours for this group.'
          : `I keep ${v.count} pictures of yours for this group.`,
    takeAllBack: 'Take all of them back',
    none: 'Nobody here has given a picture yet.',
    exported: (v: { count: number; from: number }) =>
      v.count === 1 ? `1 picture, number ${v.from}` : `${v.count} pictures, from number ${v.from} on`,
    exportedNote: spaced`
      Members gave them for measuring how well pictures are read: keep them to that, and drop what is taken
      back. Unpack all parts into one folder; \`npm run score-photos -- FOLDER\` scores it.
    `,
    more: 'The next part',
    dropped: (v: { name: string }) =>
      `Erased from the set: the picture kept as ${v.name}. Files exported before still hold it.`,
  },
  learned: {
    headline: (v: { count: number }) =>
      v.count === 1 ? '1 flaw was found out here' : `${v.count} flaws were found out here`,
    none: 'Nobody here has told me yet what a flaw turned out to be',
    row: (v: { name: string; count: number; before: number; after: number }) =>
      `${v.name}: ${v.count}. Chance before any evidence ${tenths(v.before)} → ${tenths(v.after)} %`,
    rowElse: (v: { name: string; count: number }) => `${v.name}: ${v.count}`,
    bounded: (v: { most: number; each: number }) =>
      `At most ${v.most} of a cause count, and at most ${v.each} of one member.`,
    ask: (v: { count: number }) =>
      v.count === 1
        ? 'Forget what 1 flaw turned out to be?'
        : `Forget what ${v.count} flaws turned out to be?`,
    askNote: 'The chances go back to the usual ones. This cannot be undone.',
    forget: 'Yes, forget them',
    forgotten: (v: { count: number }) => `Forgotten: ${v.count}.`,
  },
};

export const flawsRefusals: Pick<
  RefusalSentences,
  | 'metal-and-hurt'
  | 'flaw-nothing-given'
  | 'flaw-message-without-picture'
  | 'flaw-case-gone'
  | 'flaw-choice-unknown'
  | 'flaw-pictures-full'
  | 'flaw-picture-unknown'
> = {
  'metal-and-hurt': ({ text, metal, where }) =>
    `${flaws.firstAid[where]} ${colourantsRefusals['metal-never-in-lye']({ text, metal })}`,
  'flaw-nothing-given': () =>
    'Tell me what you see in your own words (words:), or add a picture (photo:), or both.',
  'flaw-message-without-picture': () =>
    'That message has no picture. Point at one with a photo of the bar, or use /diagnose.',
  'flaw-case-gone': () => 'That was too long ago to go on with. Ask again with /diagnose.',
  'flaw-pictures-full': ({ most, of }) =>
    of === 'member'
      ? `I keep at most ${most} pictures of yours here. Take some back with /flaws given first.`
      : `This group has given ${most} pictures, and I keep no more. A steward can export them with /flaws pictures.`,
  'flaw-picture-unknown': ({ name }) =>
    `Nothing in the set is called “${name}”. Its names are those in the file of /flaws pictures, like “3f09c2a1b7de.jpg”.`,
  'flaw-choice-unknown': () => 'I can’t take that choice. Pick one from the menu.',
};
