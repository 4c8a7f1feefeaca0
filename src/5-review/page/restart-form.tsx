import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { shortTime } from '../../../shared/wording/short.ts';
import { FormDeeds } from './form-deeds.tsx';
import { decide } from './inspection-state.ts';
import { closeForm } from './keys.ts';
import { problem } from './notices.ts';
import { Distance } from './run-form.tsx';
import { restart } from './start-form.ts';

/** Where the counter starts anew: what was said from there on becomes a run of its own. */
export function RestartForm() {
  const [{ run, atSeconds }] = useState(restart.value);
  const [less, setLess] = useState('0');
  const form = useRef<HTMLFormElement>(null);
  useLayoutEffect(() => {
    form.current?.querySelector('input')?.select();
    form.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  const save = () => {
    const lessFeet = Number(less.replace(',', '.'));
    if (less.trim() === '' || !Number.isFinite(lessFeet)) {
      problem.value = 'The reading where it begins is a number.';
      return;
    }
    closeForm();
    void decide({ action: 'start-run', run, atSeconds, lessFeet }, `A new run begins at ${shortTime(atSeconds)}.`);
  };
  return (
    <form
      ref={form}
      class="fields"
      aria-label="The counter starts anew"
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      <p class="wide">
        From {shortTime(atSeconds)} on, what was said in run {run} becomes a run of its own. When the counter was not
        set to zero there, what it read is taken off the distances of the new run.
      </p>
      <Distance name="less" title="The counter read" value={less} onChange={setLess} />
      <FormDeeds save="A new run begins here" />
    </form>
  );
}
