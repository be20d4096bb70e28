import type { Phase } from '../../../engine/challenges/events.ts';
import type { Unscored } from '../../../engine/challenges/measured.ts';
import type { DecidedBy } from '../../../engine/challenges/result.ts';
import type { Violation } from '../../../engine/challenges/rules.ts';
import type { Constraint, Decides, EntryClass } from '../../../engine/challenges/terms.ts';
import type { Method } from '../../../engine/challenges/voting/election.ts';
import type { ReasonId } from '../../../engine/refusal.ts';
import { capital } from '../../../engine/text/capital.ts';
import { datesIn } from '../../dates.ts';
import { withoutMarks } from '../../marks.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';
import type { ChallengeStepReason } from './reasons.ts';

const { percent, tenths } = numbersIn('en');
const { moment } = datesIn('en');

/** The same as the clocks of that zone show it, whoever reads it. */
const wallTime = (at: number, zone: string) => withoutMarks(moment(at, zone));

const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;

type ViolationSentences = {
  readonly [Id in Violation['id']]: (values: Extract<Violation, { id: Id }>) => string;
};

const violations: ViolationSentences = {
  'entries-most': ({ most }) =>
    `${count(most, 'entry', 'entries')} a member: replace or withdraw one of yours first.`,
  'colourants-most': ({ most, used }) =>
    `At most ${count(most, 'colourant', 'colourants')}; yours has ${used}.`,
  'one-pigment': ({ used }) => `One pigment only; yours names ${used}.`,
  'own-shelf': ({ missing }) => `Only from your own shelf; not on it: ${missing.join(', ')}.`,
  'made-on-missing': () => 'Please say on which day you made the bar, such as 2026-11-20.',
  'made-on-future': ({ madeOn }) => `${madeOn} is still to come: say on which day you made the bar.`,
  'made-too-early': ({ madeOn, from }) => `Made on ${from} or later; yours is from ${madeOn}.`,
  'cure-short': ({ days, least, missing }) =>
    `${count(missing, 'day', 'days')} to go: the bar cures at least ${least} days, yours had ${days}.`,
  'not-beginner': ({ wins }) =>
    `For beginners: you have won ${count(wins, 'challenge', 'challenges')} here already.`,
  'technique-missing': () => 'This class is about technique: say in the note how you made it.',
};

const phases: Readonly<Record<Phase, string>> = {
  announced: 'has not begun',
  entering: 'is taking entries',
  voting: 'is being voted on',
  counting: 'is being counted',
  closed: 'is over',
  cancelled: 'was cancelled',
};

const deciders: Readonly<Record<DecidedBy, string>> = {
  votes: 'The vote decided.',
  colour: 'Measured colour decided.',
  both: 'Vote and measured colour decided together: each entry’s two places are added, the lowest sum is first.',
  nothing: 'Too few ballots: nobody is placed.',
};

const methods: Readonly<Record<Method, string>> = {
  schulze: 'Schulze method: strongest paths of winning votes',
  approval: 'approval: every bar you like gets one vote',
  single: 'single choice: one vote',
};

const classes: Readonly<Record<EntryClass, string>> = {
  beginner: 'beginners',
  open: 'open to all',
  technique: 'technique',
};

const constraints: Readonly<Record<Constraint, string>> = {
  none: 'any colourants',
  'one-pigment': 'one pigment only',
  'own-shelf': 'only from your own shelf',
};

const unscored: Readonly<Record<Unscored, string>> = {
  'no-white':
    'No score: the photo shows no white sheet. Lay plain white paper beside the bar and replace it.',
  neon: 'No score: a neon glows, and a photo cannot measure that.',
  pearl: 'No score: a pearl changes with the angle, and a photo cannot measure that.',
  'no-colours':
    'No score: no colour of the bar could be measured. Take the photo again in daylight, without flash.',
};

