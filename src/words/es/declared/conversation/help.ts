import type { says as en } from '../../../en/declared/conversation/help.ts';

export const says: typeof en = {
  purpose: 'Qué sé hacer y cómo preguntarme',
  topic: 'Una orden, una opción, una palabra del oficio o un aviso: «plan», «traza», «sosa»',
};
