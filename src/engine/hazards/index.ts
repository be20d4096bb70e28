export { BARRED, type BarredReason } from './colours/barred.ts';
export { barredIn, refuseBarred, refuseBarredJar, refusePoisonIn } from './colours/refuse.ts';
export { EMERGENCY_IDS, type Emergency, type EmergencyId } from './emergencies/emergency.ts';
export { type HelpPlace, helpFor } from './emergencies/numbers.ts';
export { readEmergencies } from './emergencies/read.ts';
export { type EntryKind, HAZARDS, type Hazard } from './table.ts';
