import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { QueueItem } from '../queue.ts';
import { confirmItem, openForm } from './actions.ts';
import { FormDeeds } from './form-deeds.tsx';
import { siteTitle } from './words-shown.ts';

/** A field of the site: address, year built and the like. */
export function SiteForm({ item }: { item: Extract<QueueItem, { what: 'site' }> }) {
  const was = item.item.value;
  const [text, setText] = useState(String(was));
  const input = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => input.current?.select(), []);
  return (
    <form
      class="fields"
      aria-label={siteTitle(item.name)}
      onSubmit={(event) => {
        event.preventDefault();
        const number = Number(text);
        const now = typeof was === 'number' && text.trim() !== '' && Number.isFinite(number) ? number : text.trim();
        openForm.value = null;
        confirmItem(now === was || now === '' ? undefined : { value: { was, now } });
      }}
    >
      <label class="field wide">
        <span>{siteTitle(item.name)}</span>
        <input
          ref={input}
          name="value"
          autocomplete="off"
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </label>
      <FormDeeds save="Save and go on" />
    </form>
  );
}
