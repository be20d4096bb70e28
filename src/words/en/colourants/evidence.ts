import type { RefusalSentences } from '../../sentence.ts';

const results = { held: 'held', shifted: 'shifted', faded: 'faded', bled: 'bled' };
const processes = { ambient: 'left to itself', gel: 'gelled', other: 'another way' };

/** What a group has seen of colours. */
export const evidence = {
  results,
  processes,
  /** The plain count, for headlines and doses. */
  seenHere: (v: { name: string; held: number; of: number }) =>
    `${v.held} of ${v.of} here saw ${v.name} hold.`,
  seenElsewhere: (v: { held: number; of: number }) =>
    `In other groups that share: ${v.held} of ${v.of} saw it hold.`,
  none: (v: { name: string }) => `No reports on ${v.name} yet: be the first with /colourant report.`,
  reported: (v: { name: string; result: keyof typeof results; process: keyof typeof processes }) =>
    `Noted: ${v.name} ${results[v.result]}, ${processes[v.process]}.`,
  replaced: 'It takes the place of your earlier report.',
  repeated: 'I had already noted that, so nothing was counted twice.',
  photoKept: 'I keep only the number of your photo, not the picture.',
  withdrawn: (v: { name: string; reports: number }) =>
    v.reports === 1
      ? `Your report on ${v.name} is gone.`
      : `Your ${v.reports} reports on ${v.name} are gone.`,
  sharingOn:
    'This group now shares its counts with groups that also share, and counts theirs. No names or notes leave it.',
  sharingOff: 'This group keeps what it has seen to itself, and counts no other group.',
  sharingIsOn: 'This group shares its counts with groups that also share. Turn it off with on: no.',
  sharingIsOff: 'This group keeps what it has seen to itself. Turn sharing on with on: yes.',
  whole: (v: { reports: number; colours: number }) =>
    v.reports === 0
      ? 'No reports in this group yet: be the first with /colourant report.'
      : `${v.reports} ${v.reports === 1 ? 'report' : 'reports'} on ${v.colours} ${v.colours === 1 ? 'colour' : 'colours'} here.`,
  share: 'Bars that hold',
  percent: (v: { percent: number }) => `about ${v.percent} %`,
  interval: (v: { low: number; high: number }) => `90 % sure: between ${v.low} and ${v.high} %.`,
  prior: 'It starts from the chemistry, and each report moves it.',
  counts: (v: { held: number; shifted: number; faded: number; bled: number }) =>
    `Held ${v.held}, shifted ${v.shifted}, faded ${v.faded}, bled ${v.bled}`,
  inProcess: (v: { process: keyof typeof processes; held: number; of: number }) =>
    `${processes[v.process]}: ${v.held} of ${v.of} held`,
  weeks: (v: { weeks: number }) => (v.weeks === 1 ? '1 week' : `${v.weeks} weeks`),
  base: (v: { base: string }) => `in ${v.base}`,
  note: (v: { note: string }) => `“${v.note}”`,
  photo: 'with photo',
  mine: 'yours',
  unknownPart: (v: { names: string; unknown: string }) => `${v.names} and “${v.unknown}”`,
  page: (v: { page: number; pages: number }) => `Page ${v.page} of ${v.pages}`,
  earlier: 'Back',
  further: 'More',
  open: 'Look at one colour',
};

export const evidenceRefusals: Pick<RefusalSentences, 'report-none-of-yours'> = {
  'report-none-of-yours': ({ name }) =>
    `You have no report on ${name} in this group, so there is nothing to take back.`,
};
