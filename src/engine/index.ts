/*
 * The engine as `tintmoot/engine`: its entry points, and what is needed to call them. Everything is pure: values in,
 * values out; an expected "no" is a thrown {@link Refusal}. Each function's comment has an example that a test runs.
 */

export { planBatch } from './batch/planning/plan.ts';
export type { PlanAnswer } from './batch/planning/plan-answer.ts';
export {
  coloursNamed,
  type FoundColour,
  type ReadPlan,
  readPlan,
  type WrittenPlan,
  withColours,
} from './batch/planning/written-plan.ts';
export type { Election } from './challenges/voting/election.ts';
export { tally } from './challenges/voting/tally.ts';
export { opticsOf } from './colour/jars/colourant-optics.ts';
export { matchColour } from './colour/matching/match.ts';
export type { MatchRequest } from './colour/matching/match-request.ts';
export { plainBase } from './colour/mixing/base-soap.ts';
export { type Lab, labOfHex } from './colour/spectra/cielab.ts';
export { findColourant } from './colourants/asked/find-colourant.ts';
export { colourants } from './colourants/catalogue.ts';
export type { Colourant } from './colourants/colourant.ts';
export { answerDose } from './dosing/answer.ts';
export type { DoseAnswer, DoseRequest } from './dosing/request.ts';
export { diagnose } from './flaws/diagnose.ts';
export { readEmergencies } from './hazards/emergencies/read.ts';
export type { Portion } from './quantities/amount.ts';
export { type PracticalSpoons, practicalSpoons } from './quantities/spoons.ts';
export { parseStrength, type Strength } from './quantities/strength.ts';
export { parsePortion } from './quantities/told/portion.ts';
export { readQuestion } from './questions/read.ts';
export { Refusal } from './refusal.ts';
export { checkIngredients } from './stability/check.ts';
