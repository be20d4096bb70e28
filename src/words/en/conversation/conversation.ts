import { spaced } from '../../../engine/over-lines.ts';
import type { ReasonId } from '../../../engine/refusal.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const { figure } = numbersIn('en');

const busy = {
  member: 'Several of your answers are still being worked on.',
  group: 'Many members of this group are waiting for pictures and plans right now.',
  all: 'Many pictures and plans are waiting right now.',
};

const list = (names: readonly string[]) => names.join(', ');

export const conversation = {
  cautions: 'Take care',
  more: 'More',
  pressed: 'Used. Ask again if you need it once more.',
  cut: 'This answer was long: all of it is in the attached file.',
  working: 'Working on it…',
  formLate: 'The form needs a moment. Open it with the button.',
  formStillLate: 'The form is not ready yet. Press the button again in a few seconds.',
  openForm: 'Open the form',
  /** To a question about what the asker keeps for themselves, where everybody reads the answer. */
  ownByAsk:
    'That tells of what you keep for yourself, so I do not answer it here: ask it with /ask, which only you see.',
  /** What a steward hears when a group could not be told. */
  notTold: (v: { title: string }) => spaced`
    I could not tell the group about “${v.title}”: its channel is gone or closed to me. Let me view it,
    write there and attach files; the next news follows by itself, and /challenge show shows it now.
  `,
};

export type ConversationReason = Extract<
  ReasonId,
  | `option-${string}`
  | `follow-up-${string}`
  | 'command-unknown'
  | 'our-fault'
  | 'stewards-only'
  | 'group-only'
  | 'workers-busy'
  | 'work-took-too-long'
>;

export const conversationRefusals: Pick<RefusalSentences, ConversationReason> = {
  'option-missing': ({ option }) => `Please fill in “${option}”.`,
  'option-unknown': ({ option, known, meant }) =>
    known.length > 0
      ? `There is no option “${option}” here.${meant === undefined ? '' : ` Did you mean “${meant}”?`} The options are: ${list(known)}.`
      : `There is no option “${option}” here: this command takes none.`,
  'option-too-long': ({ option, most }) => `“${option}” is too long: at most ${most} characters fit.`,
  'option-not-offered': ({ option, offered }) => `“${option}” must be one of: ${list(offered)}.`,
  'option-not-a-number': ({ option }) => `“${option}” must be a number, such as 5.`,
  'option-out-of-range': ({ option, least, most }) =>
    `“${option}” must be from ${figure(least, 3)} to ${figure(most, 3)}.`,
  'option-not-yes-or-no': ({ option }) => `“${option}” must be yes or no.`,
  'option-needs-a-file': ({ option }) => `“${option}” must be a file, such as a photo.`,
  'option-names-nobody': ({ option, kind }) => `“${option}” must be a ${kind} of this group: pick one.`,
  'follow-up-invalid': () => 'That button is from an older version. Ask the question again to get a new one.',
  'follow-up-expired': () => 'That button has run out. Ask the question again to get a new one.',
  'follow-up-not-yours': () =>
    'That button is for somebody else, or from before my signing key was changed. Ask the question yourself to get your own.',
  'command-unknown': ({ typed, nearest }) =>
    `There is no command “/${typed}”. Did you mean /${nearest.join(', /')}?`,
  'stewards-only': () => 'Only a steward of this group may do that. Ask one of them.',
  'group-only': () =>
    'That belongs to a group I am in. Here only you brought me along: ask me there, or add me to this group.',
  'workers-busy': ({ full, seconds }) => `${busy[full]} Please try again in about ${seconds} seconds.`,
  'work-took-too-long': () =>
    'This took too long and was stopped; nothing was changed. A smaller or another picture, or fewer colours, may work.',
  'our-fault': ({ reference }) =>
    `Something went wrong on our side and nothing was changed. Please try again; if it stays, tell a steward “${reference}”.`,
};
