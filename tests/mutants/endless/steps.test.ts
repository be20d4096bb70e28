import { expect, test } from 'vitest';
import { back, echo, stepsFrom } from './steps.ts';

/* What `endless.test.ts` changes: small enough to be counted by hand. */

test('ten down by two are five steps', () => expect(stepsFrom(10, 1)).toBe(5));
test('ten less two are eight', () => expect(back(10, 2)).toBe(8));
test('an echo is heard', () => expect(() => echo(1)).not.toThrow());
