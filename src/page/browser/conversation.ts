import type { Shown, Waiting } from '../model.ts';
import { element } from './element.ts';
import { type Around, bodyNodes, entryElement, waitingElement } from './entry.ts';

export type Conversation = {
  readonly element: HTMLElement;
  fill(messages: readonly Shown[], waiting: readonly Waiting[]): void;
  show(message: Shown): void;
  wait(waiting: Waiting): void;
  settle(interaction: string): void;
  remove(id: string): void;
  /** Whoever pressed, chose or asked is shown the next answer, wherever on the page they are. */
  expectAnswer(): void;
};

type Asks = {
  readonly label: string;
  /** Shown while nothing has been asked. */
  readonly empty: HTMLElement;
  around(message: Shown): Around;
};

/** The log of what was asked and answered. New entries are read out; those of before are not. */
export function conversation({ label, empty, around }: Asks): Conversation {
  const log = element('div', { role: 'log', 'aria-label': label, 'aria-live': 'off', class: 'log' });
  const main = element('main', {}, empty, log);
  /** What each entry was made from, so that an unchanged one is left alone with all that is typed into it. */
  const made = new Map<string, string>();

  // Pictures come late and push down what was in view: whoever read the end is kept there.
  let atEnd = true;
  let height = 0;
  addEventListener('scroll', () => {
    const now = document.documentElement.scrollHeight;
    // The page grew under its reader: that is no going away from the end.
    if (now !== height) {
      height = now;
      return;
    }
    atEnd = window.scrollY + window.innerHeight >= document.documentElement.scrollHeight - NEAR_END;
  });
  log.addEventListener(
    'load',
    () => {
      if (atEnd) showStart(log.lastElementChild);
      height = document.documentElement.scrollHeight;
    },
    true,
  );

  const find = (id: string) => log.querySelector(`[data-message="${CSS.escape(id)}"]`);
  const findWaiting = (id: string) => log.querySelector(`[data-waiting="${CSS.escape(id)}"]`);
  let expected = false;
  /**
   * Whoever reads the last entry is shown the next: its start, where the number stands. So is whoever waits for an answer,
   * unless it takes the place of what they pressed.
   */
  const follow = (change: () => void) => {
    const atLast = (log.lastElementChild?.getBoundingClientRect().top ?? 0) < window.innerHeight;
    const last = log.lastElementChild;
    change();
    empty.hidden = log.childElementCount > 0;
    const came = expected && log.lastElementChild !== last;
    if (atLast || came) showStart(log.lastElementChild);
    height = document.documentElement.scrollHeight;
    if (came) atEnd = true;
  };
  /** Folds that were opened, by the message that they belong to. */
  const opened = new Map<string, Shown[]>();
  const putFold = (message: Shown): boolean => {
    const { unfolds } = message.asked ?? {};
    const fold =
      unfolds && find(unfolds.message)?.querySelector(`[data-fold="${CSS.escape(unfolds.customId)}"]`);
    if (!unfolds || !fold) return false;
    const all = (opened.get(unfolds.message) ?? []).filter(({ id }) => id !== message.id);
    opened.set(unfolds.message, [...all, message]);
    if (message.pending) return true;
    fold.querySelector('.fold-body')?.replaceChildren(...bodyNodes(message, around(message)));
    fold.setAttribute('open', '');
    return true;
  };
  const put = (message: Shown) => {
    const json = JSON.stringify(message);
    if (made.get(message.id) === json) return;
    if (putFold(message)) return;
    made.set(message.id, json);
    const fresh = entryElement(message, around(message));
    const old = find(message.id);
    const held = old?.contains(document.activeElement);
    if (old) old.replaceWith(fresh);
    else log.append(fresh);
    for (const fold of opened.get(message.id) ?? []) putFold(fold);
    if (held) fresh.querySelector<HTMLElement>('button, select, a')?.focus();
  };

  return {
    element: main,
    fill: (messages, waiting) =>
      follow(() => {
        const ids = new Set(messages.map(({ id }) => id));
        for (const id of made.keys()) {
          if (ids.has(id)) continue;
          made.delete(id);
          find(id)?.remove();
        }
        for (const old of log.querySelectorAll('[data-waiting]')) old.remove();
        for (const message of messages) put(message);
        for (const one of waiting) if (!one.unfolds) log.append(waitingElement(one, around(NOTHING)));
        requestAnimationFrame(() => log.setAttribute('aria-live', 'polite'));
      }),
    show: message => {
      // A fold opens where it stands; nobody is taken elsewhere.
      if (putFold(message)) {
        expected = false;
        return;
      }
      follow(() => {
        if (message.interaction !== undefined) findWaiting(message.interaction)?.remove();
        put(message);
      });
      if (!message.pending) expected = false;
    },
    wait: waiting => {
      if (!waiting.unfolds) follow(() => log.append(waitingElement(waiting, around(NOTHING))));
    },
    settle: interaction => follow(() => findWaiting(interaction)?.remove()),
    expectAnswer: () => {
      expected = true;
    },
    remove: id =>
      follow(() => {
        made.delete(id);
        find(id)?.remove();
      }),
  };
}

/** Scrolls to the end of the page, or less far where the start of the entry would leave the screen. */
function showStart(entry: Element | null): void {
  // What stays at the top of the screen would cover the number.
  const covered = document.querySelector('.top')?.getBoundingClientRect().height ?? 0;
  const top = (entry?.getBoundingClientRect().top ?? 0) + window.scrollY - covered;
  window.scrollTo(0, Math.min(top, document.documentElement.scrollHeight - window.innerHeight));
}

/** Whoever is this near the end of the page reads the end, px. */
const NEAR_END = 80;

/** Stands in where there is no message yet. */
const NOTHING: Shown = {
  id: '',
  at: '',
  author: '',
  fromBot: true,
  onlyYou: false,
  pending: true,
  edited: false,
  text: '',
  components: [],
  files: [],
};
