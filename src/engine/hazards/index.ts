export { EMERGENCY_IDS, type Emergency, type EmergencyId } from './emergencies/emergency.ts';
export { type HelpPlace, helpFor } from './emergencies/numbers.ts';
export { readEmergencies } from './emergencies/read.ts';
