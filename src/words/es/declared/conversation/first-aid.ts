import type { says as en } from '../../../en/declared/conversation/first-aid.ts';

export const says: typeof en = {
  purpose: 'La sosa, sus vapores o el jabón fresco dañaron a alguien: qué hacer ya',
  what: 'Qué pasó',
};
