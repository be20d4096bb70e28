import type { LyeCautionId } from '../engine/batch/lye/lye-cautions.ts';
import type { PlanWarning } from '../engine/batch/planning/plan-warning.ts';
import type { CautionId as DoseCautionId } from '../engine/dosing/cautions.ts';

/**
 * Cautions that stand neither in the list about lye, nor among those of a dose or of a plan; those that warn of harm
 * first. `standing` is the one line of those that a member has met before.
 */
export type OtherCaution =
  | 'lye'
  | 'may-be-lye-heavy'
  | 'do-not-use'
  | 'raw-soap'
  | 'ultramarine-whiff'
  | 'hot-oil'
  | 'plant-liquid'
  | 'gloves'
  | 'powder-dust'
  | 'standing'
  | 'label-lye-changes'
  | 'seen-here'
  | 'spoon-odd'
  | 'label-left-out'
  | 'label-unsure'
  | 'label-legal-most'
  | 'label-standing'
  | 'poor-fit'
  | 'at-bound';

/** Whatever an answer can warn of; `tests/structure/declared.test.ts` is red until a test looks at what each says. */
export type CautionId = LyeCautionId | DoseCautionId | PlanWarning['id'] | OtherCaution;
