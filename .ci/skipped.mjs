// What the tests came to, and whether any was skipped that should have run here: all but the dear checks that are drawn
// (tests/walk.ts) find what they need, or CI has not installed it.
import { readFileSync } from 'node:fs';

const file = process.argv[2] ?? '.ci/results.json';
const { numPassedTests, numFailedTests, numPendingTests, testResults } = JSON.parse(
  readFileSync(file, 'utf8'),
);
console.log(`${numPassedTests} passed, ${numFailedTests} failed, ${numPendingTests} skipped`);
const isDrawn = name => /\b(?:run|skip)If\([^)]*\b(?:isDue\(|WHOLE\b)/u.test(readFileSync(name, 'utf8'));
const skipped = testResults.flatMap(({ name, assertionResults }) =>
  assertionResults
    .filter(({ status }) => (status === 'pending' || status === 'skipped') && !isDrawn(name))
    .map(({ fullName }) => `${name}: ${fullName}`),
);
for (const one of skipped) console.error(`skipped: ${one}`);
if (numPassedTests === 0) console.error('no test ran');
process.exitCode = numPassedTests === 0 || skipped.length > 0 ? 1 : 0;
