import type { RefusalSentences } from '../sentence.ts';
import { askRefusals } from './ask.ts';
import { backupRefusals } from './backup.ts';
import { askedBackRefusals } from './batch/asked-back.ts';
import { batchRefusals } from './batch/batch.ts';
import { bookRefusals } from './batch/book-refusals.ts';
import { heatRefusals } from './batch/heat.ts';
import { planRefusals } from './batch/plan.ts';
import { challengeStepsRefusals } from './challenges/challenge-steps.ts';
import { challengesRefusals } from './challenges/challenges.ts';
import { communityRefusals } from './challenges/community.ts';
import { checkingRefusals } from './checking.ts';
import { colourRefusals } from './colour.ts';
import { colourantsRefusals } from './colourants.ts';
import { comparingRefusals } from './comparing.ts';
import { conversationRefusals } from './conversation.ts';
import { costsRefusals } from './costs.ts';
import { dispersionRefusals } from './dispersion.ts';
import { dosingRefusals } from './dosing.ts';
import { evidenceRefusals } from './evidence.ts';
import { flawsRefusals } from './flaws.ts';
import { foldRefusals } from './folds.ts';
import { frontsRefusals } from './fronts.ts';
import { hazardRefusals } from './hazards.ts';
import { helpRefusals } from './help.ts';
import { mixingRefusals } from './mixing.ts';
import { palettesRefusals } from './palettes.ts';
import { photoRefusals } from './photo.ts';
import { pouringRefusals } from './pouring.ts';
import { privacyRefusals } from './privacy.ts';
import { quantitiesRefusals } from './quantities.ts';
import { shelfRefusals } from './shelf.ts';
import { testBarsRefusals } from './test-bars.ts';
import { undoRefusals } from './undo.ts';

export { ask } from './ask.ts';
export { backup } from './backup.ts';
export { batch } from './batch/batch.ts';
export { batches } from './batch/book.ts';
export { heat } from './batch/heat.ts';
export { plan, recipes } from './batch/plan.ts';
export { timeline } from './batch/timeline.ts';
export { challengeSteps } from './challenges/challenge-steps.ts';
export { challenges } from './challenges/challenges.ts';
export { community } from './challenges/community.ts';
export { checking } from './checking.ts';
export { colour } from './colour.ts';
export { colourants } from './colourants.ts';
export { comparing } from './comparing.ts';
export { conversation } from './conversation.ts';
export { costs } from './costs.ts';
export { dispersion } from './dispersion.ts';
export { dosing } from './dosing.ts';
export { evidence } from './evidence.ts';
export { firstAid } from './first-aid.ts';
export { flaws } from './flaws.ts';
export { folds } from './folds.ts';
export { fronts } from './fronts.ts';
export { help } from './help.ts';
export { lyeQuestions } from './lye-questions.ts';
export { calibrating, match, preview } from './mixing.ts';
export { page } from './page.ts';
export { palettes } from './palettes.ts';
export { photo } from './photo.ts';
export { pouring } from './pouring.ts';
export { prefer } from './prefer.ts';
export { privacy } from './privacy.ts';
export { quantities } from './quantities.ts';
export { shelf } from './shelf.ts';
export { stability } from './stability.ts';
export { testBars } from './test-bars.ts';
export { undo } from './undo.ts';

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
