import type { EmergencyId } from '../../src/engine/hazards/index.ts';
import { EMERGENCY_IDS } from '../../src/engine/hazards/index.ts';

/** What kind of words an entry takes, as far as harm is concerned. */
export type EntryKind =
  /** Any words of a member: everything that is typed at all. */
  | 'words'
  /** The name of a colourant, or a list of them. */
  | 'colourant'
  /** How deep a colour is wanted. */
  | 'strength'
  /** What the soap is to smell of. */
  | 'scent'
  /** Fats that lye is weighed for. */
  | 'oils'
  /** The alkali itself. */
  | 'lye'
  /** What stands in the place of water. */
  | 'liquid'
  /** What is stirred in. */
  | 'additive'
  /** How warm it is poured. */
  | 'temperature'
  /** A plain question, which may ask for lye. */
  | 'question';

/** What must happen where a hazard comes through an entry. */
export type Hazard = {
  readonly id:
    | EmergencyId
    | 'poisonous-colour'
    | 'metal-powder'
    | 'nothing-that-colours'
    | 'share-over-the-law'
    | 'strength-misread'
    | 'scent-that-burns'
    | 'scent-never-in-soap'
    | 'fat-that-is-none'
    | 'lye-that-is-none'
    | 'liquid-that-reacts'
    | 'sugar-that-overheats'
    | 'acid-by-the-spoon'
    | 'batter-too-hot'
    | 'loaf-that-boils'
    | 'lye-half-understood';
  /** First aid as the answer; a refusal of one of these ids; a warning of one of these; or an answer whose numbers keep under the limit. */
  readonly must:
    | { readonly say: 'first-aid' }
    | { readonly refuse: readonly string[] }
    | { readonly warn: readonly string[] }
    | { readonly hold: 'dose-under-law' | 'percent-of-oils' | 'no-amount-of-lye' };
  readonly entries: readonly EntryKind[];
};

/**
 * What can hurt somebody through the words they give us, what must be said or refused, and where it can come in. A test
 * walks hazard x entry x language over everything that the commands declare: an entry that is not in the table, or a
 * hazard that an entry lets through, is a red test.
 */
export const HAZARDS: readonly Hazard[] = [
  ...EMERGENCY_IDS.map((id): Hazard => ({ id, must: { say: 'first-aid' }, entries: ['words'] })),
  { id: 'poisonous-colour', must: { refuse: ['colour-barred'] }, entries: ['colourant'] },
  {
    id: 'metal-powder',
    must: { refuse: ['metal-never-in-lye', 'metal-or-mica', 'glitter-read-label'] },
    entries: ['colourant'],
  },
  {
    id: 'nothing-that-colours',
    must: { refuse: ['no-colour', 'liquid-is-spirit', 'liquid-is-bleach', 'list-nothing-recognised'] },
    entries: ['colourant'],
  },
  { id: 'share-over-the-law', must: { hold: 'dose-under-law' }, entries: ['colourant'] },
  { id: 'scent-never-in-soap', must: { refuse: ['scent-barred'] }, entries: ['scent'] },
  { id: 'scent-that-burns', must: { refuse: ['scent-needs-certificate'] }, entries: ['scent'] },
  { id: 'fat-that-is-none', must: { refuse: ['oil-is-liquid', 'oil-never-soap'] }, entries: ['oils'] },
  {
    id: 'lye-that-is-none',
    must: { refuse: ['lye-or-bleach', 'lye-not-hydroxide', 'lye-drain-cleaner'] },
    entries: ['lye'],
  },
  {
    id: 'liquid-that-reacts',
    must: { refuse: ['liquid-is-bleach', 'liquid-is-spirit'] },
    entries: ['liquid'],
  },
  { id: 'sugar-that-overheats', must: { refuse: ['additive-over-usual'] }, entries: ['additive'] },
  { id: 'acid-by-the-spoon', must: { refuse: ['additive-eats-lye-by-spoon'] }, entries: ['additive'] },
  { id: 'batter-too-hot', must: { refuse: ['start-too-hot'] }, entries: ['temperature'] },
  { id: 'loaf-that-boils', must: { warn: ['boils-over'] }, entries: ['temperature'] },
  { id: 'lye-half-understood', must: { hold: 'no-amount-of-lye' }, entries: ['question'] },
  { id: 'strength-misread', must: { hold: 'percent-of-oils' }, entries: ['strength'] },
];
