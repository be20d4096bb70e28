import { appendFileSync } from 'node:fs';
import { ASKED, type Asked } from '../src/conversation/answering/asked.ts';

/*
 * Each process of a run notes which commands it asks and which options it gives, a line each the first time, at the
 * end of one file: so short a line goes there whole, however many processes write.
 */
const file = process.env.GIVEN_IN_THIS_RUN;
/** The lines of this process. */
export const noted = new Set<string>();
ASKED.subscribe(message => {
  const { path, options } = message as Asked;
  for (const line of [`/${path}`, ...options.map(option => `/${path} ${option}:`)]) {
    if (noted.has(line)) continue;
    noted.add(line);
    if (file !== undefined) appendFileSync(file, `${line}\n`);
  }
});
