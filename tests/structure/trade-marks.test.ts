import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const root = join(import.meta.dirname, '../..');

/**
 * Trade marks that people use as common words, and what we keep no mention of, each written backwards so that this list is none of
 * its own finds. From memory.
 */
const MARKS =
  'nolfet nólfet somreht sesomreht xeryp dia-look dialook naras erawrepput repput srepput aloyarc enilesav anilesav colpiz kcolpiz hod-yalp hodyalp enicitsalp anilitsalp o-llej ollej eiprahs oediv soediv oedív soedív ebutuoy kotkit margatsni koobecaf ppastahw ti-tsop dia-dnab xeneelk alletun oero selttiks orclev maoforyts ximomreht topkcorc top-kcorc kirbartet kapartet ocsabat ahcarirs eniretsil xorolc losyl onard lotted nolvas mercodus lyrdaneb lonelyt livda edarotag etimram etimegev kiuqsen xeppit kcat-ulb epatolles izzucaj eebsirf acimrof salgixelp xepsrep elcispop elcismaerc obirah soteehc ocsirc adnelps aneziam reztles-akla reztles labla asula tdnub elkcaps taplis kcitspahc'
    .split(' ')
    .map(word => Array.from(word).reverse().join(''));

const files = execFileSync('git', ['ls-files'], { cwd: root, encoding: 'utf8' })
  .split('\n')
  .filter(path => /\.(?:ts|json|md|txt|html|css|yml|yaml)$/u.test(path) && path !== 'package-lock.json');

test('no trade mark stands for a common word in what is tracked', () => {
  const pattern = new RegExp(String.raw`(?<![\p{L}\p{N}])(?:${MARKS.join('|')})s?(?![\p{L}\p{N}])`, 'giu');
  const found = files.flatMap(path =>
    [...readFileSync(join(root, path), 'utf8').matchAll(pattern)].map(([word]) => `${path}: ${word}`),
  );
  expect(found).toEqual([]);
  expect(files.length).toBeGreaterThan(500);
});
