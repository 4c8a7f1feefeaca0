import { shortTime } from '../../../shared/wording/short.ts';
import type { Choice } from '../offer-choices.ts';
import { openForm } from './actions.ts';
import { unit } from './inspection-state.ts';
import { choices, takeChoice } from './take-choice.ts';
import { choiceText } from './words-shown.ts';

/** Some of what the number keys take, each under its number, after what they are. */
export function ChoiceButtons({ isShown, title }: { isShown: (choice: Choice) => boolean; title?: string }) {
  if (!choices.value.some(isShown)) return null;
  return (
    <div class="offers">
      {title && <span class="hint">{title}</span>}
      {choices.value.map((choice, index) =>
        isShown(choice) ? (
          <button
            key={choiceText(choice, unit.value)}
            type="button"
            class="offer"
            onClick={() => takeChoice(index + 1)}
          >
            <kbd>{index + 1}</kbd> {choiceText(choice, unit.value)}
          </button>
        ) : null,
      )}
    </div>
  );
}

/** What was named somewhere and is no finding, with its words: shown when nothing else is at hand. */
export function LeftOut() {
  const findings = choices.value.filter((choice) => choice.what === 'finding');
  if (findings.length === 0) return null;
  return (
    <section class="other" aria-label="What may be missing">
      <p class="hint">Named in the talk and no finding: is one of these missing?</p>
      <ol class="choices">
        {findings.map((choice, index) => (
          <li key={`${choice.finding.heard.start}|${choiceText(choice, unit.value)}`}>
            <button type="button" class="offer" onClick={() => takeChoice(index + 1)}>
              <kbd>{index + 1}</kbd> {choiceText(choice, unit.value)}{' '}
              <span class="file">
                {shortTime(choice.finding.heard.start)} “{choice.finding.heard.text}”
              </span>
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}

/** What the words at hand hold besides: things to add, and values that nothing doubts. */
export function OtherChoices({ isTalk }: { isTalk: boolean }) {
  // While a form is open, numbers are typed into it.
  if (openForm.value || choices.value.length === 0) return null;
  const isOther = (choice: Choice) => choice.what === 'value' && choice.flag === null;
  const isUsual = (choice: Choice) => choice.what === 'value' && choice.isUsual === true;
  return (
    <section class="other" aria-label="What else may be said">
      <ChoiceButtons title={isTalk ? 'Write down' : 'Also add'} isShown={({ what }) => what === 'finding'} />
      <ChoiceButtons title="Change to" isShown={(choice) => isOther(choice) && !isUsual(choice)} />
      <ChoiceButtons title="Not said" isShown={(choice) => isOther(choice) && isUsual(choice)} />
    </section>
  );
}
