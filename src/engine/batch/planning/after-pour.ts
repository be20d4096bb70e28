import { BOILING_C } from '../../heat/estimate.ts';
import { isPaste, isSaltBar, SALT_BAR_HOURS } from '../bar-kind.ts';
import type { PlanRequest } from '../request.ts';
import { at, type TimelineStep } from './prep-step.ts';
import type { TimelineFacts } from './timeline-facts.ts';

const UNMOULD_HOURS = 24;
/** Warming that is felt as a hot moment, K; small bars lose their heat faster than they make it. */
const FELT_WARMING = 3;

/** From the filled mould to the cut: how it is kept, when it is hottest, when it comes out. */
export function afterPour(request: PlanRequest, facts: TimelineFacts): TimelineStep[] {
  const hours = Math.max(0.5, Math.round(facts.peakHours * 2) / 2);
  const tooHot =
    facts.peakCoreC >= BOILING_C ? at(-5, 'too-hot-to-wrap', { peakC: facts.peakCoreC }) : undefined;
  const keep = {
    ambient: facts.keepCool ? at(-5, 'keep-cool', {}) : at(-5, 'leave-open', {}),
    insulated: tooHot ?? at(-5, 'wrap', {}),
    oven: tooHot ?? at(-5, 'into-oven', { ovenC: facts.ovenC }),
    fridge: at(-5, 'into-fridge', {}),
  } as const;
  return [
    keep[request.heat.process],
    at(-10, 'clean-up', {}),
    facts.peakCoreC - request.heat.startC < FELT_WARMING
      ? at(-15, 'stays-cool', { peakC: facts.peakCoreC })
      : at(-60 * hours, 'watch-heat', { hours, peakC: facts.peakCoreC }),
    outOfMould(facts),
  ];
}

/** A bar is cut when firm, one full of salt within hours, and a paste not at all. */
function outOfMould({ kohShare, saltPercent: percent }: TimelineFacts): TimelineStep {
  if (isPaste(kohShare)) return at(-60 * UNMOULD_HOURS, 'keep-paste', {});
  if (isSaltBar(percent)) {
    const [fromHours, toHours] = SALT_BAR_HOURS;
    return at(-60 * fromHours, 'cut-salt-bar', { percent, fromHours, toHours });
  }
  return at(-60 * UNMOULD_HOURS, 'unmould', { hours: UNMOULD_HOURS });
}
