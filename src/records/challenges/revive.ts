import { putDue } from '../dues/dues.ts';
import { duesOf } from './due.ts';
import { asOf, type ChallengeScope, listChallenges } from './queries.ts';

/** As many challenges as may still run in a group that took us in again. */
const most = 100;

/**
 * Notes anew what is to be done about the challenges of a group whose dues were struck off: whatever is still to
 * come, and the close of those whose time has run out meanwhile. `now` in ms since 1970 UTC.
 */
export async function reviveChallenges(scope: ChallengeScope, now: number): Promise<void> {
  const all = await listChallenges(scope, most);
  const dues = all.flatMap(challenge => {
    const { phase, terms } = asOf(challenge, Number.MAX_SAFE_INTEGER);
    if (phase === 'closed' || phase === 'cancelled') return [];
    return duesOf(terms, challenge).filter(
      ({ what, at }) => at.getTime() > now || what === 'challenge-close',
    );
  });
  if (dues.length > 0) await scope.store.commit(dues.map(putDue));
}
