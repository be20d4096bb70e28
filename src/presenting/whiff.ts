import type { Caution } from '../conversation/reply.ts';
import { isUltramarineWhiff } from '../engine/hazards/index.ts';
import type { Words } from '../words/index.ts';

/** What to look out for where somebody asks why a colour with ultramarine smells; empty for any other text. */
export const whiffCautions = (text: string, say: Words): readonly Caution[] =>
  isUltramarineWhiff(text)
    ? [{ id: 'ultramarine-whiff', text: say.firstAid.ultramarineWhiff, firm: true }]
    : [];
