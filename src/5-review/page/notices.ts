/** What the person must be told: seen on top of the page, and said to screen readers. */
import { signal } from '@preact/signals';

/** A sentence the person must see. */
export const problem = signal<string | null>(null);
export const isConnected = signal(true);
/** The last thing done. */
export const lastDeed = signal('');
