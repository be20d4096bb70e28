export { BARRED } from './colours/barred.ts';
export type { BarredReason } from './colours/barred-colour.ts';
export { barredInSentence } from './colours/in-sentence.ts';
export { barredIn, isPoison, refuseBarred, refuseBarredJar, refusePoisonIn } from './colours/refuse.ts';
export { hasHappened } from './emergencies/asked-before.ts';
export {
  EMERGENCY_IDS,
  type Emergency,
  type EmergencyId,
  type UnweighedId,
  WEIGHED_IDS,
  type WeighedId,
} from './emergencies/emergency.ts';
export { isTakenBack } from './emergencies/false-alarm.ts';
export { clearLanguageOf } from './emergencies/language.ts';
export { emergencyById, emergencyNamed } from './emergencies/named.ts';
export { isNearOnly } from './emergencies/near-only.ts';
export { type HelpPlace, helpFor } from './emergencies/numbers.ts';
export { readEmergencies } from './emergencies/read.ts';
export { isRisingInMould } from './emergencies/rising-in-mould.ts';
export { isStoryOnly } from './emergencies/story-only.ts';
export { isBareEggSmell, isUltramarineWhiff, withSpokenOf } from './emergencies/ultramarine-whiff.ts';
export { type BatchPart, batchPartIn } from './no-colour/batch-part.ts';
export { refuseSpirits } from './no-colour/no-colour.ts';
export { type RiskyScent, refusePerfume, riskyScents } from './scents/read.ts';
export type { BarredScentReason, ScentRisk } from './scents/scents.ts';
