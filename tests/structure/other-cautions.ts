import type { OtherCaution } from '../../src/conversation/cautions.ts';
import type * as english from '../../src/words/en/index.ts';

/** Where the words of each caution stand that has no table of its own; `standing` is what one is left with of another. */
export const otherCautionsOf = (say: typeof english): Readonly<Record<OtherCaution, unknown>> => ({
  lye: [say.help.lye, say.ask.doubted.lye].join(),
  'may-be-lye-heavy': say.flaws.crumbly,
  'do-not-use': say.flaws.doNotUse,
  'raw-soap': say.batches.rawCaution,
  'ultramarine-whiff': say.firstAid.ultramarineWhiff,
  'hot-oil': say.pouring.infusionCaution,
  'plant-liquid': say.plants.asLiquid,
  gloves: say.challengeSteps.gloves,
  'powder-dust': say.technique.dust,
  standing: Object.values(say.dosing.brief).join(' '),
  'label-lye-changes': Object.values(say.stability.warning).join(),
  'seen-here': say.evidence.seenHere,
  'spoon-odd': say.shelf.oddSpoon,
  'label-left-out': say.checking.labelLeftOut,
  'label-unsure': say.stability.label.unsure,
  'label-legal-most': say.checking.labelMost,
  'label-standing': [say.checking.us, say.checking.eu].join(),
  'poor-fit': say.colour.poorFit,
  'at-bound': say.colour.atBound,
});
