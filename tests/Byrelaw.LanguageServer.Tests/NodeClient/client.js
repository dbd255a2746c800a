// Drives `byrelaw language-server` with the protocol library that editors use, and prints what it is told, a line each.
// Usage: node client.js FOLDER COMMAND [ARGUMENT...]   The folder holds words.byre, rules.byre and farm.byre.
const { spawn } = require('node:child_process');
const { readFileSync } = require('node:fs');
const { join } = require('node:path');
const { pathToFileURL } = require('node:url');
const { createProtocolConnection, StreamMessageReader, StreamMessageWriter } = require('vscode-languageserver-protocol/node');

const [folder, command, ...args] = process.argv.slice(2);
const server = spawn(command, args, { stdio: ['pipe', 'pipe', 'inherit'] });
const connection = createProtocolConnection(new StreamMessageReader(server.stdout), new StreamMessageWriter(server.stdin));
const uri = name => pathToFileURL(join(folder, name)).href;
const waiting = [];
const place = (text, piece, into) => {
  const at = text.indexOf(piece) + into;
  const before = text.slice(0, at).split('\n');
  return { line: before.length - 1, character: before[before.length - 1].length };
};
const say = (what, value) => console.log(`${what}: ${value}`);
const problems = () => new Promise(resolve => waiting.push(resolve));

connection.onNotification('textDocument/publishDiagnostics', told => {
  if (told.uri === uri('rules.byre')) {
    waiting.shift()?.(told.diagnostics.map(one => `${one.range.start.line}:${one.range.start.character} ${one.code}`).join(' ') || 'none');
  }
});
connection.onRequest('client/registerCapability', () => null);

async function main() {
  connection.listen();
  const { capabilities, serverInfo } = await connection.sendRequest('initialize', {
    processId: process.pid, rootUri: pathToFileURL(folder).href, capabilities: { workspace: { didChangeWatchedFiles: { dynamicRegistration: true } } },
  });
  say('server', serverInfo.name);
  say('positions', capabilities.positionEncoding);
  await connection.sendNotification('initialized', {});

  const text = readFileSync(join(folder, 'rules.byre'), 'utf8');
  const textDocument = { uri: uri('rules.byre') };
  let told = problems();
  await connection.sendNotification('textDocument/didOpen', { textDocument: { ...textDocument, languageId: 'byrelaw', version: 1, text } });
  say('problems', await told);

  const start = place(text, 'no mastitis', 3);
  told = problems();
  await connection.sendNotification('textDocument/didChange', {
    textDocument: { ...textDocument, version: 2 },
    contentChanges: [{ range: { start, end: { line: start.line, character: start.character + 8 } }, text: 'mastits' }],
  });
  say('problems after a slip', await told);
  told = problems();
  await connection.sendNotification('textDocument/didChange', { textDocument: { ...textDocument, version: 3 }, contentChanges: [{ text }] });
  say('problems after the mend', await told);

  const at = (piece, into) => ({ textDocument, position: place(text, piece, into) });
  const hover = await connection.sendRequest('textDocument/hover', at('mastitis in', 2));
  say('hover', hover.contents.value);
  const [declared] = await connection.sendRequest('textDocument/definition', at('mastitis in', 2));
  say('declared', `${declared.uri.slice(declared.uri.lastIndexOf('/') + 1)} ${declared.range.start.line}:${declared.range.start.character}`);
  const offered = await connection.sendRequest('textDocument/completion', at('needs latest BVD', 'needs latest '.length));
  say('offered', offered.items.filter(item => item.detail === 'a test').map(item => item.label).join(', '));
  const edit = await connection.sendRequest('textDocument/rename', { ...at('mastitis in', 2), newName: 'udder infection' });
  say('renamed in', Object.keys(edit.changes).map(name => name.slice(name.lastIndexOf('/') + 1)).sort().join(', '));
  const refused = await connection.sendRequest('textDocument/rename', { ...at('mastitis in', 2), newName: 'heat' }).catch(error => error.message);
  say('refused', refused);
  const unknown = await connection.sendRequest('textDocument/moonPhase', {}).catch(error => error.code);
  say('an unknown request', unknown);
  const words = await connection.sendRequest('textDocument/semanticTokens/full', { textDocument });
  say('classed words', words.data.length / 5);

  const ended = new Promise(resolve => server.on('exit', resolve));
  await connection.sendRequest('shutdown');
  await connection.sendNotification('exit');
  say('exit code', await ended);
}

main().then(() => process.exit(0), error => {
  console.error(error.message);
  server.kill();
  process.exit(1);
});
