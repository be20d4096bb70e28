import type { ActionResult, Change, NewSeat, PageAction, Seat, Suggested, Typing } from '../model.ts';

/** Files by the option, field or `post` that takes them. */
export type Attached = ReadonlyMap<string, readonly File[]>;

type At = Pick<Seat, 'group' | 'member'>;

const query = ({ group, member }: At) => `?${new URLSearchParams({ group, member })}`;

async function post<Answer>(path: string, say: unknown, files: Attached = new Map()): Promise<Answer> {
  const body = new FormData();
  body.set('say', JSON.stringify(say));
  for (const [name, list] of files) for (const file of list) body.append(name, file, file.name);
  const response = await fetch(path, { method: 'POST', body });
  if (!response.ok) throw new Error(`the room answered ${response.status}`);
  return (await response.json()) as Answer;
}

/** Does something as the member in a seat; resolves when the assistant has answered. */
export const perform = (at: At, pageAction: PageAction, files?: Attached): Promise<ActionResult> =>
  post(`actions${query(at)}`, pageAction, files);

/** What the assistant suggests for the option being typed. */
export const suggestionsFor = (at: At, typing: Typing): Promise<readonly Suggested[]> =>
  post(`suggestions${query(at)}`, typing);

export const takeNewSeat = (seat: NewSeat): Promise<At> => post('seats', seat);

/** A form was put aside: it does not come back. */
export const closeForms = (at: At): Promise<unknown> => post(`forms/closed${query(at)}`, {});

export const allSeats = async (): Promise<readonly Seat[]> =>
  (await (await fetch('seats')).json()) as readonly Seat[];

/** Listens to what changes for a seat; the browser itself connects again when the line breaks. */
export function listen(at: At, hear: { change(change: Change): void; lost(): void }): () => void {
  const source = new EventSource(`changes${query(at)}`);
  source.onmessage = ({ data }: MessageEvent<string>) => hear.change(JSON.parse(data) as Change);
  source.onerror = () => hear.lost();
  return () => source.close();
}
