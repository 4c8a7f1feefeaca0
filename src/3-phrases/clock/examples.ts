/** Clock positions, and spans that run clockwise. */
import type { FamilyExamples } from '../example.ts';

export const examples = {
  says: [
    {
      value: { hour: 3, toHour: null },
      ways: [
        'fifteen, a crack at three',
        "at three o'clock",
        'three oclock',
        "3 o'clock",
        "around the 3 o'clock",
        '3:00',
        "three o' clock",
      ],
    },
    { value: { hour: 12, toHour: null }, ways: ["twelve o'clock", "roots at 12 o'clock"] },
    {
      value: { hour: 9, toHour: 3 },
      ways: [
        "nine to three o'clock",
        "from nine o'clock to three",
        "9 o'clock to 3 o'clock",
        "from nine o'clock around to three o'clock",
        "from nine over the top to three o'clock",
        "between nine and three o'clock",
      ],
    },
    {
      value: { hour: 10, toHour: 2 },
      ways: [
        "ten o'clock through two o'clock",
        "from ten to two o'clock",
        "10-2 o'clock",
        'from ten to two',
        'between 10 and 2',
      ],
    },
    { value: { hour: 3, toHour: 9 }, ways: ["three o'clock to nine o'clock", "3 to 9 o'clock"] },
    { value: { hour: 5, toHour: null }, ways: ["five or six o'clock"] },
  ],
  never: [
    'nine, roots at ten',
    'a wye at fifteen and roots at twelve',
    'around the clock',
    'at three feet',
    'fifteen past the hour',
    "forty o'clock",
    'six to four inch',
    'from 12 to 15 feet',
    'down from ten to four',
    'he is coming at 3:00 pm',
  ],
} satisfies FamilyExamples<{ readonly hour: number; readonly toHour: number | null }>;
