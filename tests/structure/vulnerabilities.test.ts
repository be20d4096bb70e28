import { execFileSync } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'audit-'));
afterAll(() => rmSync(folder, { recursive: true }));
const script = new URL('../../.ci/vulnerabilities', import.meta.url).pathname;

/** What the audit makes of a report: as npm 11 gives it with `audit --json`, and its exit status. */
function told(
  report: string,
  status: number,
  settings: NodeJS.ProcessEnv = {},
): { readonly status: number; readonly says: string } {
  const npm = join(folder, 'npm');
  writeFileSync(join(folder, 'report.json'), report);
  writeFileSync(npm, `#!/bin/sh\ncat '${join(folder, 'report.json')}'\nexit ${status}\n`);
  chmodSync(npm, 0o755);
  const env = { ...process.env, ...settings, PATH: `${folder}${delimiter}${process.env.PATH}` };
  try {
    return { status: 0, says: execFileSync(script, { env, encoding: 'utf8', stdio: 'pipe' }) };
  } catch (error) {
    const failed = error as { status: number; stdout: string; stderr: string };
    return { status: failed.status, says: failed.stdout + failed.stderr };
  }
}

const found = (vulnerabilities: object) =>
  JSON.stringify({ auditReportVersion: 2, vulnerabilities, metadata: { dependencies: { total: 1 } } });

describe('the audit of what is shipped', () => {
  it('fails on what is known, whatever words the report holds', () => {
    const one = {
      name: 'agent',
      severity: 'high',
      range: '<2',
      via: [{ title: 'ECONNREFUSED loops for ever' }],
    };
    expect(told(found({ agent: one }), 1)).toEqual({ status: 1, says: 'high: agent <2\n' });
  });

  it('tells all of a report that is longer than a setting may be', () => {
    const many = Object.fromEntries(
      Array.from({ length: 3_000 }, (_, at) => [
        `p${at}`,
        { name: `p${at}`, severity: 'high', range: '<2', via: [{ title: 'x'.repeat(60) }] },
      ]),
    );
    const { status, says } = told(found(many), 1);
    expect(status).toBe(1);
    expect(says).toContain('high: p2999 <2');
  });

  it('passes where nothing is known', () => {
    expect(told(found({}), 0)).toEqual({ status: 0, says: '' });
  });

  it.each([
    [
      'nobody answers',
      { message: 'request to x failed, reason: connect ECONNREFUSED', error: { summary: '' } },
    ],
    ['there is no list', { message: '405 Method Not Allowed', statusCode: 405, error: { summary: '' } }],
    ['the name is unknown', { error: { code: 'ENOTFOUND', summary: 'getaddrinfo' } }],
  ])('says that nothing was looked up where %s', (_, report) => {
    const { status, says } = told(JSON.stringify(report), 1);
    expect(status).toBe(0);
    expect(says).toContain('NOT LOOKED UP');
    expect(told(JSON.stringify(report), 1, { MUST_LOOK: '1' }).status).toBe(1);
  });

  it.each([
    ['a fault of ours', JSON.stringify({ error: { code: 'ENOLOCK', summary: 'needs a lockfile' } })],
    ['half a report', '{"vulnerabilities":'],
    ['an error that is not known', JSON.stringify({ message: 'Forbidden', error: { summary: '' } })],
    ['something else', '{}'],
    ['nothing', ''],
  ])('fails on %s', (_, report) => {
    expect(told(report, 1).status).toBe(1);
  });
});
