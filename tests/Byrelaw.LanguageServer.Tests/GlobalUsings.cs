// What most files here speak of. A namespace stands here only where none of its names clashes with another's.
global using System.Text;
global using System.Text.Json;
global using Byrelaw.Language.Diagnostics;
global using Byrelaw.Language.Reading;
global using Byrelaw.LanguageServer.Files;
global using Byrelaw.LanguageServer.Protocol;
global using Byrelaw.LanguageServer.Tests.Support;
global using Byrelaw.Testing;
global using Byrelaw.Workshop.Editing;
global using Byrelaw.Workshop.Editing.Tokens;
