/** HTML that cannot be broken by what was said or typed: every value put in is escaped. */

import { printableText } from '../printable.ts';

/** Markup that is already safe. */
export class SafeHtml {
  readonly markup: string;
  constructor(markup: string) {
    this.markup = markup;
  }
}

type Part = string | number | SafeHtml | readonly Part[] | null | false;

/** Template tag: strings are escaped, SafeHtml goes in as it is, lists are joined, null and false are nothing. */
export function html(strings: TemplateStringsArray, ...parts: Part[]): SafeHtml {
  return new SafeHtml(strings.reduce((out, string, index) => out + markupOf(parts[index - 1]!) + string));
}

function markupOf(part: Part): string {
  if (part === null || part === false) return '';
  if (part instanceof SafeHtml) return part.markup;
  if (Array.isArray(part)) return part.map(markupOf).join('');
  return escapeHtml(String(part));
}

export function escapeHtml(text: string): string {
  return printableText(text)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}
