import type { Phase } from '../../../engine/challenges/events.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';
import { challengeSteps } from './challenge-steps.ts';
import { challenges } from './challenges.ts';
import type { ChallengeStepReason } from './reasons.ts';

const { plain } = numbersIn('en');

const phases: Readonly<Record<Phase, string>> = challenges.phases;

export const challengeStepsRefusals: Pick<RefusalSentences, ChallengeStepReason> = {
  'challenge-none-such': ({ needs }) =>
    `No challenge here ${phases[needs[0] ?? 'entering']} now. See /challenge list.`,
  'challenge-which': ({ titles }) =>
    `Which challenge: ${titles.map(title => `“${title}”`).join(', ')}? Name it with the option “challenge”.`,
  'challenge-title-taken': ({ title }) =>
    `A challenge “${title}” is running already: give this one another title, or cancel the other first.`,
  'challenge-bar-taken-out': v =>
    `${challengeSteps.takenOutOfYours(v)} It keeps its place: no other bar takes it.`,
  'challenge-date-unreadable': ({ text }) => `I can't read “${text}” as a day. Write it like 2026-11-20.`,
  'challenge-entry-unfit': ({ violations }) =>
    violations.map(one => (challenges.violations[one.id] as (v: typeof one) => string)(one)).join(' '),
  'challenge-entry-which': ({ entries }) => `Which of your bars? Give its number: ${entries.join(', ')}.`,
  'challenge-entry-none': () => 'You have no bar in this challenge. Enter one with /challenge enter.',
  'challenge-bar-title-unfit': ({ most }) => `A bar needs a name of 1 to ${most} characters.`,
  'challenge-colourants-missing': () => 'Say which colourants are in the bar, apart by commas.',
  'challenge-shares-unfit': ({ sum }) =>
    `The parts of a palette make 100 %, yours make ${plain(sum)} %; leave one without a part to take the rest.`,
  'vote-unreadable': ({ text }) =>
    `I can't read “${text}” as a ballot. Write the bars' numbers, the best first, like “2,1,3”; “2,1=3” ties two.`,
  'vote-number-unknown': ({ number }) =>
    `No bar in the running has the number ${number}. See /challenge show.`,
};
