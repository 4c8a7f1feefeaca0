import { fieldLetters, fieldTitles } from './field-letters.ts';

/** The title of a field, with the letter underlined that goes to it. */
export function FieldTitle({ field }: { field: string }) {
  const title = fieldTitles[field] ?? field;
  const at = title.toLowerCase().indexOf(fieldLetters[field] ?? '');
  if (at === -1) return <>{title}</>;
  return (
    <>
      {title.slice(0, at)}
      <u>{title[at]}</u>
      {title.slice(at + 1)}
    </>
  );
}
