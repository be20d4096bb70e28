import type { Language } from '../model.ts';

/** Any component, as far as the page reads it. Types: platform documentation, Components > Component Types. */
export type Component = {
  readonly type: number;
  readonly content?: string;
  /** Of a container, as the platform writes a colour: 0xrrggbb. */
  readonly accent_color?: number | null;
  readonly components?: readonly Component[];
  readonly accessory?: Component;
  readonly items?: readonly { readonly media: Media; readonly description?: string | null }[];
  readonly media?: Media;
  readonly description?: string | null;
  readonly file?: Media;
  readonly name?: string;
  readonly size?: number;
  readonly divider?: boolean;
  readonly label?: string;
  readonly style?: number;
  readonly disabled?: boolean;
  readonly url?: string;
  readonly custom_id?: string;
  readonly placeholder?: string;
  readonly min_values?: number;
  readonly max_values?: number;
  readonly options?: readonly MenuOption[];
};

export type MenuOption = {
  readonly label: string;
  readonly value: string;
  readonly description?: string;
  readonly default?: boolean;
};

export type Media = { readonly url: string; readonly width?: number | null; readonly height?: number | null };

/** What the member can do with a message. Both resolve when the answer has come. */
export type Hands = {
  readonly say: typeof import('../../words/en/fronts/page.ts').page;
  readonly language: Language;
  press(customId: string, label: string): Promise<void>;
  choose(customId: string, values: readonly string[], label: string): Promise<void>;
};

/** Keeps a button from being pressed again until the answer has come. */
export async function whileBusy(button: HTMLButtonElement, work: () => Promise<void>): Promise<void> {
  if (button.getAttribute('aria-disabled') === 'true') return;
  button.setAttribute('aria-disabled', 'true');
  try {
    await work();
  } finally {
    button.removeAttribute('aria-disabled');
  }
}
