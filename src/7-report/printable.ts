/**
 * Text that can be printed as it stands. Control characters have no shape, and marks that turn the direction of
 * writing would turn what follows them as well; both are left out. Everything else stays as it was said or typed.
 */
export function printableText(text: string): string {
  return text.replace(
    /[^\t\n\r\u0020-\u007e\u00a0-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]|[\u202a-\u202e\u2066-\u2069]/gu,
    '',
  );
}
