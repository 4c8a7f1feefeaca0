/** In a list of buttons the up and down keys go from one to the next. */
export function moveAmongButtons(event: KeyboardEvent): void {
  if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
  const buttons = [...(event.currentTarget as HTMLElement).querySelectorAll('button')];
  const at = buttons.indexOf(event.target as HTMLButtonElement);
  const next = buttons[at + (event.key === 'ArrowDown' ? 1 : -1)];
  event.preventDefault();
  next?.focus();
}
