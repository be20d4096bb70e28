import { demoClock, furnishDemo, playDemo, type Stage } from './load.ts';

/** Days between the first step of the scenario and now, and some room before it. */
const BEGINS_DAYS_AGO = 7;

/** The demo as a scene for a new room: its clock, its people, and the week they have had. */
export function demoScene() {
  const clock = demoClock(BEGINS_DAYS_AGO);
  return {
    now: clock.now,
    furnish: furnishDemo,
    play: (stage: Stage) => playDemo(stage, clock),
  };
}
