/** What each kind is called before a person. */
import { kinds } from './kinds/index.ts';

const titles: ReadonlyMap<string, string> = new Map(kinds.map(({ name, title }) => [name, title]));

/** The title of a kind, or the name itself where no kind has it. */
export const kindTitle = (name: string): string => titles.get(name) ?? name;
