import type { Choice } from '../../src/conversation/reply.ts';
import type { Phase } from '../../src/engine/challenges/events.ts';
import type { Words } from '../../src/words/index.ts';
import { enterButton } from './entering/enter-form.ts';
import { ideas } from './ideas.ts';
import { ballot } from './voting/vote.ts';

/** What everybody can do about a challenge in its phase; each press is answered to whoever pressed. */
export function invitations(
  challenge: string,
  phase: Phase,
  { challengeSteps: steps }: Words,
): { readonly choices: readonly Choice[] } {
  switch (phase) {
    case 'announced':
      return { choices: [{ kind: 'button', label: steps.fromMyShelf, follow: ideas.with({ challenge }) }] };
    case 'entering':
      return {
        choices: [
          { kind: 'button', label: steps.enterBar, weight: 'main', follow: enterButton.with({ challenge }) },
          { kind: 'button', label: steps.fromMyShelf, follow: ideas.with({ challenge }) },
        ],
      };
    case 'voting':
      return {
        choices: [{ kind: 'button', label: steps.vote, weight: 'main', follow: ballot.with({ challenge }) }],
      };
    default:
      return { choices: [] };
  }
}
