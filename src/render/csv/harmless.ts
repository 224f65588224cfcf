// Keeps a spreadsheet from making something else of a text: a formula that runs, a date, a number, a truth value. Called
// for every text cell of a CSV file. What could be taken wrongly gets an apostrophe in front, which people read over;
// a text that starts with one gets another, so that whoever takes one off has the text again.

/** What starts a formula, also in its full-width forms, and the apostrophe itself. */
const FORMULA_OR_APOSTROPHE = /^[=+\-@\t\r'＝＋－＠−]/u;
const DIGIT = /\p{Nd}/u;
const LETTER = /^\p{L}/u;
const WORDS = /\p{L}+/gu;

/** Words a number may stand beside in a date or an amount, in the languages of many spreadsheets. */
const DATE_WORDS = new Set(
  `jan january januar januari janvier enero gennaio január jän jänner janv ene gen
   feb february februar februari février febrero febbraio február febr févr
   mar march märz maart mars marzo március mär mrt márc
   apr april avril abril aprile április avr abr ápr
   may mai mei mayo maggio május mag máj
   jun june juni juin junio giugno június giu jún
   jul july juli juillet julio luglio július juil lug júl
   aug august augustus août agosto augusztus ago
   sep sept september septembre septiembre settembre szeptember set szept
   oct october oktober octobre octubre ottobre október okt ott
   nov november novembre noviembre
   dec december dezember décembre diciembre dicembre dez déc dic
   mon tue wed thu fri sat sun monday tuesday wednesday thursday friday saturday sunday
   mo di mi do fr sa so montag dienstag mittwoch donnerstag freitag samstag sonntag
   ma wo vr za zo maandag dinsdag woensdag donderdag vrijdag zaterdag zondag
   hétfő kedd szerda csütörtök péntek szombat vasárnap
   eur usd gbp chf huf`.split(/\s+/u),
);
/** Words that make a time, an exponent or a date of a number before them: `5 pm`, `1e5`, `2027-01-04T10:00`. */
const WORDS_AFTER_A_NUMBER = new Set(['am', 'pm', 'a', 'p', 'e', 'd', 't', 'z']);
const TRUTH_WORDS = new Set(['true', 'false', 'wahr', 'falsch', 'waar', 'onwaar', 'igaz', 'hamis', 'vrai', 'faux']);

/** Whether a spreadsheet may read the text as anything but text. Errs on the side of yes. */
export function isMistakable(text: string): boolean {
  const plain = text.trim().toLowerCase();
  if (FORMULA_OR_APOSTROPHE.test(text) || FORMULA_OR_APOSTROPHE.test(plain)) return true;
  if (!DIGIT.test(plain)) return TRUTH_WORDS.has(plain);
  const numberFirst = !LETTER.test(plain);
  return (plain.match(WORDS) ?? []).every(
    (word) => DATE_WORDS.has(word) || (numberFirst && WORDS_AFTER_A_NUMBER.has(word)),
  );
}

/** The text as a spreadsheet leaves it alone. */
export function harmless(text: string): string {
  return isMistakable(text) ? `'${text}` : text;
}
