import type { RefusalSentences } from '../sentence.ts';
import { conversationRefusals } from './conversation.ts';
import { frontsRefusals } from './fronts.ts';

export { conversation } from './conversation.ts';
export { fronts } from './fronts.ts';

export const refusals: RefusalSentences = {
  ...conversationRefusals,
  ...frontsRefusals,
};
