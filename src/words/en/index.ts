import type { RefusalSentences } from '../sentence.ts';
import { conversationRefusals } from './conversation.ts';
import { dispersionRefusals } from './dispersion.ts';
import { dosingRefusals } from './dosing.ts';
import { frontsRefusals } from './fronts.ts';
import { quantitiesRefusals } from './quantities.ts';

export { conversation } from './conversation.ts';
export { dispersion } from './dispersion.ts';
export { dosing } from './dosing.ts';
export { fronts } from './fronts.ts';
export { help } from './help.ts';
export { quantities } from './quantities.ts';

export const refusals: RefusalSentences = {
  ...conversationRefusals,
  ...dispersionRefusals,
  ...dosingRefusals,
  ...frontsRefusals,
  ...quantitiesRefusals,
};
