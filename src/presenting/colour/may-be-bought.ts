import type { AlkaliBehaviour, Colourant, ColourantKind } from '../../engine/colourants/colourant.ts';
import { checkColourant } from '../../engine/stability/check-colourant.ts';
import { permittedSummary } from '../../engine/stability/permitted-summary.ts';

/** Kinds that bleed or fade are for those who have them, not to be sent out for. */
const NOT_OFFERED: ReadonlySet<ColourantKind> = new Set(['dye', 'botanical']);
/** What holds only in some batches is offered too, with its caution: ultramarine violet has no stable likeness. */
const IN_LYE: ReadonlySet<AlkaliBehaviour> = new Set(['stable', 'conditional']);

const known = new WeakMap<Colourant, boolean>();

/** Whether members may be sent out for it: it holds in lye and in light, and both laws list all of it for soap without a limit that a dose could pass. */
export function mayBeBought(colourant: Colourant): boolean {
  const may = known.get(colourant) ?? isLawfulAndHolds(colourant);
  known.set(colourant, may);
  return may;
}

function isLawfulAndHolds(colourant: Colourant): boolean {
  const { kind, alkali, light, gradeOf, legal } = colourant;
  if (NOT_OFFERED.has(kind) || gradeOf !== undefined || legal) return false;
  if (!IN_LYE.has(alkali.behaviour) || light !== 'holds') return false;
  const { us, eu } = permittedSummary(checkColourant(colourant).components);
  return [us, eu].every(({ standing }) => standing === 'listed' || standing === 'limited');
}
