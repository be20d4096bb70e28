import type { RefusalSentences } from '../sentence.ts';
import { askedBackRefusals } from './batch/asked-back.ts';
import { batchRefusals } from './batch/batch-refusals.ts';
import { bookRefusals } from './batch/book-refusals.ts';
import { costsRefusals } from './batch/costs.ts';
import { heatRefusals } from './batch/heat.ts';
import { planRefusals } from './batch/plan.ts';
import { pouringRefusals } from './batch/pouring.ts';
import { challengeStepsRefusals } from './challenges/challenge-step-refusals.ts';
import { challengesRefusals } from './challenges/challenges.ts';
import { communityRefusals } from './challenges/community.ts';
import { colourRefusals } from './colour/colour.ts';
import { comparingRefusals } from './colour/comparing.ts';
import { mixingRefusals } from './colour/mixing.ts';
import { palettesRefusals } from './colour/palettes.ts';
import { testBarsRefusals } from './colour/test-bars.ts';
import { checkingRefusals } from './colourants/checking.ts';
import { colourantsRefusals } from './colourants/colourants.ts';
import { dispersionRefusals } from './colourants/dispersion.ts';
import { dosingRefusals } from './colourants/dosing.ts';
import { evidenceRefusals } from './colourants/evidence.ts';
import { askRefusals } from './conversation/ask.ts';
import { conversationRefusals } from './conversation/conversation.ts';
import { foldRefusals } from './conversation/folds.ts';
import { helpRefusals } from './conversation/help.ts';
import { flawsRefusals } from './flaws/flaws.ts';
import { photoRefusals } from './flaws/photo.ts';
import { backupRefusals } from './fronts/backup.ts';
import { frontsRefusals } from './fronts/fronts.ts';
import { hazardRefusals } from './hazards/hazards.ts';
import { privacyRefusals } from './members/privacy.ts';
import { shelfRefusals } from './members/shelf.ts';
import { undoRefusals } from './members/undo.ts';
import { quantitiesRefusals } from './quantities.ts';

export { batch } from './batch/batch.ts';
export { batches } from './batch/book.ts';
export { costs } from './batch/costs.ts';
export { heat } from './batch/heat.ts';
export { plan, recipes } from './batch/plan.ts';
export { pouring } from './batch/pouring.ts';
export { timeline } from './batch/timeline.ts';
export { challengeSteps } from './challenges/challenge-steps.ts';
export { challenges } from './challenges/challenges.ts';
export { community } from './challenges/community.ts';
export { colour } from './colour/colour.ts';
export { comparing } from './colour/comparing.ts';
export { calibrating, match, preview } from './colour/mixing.ts';
export { palettes } from './colour/palettes.ts';
export { technique } from './colour/technique.ts';
export { testBars } from './colour/test-bars.ts';
export { checking } from './colourants/checking.ts';
export { colourants } from './colourants/colourants.ts';
export { dispersion } from './colourants/dispersion.ts';
export { dosing } from './colourants/dosing.ts';
export { evidence } from './colourants/evidence.ts';
export { plants } from './colourants/plants.ts';
export { stability } from './colourants/stability.ts';
export { ask } from './conversation/ask.ts';
export { conversation } from './conversation/conversation.ts';
export { folds } from './conversation/folds.ts';
export { help } from './conversation/help.ts';
export { leaning } from './conversation/leaning.ts';
export { flaws } from './flaws/flaws.ts';
export { photo } from './flaws/photo.ts';
export { backup } from './fronts/backup.ts';
export { fronts } from './fronts/fronts.ts';
export { page } from './fronts/page.ts';
export { firstAid } from './hazards/first-aid.ts';
export { lyeQuestions } from './lye/lye-questions.ts';
export { prefer } from './members/prefer.ts';
export { privacy } from './members/privacy.ts';
export { shelf } from './members/shelf.ts';
export { undo } from './members/undo.ts';
export { quantities } from './quantities.ts';

export const refusals: RefusalSentences = {
  ...askRefusals,
  ...backupRefusals,
  ...askedBackRefusals,
  ...batchRefusals,
  ...bookRefusals,
  ...challengeStepsRefusals,
  ...challengesRefusals,
  ...communityRefusals,
  ...checkingRefusals,
  ...colourRefusals,
  ...colourantsRefusals,
  ...comparingRefusals,
  ...conversationRefusals,
  ...costsRefusals,
  ...dispersionRefusals,
  ...dosingRefusals,
  ...evidenceRefusals,
  ...flawsRefusals,
  ...foldRefusals,
  ...frontsRefusals,
  ...hazardRefusals,
  ...heatRefusals,
  ...helpRefusals,
  ...mixingRefusals,
  ...palettesRefusals,
  ...photoRefusals,
  ...planRefusals,
  ...pouringRefusals,
  ...privacyRefusals,
  ...quantitiesRefusals,
  ...shelfRefusals,
  ...testBarsRefusals,
  ...undoRefusals,
};
