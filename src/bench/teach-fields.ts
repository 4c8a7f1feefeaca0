/**
 * Teaches where fields go wrong, and writes the weights to `models/taught-fields.json`.
 *
 * npm run teach : last, from the talks with their findings in `fixtures/lessons/talks/`. They are read as any talk is; what
 * was found at its place is set beside the finding, field by field. The same talks and the same reader give the same file.
 */
import { FIELDS_FILE } from '../4-observations/taught/doubt-fields.ts';
import { teach } from '../4-observations/taught/teach.ts';
import { lessonsOf, readFieldTalks } from './field-lessons.ts';
import { writeModel } from './lessons.ts';

const lessons = readFieldTalks().flatMap(lessonsOf);
const cases = [...new Set(lessons.flatMap(({ about }) => about))].sort();
const taught = teach(lessons, cases);
const mistakes = lessons.reduce((sum, { finds }) => sum + finds.length, 0);
console.log(`${lessons.length} findings, ${mistakes} fields wrong; ${Object.keys(taught.weights).length} features`);
writeModel(FIELDS_FILE, taught);
