import { expect, test } from 'vitest';

type Step = (name: string, take: () => Promise<void> | void) => void;

/** What a step may take at most, ms: as long as any test (`vitest.config.ts`). */
const BOUND = 300_000;

/**
 * What is told in steps, each of which goes on where the one before it left off, as one test: so it holds alone and in
 * any order with others. A step that fails is named first in its error, and ends the story.
 */
export function story(name: string, tell: (step: Step) => void): void {
  const steps: { readonly name: string; readonly take: () => Promise<void> | void }[] = [];
  tell((called, take) => steps.push({ name: called, take }));
  test(`${name}, step by step`, { timeout: steps.length * BOUND }, async () => {
    expect(steps).not.toEqual([]);
    for (const step of steps)
      try {
        await step.take();
      } catch (error) {
        if (error instanceof Error) error.message = `${step.name}: ${error.message}`;
        throw error;
      }
  });
}
