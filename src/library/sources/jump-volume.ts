// What is known of how much jumping: contacts by level, doses in trials, jumps in practice. Joined by ../sources.ts.

import type { Source } from '../types.ts';

export const JUMP_VOLUME_SOURCES: readonly Source[] = [
  {
    id: 'V1',
    fact: 'Foot contacts in one session: beginners 80 to 100, intermediates 100 to 120, advanced athletes 120 to 140. Some texts print the same numbers for a week, so the unit is always named.',
    mark: 'S',
    source:
      'Potach & Chu, ch. 18 in Haff & Triplett (eds), Essentials of Strength Training and Conditioning, 4th ed., 2016',
  },
  {
    id: 'V2',
    fact: 'A beginner starts with 50 to 100 contacts a session, one to three sessions a week.',
    mark: 'C',
    source: 'common practice, no source',
  },
  {
    id: 'V3',
    fact: 'Advanced athletes jump two to four times a week at 120 to 140 contacts.',
    mark: 'C',
    source: 'common practice, no source',
  },
  {
    id: 'V4',
    fact: "It takes about three months from a beginner's volume to 120 to 140 contacts; the most falls in the last month before the season.",
    mark: 'C',
    source: 'common practice, no source',
  },
  {
    id: 'V5',
    fact: 'Children and youth begin with 50 to 60 jumps a session, twice a week on days that are not neighbours, and reach 100 to 120 within 8 to 10 weeks.',
    mark: 'P',
    source:
      'Johnson, Salzberg & Stevenson 2011, J Strength Cond Res 25(9):2623–2633; Michailidis 2014, Int J Sport Studies 4(12):1455–1461',
  },
  {
    id: 'V6',
    fact: '36 trials used means of 18 to 231 contacts a session, 21 of them under 80. A session below the band of its level is nothing to worry about.',
    mark: 'P',
    source:
      'tables in Ramirez-Campillo 2023, Sports Med Open; J Sports Sci Med 2020;19:489; Wang 2024, J Sports Sci Med 23:177–195',
  },
  {
    id: 'V7',
    fact: 'Jump height gained more with over 10 weeks, over 20 sessions and over 50 jumps a session, and with several kinds of jump rather than one.',
    mark: 'P',
    source: 'Sáez de Villarreal 2009, J Strength Cond Res 23(2):495–506',
  },
  {
    id: 'V8',
    fact: 'Sprints gained more with under 10 weeks, at least 15 sessions, over 80 jumps a session and horizontal drills.',
    mark: 'P',
    source: 'Sáez de Villarreal 2012, J Strength Cond Res 26(2):575–584',
  },
  {
    id: 'V9',
    fact: 'The same volume in one session a week or in two gave the same gain: counter-movement jump +10.6 % and +10.1 %.',
    mark: 'P',
    source: 'Ramirez-Campillo 2018, Front Physiol 9:934',
  },
  {
    id: 'V10',
    fact: '420, 840 and 1,680 drop jumps in 7 weeks: the middle dose gained about 12 %, the largest about 18 %, with no certain difference between the two.',
    mark: 'P',
    source: 'Sáez de Villarreal 2008, J Strength Cond Res 22(3):715–725',
  },
  {
    id: 'V11',
    fact: "Jumps counted in training of one hall-sport squad: girls 11 to 251 a week (13.7 an hour, in matches 41.9), boys 50 to 666 (35.7 an hour, in matches 62.2). A textbook's 1,000 to 4,000 a week is far from any direct count.",
    mark: 'P',
    source: 'Bahr & Bahr 2014, Br J Sports Med 48:1322; the textbook: Developing Power, p. 121',
  },
  {
    id: 'V12',
    fact: 'A contact is each time one foot, or both together, meets the ground; some papers count each leg. Kept apart here: sets, reps, legs and contacts of a rep.',
    mark: 'S',
    source: 'convention of handbooks',
  },
  {
    id: 'V13',
    fact: 'Jumps of 38 cm or more in a day of college women: middles 65 ± 39, opposites 48 ± 24, outsides 39 ± 26, setters 19 ± 17.',
    mark: 'P',
    source: 'Sanders 2024, Transl Sports Med 5933923',
  },
  {
    id: 'V14',
    fact: 'Jumping and sore knees: in juniors odds rose 1.72 times with each more hour of training and 3.88 times with each more set a week; in 65 elite men no sure link was seen. Reason for warnings and totals that can be seen, not for fixed limits.',
    mark: 'P',
    source: 'Visnes & Bahr 2013, Scand J Med Sci Sports 23:607; PMID 38671558 (2024)',
  },
  {
    id: 'V15',
    fact: 'Girls of 12.9 years gained the same from 36 to 54 contacts a session as from 72 to 108.',
    mark: 'P',
    source: 'Noutsos 2024, J Funct Morphol Kinesiol 9(4):204',
  },
];