export const challenges = {
  moment,
  violations,
  phases,
  deciders,
  methods,
  classes,
  constraints,
  unscored,
  /** A wall time that the clocks skip or show twice. */
  shifted: {
    skipped: (v: { minutes: number; at: number; zone: string }) =>
      `The clocks skip that time; I moved it ${v.minutes} minutes on: ${wallTime(v.at, v.zone)}.`,
    twice: (v: { minutes: number; at: number; zone: string }) =>
      `The clocks show that time twice; I took the first: ${wallTime(v.at, v.zone)}.`,
  },
  /** How a shared place comes about, and how a tie is broken where a challenge asks for that. */
  sharedTies: 'Equal bars share a place, and the places after it stay free: two on 1st, then 3rd.',
  brokenTies:
    'Ties are broken by ballots drawn at random, one after the other, until one tells the bars apart.',
  /** For whoever wants to draw it again. */
  tieSeed: (v: { seed: string }) => `Ties: random voter hierarchy, seed “${v.seed}”.`,
  ownEntry: 'Nobody votes for or against their own bar: it stands on no ballot of theirs.',
  withinError: 'Bars that measure the same within their errors share a place.',
  quorumMissed: (v: { cast: number; needed: number }) =>
    `${count(v.cast, 'ballot', 'ballots')} of the ${v.needed} needed.`,
  closedLate: (v: { due: number; closed: number; zone: string }) =>
    `Due ${moment(v.due, v.zone)}; I was away and closed it ${moment(v.closed, v.zone)}. Only what came in on time counts.`,
  score: (v: { score: number; plusMinus: number }) => `${tenths(v.score)} ± ${tenths(v.plusMinus)}`,
  stray: (v: { percent: number; adds: number }) =>
    `${v.percent} % of the face is off the palette and adds ${tenths(v.adds)}.`,
  lacking: (v: { hex: string }) => `${v.hex} is missing from the bar.`,
  announced: (v: { title: string; phase: string }) => `“${v.title}” ${v.phase}.`,
  entriesUntil: 'Enter until',
  votesUntil: 'Vote until',
  rules: 'Rules',
  palette: (v: { colours: readonly string[] }) => `Palette: ${v.colours.join(', ')}`,
  entriesEach: (v: { most: number }) => `${count(v.most, 'entry', 'entries')} a member`,
  mostColourants: (v: { most: number }) => `at most ${count(v.most, 'colourant', 'colourants')}`,
  madeFrom: (v: { from: string }) => `made on ${v.from} or later`,
  leastCure: (v: { days: number }) => `cured at least ${count(v.days, 'day', 'days')}`,
  decides: {
    votes: 'The vote decides.',
    colour: 'Measured colour decides.',
    both: 'Vote and measured colour decide together: each entry’s two places are added, the lowest sum is first.',
  } satisfies Record<Decides, string>,
  whiteSheet:
    'Lay a plain white sheet beside the bar in the photo; neons and pearls (micas) get no colour score.',
  joinedBefore: (v: { before: number; zone: string }) =>
    `Members who joined before ${moment(v.before, v.zone)} vote.`,
  quorum: (v: { needed: number }) => `The vote counts from ${count(v.needed, 'ballot', 'ballots')} on.`,
  nowOpen: (v: { title: string; until: string }) => `“${v.title}” is open: enter your bar until ${v.until}.`,
  entriesSoon: (v: { title: string; until: string }) => `“${v.title}”: entries end ${v.until}.`,
  nowVote: (v: { title: string; until: string; entries: number }) =>
    `“${v.title}”: ${count(v.entries, 'entry is', 'entries are')} in, vote until ${v.until}.`,
  votesSoon: (v: { title: string; until: string }) => `“${v.title}”: the vote ends ${v.until}.`,
  cancelled: (v: { title: string; reason: string }) => `“${v.title}” was cancelled: ${v.reason}`,
  winner: (v: { title: string; bars: readonly string[] }) => `First in “${v.title}”: ${v.bars.join(', ')}`,
  nobodyPlaced: (v: { title: string }) => `“${v.title}” is over, and nobody is placed.`,
  byMaker: (v: { title: string; maker: string }) => `“${v.title}” by ${v.maker}`,
  places: 'Places',
  placed: (v: { place: string; bar: string; number: number; why: string }) =>
    `${v.place}. ${v.bar} (bar ${v.number})${v.why === '' ? '' : `: ${v.why}`}`,
  colourNumber: (v: { number: number; score: string }) =>
    `Bar ${v.number}: ${v.score} away from the palette (0 is exact, 2 just visible)`,
  colourNumbers: 'Measured colour',
  unplaced: (v: { bar: string; why: string }) => `not placed: ${v.bar}. ${v.why}`,
  ballotsCounted: (v: { ballots: number }) => `${count(v.ballots, 'ballot', 'ballots')} counted.`,
  takenOut: 'Taken out by a steward',
  disqualified: (v: { bar: string; reason: string }) => `${v.bar}: ${v.reason}`,
  tallyUsage: 'Give one file of ballots: npm run -s tally -- ballots.json',
  tallyUnreadable: (v: { file: string }) => `I can't read the file “${v.file}”. Check its name and folder.`,
  tallyNotJson: (v: { file: string }) =>
    `“${v.file}” is not JSON. Export the challenge again, or mend the file.`,
  tallyNotBallots: (v: { where: string }) =>
    `Something is wrong at “${v.where}”. A file of ballots looks like {"candidates":["a","b"],"ballots":[{"count":2,"ranking":[["a"],["b"]]}]}.`,
};

