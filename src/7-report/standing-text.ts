/**
 * What every report says whatever was found. The words are ours; what has to be said follows the published standards
 * named beside it.
 */

export const draftNotice = 'Draft, not signed. The inspector has not yet stood behind it.';
export const noRun = 'No run of the camera is on record.';
export const notStated = 'not stated';

/** InterNACHI sewer scope SOP 1.2, 2.1 to 2.3 and 1.3 (sections 1 and 2 read at the publisher). */
export const limits: readonly string[] = [
  'This report describes what the camera saw on the day of the inspection. It predicts nothing about later days.',
  'The inspection is visual and not technically exhaustive. What is hidden, buried, under water or outside the pipe was not seen.',
  'A camera measures neither slope nor strength nor tightness; where numbers are given for these, the report says what they rest on.',
  'Distances are read from the counter of the camera and may be off by the larger of 0.5 % and 1 ft. Nothing was marked or located on the ground unless the report says so.',
  'Age alone is no defect. Pipe near or beyond its usual life is not graded for that.',
  'No costs are given. A price needs a licensed contractor who has seen the place.',
  'The next steps are advice to the reader. The inspector decides what the report says; local codes and licensed trades decide what is done.',
];

export const ownershipDiffers =
  'Who owns and repairs which part of a lateral differs from place to place: in some the owner’s part ends at the property line, in others at the public main, with or without the tap. Ask the city or sewer district before work is planned.';

export const ownershipNotStated =
  'Where the owner’s part of this line ends was not stated, so no finding is assigned to anybody.';

export const howToVerify =
  'To check that nothing has changed since it was signed, run “lineword verify” on the folder of this inspection. It compares the recording, the words heard, the draft, every decision and the grades with the sums that were signed.';
