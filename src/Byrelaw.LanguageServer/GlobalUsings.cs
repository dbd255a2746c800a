// What most files here speak of. A namespace stands here only where none of its names clashes with another's.
global using System.Globalization;
global using System.Text;
global using System.Text.Json;
global using Byrelaw.Language.Diagnostics;
global using Byrelaw.Language.Reading;
global using Byrelaw.Language.Rulebooks;
global using Byrelaw.Language.Rulebooks.Words;
global using Byrelaw.Language.Sources;
global using Byrelaw.LanguageServer.Answers;
global using Byrelaw.LanguageServer.Files;
global using Byrelaw.LanguageServer.Herds;
global using Byrelaw.LanguageServer.Protocol;
global using Byrelaw.LanguageServer.Readings;
global using Byrelaw.LanguageServer.Wire;
global using Byrelaw.Workshop.Editing;
global using Byrelaw.Workshop.Editing.Names;
global using Byrelaw.Workshop.Editing.Tokens;
