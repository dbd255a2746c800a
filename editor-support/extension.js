// Starts `byrelaw language-server` and lets the editor talk to it; all else is in the program itself.
const { workspace } = require('vscode');
const { LanguageClient, TransportKind } = require('vscode-languageclient/node');

let client;

function activate() {
  const command = workspace.getConfiguration('byrelaw').get('command');
  client = new LanguageClient(
    'byrelaw',
    'Byrelaw',
    { command, args: ['language-server'], transport: TransportKind.stdio },
    { documentSelector: [{ language: 'byrelaw' }] });
  return client.start();
}

function deactivate() {
  return client?.stop();
}

module.exports = { activate, deactivate };
