// The chain behind a week as one JSON object, in the names of the tables. Called by `footfall why --format json`.

import { isoDate } from '../../util/days.ts';
import type { JsonObject } from '../../report/json-value.ts';
import type { SessionTold } from '../../report/why/sessions-told.ts';
import type { Told } from '../../report/why/told.ts';
import type { Why } from '../../report/why.ts';

/** The document, with its end of line. */
export const renderWhyJson = (why: Why): string => `${JSON.stringify(whyObject(why), null, 2)}\n`;

function whyObject(why: Why): JsonObject {
  return {
    athlete: why.athlete,
    week: why.week,
    starts: isoDate(why.starts),
    phase: why.phase,
    kind: why.kind,
    contacts: why.contacts,
    most_contacts: why.mostContacts,
    bound_by: why.boundBy,
    why: why.why,
    blocked: why.blocked,
    chain: why.chain.map(toldObject),
    bounds: why.bounds.map((bound) => ({ ...toldObject(bound), by: bound.by, most: bound.most, held: bound.held })),
    advice: why.advice.map(({ words, places, rule, adds, contacts }) => ({
      words,
      places,
      rule,
      adds: adds.map(({ list, item }) => ({ list, item })),
      contacts,
    })),
    sessions: why.sessions.map(sessionObject),
  };
}

const toldObject = ({ about, words, places, mark, rule }: Told): JsonObject => ({ about, words, places, mark, rule });

function sessionObject(session: SessionTold): JsonObject {
  return {
    date: isoDate(session.day),
    at_minute: session.at,
    place: session.place,
    minutes: session.minutes,
    contacts: session.contacts,
    lifts: session.lifts,
    reasons: session.reasons.map(toldObject),
    lines: session.lines.map(({ order, exercise, dose, contacts, load, reasons }) => ({
      order,
      exercise,
      dose,
      contacts,
      load,
      reasons: reasons.map(toldObject),
    })),
  };
}
