import type { Method } from '../../../engine/challenges/voting/election.ts';
import { spaced } from '../../../engine/over-lines.ts';
import type { Lack, LackBeside } from '../../lack.ts';
import { numbersIn } from '../../numbers.ts';

const { plain } = numbersIn('en');
const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
const ordinal = (n: number) => {
  const ending = { one: 'st', two: 'nd', few: 'rd' } as Record<string, string>;
  return `${n}${ending[new Intl.PluralRules('en', { type: 'ordinal' }).select(n)] ?? 'th'}`;
};

const lacks: Readonly<Record<Lack, string>> = {
  view: 'I may not see the channel (View Channel)',
  post: 'I may not write there (Send Messages)',
  'post-in-threads': 'I may not write in threads there (Send Messages in Threads)',
  attach: 'I may not attach pictures there (Attach Files)',
  unlocked: 'the thread is locked',
  messages: 'it takes posts only, no messages',
};

const lacksBeside: Readonly<Record<LackBeside, string>> = {
  thread: 'No thread under it: I may not open one there (Create Public Threads).',
  calendar: 'Its deadlines will not stand in the events of this group (Create Events).',
};

type Entry = { number: number; title: string; challenge: string };
type Ballot = { title: string; bars: number };

/** What members and stewards read while they take part in a challenge. */
export const challengeSteps = {
  barNamed: (v: { number: number; name: string }) => `${v.name} (bar ${v.number})`,
  quoted: (v: { title: string }) => `“${v.title}”`,

  kicker: 'COLOUR CHALLENGE',
  resultsKicker: 'COLOUR CHALLENGE · RESULTS',
  cardAlt: (v: { title: string }) => `Card of the challenge “${v.title}”: palette, dates and rules`,
  barsAlt: (v: { bars: number }) => `Photos of ${count(v.bars, 'bar', 'bars')}, each with its number`,
  resultsAlt: (v: { title: string }) => `Results of “${v.title}”: places, photos and colours`,
  measuredAlt: (v: { title: string }) => `Photo of “${v.title}” with the colours measured on it`,
  swatchNote: 'Swatches: the colour asked for above, the bar’s own below.',
  measuredColours: 'Measured on the bar',
  pairwise: 'Ballots that put the bar of the row above the bar of the column',
  colourScore: (v: { score: string }) =>
    `colour ${v.score} away from the palette (0 is exact, 2 just visible)`,
  votes: (v: { votes: number }) => count(v.votes, 'vote', 'votes'),
  pairsWon: ({ won, of }: { won: number; of: number }) =>
    won === of
      ? 'more ballots prefer it to every other bar than the other way round'
      : won === 0
        ? 'every other bar is preferred to it, or as many ballots say so as not'
        : `more ballots prefer it to ${won} of the ${of} others`,
  aheadOf: (v: { bar: number; ahead: number; behind: number }) =>
    `${v.ahead} to ${v.behind} against bar ${v.bar}`,
  /** How near a bar measures to the palette, in words; CIEDE2000. */
  nearPalette: (v: { score: number }): string =>
    v.score <= 2
      ? 'the palette, to the eye'
      : v.score <= 5
        ? 'very near the palette'
        : v.score <= 10
          ? 'near the palette'
          : v.score <= 20
            ? 'some way off the palette'
            : 'far off the palette',
  twoPlaces: (v: { votes: number; colour: number }) =>
    `${plain(v.votes)} by vote + ${plain(v.colour)} by colour = ${plain(v.votes + v.colour)}`,

  opened: (v: { title: string }) => `“${v.title}” is opened.`,
  openedInChannel: 'I announce it in this channel and keep its time.',
  openedHere: 'Nobody is told from here: there is no channel.',
  unscoredKinds:
    'Colour is measured in photos with a plain white sheet. Bars with neons or micas (pearl) get no colour score; members are told so as they enter.',
  openTitle: 'A new challenge',
  fields: {
    title: 'Title',
    brief: 'What is it about?',
    palette: 'Palette, 1 to 6 colours',
    entriesUntil: 'Enter until (2 weeks if empty)',
    votesUntil: 'Vote until (3 days more if empty)',
    photo: 'Photo of your bar',
    photoOnWhite: 'Photo of your bar beside a white sheet',
    bar: 'What is your bar called?',
    colourants: 'Colourants in it',
    made: 'Made on',
    note: 'A note, if you like',
    technique: 'How did you make it?',
  },
  hints: {
    palette: 'teal, #4b3f9e, ultramarine blue 30%',
    deadline: '2026-12-01 18:00, friday 18:00, in 3 days',
    colourants: 'By your shelf’s names, apart by commas',
    made: 'Like 2026-11-20',
  },
  drawnForShelves: 'Drawn for what the shelves here can make.',
  drawnWith: (v: { seed: string }) => `Drawn with the seed “${v.seed}”.`,
  photoPalette: 'The main colours of the photo, the largest first.',
  drawnPalette: (v: { seed: string; percent: number; shelves: number }) =>
    `Drawn with the seed “${v.seed}”: ${v.percent} % of ${count(v.shelves, 'shelf', 'shelves')} can come near all of it.`,
  usePalette: (v: { hexes: string }) => `To use it: /challenge open palette:"${v.hexes}"`,

  enterBar: 'Enter a bar',
  fromMyShelf: 'From my shelf',
  vote: 'Vote',

  entered: (v: Entry) => `Bar ${v.number}, “${v.title}”, is in “${v.challenge}”.`,
  replaced: (v: Entry) => `Bar ${v.number}, “${v.title}”, is handed in anew for “${v.challenge}”.`,
  measured: (v: Entry) => `Bar ${v.number}, “${v.title}”, is measured anew for “${v.challenge}”.`,
  changeUntil: (v: { until: string }) => `You can change it until ${v.until}.`,
  measureAgain: 'Measure another part of the photo',
  parts: {
    found: 'The bar as I find it',
    whole: 'The whole photo',
    middle: 'The middle',
    core: 'Only the very centre',
    top: 'The upper half',
    bottom: 'The lower half',
    left: 'The left half',
    right: 'The right half',
  },
  withdraw: 'Withdraw this bar',
  withdrawn: (v: { title: string }) => `“${v.title}” is withdrawn. Your place is free for another bar.`,

  ballot: {
    empty: (v: Ballot) => `Your ballot for “${v.title}” is still empty.`,
    now: (v: Ballot) => `Saved: ${count(v.bars, 'bar', 'bars')} on your ballot for “${v.title}”.`,
    before: (v: Ballot) => `${count(v.bars, 'bar', 'bars')} on your ballot for “${v.title}”.`,
    superseded: (v: Ballot) => `A later vote of yours counts for “${v.title}”.`,
  },
  ownLeftOut: 'Your own bar is left out: nobody votes for their own.',
  ranks: (v: { place: number }) => ordinal(v.place),
  chosen: 'yours',
  countsUntilChosen: 'This ballot counts until you choose a new first place.',
  restShare: 'Bars you leave out share the last place.',
  choose: {
    schulze: ({ place }) => (place === 1 ? 'Which bar do you like best?' : `Your ${ordinal(place)} place`),
    approval: () => 'Every bar you like, one or more',
    single: () => 'The one bar you like best',
  } satisfies Record<Method, (v: { place: number }) => string>,
  sharePlace: (v: { place: number }) => `Shares your ${ordinal(v.place)} place`,
  moreBars: 'More bars',
  tieNext: (v: { place: number }) => `Add one to ${ordinal(v.place)} place`,
  startAgain: 'Start again',

  extended: (v: { title: string; entries: string; votes: string | undefined }) =>
    `“${v.title}”: enter until ${v.entries}${v.votes === undefined ? '' : `, vote until ${v.votes}`}.`,
  disqualified: (v: { bar: string; reason: string }) => `Taken out: ${v.bar}. ${v.reason}`,
  audit: (v: { title: string; deeds: number }) =>
    `${count(v.deeds, 'thing', 'things')} stewards did about “${v.title}”`,
  deed: (v: { when: string; who: string; what: string }) => `${v.when}, ${v.who}: ${v.what}`,
  deeds: {
    opened: 'opened it',
    extended: (v: { entries: string | undefined; votes: string | undefined; reason: string }) =>
      `moved ${[v.entries && `entries to ${v.entries}`, v.votes && `the vote to ${v.votes}`].filter(Boolean).join(', ')}: ${v.reason}`,
    cancelled: (v: { reason: string }) => `cancelled it: ${v.reason}`,
    disqualified: (v: { bar: string; reason: string }) => `took out ${v.bar}: ${v.reason}`,
  },
  settings: (v: { role: string | undefined; zone: string }) =>
    `Times are in ${v.zone}. Stewards: whoever manages this group${v.role === undefined ? '' : `, and the role ${v.role}`}.`,
  settingsBeside: (v: { calls: string | undefined; threads: boolean; calendar: boolean }) =>
    [
      v.calls === undefined
        ? 'Nobody is called when a challenge opens.'
        : `The role ${v.calls} is called when a challenge opens.`,
      v.threads ? 'Each challenge gets a thread where I may open one.' : 'Challenges get no threads.',
      v.calendar
        ? 'Deadlines stand in the events of this group where I may enter them.'
        : 'Deadlines do not stand in the events of this group.',
    ].join(' '),
  roleUncallable:
    'That role lets nobody be called: turn on “Allow anyone to @mention this role”, or nobody hears of it.',
  lacksBeside: (v: { lacks: readonly LackBeside[] }) => v.lacks.map(lack => lacksBeside[lack]).join(' '),
  entriesEnd: (v: { title: string }) => `“${v.title}”: entries end`,
  votesEnd: (v: { title: string }) => `“${v.title}”: the vote ends`,
  calendarSays: 'The last hour before the deadline. See /challenge show.',
  openedInOther: (v: { channel: string }) => `I announce it in #${v.channel} and keep its time.`,
  openedUntold: (v: { lacks: readonly Lack[]; instead: readonly string[] }) =>
    [
      `I keep its time, yet I cannot announce it there: ${v.lacks.map(lack => lacks[lack]).join('; ')}.`,
      v.instead.length > 0
        ? `Change that, or cancel it and open it in ${v.instead.join(', ')}.`
        : 'Change that, and the next news follows by itself.',
    ].join(' '),

  bars: (v: { bars: number }) => count(v.bars, 'bar', 'bars'),
  yours: (v: { bar: string }) => `${v.bar} (yours)`,
  takenOutOfYours: (v: { title: string; reason: string }) =>
    `Your bar “${v.title}” was taken out by a steward: ${/[.!?…]$/.test(v.reason) ? v.reason : `${v.reason}.`}`,
  listed: (v: { challenges: number }) =>
    v.challenges === 0
      ? 'No challenge yet: a steward opens one with /challenge open.'
      : count(v.challenges, 'challenge', 'challenges'),
  listRow: (v: { title: string; phase: string; entries: number; until: string | undefined }) =>
    `“${v.title}” ${v.phase}${v.until === undefined ? '' : ` until ${v.until}`}, ${count(v.entries, 'bar', 'bars')}`,
  soFar: (v: { title: string }) => `“${v.title}” so far`,
  pairs: (v: { pairs: string }) => `Pair by pair (bar–bar ballots:ballots): ${v.pairs}`,
  history: (v: { bars: number; wins: number }) =>
    v.bars === 0
      ? 'No bar in a finished challenge yet.'
      : `${count(v.bars, 'bar', 'bars')} in finished challenges, ${count(v.wins, 'win', 'wins')}`,
  historyRow: (v: { title: string; bar: string; place?: number | undefined; of: number; on: string }) =>
    `${v.place === undefined ? 'not placed' : `${ordinal(v.place)} of ${v.of}`}: “${v.bar}” in “${v.title}” (${v.on})`,
  exported: (v: { title: string }) => `“${v.title}” as JSON and CSV`,
  exportNote: spaced`
    Anyone recounts the JSON with: npm run -s tally -- challenge.json. Ballots carry no names, yet one that
    leaves out a bar tells that its voter made that bar: share it with care.
  `,

  ideas: (v: { near: number; of: number }) =>
    `From your shelf you can come near ${v.near} of ${count(v.of, 'colour', 'colours')}.`,
  ideasNote:
    'For 1 US cup of cream-coloured, ungelled batter. Colours are estimates: a test bar decides. More recipes, with a picture: /match.',
  ideaNote: (v: { hex: string; away: number; plusMinus: number }) =>
    `about ${v.hex}, ${plain(v.away)} ± ${plain(v.plusMinus)} away from it (2 is just visible)`,
  nothingNear: 'nothing on your shelf comes near',
  uncoloured: 'no colourant at all',
  emptyShelf: 'Your shelf holds nothing I can mix with. Put your jars on it with /shelf add.',
  jarIdeas: (v: { jars: number }) => `${count(v.jars, 'jar', 'jars')} on your shelf, each deep and pale`,
  jarIdea: (v: { name: string; full: string; pale: string; deep: string; light: string }) =>
    `${v.name}: ${v.deep} ${v.full} at the most, ${v.light} ${v.pale} at a quarter`,
  gloves: 'Gloves and goggles: raw batter is caustic, and powders are no good to breathe.',
};
