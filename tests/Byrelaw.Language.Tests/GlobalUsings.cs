// What most files here speak of. A namespace stands here only where none of its names clashes with another's.
global using System.Globalization;
global using System.Text;
global using Byrelaw.Language.Blocks;
global using Byrelaw.Language.Canonical;
global using Byrelaw.Language.Diagnostics;
global using Byrelaw.Language.Lexing;
global using Byrelaw.Language.Reading;
global using Byrelaw.Language.Rulebooks;
global using Byrelaw.Language.Rulebooks.Conditions;
global using Byrelaw.Language.Rulebooks.Words;
global using Byrelaw.Language.Sources;
global using Byrelaw.Language.Tests.Support;
global using Byrelaw.Testing;
global using Byrelaw.Testing.Documents;
global using Byrelaw.Testing.RandomCases;
global using CsCheck;
global using NodaTime;
