import { commandGroup } from '../../src/conversation/command.ts';
import { shelfFollowUps } from './follow-ups.ts';
import { lotActions } from './lots.ts';
import { stockActions } from './stock.ts';

export default commandGroup(
  'shelf',
  {
    en: 'Your pigments: what you have, how much, how they behave',
    es: 'Tus pigmentos: qué tienes, cuánto y cómo se portan',
  },
  { ...stockActions, ...lotActions },
  { followUps: shelfFollowUps },
);
