import type { RefusalSentences } from '../sentence.ts';

export const privacy = {
  jars: {
    private: 'Answers that name a jar of yours: only you see them',
    shown: 'Answers that name a jar of yours: the group sees them',
  },
  jarsSetAside: (v: { count: number }) =>
    `${v.count === 1 ? 'One jar' : `${v.count} jars`} of yours can’t be read just now and stays out of every answer; nothing else is touched. Tell whoever runs me.`,
};

export type PrivacyReason = 'text-too-long';

export const privacyRefusals: Pick<RefusalSentences, PrivacyReason> = {
  'text-too-long': ({ most }) => `That text is too long: at most ${most} plain characters fit.`,
};