type ChallengeReason = Extract<
  Exclude<ReasonId, ChallengeStepReason>,
  | `tally-${string}`
  | `challenge-${string}`
  | `vote-${string}`
  | `deadline-${string}`
  | 'zone-unknown'
  | 'date-impossible'
  | 'palette-no-shelves'
  | 'palette-out-of-reach'
>;

const numbers = {
  entries: 'Entries per member',
  colourants: 'The most colourants',
  cure: 'The least cure in days',
  quorum: 'The quorum',
} as const;

const times = { opening: 'Opening', entries: 'the end of entries', votes: 'the end of the vote' } as const;

const deadlineExamples = '“2026-12-01 18:00”, “friday 18:00” or “in 3 days”';

export const challengesRefusals: Pick<RefusalSentences, ChallengeReason> = {
  'tally-candidate-twice': ({ candidate }) => `“${candidate}” is listed twice: name each candidate once.`,
  'tally-ballot-unknown': ({ ballot, candidate }) =>
    `Ballot ${ballot} names “${candidate}”, which is not among the candidates.`,
  'tally-ballot-twice': ({ ballot, candidate }) =>
    `Ballot ${ballot} ranks “${candidate}” twice: rank each candidate once.`,
  'tally-ballot-own-ranked': ({ ballot, candidate }) =>
    `Ballot ${ballot} ranks “${candidate}” and leaves it out at once: do one of the two.`,
  'tally-ballot-count': ({ ballot, count: given }) =>
    `Ballot ${ballot} counts ${given} times: the count must be a whole number from 0.`,
  'tally-ballot-not-single': ({ ballot, chosen }) =>
    `Ballot ${ballot} chooses ${chosen}: in a single choice it must be one.`,
  'challenge-not-now': ({ phase, needs }) =>
    `The challenge ${phases[phase]}; this works only while it ${phases[needs]}.`,
  'challenge-title-unfit': ({ most }) => `A challenge needs a title of 1 to ${most} characters.`,
  'challenge-palette-unfit': ({ least, most, given }) =>
    `A palette has ${least} to ${most} colours; you gave ${given}.`,
  'challenge-times-order': ({ first, next }) => `${capital(times[first])} must come before ${times[next]}.`,
  'challenge-times-far': ({ most }) => `A challenge lasts at most ${most} days. Choose an earlier end.`,
  'challenge-number-unfit': ({ what, least, most }) =>
    `${numbers[what]} must be a whole number from ${least} to ${most}.`,
  'vote-joined-late': ({ before, zone }) =>
    `Only members who joined before ${moment(before, zone)} vote in this one.`,
  'vote-joined-unknown': () => 'I can’t see when you joined this group. Vote from the group itself.',
  'vote-entry-unknown': () => 'One of those bars is no longer in the running. Open the ballot again.',
  'vote-entry-twice': () => 'One bar is on your ballot twice. Give each bar one rank.',
  'vote-one-only': ({ chosen }) => `Choose one bar; you chose ${chosen}.`,
  'vote-own-only': () => 'Nobody votes for their own bar. Choose another one.',
  'vote-empty': () => 'Your ballot is empty. Choose at least one bar.',
  'deadline-unreadable': ({ text }) => `I can't read “${text}” as a time. Write it like ${deadlineExamples}.`,
  'deadline-time-missing': ({ text }) => `“${text}” needs a time of day, such as “${text} 18:00”.`,
  'deadline-past': ({ text, zone }) => `“${text}” has passed in ${zone}. Choose a time still to come.`,
  'zone-unknown': ({ zone }) =>
    `I don't know the time zone “${zone}”. Write it like “Europe/Madrid” or “America/Chicago”.`,
  'date-impossible': ({ date }) => `No calendar has the date ${date}. Write it like 2026-12-01.`,
  'palette-no-shelves': () =>
    'No shelf in this group holds a colourant yet, so no palette can be drawn from them.',
  'palette-out-of-reach': ({ wanted, found, share }) =>
    `I found only ${found} of ${wanted} colours that ${percent(share)} of the shelves can make. Ask for fewer colours, or fewer shelves.`,
  'challenge-unknown': () => 'I don’t know that challenge in this group. Pick one from the list.',
  'challenge-over': ({ phase }) => `The challenge ${phases[phase]}: nothing more can change.`,
  'challenge-extension-unfit': () =>
    'A deadline can only move later, before it has passed, and the vote must end after the entries.',
  'challenge-reason-missing': () => 'Please give a reason: members can read it.',
  'challenge-entry-unknown': () => 'That entry is not in the running, or not yours. Pick one from the list.',
  'challenge-entries-full': ({ most }) =>
    `${count(most, 'entry', 'entries')} a member: replace or withdraw one of yours first.`,
};
