import { EMERGENCY_IDS, type EmergencyId } from '../emergency.ts';

/** What a text may tell of; `none`: of no emergency. */
export type Class = EmergencyId | 'none';

/** In the order in which the model scores them. */
export const CLASSES: readonly Class[] = [...EMERGENCY_IDS, 'none'];
