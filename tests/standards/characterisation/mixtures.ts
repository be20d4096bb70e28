import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { characterise, knowsAll } from './characterise.ts';
import { type MixtureData, parseMixtures } from './mixture-files.ts';
import { commonWhite, reportMixtures } from './mixture-report.ts';

const USAGE = 'npm run -s mixtures -- --characterise FOLDER --predict FOLDER';

function readFolder(folder: string): MixtureData {
  const text = (name: string) => readFileSync(join(folder, name), 'utf8');
  return parseMixtures(text('specifications.txt'), text('spectra.txt'));
}

/**
 * Learns every pigment from the measured films of one folder, predicts the mixtures of the other from their
 * recipes alone, and prints how far off it was: `{n, mean, p95, rows: [{code, deltaE}]}` in CIEDE2000.
 */
function main(): void {
  const { values } = parseArgs({
    options: { characterise: { type: 'string' }, predict: { type: 'string' } },
  });
  if (values.characterise === undefined || values.predict === undefined) {
    console.error(USAGE);
    process.exitCode = 2;
    return;
  }
  const known = readFolder(values.characterise);
  const asked = readFolder(values.predict);
  const white = commonWhite(known.films, known.wavelengths);
  const pigments = characterise(known.films, known.wavelengths, white);
  const report = reportMixtures(pigments, asked.films, asked.wavelengths);
  const unknown = asked.films.filter(film => film.shares.size > 1 && !knowsAll(pigments, film.shares));
  if (unknown.length > 0) {
    console.error(`left out, a pigment was never characterised: ${unknown.map(film => film.code).join(' ')}`);
  }
  console.log(JSON.stringify(report, undefined, 2));
}

main();
