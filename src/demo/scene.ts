import { access, mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { demoClock, furnishDemo, playDemo, type Stage } from './load.ts';

/** Days between the first step of the scenario and now, and some room before it. */
const BEGINS_DAYS_AGO = 7;

/**
 * The demo as a scene for a new room: its clock, its people, and the week they have had. What lies in its folder is cleared
 * away first where it is played `anew`, and where an earlier one was ended before its last step: half a week is no demo.
 */
export async function demoScene(folder: string, { anew = false } = {}) {
  const played = join(folder, 'played');
  const isWhole = await access(played).then(
    () => true,
    () => false,
  );
  if (anew || !isWhole) await rm(folder, { recursive: true, force: true });
  const clock = demoClock(BEGINS_DAYS_AGO);
  return {
    now: clock.now,
    furnish: furnishDemo,
    async play(stage: Stage) {
      await playDemo(stage, clock);
      await mkdir(folder, { recursive: true });
      await writeFile(played, '');
    },
  };
}
