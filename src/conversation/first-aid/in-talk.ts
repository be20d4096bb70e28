import type { Emergency, EmergencyId } from '../../engine/hazards/index.ts';
import type { Talk } from '../../engine/questions/leaning/before.ts';

/** Nobody who swallowed lye may be made to vomit (safety data sheets of sodium hydroxide, section 4; from memory). */
const STAYS: EmergencyId = 'lye-swallowed';

/** The emergencies that the turn before was about; none where it was of something else. */
export const emergenciesOf = (talk: Talk | undefined): readonly EmergencyId[] =>
  talk?.last.kind === 'emergency' ? talk.last.ids : [];

/**
 * The emergencies of a turn, `before` being those of the turn before it: what a turn is only in doubt taken for ("he is crying but
 * breathing") stands behind lye that was swallowed, and does not take its place. Pure.
 */
export const inTalk = (told: readonly Emergency[], before: readonly EmergencyId[]): readonly Emergency[] =>
  told.length > 0 && before.includes(STAYS) && told.every(({ inDoubt }) => inDoubt)
    ? [{ id: STAYS, from: '', inDoubt: false }, ...told.filter(({ id }) => id !== STAYS)]
    : told;
