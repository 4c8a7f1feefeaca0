/** What the pipe is made of. */
import type { MaterialName } from '../../../shared/vocabulary/materials.ts';
import type { FamilyExamples } from '../example.ts';

export const examples = {
  says: [
    { value: 'abs', ways: ['black plastic', 'A B S', "it's ABS", 'abs pipe'] },
    {
      value: 'pvc',
      ways: ['P.V.C.', 'schedule forty', 'white plastic', 'SDR 35', 'S D R thirty five', "we're in PVC"],
    },
    { value: 'cast-iron', ways: ['cast iron', 'four inch cast', 'old cast iron soil pipe', 'c i pipe'] },
    { value: 'clay', ways: ['clay tile', 'terra cotta', 'vitrified clay', 'V C P'] },
    { value: 'concrete', ways: ['six inch concrete', 'concrete pipe'] },
    { value: 'asbestos-cement', ways: ['transite', 'asbestos cement', 'AC pipe'] },
    { value: 'bituminous-fiber', ways: ['Orangeburg', 'orange berg', 'pitch fiber', 'that tar paper pipe'] },
    { value: 'ductile-iron', ways: ['ductile iron', 'ductile'] },
    { value: 'galvanized', ways: ['galvanized steel', 'galvanized pipe'] },
    { value: 'copper', ways: ['copper', 'copper drain'] },
    { value: 'lead', ways: ['lead pipe', 'a lead bend'] },
    { value: 'hdpe', ways: ['HDPE', 'H D P E', 'poly pipe'] },
    { value: 'liner', ways: ['CIPP', 'lined pipe'] },
  ],
  never: ['a plastic bag', 'it leads to the street', 'take the lead', 'plastic toy'],
  notYet: [
    {
      value: null,
      ways: [
        'the cast of the show',
        'iron that out later',
        'he cast a line',
        'a red clay yard',
        'the concrete driveway',
      ],
    },
  ],
} satisfies FamilyExamples<MaterialName>;
