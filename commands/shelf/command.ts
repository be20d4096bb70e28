import { commandGroup } from '../../src/conversation/command.ts';
import { phrases } from '../../src/words/declared.ts';
import { shelfFollowUps } from './follow-ups.ts';
import { lotActions } from './lots.ts';
import { stockActions } from './stock.ts';

const says = phrases('shelf');

export default commandGroup(
  'shelf',
  says.purpose,
  { ...stockActions, ...lotActions },
  { followUps: shelfFollowUps },
);
