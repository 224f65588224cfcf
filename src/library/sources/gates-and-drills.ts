// What is known of who may do what, and of how hard the drills are. Joined by ../sources.ts.

import type { Source } from '../types.ts';

export const GATE_SOURCES: readonly Source[] = [
  {
    id: 'G1',
    fact: 'Athletes over 100 kg (220 lb) drop from no more than 46 cm (18 in).',
    mark: 'P',
    source: 'NSCA position statement 1993, item 6',
  },
  {
    id: 'G2',
    fact: 'Depth jumps are for a small part of athletes, strong from resistance training; no ratio is given.',
    mark: 'P',
    source: 'NSCA position statement 1993, items 5 and 6',
  },
  {
    id: 'G3',
    fact: 'Hard jumping for the lower body asks for a back squat of 1.5 times body mass, by some 1.25 to 1.5. Softened since: a default that a coach can change.',
    mark: 'S',
    source: 'attributed to the NSCA',
  },
  {
    id: 'G4',
    fact: 'Gate of speed: five squats with 60 % of body mass within 5 s.',
    mark: 'S',
    source: 'handbook',
  },
  {
    id: 'G5',
    fact: 'Gate of balance: 30 s on one leg before a beginner jumps.',
    mark: 'S',
    source: 'handbook',
  },
  {
    id: 'G6',
    fact: 'No depth jumps before puberty, as growth plates are open.',
    mark: 'S',
    source: 'handbook',
  },
  {
    id: 'G7',
    fact: 'Drop heights in print run from 41 to 107 cm, with 76 to 81 usual; studies use 20 to 60. The ceilings by level here are common practice.',
    mark: 'M',
    source: 'Potach & Chu, from memory; tables of studies (P)',
  },
  { id: 'G8', fact: 'Floor and shoes take up shock.', mark: 'P', source: 'NSCA position statement 1993, item 9' },
  {
    id: 'G9',
    fact: 'Easier drills come before harder ones, behind a full warm-up.',
    mark: 'P',
    source: 'NSCA position statement 1993, item 10',
  },
  {
    id: 'G10',
    fact: 'Nobody jumps tired; every set starts from full recovery.',
    mark: 'P',
    source: 'NSCA position statement 1993, item 8',
  },
  {
    id: 'G11',
    fact: 'Back from knee surgery in four stages: low and two-legged; moderate and one-legged; higher and in all directions; maximal. Opened by criteria rather than dates, and signed by medicine.',
    mark: 'P',
    source: 'Buckthorpe & Della Villa 2021, Int J Sports Phys Ther 16(3):879–895',
  },
  {
    id: 'G12',
    fact: 'Tendon pain of 10: up to 3 go on; 4 to 5 hold; above 5, or worse the next morning, stop.',
    mark: 'C',
    source: 'pain-monitoring model, Silbernagel 2007, read in a secondary text (S); its use here is common practice',
  },
  {
    id: 'G13',
    fact: 'Fast growth goes with more injuries.',
    mark: 'P',
    source: 'Parry 2024, Br J Sports Med 58:1001',
  },
];

export const DRILL_SOURCES: readonly Source[] = [
  {
    id: 'D1',
    fact: 'Classes from easy to hard: jumps in place, standing jumps, multiple hops and jumps, bounds, box drills, depth jumps.',
    mark: 'P',
    source: 'Ebben 2007, NSCA Performance Training J 6(5); with bounds as a class of their own in coaching texts',
  },
  {
    id: 'D2',
    fact: 'The same drill is harder on one leg than on two.',
    mark: 'P',
    source: 'Ebben 2007, NSCA Performance Training J 6(5)',
  },
  {
    id: 'D3',
    fact: 'How high one jumps, or drops from, tells most about how hard a drill is.',
    mark: 'P',
    source: 'Ebben 2007, NSCA Performance Training J 6(5)',
  },
  {
    id: 'D4',
    fact: 'Tuck and pike jumps stand low in the order of classes and yet put the highest forces through the knee.',
    mark: 'P',
    source: 'Ebben 2007, NSCA Performance Training J 6(5)',
  },
  {
    id: 'D5',
    fact: 'Highest landing force in body weights: drop from 90 cm 5.39; depth jump from 90 cm 4.93; drop from 60 cm 4.30; standing long jump 4.22; vertical jump 3.34; depth jump from 30 cm 2.78.',
    mark: 'P',
    source: 'Wallace 2010, J Strength Cond Res 24(1):207–212',
  },
  {
    id: 'D6',
    fact: 'A jump goes from two feet to two, a hop from one foot to the same, a bound from one foot to the other.',
    mark: 'S',
    source: 'coaching texts',
  },
  {
    id: 'D7',
    fact: 'Bounding is usually given as a distance; how many metres a contact covers is nowhere published, so each drill says its own.',
    mark: 'C',
    source: 'common practice, no source',
  },
  {
    id: 'D8',
    fact: 'No direction, vertical, horizontal or mixed, did better than another for jump height in 8 weeks: they are mixed for breadth.',
    mark: 'P',
    source: 'Moran 2024, PLoS ONE 19(5):e0295786',
  },
  {
    id: 'D9',
    fact: 'A counter-movement uses the stretch-shortening cycle, a still start does not; the difference is about 3 to 6 cm of height.',
    mark: 'S',
    source: 'coaching texts; papers on the eccentric utilisation ratio',
  },
];
