/*
 * What a group has seen of colours in finished bars: one report for each member, colour and process. A colour is
 * meant by its identity (src/engine/stability/identity.ts).
 */

export { filed } from './filed.ts';
export {
  type Evidence,
  everyReport,
  identityFiled,
  mayBeReported,
  type ReportView,
  reportsOn,
  tally,
} from './queries.ts';
export { type EvidenceScope, keepReport, type Report, withdrawReports } from './report.ts';
export { type Process, processes, results } from './schema.ts';
export { setSharing, shares } from './sharing.ts';
