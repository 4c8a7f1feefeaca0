/** In the line and in the talk the up and down keys go from one button to the next. */
export function moveAmongButtons(event: KeyboardEvent): void {
  if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
  const part = (event.currentTarget as HTMLElement).closest('.line, .talk');
  const buttons = [...(part?.querySelectorAll<HTMLButtonElement>('button.mark, button.stretch') ?? [])];
  const at = buttons.indexOf(event.target as HTMLButtonElement);
  const next = buttons[at + (event.key === 'ArrowDown' ? 1 : -1)];
  event.preventDefault();
  next?.focus();
}
