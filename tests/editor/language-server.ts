// A YAML language server as editors run it: a process of its own, spoken to over its protocol on standard input and
// output. Started once for the tests of a file, with nothing set but what every editor sets.

import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import {
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node.js';
import type {
  CompletionItem,
  CompletionList,
  Diagnostic,
  Hover,
  Position,
  PublishDiagnosticsParams,
} from 'vscode-languageserver-protocol';

export interface Editor {
  /** Opens a text as if it were the file at a path; resolves with what the server finds in it. */
  readonly open: (path: string, text: string) => Promise<readonly Diagnostic[]>;
  readonly completions: (path: string, position: Position) => Promise<readonly CompletionItem[]>;
  /** The text of the hover, or nothing. */
  readonly hover: (path: string, position: Position) => Promise<string>;
  readonly close: () => Promise<void>;
}

/** Where a stretch of a text is, as the protocol counts: `¦` marks the place and is taken out. */
export function marked(textWithMark: string): { readonly text: string; readonly position: Position } {
  const before = textWithMark.slice(0, textWithMark.indexOf('¦')).split('\n');
  return {
    text: textWithMark.replace('¦', ''),
    position: { line: before.length - 1, character: before.at(-1)?.length ?? 0 },
  };
}

export async function startEditor(folder: string): Promise<Editor> {
  const server = spawn(
    process.execPath,
    [createRequire(import.meta.url).resolve('yaml-language-server/bin/yaml-language-server'), '--stdio'],
    { stdio: ['pipe', 'pipe', 'ignore'] },
  );
  const connection = createProtocolConnection(
    new StreamMessageReader(server.stdout),
    new StreamMessageWriter(server.stdin),
  );
  const waiting = new Map<string, (found: readonly Diagnostic[]) => void>();
  connection.onNotification('textDocument/publishDiagnostics', ({ uri, diagnostics }: PublishDiagnosticsParams) => {
    waiting.get(uri)?.(diagnostics);
  });
  connection.onRequest('workspace/configuration', ({ items }: { items: readonly unknown[] }) => items.map(() => ({})));
  connection.onRequest('client/registerCapability', () => null);
  connection.listen();
  const uriOf = (path: string): string => pathToFileURL(`${folder}/${path}`).href;
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: pathToFileURL(folder).href,
    capabilities: {
      textDocument: { completion: {}, hover: {}, publishDiagnostics: {} },
      workspace: { configuration: true },
    },
    workspaceFolders: [{ uri: pathToFileURL(folder).href, name: 'plan' }],
  });
  await connection.sendNotification('initialized', {});
  const at = (path: string, position: Position): object => ({ textDocument: { uri: uriOf(path) }, position });
  let version = 0;
  return {
    open: async (path, text) => {
      const uri = uriOf(path);
      const found = new Promise<readonly Diagnostic[]>((resolve) => {
        waiting.set(uri, resolve);
      });
      version += 1;
      await connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri, languageId: 'yaml', version, text },
      });
      return await found;
    },
    completions: async (path, position) => {
      const list: CompletionList | null = await connection.sendRequest('textDocument/completion', at(path, position));
      return list?.items ?? [];
    },
    hover: async (path, position) => {
      const hover: Hover | null = await connection.sendRequest('textDocument/hover', at(path, position));
      const contents = hover?.contents ?? '';
      return typeof contents === 'object' && 'value' in contents ? contents.value : JSON.stringify(contents);
    },
    close: async () => {
      await connection.sendRequest('shutdown');
      await connection.sendNotification('exit');
      connection.dispose();
      server.kill();
    },
  };
}
