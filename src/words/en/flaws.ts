import { flawCauses } from './flaws/causes.ts';
import { flawFindings, flawQuestions } from './flaws/findings.ts';
import { flawRemedies } from './flaws/remedies.ts';

/** Everything said about a flaw. Percentages come as whole numbers. */
export const flaws = {
  causes: flawCauses,
  findings: flawFindings,
  questions: flawQuestions,
  remedies: flawRemedies,
  ranked: (v: { name: string; percent: number }) => `${v.percent} %: ${v.name}`,
  because: 'What speaks for it',
  against: 'What speaks against it',
  thisBatch: 'This batch',
  nextBatch: 'Next time',
  doNotUse: 'Do not use this soap: it may hold free lye.',
  notThere: (v: { finding: string }) => `not there: ${v.finding}`,
  quoted: (v: { words: string }) => `you said “${v.words}”`,
  via: { words: 'your words', photo: 'the picture', answer: 'your answer' },
  firstAid: {
    skin: 'If it burns or stings: put the soap away, rinse the skin with plenty of running water now, take off what it touched, and get medical help if it does not ease. No vinegar on skin.',
    eye: 'Soap or lye in the eye: rinse at once with plenty of running water, for at least 30 minutes, and get medical help now.',
  },
  cantTell: {
    'nothing-known':
      'I can’t tell yet: I found nothing in that I know about. Look at these three things first:',
    'too-little': 'I can’t tell yet: that fits many causes. These three things would tell most:',
    'evenly-matched':
      'I can’t tell yet: two causes fit about equally well. These three things would tell them apart:',
  },
  cut: 'I read the first 5,000 characters only.',
  notSureAnswer: 'I don’t know',
};
