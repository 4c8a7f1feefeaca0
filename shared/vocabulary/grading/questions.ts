/** What is asked of the inspector because a published limit or the report needs it and talk seldom says it. */
import type { KindName } from '../kinds/index.ts';

/** Whether soil is there: the published tiers of these kinds turn on it. */
export const soilQuestions: Partial<Record<KindName, string>> = {
  'offset-joint': 'Does soil show around this joint?',
  'open-joint': 'Does soil show in the gap?',
  infiltration: 'Does soil come in with the water?',
};

/** Facts of the whole inspection. */
export const inspectionQuestions = {
  ownerPart: 'Where does the owner’s part of the line end, and who says so?',
  date: 'On which day was the inspection?',
  inspector: 'Who inspected?',
  entryOffset: 'What did the counter read where the camera entered the pipe?',
  compass: 'Where is the access, by compass?',
} as const;

export type InspectionQuestion = keyof typeof inspectionQuestions;
