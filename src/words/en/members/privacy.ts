import { spaced } from '../../../engine/over-lines.ts';
import { midSentence } from '../../../engine/text/capital.ts';
import type { RefusalSentences } from '../../sentence.ts';

export const privacy = {
  jars: {
    private: 'Answers that name a jar of yours: only you see them',
    shown: 'Answers that name a jar of yours: the group sees them',
  },
  kept: (v: { records: number }) =>
    v.records === 0 ? 'I keep nothing of you.' : `I keep ${v.records} notes of you.`,
  row: (v: { name: string; records: number; until: string }) => `${v.name}: ${v.records}. ${v.until}`,
  topics: {
    shelf: 'Your shelf',
    preferences: 'Your preferences',
    recipes: 'Your recipes',
    batches: 'Your batches',
    recent: 'Recent plans, matches and undos',
    evidence: 'Your reports',
    flaws: 'Your questions about flaws',
    challenges: 'Your part in challenges',
  },
  until: {
    shelf: 'Kept until you remove it.',
    preferences: 'Kept until you erase them.',
    recipes: 'Kept until you remove them.',
    batches: 'Kept with their photos until you remove them.',
    recent: spaced`
      Kept for two days, the newest 20 of each; what an undo needs, for ten minutes and until the night at
      most; what you asked last, for half an hour, written down nowhere.
    `,
    evidence: 'Kept until you take them back.',
    flaws:
      'Words for two days; what it turned out to be stays, for the group’s count; pictures you gave, until you take them back.',
    challenges: 'Entries stay with their results, photos for a year after.',
  },
  notesBeside:
    'Counted as you would: jars, recipes, batches. The other notes stand beside them: stock, lots, tests, history.',
  leaving: (v: { days: number }) =>
    `Leave a group, and after ${v.days} days what you kept there is erased; once you are in no group I know of and don’t talk with me in private, all of it.`,
  next: '/privacy export gives you all of it in one file, /privacy erase takes it away.',
  exported: (v: { records: number }) => `All I keep of you: ${v.records} notes in one file.`,
  exportedPart: (v: { from: number; to: number; more: boolean }) =>
    v.more
      ? `Notes ${v.from} to ${v.to} in this file; it takes more than one. Press below for the next.`
      : `Notes ${v.from} to ${v.to} in this file, the last.`,
  more: 'Next file',
  sure: (v: { name: string | undefined }) =>
    v.name === undefined
      ? 'Erase everything I keep of you? This can’t be undone.'
      : `Erase this: ${midSentence(v.name)}? This can’t be undone.`,
  mustStay: spaced`
    What must stay, without your name: your entries in challenges, and your ballots in those that have
    ended. A ballot in a vote that still runs is withdrawn.
  `,
  eraseButton: 'Erase for good',
  erased: (v: { records: number }) => `Erased: ${v.records} notes.`,
  stays: (v: { records: number }) =>
    `${v.records} notes that others’ results rest on stay, without your name.`,
  jarsSetAside: (v: { count: number }) => spaced`
    ${v.count === 1 ? 'One jar' : `${v.count} jars`} of yours can’t be read just now and stays out of every
    answer; nothing else is touched. Tell whoever runs me.
  `,
};

export type PrivacyReason = 'privacy-under-way' | 'shelf-name-set-aside' | 'text-too-long';

export const privacyRefusals: Pick<RefusalSentences, PrivacyReason> = {
  'privacy-under-way': () => 'I am still looking through your records: ask again once that answer is there.',
  'shelf-name-set-aside': ({ name }) =>
    `A jar called “${name}” is on your shelf but can’t be read just now: take another name, or tell whoever runs me.`,
  'text-too-long': ({ most }) => `That text is too long: at most ${most} plain characters fit.`,
};
