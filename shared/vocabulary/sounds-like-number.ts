/** Numbers that sound alike in English: thirteen and thirty to nineteen and ninety, with or without decimals ("15.5"). */
/** The number in a word as printed: "50," is 50. */
export const numberIn = (printed: string): string => printed.replace(/[^\d.]+|\.$/g, '');

export function soundsLikeNumber(printed: string): string | null {
  const parts = /^(1[3-9]|[3-9]0)(\.\d+)?$/.exec(printed);
  if (!parts?.[1]) return null;
  const whole = Number(parts[1]);
  return `${whole < 20 ? (whole - 10) * 10 : whole / 10 + 10}${parts[2] ?? ''}`;
}
