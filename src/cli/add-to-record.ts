// Rows at the end of a file of the record: the plan is opened with it, and read again with the rows before any is written.
// Called by the parts of `footfall done`, which hold the file's lock meanwhile.

import { hasErrors } from '../diagnostics/collector.ts';
import type { Diagnostic } from '../diagnostics/types.ts';
import { appendText } from '../host/append-text.ts';
import { whileLocked } from '../host/file-lock.ts';
import { readDocuments } from '../language/read-documents.ts';
import { loadPlan } from '../plan/load-plan.ts';
import type { Plan } from '../plan/types.ts';
import type { FileHost } from '../read/file-host.ts';
import type { Documents } from '../read/types.ts';
import type { Day } from '../util/days.ts';
import type { ExitStatus } from './exit-status.ts';
import { failureStatus } from './open-plan.ts';
import { addition, findRecordFile, withAddition } from './record-file.ts';
import type { RecordFile, RecordKey, RecordRow } from './record-file.ts';
import { refuse } from './session.ts';
import type { Session } from './session.ts';
import { folderOf, tellFindings } from './tell-findings.ts';

/** The plan and its file, both sound. */
export interface Opened {
  readonly ok: true;
  readonly record: RecordFile;
  readonly documents: Documents;
  readonly plan: Plan;
  readonly folder: string;
}

export type Record = Opened | { readonly ok: false; readonly status: ExitStatus };

/** The plan with its record; one that isn't there yet is as good as one without rows. */
export async function openRecord(path: string, key: RecordKey, session: Session): Promise<Record> {
  const folder = folderOf(path, session);
  const named = findRecordFile(readDocuments(path, session.files).value, key, folder, session.files);
  const files = named === undefined ? session.files : withAddition(session.files, named, folder, headerFor(named));
  const read = readPlan(path, files, session.today);
  if (read.plan === undefined) {
    await tellFindings(read.diagnostics, { files: read.documents.files, folder }, session);
    return { ok: false, status: failureStatus(read.diagnostics) };
  }
  if (named === undefined)
    return { ok: false, status: await refuse(session, `${folder} names no record: ${wayToRecord(key)}`) };
  return { ok: true, record: named, documents: read.documents, plan: read.plan, folder };
}

const wayToRecord = (key: RecordKey): string => `write  record: { ${key}: record/${key}.csv }  in its entry file`;

const headerFor = (record: RecordFile): string => (record.bytes.length === 0 ? addition(record, []) : '');

interface ReadPlan {
  readonly documents: Documents;
  /** Absent where there are errors. */
  readonly plan?: Plan;
  readonly diagnostics: readonly Diagnostic[];
}

function readPlan(path: string, files: FileHost, today: Day): ReadPlan {
  const documents = readDocuments(path, files);
  const loaded = loadPlan(documents.value, today);
  const diagnostics = [...documents.diagnostics, ...loaded.diagnostics];
  const plan = hasErrors(diagnostics) ? undefined : loaded.value;
  return { documents: documents.value, diagnostics, ...(plan !== undefined && { plan }) };
}

/** Does something with the record while no other footfall adds to it; the plan is opened anew when it is our turn. */
export async function withRecord(
  path: string,
  key: RecordKey,
  session: Session,
  change: (opened: Opened) => Promise<ExitStatus>,
): Promise<ExitStatus> {
  const named = await openRecord(path, key, session);
  if (!named.ok) return named.status;
  return await whileLocked(named.record.location, async () => {
    const opened = await openRecord(path, key, session);
    return opened.ok ? await change(opened) : opened.status;
  });
}

/** Adds the rows in one write, or none of them, and tells what is wrong; the status then. */
export async function appendRows(
  path: string,
  { record, folder }: Opened,
  rows: readonly RecordRow[],
  session: Session,
): Promise<ExitStatus | undefined> {
  const text = addition(record, rows);
  const checked = readPlan(path, withAddition(session.files, record, folder, text), session.today);
  if (checked.plan === undefined) {
    await tellFindings(checked.diagnostics, { files: checked.documents.files, folder }, session);
    await session.err.write('footfall: nothing was added to the record\n');
    return failureStatus(checked.diagnostics);
  }
  if (rows.length > 0) appendText(record.location, text, record.bytes.length);
  return undefined;
}
