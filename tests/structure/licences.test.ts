import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/**
 * Licences (https://spdx.org/licenses/) under which a package may come along, whatever it asks of those who pass it on
 * being met by passing it on whole, as a package of its own.
 */
const ALLOWED: ReadonlySet<string> = new Set([
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'ISC',
  // The package of the HEIC decoder, libheif and libde265: it comes along unchanged, in files of its own that anybody can
  // replace by theirs, with its licence beside it. That is what section 4 asks of a work that uses the library.
  'LGPL-3.0',
  'LGPL-3.0-or-later',
  'MIT',
  'MPL-2.0',
  'OFL-1.1',
]);

/** Data under a licence that asks to be named with it: a table of browsers that a tool for tests reads, never shipped. */
const OF_TOOLS: ReadonlySet<string> = new Set(['CC-BY-4.0']);

type Package = { readonly license?: string; readonly dev?: boolean };
const lock = JSON.parse(readFileSync(new URL('../../package-lock.json', import.meta.url), 'utf8')) as {
  packages: Record<string, Package>;
};
/** What the MIT licence begins with (https://spdx.org/licenses/MIT): a few packages name it in its own file alone. */
const MIT = 'Permission is hereby granted, free of charge, to any person obtaining a copy';

/** In the lock file, in the older form that a package's own file may have: `licenses: [{ type }]`, or in full beside it. */
function licenceOf(path: string, { license }: Package): string | undefined {
  if (license) return license;
  const file = new URL(`../../${path}/package.json`, import.meta.url);
  const { licenses } = JSON.parse(readFileSync(file, 'utf8')) as { licenses?: readonly { type: string }[] };
  if (licenses) return licenses.map(({ type }) => type).join(' OR ');
  const text = new URL(`../../${path}/LICENSE`, import.meta.url);
  return existsSync(text) && readFileSync(text, 'utf8').replaceAll(/\s+/g, ' ').includes(MIT)
    ? 'MIT'
    : undefined;
}

const packages = Object.entries(lock.packages)
  .filter(([path]) => path !== '')
  .map(([path, one]) => ({ path, licence: licenceOf(path, one), dev: one.dev === true }));

/** An SPDX expression is met when one side of an OR is, and both sides of an AND. */
const allowed = (expression: string): boolean =>
  expression
    .replaceAll(/[()]/g, '')
    .split(' OR ')
    .some(side => side.split(' AND ').every(one => ALLOWED.has(one.trim())));

test('expressions are read as SPDX means them', () => {
  expect(allowed('(GPL-3.0-only OR MIT)')).toBe(true);
  expect(allowed('MIT AND GPL-3.0-only')).toBe(false);
  expect(allowed('UNLICENSED')).toBe(false);
});

test('every package comes under a licence that allows what we do with it', () => {
  const wrong = packages.filter(
    ({ licence, dev }) => !licence || !(allowed(licence) || (dev && OF_TOOLS.has(licence))),
  );
  expect(packages.length).toBeGreaterThan(100);
  expect(wrong.map(({ path, licence }) => `${path}: ${licence ?? 'none said'}`)).toEqual([]);
});

test('what is shipped is pinned to one version', () => {
  const manifest = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
    dependencies: Record<string, string>;
  };
  expect(
    Object.entries(manifest.dependencies).filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version)),
  ).toEqual([]);
});
