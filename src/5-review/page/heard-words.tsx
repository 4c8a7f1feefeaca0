import type { Heard } from '../../../shared/schemas/draft.ts';
import { shortTime } from '../../../shared/wording/short.ts';
import { plainWords } from '../subject.ts';

/** The words as they were heard; those read as something else are marked and say what as. */
export function HeardWords({
  heard,
  respelled,
}: {
  heard: Heard;
  respelled: readonly { heard: string; taken: string }[];
}) {
  return (
    <figure class="heard">
      <blockquote>{marked(heard.text, respelled)}</blockquote>
      <figcaption>
        heard at {shortTime(heard.start)}
        {respelled.length > 0 &&
          ` · ${respelled.map(({ heard: as, taken }) => `“${as}” taken as ${taken}`).join(', ')}`}
      </figcaption>
    </figure>
  );
}

function marked(text: string, respelled: readonly { heard: string; taken: string }[]) {
  const tokens = text.split(/(\s+)/);
  const out: preact.ComponentChild[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const found = respelled.find(({ heard }) => {
      const length = plainWords(heard).split(' ').length * 2 - 1;
      return plainWords(tokens.slice(i, i + length).join('')) === plainWords(heard);
    });
    if (!found || tokens[i]!.trim() === '') {
      out.push(tokens[i]);
      continue;
    }
    const length = plainWords(found.heard).split(' ').length * 2 - 1;
    out.push(
      <mark key={i} title={`taken as ${found.taken}`}>
        {tokens.slice(i, i + length).join('')}
      </mark>,
    );
    i += length - 1;
  }
  return out;
}
