import { Dialog } from './dialog.tsx';
import { keyCommands } from './keys.ts';

const groups = ['Settle', 'Correct', 'Sound', 'Find'] as const;

export function HelpDialog() {
  return (
    <Dialog title="Keys">
      <div class="key-groups">
        {groups.map((group) => (
          <section key={group}>
            <h3>{group}</h3>
            <dl>
              {keyCommands
                .filter((command) => command.group === group)
                .map(({ shown, does }) => (
                  <div key={shown}>
                    <dt>
                      <kbd>{shown}</kbd>
                    </dt>
                    <dd>{does}</dd>
                  </div>
                ))}
            </dl>
          </section>
        ))}
      </div>
    </Dialog>
  );
}
