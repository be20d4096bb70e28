import type { Choice } from '../../conversation/reply.ts';
import type { Phase } from '../../engine/challenges/events.ts';
import type { Words } from '../../words/index.ts';
import { enterButton } from './enter-form.ts';
import { ideas } from './ideas.ts';
import { ballot } from './vote.ts';

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
