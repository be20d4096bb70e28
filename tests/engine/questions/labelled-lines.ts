import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A question with what it is about, or `none`; `writer`: whose words they are. */
export type LabelledLine = { readonly text: string; readonly label: string; readonly writer: string };

/** One writer's text: what is asked about in brackets, and under each the questions about it, a line each. */
export function linesIn(written: string, writer: string): readonly LabelledLine[] {
  const texts: LabelledLine[] = [];
  let label = 'none';
  for (const line of written.split('\n')) {
    const heading = /^\[(.+)\]$/u.exec(line)?.[1];
    if (heading !== undefined) label = heading;
    else if (line.trim() !== '') texts.push({ text: line.trim(), label, writer });
  }
  return texts;
}

/** Every line of every writer in a folder. */
export const labelledLines = (folder: string): readonly LabelledLine[] =>
  readdirSync(folder)
    .sort()
    .flatMap(file => linesIn(readFileSync(join(folder, file), 'utf8'), file.replace('.txt', '')));
